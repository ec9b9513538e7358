import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { figureFor } from '../../../item-bank/figures/figure-for.ts';
import { findKey } from '../../../item-bank/items/key.ts';
import type { GapChoice, NumberLineFigure, Option, OptionContent, PartItem } from '../../../item-bank/types.ts';
import { common, hardTexts, randomExpression, randomStem, randomSum, shuffle } from './random-content.ts';
import type { Draw } from './random-draw.ts';

type Kind<K extends PartItem['kind']> = Extract<PartItem, { kind: K }>;

const letters = 'abcdefgh';

/** A number to mark on a line of at most 25 ticks, lying or upright, with arrows or other points on it. */
export function randomPoint(draw: Draw): Kind<'point'> {
	for (;;) {
		const step = draw.pick([1, 1, 1, 2, 5, 10]);
		const first = draw.whole(-14, 2);
		const count = draw.whole(4, 24);
		const value = (first + draw.whole(0, count)) * step;
		const by = draw.whole(-20, 20) || 6;
		const line: NumberLineFigure = {
			kind: 'number-line',
			orientation: draw.pick(['horizontal', 'horizontal', 'vertical'] as const),
			from: first * step,
			to: (first + count) * step,
			tickEvery: step,
			labels: draw.pick(['every-tick', 'ends', 'ends-and-zero'] as const),
			...(draw.chance(0.2) ? { points: [{ at: (first + draw.whole(0, count)) * step, label: 'B' }] } : {}),
			...(draw.chance(0.2) ? { start: first * step, arrows: [draw.whole(2, count) * step] } : {}),
		};
		const expression = `${value - by} + ${by < 0 ? `(${by})` : by}`;
		const stem = randomStem(draw, `Mark \`${expression}\` on the line ${draw.pick(hardTexts)}.`);
		const item: PartItem = { kind: 'point', ...common(draw, 'line'), answerIn: 'number-line', stem, line, expression };
		if (checkFigure(line).length === 0 && isSound(item)) return item;
	}
}

/** Expressions or words to put in order. */
export function randomOrder(draw: Draw): Kind<'order'> {
	for (;;) {
		const entries = Array.from({ length: draw.whole(3, 6) }, (_, index): Option => {
			const { text } = randomExpression(draw);
			const words = `\`${text}\` ${draw.pick(hardTexts)}`;
			const isWorded = draw.chance(0.3);
			const content: OptionContent = isWorded
				? { kind: 'text', text: words, worth: text }
				: { kind: 'mathematics', math: text };
			return { id: letters.charAt(index), content };
		});
		const item: PartItem = {
			kind: 'order',
			...common(draw, 'order'),
			answerIn: 'expression',
			stem: randomStem(draw, 'Put these in order.'),
			entries,
			direction: draw.pick(['ascending', 'descending'] as const),
		};
		if (isSound(item)) return item;
	}
}

/** Expressions and their values, or number lines and the sums they show; some entries on the right have no partner. */
export function randomMatch(draw: Draw): Kind<'match'> {
	for (;;) {
		const isShown = draw.chance(0.3);
		const sums = Array.from({ length: draw.whole(2, 6) }, () =>
			isShown ? randomSum(draw) : randomExpression(draw).text,
		);
		const more = Array.from({ length: draw.whole(0, 8 - Math.max(2, sums.length)) }, () => randomSum(draw));
		const left = sums.map((text): OptionContent | undefined => {
			if (!isShown) return { kind: 'mathematics', math: text };
			const figure = figureFor(parseExpression(text), 'number-line');
			return figure && { kind: 'figure', figure };
		});
		if (!left.every((content) => content !== undefined)) continue;
		const right = shuffle(draw, [...sums, ...more.slice(0, 2)]).map((text): OptionContent => {
			return { kind: 'mathematics', math: isShown ? text : String(evaluate(parseExpression(text))) };
		});
		const name = (content: OptionContent, index: number): Option => ({ id: letters.charAt(index), content });
		const item: PartItem = {
			kind: 'match',
			...common(draw, 'match'),
			answerIn: isShown ? 'number-line' : 'number',
			stem: randomStem(draw, 'Match each with its partner.'),
			left: left.map(name),
			right: right.map(name),
			partners: isShown ? 'shows' : 'same-value',
			...(draw.chance(0.6) ? { credit: draw.pick(['parts', 'whole'] as const) } : {}),
		};
		if (isSound(item)) return item;
	}
}

/** A statement with a gap for a relation, an operation or a number. */
export function randomInlineChoice(draw: Draw): Kind<'inline-choice'> {
	for (;;) {
		const [a, b] = [draw.whole(-30, 30), draw.whole(2, 12)];
		const [statement, maths] = draw.pick([
			[`${a} _ ${draw.whole(-30, 30)}`, ['<', '>', '=']],
			[`${a} _ ${b} = ${draw.pick([a + b, a - b, a * b])}`, ['+', '-', '×']],
			[`${a} + _ = ${a + b}`, [String(b), `(${-b})`, String(a), String(b + 1)]],
			[`_ - ${b} = ${a - b}`, [String(a), String(-a), String(b)]],
			[`|${a} - ${b}| = _`, [String(Math.abs(a - b)), String(a - b), String(a + b)]],
			[`${a} _ ${a}`, ['<=', '<', '>']],
		] as const);
		const choices = shuffle(draw, [...new Set(maths)]).map(
			(math, index): GapChoice => ({ id: letters.charAt(index), math }),
		);
		const stem = randomStem(draw, `Make it true ${draw.pick(hardTexts)} ${draw.whole(1, 9999)}.`);
		const item: PartItem = {
			kind: 'inline-choice',
			...common(draw, 'gap'),
			answerIn: 'statement',
			stem,
			statement,
			choices,
		};
		if (choices.length > 1 && isSound(item)) return item;
	}
}

/** Something to explain, with a rubric from the item's points down to 0. */
export function randomExplanation(draw: Draw): Kind<'explanation'> {
	const points = draw.whole(1, 4);
	const rubric = Array.from({ length: points + 1 }, (_, index) => ({
		points: points - index,
		descriptor: `Level ${points - index}: secret ${draw.pick(hardTexts)}`,
	}));
	return {
		kind: 'explanation',
		...common(draw, 'words'),
		answerIn: 'words',
		stem: randomStem(draw, `Explain why \`${randomExpression(draw).text}\` is so.`),
		lines: draw.whole(2, 30),
		rubric,
		points,
	};
}

function isSound(item: PartItem): boolean {
	return 'key' in findKey(item);
}
