import type { ReviewRule } from '../review-note.ts';
import { directive } from './directive.ts';
import { hyphenAsMinus } from './hyphen-as-minus.ts';
import { loneSign } from './lone-sign.ts';
import { longSentence } from './long-sentence.ts';
import { negativeWording } from './negative-wording.ts';
import { oddSize } from './odd-size.ts';
import { optionCount } from './option-count.ts';
import { optionLength } from './option-length.ts';
import { optionsAboutOptions } from './options-about-options.ts';
import { sensitiveWord } from './sensitive-word.ts';
import { tellingDescription } from './telling-description.ts';
import { unexplainedDistractor } from './unexplained-distractor.ts';
import { unusedNumber } from './unused-number.ts';

/** Every rule that gives advice, in the order of their notes. */
export const reviewRules: readonly ReviewRule[] = [
	directive,
	negativeWording,
	hyphenAsMinus,
	longSentence,
	unusedNumber,
	sensitiveWord,
	optionCount,
	optionsAboutOptions,
	loneSign,
	oddSize,
	optionLength,
	unexplainedDistractor,
	tellingDescription,
];
