import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../../item-bank/items/record.ts';
import { columnSymbols } from '../../../../item-bank/responses/grid.ts';
import { getGridProfile, gridProfiles } from '../../../../item-bank/responses/grid-profiles.ts';
import type { AnswerSheetGeometry, Item, SheetField } from '../../../../item-bank/types.ts';
import { checkShape } from '../../../../server/json-schemas.ts';
import { placeItems } from '../../../../server/print/placed-items.ts';
import { planSheets } from '../../../../server/print/sheet/plan-sheet.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	makeSet,
	numberOptions,
} from '../../../helpers/items.ts';
import { demoForm, demoItems, formWith } from '../demo-forms.ts';

const makers = {
	choice: makeChoice,
	'multiple-choice': makeMultipleChoice,
	gridded: makeGridded,
	eight: () => makeChoice({ options: numberOptions(1, 2, 3, 4, 5, 6, 7, -7) }),
	point: makePoint,
	upright: () => makePoint({ line: { kind: 'number-line', orientation: 'vertical', from: -12, to: 12, tickEvery: 1 } }),
	order: makeOrder,
	match: makeMatch,
	'inline-choice': makeInlineChoice,
	explanation: makeExplanation,
	set: makeSet,
} satisfies Readonly<Record<string, () => Item>>;
type Maker = keyof typeof makers;
const makerNames = Object.keys(makers) as readonly Maker[];

const orders = fc.record({
	kinds: fc.array(fc.constantFrom(...makerNames), {
		minLength: 1,
		maxLength: 40,
	}),
	profile: fc.constantFrom(...gridProfiles.map(({ id }) => id)),
	paper: fc.constantFrom('a4' as const, 'letter' as const),
	large: fc.boolean(),
	longest: fc.integer({ min: 0, max: 24 }),
});

function planFor(
	kinds: readonly Maker[],
	profile: string,
	paper: 'a4' | 'letter',
	large: boolean,
	longest = 0,
): AnswerSheetGeometry {
	const items = kinds.map(
		(kind, index): ItemRecord => ({ id: `item-${index}`, version: 1, status: 'draft', item: makers[kind]() }),
	);
	const form = formWith(items, { gridProfile: profile });
	const students = longest < 2 ? [] : ['A'.repeat(longest)];
	return planSheets({ form, placed: placeItems(form, items), students, paper, large });
}

const bubblesOf = (field: SheetField) => field.columns.flatMap(({ bubbles }) => bubbles);

describe('sheets of any form', () => {
	test('hold every item once and in order, on their pages and clear of marks and code', () => {
		fc.assert(
			fc.property(orders, ({ kinds, profile, paper, large, longest }) => {
				const geometry = planFor(kinds, profile, paper, large, longest);
				expect(checkShape('answer-sheet-geometry.schema.json', geometry)).toEqual([]);
				for (const { pages } of geometry.layouts) {
					const positions = pages.flatMap(({ fields }) =>
						fields.flatMap((field) => ('position' in field ? [`${field.position}${field.part ?? ''}`] : [])),
					);
					const wanted = kinds.flatMap((kind, index) =>
						kind === 'set' ? [`${index + 1}a`, `${index + 1}b`] : [String(index + 1)],
					);
					expect(positions).toEqual(wanted);
					for (const { fields, code } of pages) {
						for (const { x, y } of fields.flatMap(bubblesOf)) {
							const half = geometry.bubble / 2;
							expect(x - half).toBeGreaterThanOrEqual(15.5);
							expect(x + half).toBeLessThanOrEqual(geometry.page.width - 15.5);
							expect(y - half).toBeGreaterThanOrEqual(code.y + code.size + 3);
							expect(y + half).toBeLessThanOrEqual(geometry.page.height - 16.5);
						}
					}
				}
			}),
			{ numRuns: 60 },
		);
	});

	test('keep bubbles at least 24 CSS px apart, centre to centre (WCAG 2.2, 2.5.8: 6.35 mm)', () => {
		fc.assert(
			fc.property(orders, ({ kinds, profile, paper, large, longest }) => {
				for (const { pages } of planFor(kinds, profile, paper, large, longest).layouts) {
					for (const { fields } of pages) {
						const places = fields.flatMap(bubblesOf);
						const near = places.flatMap((a, index) =>
							places.slice(index + 1).filter((b) => Math.hypot(a.x - b.x, a.y - b.y) < 6.35 - 0.02),
						);
						expect(near).toEqual([]);
					}
				}
			}),
			{ numRuns: 15 },
		);
	});
});

