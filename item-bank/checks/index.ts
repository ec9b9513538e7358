import { alikeOptions } from './review/alike-options.ts';
import { allOfTheAbove } from './review/all-of-the-above.ts';
import { countersMiscounted } from './review/counters-miscounted.ts';
import { directive } from './review/directive.ts';
import { equalWorth } from './review/equal-worth.ts';
import { figureMismatch } from './review/figure-mismatch.ts';
import { gapSign } from './review/gap-sign.ts';
import { loneSign } from './review/lone-sign.ts';
import { longSentence } from './review/long-sentence.ts';
import { negativeWording } from './review/negative-wording.ts';
import { noneOfTheAbove } from './review/none-of-the-above.ts';
import { numberNotShown } from './review/number-not-shown.ts';
import { oddSize } from './review/odd-size.ts';
import { optionCount } from './review/option-count.ts';
import { optionLength } from './review/option-length.ts';
import { optionsAboutOptions } from './review/options-about-options.ts';
import { pointNotDrawn } from './review/point-not-drawn.ts';
import { readingGrade } from './review/reading-grade.ts';
import { sensitiveWord } from './review/sensitive-word.ts';
import { stemEcho } from './review/stem-echo.ts';
import { tellingDescription } from './review/telling-description.ts';
import { typedOperation } from './review/typed-operation.ts';
import { unexplainedDistractor } from './review/unexplained-distractor.ts';
import { unusedNumber } from './review/unused-number.ts';
import type { Rule } from './rule.ts';
import { askedValue } from './stops/asked-value.ts';
import { computedKey } from './stops/computed-key.ts';
import { distinctAlignments } from './stops/distinct-alignments.ts';
import { distinctOptions } from './stops/distinct-options.ts';
import { doubledSign } from './stops/doubled-sign.ts';
import { drawableFigure } from './stops/drawable-figure.ts';
import { evenTable } from './stops/even-table.ts';
import { givenModel } from './stops/given-model.ts';
import { gridWidth } from './stops/grid-width.ts';
import { hyphenAsMinus } from './stops/hyphen-as-minus.ts';
import { knownGrid } from './stops/known-grid.ts';
import { knownPattern } from './stops/known-pattern.ts';
import { knownStandard } from './stops/known-standard.ts';
import { numberOrder } from './stops/number-order.ts';
import { oneKindOfOption } from './stops/one-kind-of-option.ts';
import { optionLetters } from './stops/option-letters.ts';
import { positiveOnly } from './stops/positive-only.ts';
import { primaryAlignment } from './stops/primary-alignment.ts';
import { printableText } from './stops/printable-text.ts';
import { readableMathematics } from './stops/readable-mathematics.ts';
import { setPoints } from './stops/set-points.ts';
import { stemQuestion } from './stops/stem-question.ts';

/** Every rule that keeps an item from approval, in the order of their problems. */
export const stopRules: readonly Rule[] = [
	printableText,
	readableMathematics,
	hyphenAsMinus,
	doubledSign,
	evenTable,
	stemQuestion,
	drawableFigure,
	optionLetters,
	oneKindOfOption,
	distinctOptions,
	numberOrder,
	knownPattern,
	computedKey,
	askedValue,
	knownGrid,
	gridWidth,
	givenModel,
	setPoints,
	primaryAlignment,
	knownStandard,
	positiveOnly,
	distinctAlignments,
];

/** Every rule that gives advice, in the order of their notes. */
export const adviceRules: readonly Rule[] = [
	directive,
	negativeWording,
	typedOperation,
	gapSign,
	longSentence,
	readingGrade,
	unusedNumber,
	numberNotShown,
	sensitiveWord,
	optionCount,
	optionsAboutOptions,
	allOfTheAbove,
	noneOfTheAbove,
	alikeOptions,
	optionLength,
	equalWorth,
	loneSign,
	oddSize,
	stemEcho,
	unexplainedDistractor,
	tellingDescription,
	figureMismatch,
	countersMiscounted,
	pointNotDrawn,
];
