import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { columnsOf, splitCounters } from '../../../item-bank/figures/counters.ts';
import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import type { CountersFigure, Figure, NumberLineFigure } from '../../../item-bank/types.ts';
import { counters, groups, lines } from './figure-arbitraries.ts';

const set = (parts: Partial<CountersFigure>) => describeFigure({ kind: 'counters', plus: 0, minus: 0, ...parts });
const line = (parts: Partial<NumberLineFigure>) =>
	describeFigure({ kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, tickEvery: 1, ...parts });

describe('counters', () => {
	test('are told row by row', () => {
		expect(set({ plus: 5, minus: 3 })).toBe('Top row: 5 counters marked plus. Bottom row: 3 counters marked minus.');
		expect(set({ minus: 1 })).toBe('One row: 1 counter marked minus.');
		expect(set({ plus: 14 })).toBe('14 counters marked plus, in rows of 10.');
	});

	test('tell rings, the dashed frame and what is crossed out where', () => {
		expect(set({ plus: 5, minus: 3, ringedPairs: 1 })).toContain('1 pair is ringed, each one plus above one minus.');
		expect(set({ plus: 5, addedPairs: 3, removed: { sign: 'minus', count: 3 } })).toBe(
			'One row: 5 counters marked plus. Apart from these, in a dashed frame: 3 counters marked plus above 3 counters ' +
				'marked minus. Crossed out: 3 counters marked minus in the dashed frame.',
		);
		expect(set({ minus: 2, addedPairs: 3, removed: { sign: 'minus', count: 5 } })).toContain(
			'Crossed out: 2 counters marked minus outside the dashed frame and 3 counters marked minus in the dashed frame.',
		);
	});

	test('groups are told by number of groups and counters in each', () => {
		expect(describeFigure({ kind: 'counter-groups', groups: 4, each: 3, sign: 'minus' })).toBe(
			'4 groups, each in a frame. In each group: 3 counters marked minus.',
		);
		expect(describeFigure({ kind: 'counter-groups', groups: 1, each: 1, sign: 'plus' })).toBe(
			'1 group in a frame: 1 counter marked plus.',
		);
	});

	test('no number is named that is not a count of what stands together, so no total and no value', () => {
		fc.assert(
			fc.property(counters, (figure) => {
				const { starting, added } = splitCounters(figure);
				const counts = [starting, added].flatMap((part) => [...Object.values(part), columnsOf(part)]);
				const named = describeFigure(figure).match(/\d+/g)?.map(Number) ?? [];
				expect([...counts, figure.ringedPairs]).toEqual(expect.arrayContaining(named));
			}),
		);
		fc.assert(
			fc.property(groups, (figure) => {
				const named = describeFigure(figure).match(/\d+/g)?.map(Number);
				expect(named).toEqual([figure.groups, figure.each]);
			}),
		);
	});
});

describe('number lines', () => {
	test('tell how they lie, their ticks and labels', () => {
		expect(line({})).toBe(
			'Horizontal number line with 21 evenly spaced ticks. Every tick is labelled, from negative 10 to 10 in steps of 1.',
		);
		expect(line({ orientation: 'vertical', labels: 'zero' })).toBe(
			'Vertical number line with 21 evenly spaced ticks. Labelled, counting ticks from the bottom: 0 at tick 11.',
		);
		expect(line({ labels: 'ends-and-zero' })).toContain(
			'One tick in 10 is labelled, from negative 10 to 10 in steps of 10.',
		);
		expect(line({ labels: [-6, -3, 0, 3] })).toContain(
			'One tick in 3 is labelled, from negative 6 to 3 in steps of 3, with 4 more ticks left of negative 6 and ' +
				'7 more ticks right of 3.',
		);
		expect(line({ from: -4, to: 6, labels: [-3, 0, 3] })).toContain(', with 1 more tick left of negative 3 and 3 more');
		expect(line({ labels: [] })).toContain('No tick is labelled.');
	});

	test('tell each arrow by start and direction, and by its end where that can be read', () => {
		expect(line({ arrows: [5, -8] })).toContain(
			'Arrow 1 starts at 0, points right and ends at 5. Arrow 2 starts where arrow 1 ends, points left and ends at ' +
				'negative 3.',
		);
		expect(line({ orientation: 'vertical', start: -6, arrows: [9] })).toContain(
			'An arrow starts at negative 6, points up and ends at 3.',
		);
	});

	test('tell an end or point without label in ticks from the nearest label', () => {
		expect(line({ labels: 'ends-and-zero', arrows: [-7] })).toContain('ends at the 3rd tick right of negative 10.');
		expect(line({ labels: 'zero', points: [{ at: -2, label: 'P' }] })).toContain(
			'Point P is at the 2nd tick left of 0.',
		);
		expect(line({ labels: [], points: [{ at: -10 }] })).toContain('A point is at tick 1 from the left.');
	});

	test('tell lengths instead of ends where lengths are written, and so leave the sum to the student', () => {
		const text = line({ labels: 'zero', arrows: [5, -8], arrowLabels: true });
		expect(text).toContain('Arrow 1 starts at 0, points right and is labelled positive 5.');
		expect(text).toContain('Arrow 2 starts where arrow 1 ends, points left and is labelled negative 8.');
		expect(text).not.toMatch(/negative 3|3rd/);
	});

	test('never write a minus sign, which a reader may say as "dash" or not at all', () => {
		fc.assert(
			fc.property(lines, (figure) => {
				expect(describeFigure(figure)).not.toMatch(/[−-]/);
			}),
		);
	});

	test('name a number as a position only where it is labelled', () => {
		fc.assert(
			fc.property(lines, (figure) => {
				fc.pre(checkFigure(figure).length === 0);
				const drawing = drawFigure(figure);
				const written = drawing.root.children.flatMap((child) =>
					typeof child !== 'string' && child.name === 'text'
						? [String(child.children[0]).replace('−', 'negative ')]
						: [],
				);
				const places = [...describeFigure(figure).matchAll(/(?:starts|ends|is) at ((?:negative )?\d+)[.,]/g)];
				for (const [, place] of places) expect(written).toContain(place);
			}),
		);
	});
});

