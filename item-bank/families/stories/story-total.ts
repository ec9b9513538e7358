import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { moveSlot } from './story-plan.ts';
import { tell, tellMoves } from './telling.ts';

const alignments = alignTo('6.3(D)', '6.2(B)', '6.NS.C.7c', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	moves: integer('How many moves are told.', 2, 4, 2),
	largest: integer('Largest size of a move.', 10, 200, 200),
};

/** The distance covered by moves in both directions. */
export const storyTotal = defineFamily({
	id: 'story-total',
	version: 1,
	name: 'Story: total distance',
	sentence: 'Tells moves in both directions and asks for the distance covered, without signs.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['gridded'],
	dok: [2],
	targets: ['absolute-value-as-opposite', 'larger-minus-smaller', 'sizes-subtracted-first-sign-kept'],
	features: ['sizeBand', 'signs', 'reading', 'terms'],
	plans: (values) => situationsOf(values).map((situation) => planFor(values, situation)),
	make: ({ random }, values) => {
		const situations = situationsOf(values);
		if (situations.length === 0) return undefined;
		const situation = random.pick(situations);
		const moves = drawNumbers(random, planFor(values, situation));
		const { total } = situation;
		if (moves === undefined || total === undefined) return undefined;
		const expression = moves.map((move) => `|${move}|`).join(' + ');
		return {
			kind: 'gridded',
			name: `Total distance, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			stem: [paragraph(tell(total.start, tellMoves(situation, moves, true), total.ask))],
			expression,
			grid: 'plain-sign-first',
			answerIn: 'number',
			unit: situation.amountUnit[1],
			points: 1,
			dok: 2,
			context: { setting: situation.setting, role: 'total-distance' },
			alignments,
			tags: ['total-distance', 'absolute-value'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function situationsOf({ setting, moves }: Values): readonly Situation[] {
	return situationsIn(setting).filter(({ id, total }) => total && (moves === 2 || id !== 'room-temperature'));
}

function sizesOf(moves: readonly number[]): number {
	return moves.reduce((sum, move) => sum + Math.abs(move), 0);
}

function planFor({ largest, moves: count }: Values, situation: Situation): NumberPlan {
	const { lowest, highest } = situation.levels;
	return {
		slots: Array.from({ length: count }, () => moveSlot(situation, largest)),
		rules: [
			differentSizes,
			{ name: 'moves go both ways', holds: (moves) => Math.min(...moves) < 0 && Math.max(...moves) > 0 },
			{
				name: 'all moves fit between the ends',
				holds: (moves) => Math.abs(moves.reduce((sum, move) => sum + move, 0)) < highest - lowest,
			},
			tellingAnswer(sizesOf),
		],
	};
}
