import { parseExpression } from '../../expression/parse.ts';
import { subjectOf, twoNumbers } from '../../patterns/subject.ts';
import type { Item } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { type Draw, defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type ValuesOf, word } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { tell, tellAmount, tellLevel } from './telling.ts';

const products = alignTo('6.3(D)', '7.NS.A.2a', '7.3(B)', '6.CE.2.d');
const positions = alignTo('6.3(D)', '7.NS.A.3', '7.EE.B.3', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	asks: word('What is asked.', ['any', 'change', 'level']),
	answeredBy,
};

/** The same change again and again: its total, or the level after it. */
export const storyRate = defineFamily({
	id: 'story-rate',
	version: 1,
	name: 'Story: steady change',
	sentence: 'Tells of the same fall again and again and asks for the total change, or for the level after it.',
	parameters,
	standards: joinAlignments(products, positions),
	given: ['story'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['signs-dropped', 'product-read-as-difference', 'sum-rule-in-product'],
	features: ['terms', 'sizeBand', 'crossesZero', 'signs', 'reading'],
	plans: (values) => situationsIn(values.setting).map(planFor),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(situation));
		if (numbers === undefined) return undefined;
		const [count = 0, amount = 0] = numbers;
		const asks = values.asks === 'any' ? (draw.lot % 3 === 0 ? 'level' : 'change') : values.asks;
		return asks === 'change'
			? askChange(draw, situation, count, amount)
			: askLevel(draw, values, situation, count, amount);
	},
});

type Values = ValuesOf<typeof parameters>;

function askChange(draw: Draw, situation: Situation, count: number, amount: number): Item | undefined {
	const { rate } = situation;
	const expression = `${count} × (${-amount})`;
	// Patterns lead to two wrong numbers at most, beside which the key would always be the first.
	return askNumber(draw, 'gridded', {
		name: `Steady change, ${titleOf(situation)}: ${expression}`,
		given: 'story',
		stem: [paragraph(tell(tellRate(rate.loss, situation, count, amount), rate.ask))],
		expression,
		key: -count * amount,
		subjects: [twoNumbers('multiply', count, -amount)],
		unit: situation.amountUnit[1],
		points: 1,
		dok: 2,
		context: { setting: situation.setting, role: 'change' },
		alignments: products,
		tags: ['multiplication', 'unlike-signs'],
	});
}

function askLevel(draw: Draw, values: Values, situation: Situation, count: number, amount: number): Item | undefined {
	const { lowest, highest } = situation.levels;
	const change = -count * amount;
	const [from, to] =
		highest > 0 ? [Math.max(2, lowest - change), Math.min(highest, -change)] : [lowest - change, highest];
	if (from > to) return undefined;
	const level = draw.random.nextInteger(from, to);
	if ([count, amount].includes(Math.abs(level)) || level + change === -level || Math.abs(level + change) < 2)
		return undefined;
	const expression = `${level} + ${count} × (${-amount})`;
	const before = tellLevel(situation.at, situation, level);
	const after = `Then ${tellRate(situation.rate.onward, situation, count, amount)}.`;
	return askNumber(draw, values.answeredBy, {
		name: `Level after steady change, ${titleOf(situation)}: ${expression}`,
		given: 'story',
		stem: [paragraph(tell(situation.opening, before, after, situation.askLevel))],
		expression,
		key: level + change,
		subjects: [subjectOf(parseExpression(expression))],
		unit: situation.levelUnit,
		points: 2,
		dok: 2,
		context: { setting: situation.setting, role: 'position' },
		alignments: positions,
		tags: ['several-steps', 'multiplication'],
	});
}

function tellRate(text: string, situation: Situation, count: number, amount: number): string {
	return tellAmount(text, situation, amount).replace('{count}', String(count));
}

function planFor({ rate }: Situation): NumberPlan {
	return {
		slots: [
			{ ...rate.counts, sign: 'plus' },
			{ ...rate.amounts, sign: 'plus' },
		],
		rules: [differentSizes],
	};
}