describe('figures described alike are drawn alike, and figures drawn alike are described alike', () => {
	const upTo = (count: number) => Array.from({ length: count + 1 }, (_, index) => index);

	function expectOneToOne(figures: readonly Figure[]): void {
		const drawings = new Map<string, string>();
		const descriptions = new Map<string, string>();
		for (const figure of figures) {
			if (checkFigure(figure).length > 0) continue;
			const description = describeFigure(figure);
			const drawing = JSON.stringify(drawFigure(figure).root);
			if ((drawings.get(description) ?? drawing) !== drawing) expect.fail(`two drawings for: ${description}`);
			if ((descriptions.get(drawing) ?? description) !== description) {
				expect.fail(`one drawing for: ${description} and: ${descriptions.get(drawing)}`);
			}
			drawings.set(description, drawing);
			descriptions.set(drawing, description);
		}
		expect(drawings.size).toBeGreaterThan(99);
	}

	test('sets of counters', () => {
		const sets = [0, 1, 2, 3, 14].flatMap((plus) =>
			[0, 1, 2, 13].flatMap((minus) =>
				upTo(2).flatMap((ringedPairs) =>
					upTo(2).flatMap((addedPairs) =>
						upTo(4).flatMap((count) =>
							(['plus', 'minus'] as const).map((sign): Figure => {
								const removed = count === 0 ? {} : { removed: { sign, count } };
								return { kind: 'counters', plus, minus, ringedPairs, addedPairs, ...removed };
							}),
						),
					),
				),
			),
		);
		expectOneToOne(sets);
	});

	test('groups of counters', () => {
		expectOneToOne(
			upTo(9).flatMap((groups) =>
				upTo(9).flatMap((each) =>
					(['plus', 'minus'] as const).map(
						(sign): Figure => ({ kind: 'counter-groups', groups: groups + 1, each: each + 1, sign }),
					),
				),
			),
		);
	});

	test('number lines', () => {
		const windows = [
			{ from: -4, to: 4, tickEvery: 1 },
			{ from: -4, to: 8, tickEvery: 2 },
			{ from: -20, to: 20, tickEvery: 1 },
		];
		const labels: readonly NonNullable<NumberLineFigure['labels']>[] = [
			'every-tick',
			'ends',
			'ends-and-zero',
			'zero',
			[],
			[-2, 4],
			[2],
		];
		const marks: readonly Partial<NumberLineFigure>[] = [
			{},
			{ points: [{ at: -2, label: 'A' }] },
			{ points: [{ at: 2, label: 'A' }, { at: -2 }] },
			{ points: [{ at: 2 }, { at: -4, label: 'B' }] },
			...[[2], [-2], [4], [2, -4], [-4, 2], [4, -2, -2]].flatMap((arrows) =>
				[0, -2, 2].flatMap((start) => [false, true].map((arrowLabels) => ({ arrows, start, arrowLabels }))),
			),
		];
		expectOneToOne(
			(['horizontal', 'vertical'] as const).flatMap((orientation) =>
				windows.flatMap((window) =>
					labels.flatMap((labels) =>
						marks.map((parts): Figure => ({ kind: 'number-line', orientation, ...window, labels, ...parts })),
					),
				),
			),
		);
	});
});
