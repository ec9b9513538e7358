import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { figureFor } from '../../../item-bank/figures/figure-for.ts';
import { gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import type { Option, OptionContent, PartItem } from '../../../item-bank/types.ts';
import {
	common,
	hardTexts,
	numberOption,
	randomExpression,
	randomStem,
	randomSum,
	randomValues,
	shuffle,
} from './random-content.ts';
import type { Draw } from './random-draw.ts';

/** Numbers, or words with numbers, one of them right. */
export function randomChoice(draw: Draw): PartItem {
	const { text, value } = randomExpression(draw);
	const options = randomValues(draw, value, draw.whole(2, 6)).map(numberOption);
	if (draw.chance(0.3)) {
		const worded = options.map((option, index): Option => {
			const { content } = option;
			if (content.kind !== 'mathematics') return option;
			return {
				id: option.id,
				content: {
					kind: 'text',
					text: `\`${content.math}\` ${hardTexts[index % hardTexts.length]}`,
					worth: content.math,
				},
			};
		});
		return {
			kind: 'choice',
			...common(draw, 'words'),
			answerIn: 'words',
			stem: randomStem(draw, `What is \`${text}\`?`),
			options: worded,
			rule: { kind: 'same-value', expression: text },
		};
	}
	return {
		kind: 'choice',
		...common(draw, 'number'),
		answerIn: 'number',
		stem: randomStem(draw, `What is \`${text}\`?`),
		options,
		rule: { kind: 'same-value', expression: text },
	};
}

/** Statements, some of them true. */
export function randomMultipleChoice(draw: Draw): PartItem {
	const truths = Array.from({ length: draw.whole(3, 6) }, (_, index) =>
		index === 0 ? true : index === 1 ? false : draw.chance(0.5),
	);
	const contents = shuffle(draw, truths).map((isTrue): OptionContent => {
		const { text, value } = randomExpression(draw);
		return { kind: 'mathematics', math: `${text} = ${isTrue ? value : value + (draw.whole(-9, 9) || 5)}` };
	});
	return {
		kind: 'multiple-choice',
		...common(draw, 'statement'),
		answerIn: 'statement',
		stem: randomStem(draw, `Which are true at ${draw.whole(1, 9999)}?`),
		options: contents.map((content, index) => ({ id: 'abcdefgh'.charAt(index), content })),
		rule: { kind: 'true-statement' },
		...(draw.chance(0.5) ? { credit: draw.pick(['parts', 'whole'] as const) } : {}),
	};
}

/** Figures as options: one shows the expression. */
export function randomShows(draw: Draw): PartItem | undefined {
	const sums = new Set<string>();
	while (sums.size < 3) sums.add(randomSum(draw));
	const [right = '', ...wrong] = sums;
	const options = shuffle(draw, [right, ...wrong]).map((text, index): Option | undefined => {
		const figure = figureFor(parseExpression(text), 'number-line');
		return figure && { id: 'abc'.charAt(index), content: { kind: 'figure', figure } };
	});
	if (!options.every((option) => option !== undefined)) return undefined;
	return {
		kind: 'choice',
		...common(draw, 'number-line'),
		answerIn: 'number-line',
		stem: [{ kind: 'paragraph', text: `Which shows \`${right}\`?` }],
		options,
		rule: { kind: 'shows', expression: right },
	};
}

/** A figure in the stem: one option is what it shows. */
export function randomShown(draw: Draw): PartItem | undefined {
	const sums = new Set<string>();
	while (sums.size < 4) sums.add(randomSum(draw));
	const [right = '', ...wrong] = sums;
	const figure = figureFor(parseExpression(right), 'number-line');
	if (!figure) return undefined;
	const options = shuffle(draw, [right, ...wrong]).map(
		(math, index): Option => ({ id: 'abcd'.charAt(index), content: { kind: 'mathematics', math } }),
	);
	return {
		kind: 'choice',
		...common(draw, 'expression'),
		answerIn: 'expression',
		stem: [
			{ kind: 'figure', figure },
			{ kind: 'paragraph', text: 'Which sum is shown?' },
		],
		options,
		rule: { kind: 'shown' },
	};
}

/** A number to write. */
export function randomGridded(draw: Draw): PartItem {
	const { text } = randomExpression(draw);
	const unit = draw.chance(0.4) ? { unit: draw.pick(['metres', '°C', 'dollars & cents']) } : {};
	return {
		kind: 'gridded',
		...common(draw, 'number'),
		answerIn: 'number',
		stem: randomStem(draw, `Work out \`${text}\`.`),
		expression: text,
		grid: draw.pick(gridProfiles).id,
		...unit,
	};
}
