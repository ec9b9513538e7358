import fc from 'fast-check';
import type { Plot } from '../../../item-bank/types.ts';

const share = fc.integer({ min: 0, max: 100 }).map((value) => value / 100);
const count = fc.integer({ min: 0, max: 400 });
const places = fc.uniqueArray(fc.integer({ min: 1, max: 40 }).map(String), { minLength: 1, maxLength: 30 });
const words = fc.constantFrom(
	'every sign is dropped',
	'two minuses anywhere make a plus',
	'the sign rule of sums is used in a product',
);
const standards = fc.uniqueArray(fc.constantFrom('6.2(B)', '6.3(C)', '6.3(D)', '7.NS.A.1', 'All'), { minLength: 1 });
const models = ['symbols', 'counters', 'number-line', 'story', 'table', 'all models'];

/** Any plot of a kind, as reports make them. */
export const plotOf: Readonly<Record<Plot['kind'], fc.Arbitrary<Plot>>> = {
	scores: fc.array(count, { minLength: 1, maxLength: 41 }).map((counts) => ({
		kind: 'scores',
		maximum: counts.length - 1,
		students: counts.reduce((sum, each) => sum + each, 0),
		mean: (counts.length - 1) / 3,
		bars: counts.map((each, score) => ({ from: score, to: score, count: each })),
	})),
	'item-person': fc
		.tuple(
			fc.array(fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: 1, max: 20 })), { maxLength: 30 }),
			fc.array(count, { maxLength: 12 }),
		)
		.map(([items, counts]) => ({
			kind: 'item-person',
			items: items.map(([at, error], index) => ({ label: String(index + 1), at: at / 10, error: error / 10 })),
			students: counts.map((each, index) => ({ from: index / 2 - 3, to: index / 2 - 2.5, count: each })),
		})),
	'item-scatter': places.chain((labels) =>
		fc
			.array(fc.tuple(share, fc.integer({ min: -100, max: 100 })), {
				minLength: labels.length,
				maxLength: labels.length,
			})
			.map((figures) => ({
				kind: 'item-scatter',
				items: figures.map(([each, correlation], index) => ({
					label: labels[index] ?? '',
					share: each,
					correlation: correlation / 100,
					look: correlation < 20,
				})),
			})),
	),
	'option-curves': fc
		.array(fc.array(fc.array(share, { minLength: 4, maxLength: 4 }), { minLength: 2, maxLength: 6 }), {
			minLength: 1,
			maxLength: 12,
		})
		.map((panels) => ({
			kind: 'option-curves',
			panels: panels.map((lines, index) => ({
				label: String(index + 1),
				groups: [20, 20, 20.5, 19.5],
				lines: lines.map((shares, line) => ({ label: 'ABCDE'[line] ?? 'none', key: line === 1, shares })),
			})),
		})),
	'pattern-bars': fc
		.array(fc.tuple(words, fc.option(share, { nil: undefined })), { minLength: 1, maxLength: 12 })
		.map((bars) => ({
			kind: 'pattern-bars',
			students: 100,
			bars: bars.map(([label, each]) =>
				each === undefined
					? { label }
					: { label, repeated: Math.round(each * 100), hint: 2, low: each * 0.6, high: Math.min(1, each * 1.2) },
			),
		})),
	'evidence-board': fc
		.tuple(
			standards,
			fc.array(fc.option(fc.option(share, { nil: 'hidden' as const })), { minLength: 30, maxLength: 30 }),
		)
		.map(([labels, cells]) => ({
			kind: 'evidence-board',
			columns: models,
			rows: labels.map((label, row) => ({
				label,
				cells: models.map((_unused, column) => {
					const cell = cells[row * models.length + column] ?? null;
					if (cell === null) return null;
					if (cell === 'hidden') return { items: 2 };
					return { share: cell, low: cell / 2, high: (1 + cell) / 2, students: 1460, items: 14 };
				}),
			})),
		})),
	'count-board': fc
		.tuple(standards, fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 40, maxLength: 40 }))
		.map(([labels, counts]) => ({
			kind: 'count-board',
			columns: ['2026-09-14 form A', '2026-10-05 form B', '2027-01-11 form C'],
			rows: labels.map((label, row) => ({ label, counts: counts.slice(row * 3, row * 3 + 3) })),
		})),
};
