import { parseExpression } from '../../expression/parse.ts';
import { type Subject, subjectOf } from '../../patterns/subject.ts';
import type { LinePoint, NumberLineFigure } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { letter } from '../options.ts';
import { word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { inner, paragraph } from '../writing.ts';
import { evenLine, layLine, orientation, stepOf, tickSteps } from './line.ts';

const positions = alignTo('6.2(C)', '6.NS.C.6c');
const opposites = alignTo('6.2(B)', '6.2(C)', '6.NS.C.6a');
const parameters = {
	asks: word('Which point is asked for.', ['any', 'number', 'opposite']),
	tickEvery: tickSteps,
	orientation,
};

/** Which of three points on a number line is at a number, or at its opposite. */
export const pointReading = defineFamily({
	id: 'point-reading',
	version: 1,
	name: 'Which point is it?',
	sentence: 'Shows three lettered points on a number line and asks which one is at a number or at its opposite.',
	parameters,
	standards: joinAlignments(positions, opposites),
	given: ['number-line'],
	kinds: ['choice'],
	dok: [1],
	targets: ['signs-dropped', 'second-minus-lost', 'start-tick-counted'],
	features: ['sizeBand'],
	plans: (values) => [planFor(stepOf(values.tickEvery, 0))],
	make: ({ random, lot }, values) => {
		const tickEvery = stepOf(values.tickEvery, lot);
		const numbers = drawNumbers(random, planFor(tickEvery));
		if (numbers === undefined) return undefined;
		const [number = 0] = numbers;
		const asks = values.asks === 'any' ? (lot % 2 === 0 ? 'number' : 'opposite') : values.asks;
		const lies = layLine(values.orientation, lot);
		const key = asks === 'number' ? number : -number;
		// Counting the tick one starts from ends one tick short.
		const short = key - Math.sign(key) * tickEvery;
		const places = [key, -key, short].sort((a, b) => a - b);
		const points = places.map((at, index): LinePoint => ({ at, label: 'ABC'.charAt(index) }));
		const figure: NumberLineFigure = { ...evenLine(lies, 10 * tickEvery, tickEvery), labels: 'ends-and-zero', points };
		const expression = asks === 'number' ? String(key) : `-${inner(number)}`;
		const subjects: readonly Subject[] = [
			...(asks === 'number' ? [] : [subjectOf(parseExpression(expression))]),
			{ kind: 'walk', start: 0, moves: [key], tickEvery },
		];
		const tagger = createTagger(subjects, key, false);
		const faces = places.map((at, index) => ({
			content: { kind: 'text', text: `point ${'ABC'.charAt(index)}`, worth: String(at) } as const,
			patterns: at === key ? [] : tagger.tag(parseExpression(String(at))),
		}));
		if (faces.filter(({ patterns }) => patterns.length === 0).length > 1) return undefined;
		const what = asks === 'number' ? `\`${number}\`` : `the opposite of \`${number}\``;
		return {
			kind: 'choice',
			name: `Point at ${asks === 'number' ? number : `the opposite of ${number}`}, ${lies}, ticks every ${tickEvery}`,
			given: 'number-line',
			answerIn: 'words',
			stem: [paragraph(`Which point is at ${what}?`), { kind: 'figure', figure }],
			options: letter(faces),
			rule: { kind: 'same-value', expression },
			points: 1,
			dok: 1,
			alignments: asks === 'number' ? positions : opposites,
			tags: asks === 'number' ? ['position'] : ['opposite', 'position'],
		};
	},
});

function planFor(tickEvery: number): NumberPlan {
	return { slots: [{ least: 3 * tickEvery, most: 9 * tickEvery, step: tickEvery, sign: 'any' }], rules: [] };
}