describe('a grid', () => {
	test.each(gridProfiles)('of profile $id offers in each column what the profile says, under a box', ({ id }) => {
		const [page] = planFor(['gridded'], id, 'a4', false).layouts[0]?.pages ?? [];
		const field = page?.fields.find(({ kind }) => kind === 'grid');
		const profile = getGridProfile(id);
		field?.columns.forEach(({ box, bubbles }, column) => {
			expect(bubbles.map(({ symbol }) => symbol)).toEqual(columnSymbols(profile, column));
			for (const { x, y } of bubbles) {
				expect(Math.abs(x - ((box?.x ?? 0) + (box?.width ?? 0) / 2))).toBeLessThan(0.02);
				expect(y).toBeGreaterThan((box?.y ?? 0) + (box?.height ?? 0));
			}
		});
		expect(field?.columns.length).toBe(5);
	});
});

describe('a field', () => {
	const fieldOf = (kind: Maker, large = false) =>
		planFor([kind], 'plain-sign-first', 'letter', large)
			.layouts[0]?.pages.flatMap(({ fields }) => fields)
			.find((field) => field.kind !== 'student-code');
	const symbolsOf = (field: SheetField | undefined) =>
		field?.columns.map(({ bubbles }) => bubbles.map(({ symbol }) => symbol).join(' '));

	test('of a line has a bubble for every tick, named by its number, evenly spaced along the line', () => {
		for (const large of [false, true]) {
			const field = fieldOf('point', large);
			if (field?.kind !== 'point') throw new Error('expected a line');
			const bubbles = bubblesOf(field);
			expect(bubbles.map(({ symbol }) => Number(symbol))).toEqual(Array.from({ length: 21 }, (_, index) => index - 10));
			const { x1, x2 } = field.line;
			bubbles.forEach(({ x }, index) => expect(x).toBeCloseTo(x1 + (index * (x2 - x1)) / 20, 1));
		}
	});

	test('of an upright line goes up with its numbers', () => {
		const field = fieldOf('upright');
		const [first, second] = field ? bubblesOf(field) : [];
		expect([first?.symbol, second?.symbol]).toEqual(['-12', '-11']);
		expect(second?.y).toBeLessThan(first?.y ?? 0);
	});

	test('of an order has a row for each place with every entry', () => {
		expect(symbolsOf(fieldOf('order'))).toEqual(['a b c d', 'a b c d', 'a b c d', 'a b c d']);
	});

	test('of a match has a row for each entry on the left with every entry on the right', () => {
		const field = fieldOf('match');
		expect(field).toMatchObject({ kind: 'match', left: ['a', 'b', 'c'] });
		expect(symbolsOf(field)).toEqual(['a b c d', 'a b c d', 'a b c d']);
	});

	test('of an inline choice has its choices, of an explanation the levels of its rubric', () => {
		expect(fieldOf('inline-choice')).toMatchObject({ kind: 'choice', marks: 'one' });
		expect(symbolsOf(fieldOf('inline-choice'))).toEqual(['a b c']);
		expect(fieldOf('explanation')?.kind).toBe('rating');
		expect(symbolsOf(fieldOf('explanation'))).toEqual(['2 1 0']);
	});
});

describe('a class set', () => {
	const form = demoForm('a');
	const placed = placeItems(form, demoItems);
	const plan = (students: readonly string[]) => planSheets({ form, placed, students, paper: 'a4', large: false });

	test('has a layout with printed students and one to bubble the student in', () => {
		expect(plan(['6A-01']).layouts.map(({ kind }) => kind)).toEqual(['coded', 'blank']);
		expect(plan([]).layouts.map(({ kind }) => kind)).toEqual(['blank']);
	});

	test('lets a blank sheet hold any code as long as the longest of the class, on every page', () => {
		const blank = plan(['6A-01', '6A-1']).layouts.find(({ kind }) => kind === 'blank');
		for (const { fields } of blank?.pages ?? []) {
			const [code] = fields;
			expect(code?.kind).toBe('student-code');
			expect(code?.columns).toHaveLength(5);
			expect(code?.columns[0]?.bubbles.map(({ symbol }) => symbol).join('')).toBe(
				'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-',
			);
		}
	});

	test('fits the demo form on one sheet of either paper', () => {
		for (const paper of ['a4', 'letter'] as const) {
			const geometry = planSheets({ form, placed, students: ['6A-01'], paper, large: false });
			expect(geometry.layouts[0]?.pages).toHaveLength(1);
		}
	});

	test('has layout ids that differ where anything stands elsewhere', () => {
		const ids = (['a4', 'letter'] as const).flatMap((paper) =>
			[false, true].flatMap((large) =>
				planSheets({ form, placed, students: ['6A-01'], paper, large }).layouts.map(({ id }) => id),
			),
		);
		expect(new Set(ids).size).toBe(ids.length);
	});
});
