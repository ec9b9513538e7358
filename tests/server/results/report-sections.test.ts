import { describe, expect, test } from 'vitest';
import { listAnswerPlaces } from '../../../item-bank/forms/answer-places.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { createRandom } from '../../../item-bank/random/random.ts';
import type { Item, Report } from '../../../item-bank/types.ts';
import { layReport } from '../../../server/print/report/report-pages.ts';
import { changeSections } from '../../../server/results/change-section.ts';
import { classPatternSections } from '../../../server/results/class-board.ts';
import { comparisonSections } from '../../../server/results/comparison-sections.ts';
import { composeReport } from '../../../server/results/compose-report.ts';
import { differenceSection } from '../../../server/results/difference-section.ts';
import { writeReportCsv } from '../../../server/results/report-csv.ts';
import { buildResultTable, type ResultSet, tableByCode } from '../../../server/results/result-set.ts';
import { makeGridded } from '../../helpers/items.ts';

interface Sat {
	readonly id?: string;
	readonly form?: string;
	readonly group?: string;
	readonly date?: string;
	readonly items?: readonly string[];
	/** Whether a student has an item right. */
	readonly isRight?: (code: string, item: number) => boolean;
	readonly codes: readonly string[];
}

/** A sitting of a form of like items, every student with an answer to each. */
function satBy({
	id = 'one',
	form = 'form-a',
	group = 'class-a',
	date = '2026-09-14',
	items = ['x', 'y'],
	isRight = () => true,
	codes,
}: Sat): ResultSet {
	const item: Item = makeGridded();
	const records = items.map((name): ItemRecord => ({ id: name, version: 1, status: 'approved', item }));
	const sections = [{ title: 'All', items: items.map((name) => ({ item: name, version: 1 })) }];
	const places = listAnswerPlaces({ title: form, gridProfile: 'plain-sign-first', sections }, records);
	return {
		entry: {
			id,
			sitting: { form, version: 1, group, date, mode: 'paper' },
			students: codes.length,
			answers: codes.length * items.length,
			unrated: 0,
			scoring: 1,
			scoredAs: 1,
		} as ResultSet['entry'],
		places,
		roster: codes,
		answers: codes.flatMap((code) =>
			places.map(({ position, points }, index) => {
				const right = isRight(code, index);
				return {
					code,
					position,
					part: 0,
					response: null,
					state: right ? 'correct' : 'incorrect',
					points: right ? points : 0,
				};
			}),
		),
	};
}

const codesOf = (prefix: string, count: number): readonly string[] =>
	Array.from({ length: count }, (_unused, index) => `${prefix}-${index + 1}`);

describe('differences between groups', () => {
	// Six items; the last is far harder for the focal group among students who are alike on the rest.
	const items = ['i1', 'i2', 'i3', 'i4', 'i5', 'i6'];
	const random = createRandom('difference');
	const chances = new Map<string, number>();
	const isRight = (code: string, item: number): boolean => {
		const skill = chances.get(code) ?? random.nextInteger(20, 90);
		chances.set(code, skill);
		const chance = item === 5 && code.startsWith('F') ? skill / 4 : skill;
		return random.nextInteger(1, 100) <= chance;
	};
	const sets = [
		satBy({ id: 'ref', group: 'class-r', items, codes: codesOf('R', 400), isRight }),
		satBy({ id: 'foc', group: 'class-f', items, codes: codesOf('F', 400), isRight }),
	];

	test('show where groups are large enough: the planted item is large, and words ask for a look', () => {
		const { table, notes } = differenceSection(sets, buildResultTable(sets), 'Form', {
			focal: new Set(['class-f']),
			reference: new Set(),
		});
		const rows = table?.rows ?? [];
		expect(notes[0]).toBe('400 students in the focal group, 400 in the reference group.');
		expect(rows[5]?.[2]).toBe('large');
		expect(rows[5]?.[6]).toMatch(/the reference group does clearly better here/);
		expect(rows.slice(0, 5).map((row) => row[2])).not.toContain('large');
		expect(notes.join()).toMatch(/does not say that the item is unfair/);
	});

	test('are the same for a list of codes as for the group it makes up', () => {
		const result = buildResultTable(sets);
		const byGroup = differenceSection(sets, result, 'Form', { focal: new Set(['class-f']), reference: new Set() });
		const codes = differenceSection(sets, result, 'Form', { focal: new Set(codesOf('F', 400)), reference: new Set() });
		expect(codes).toEqual(byGroup);
	});

	test('leave out who is in neither group', () => {
		const { notes } = differenceSection(sets, buildResultTable(sets), 'Form', {
			focal: new Set(['class-f']),
			reference: new Set(['class-x']),
		});
		expect(notes.join()).toMatch(/found 0 and 400/);
	});
});

describe('forms side by side', () => {
	const first = satBy({
		id: 'a',
		form: 'form-a',
		items: ['anchor', 'x'],
		codes: codesOf('S', 12),
		isRight: (code) => !code.endsWith('1'),
	});
	const second = satBy({
		id: 'b',
		form: 'form-b',
		items: ['anchor', 'y'],
		codes: codesOf('T', 14),
		isRight: (_code, item) => item === 0,
	});
	const forms = [first, second].map((set) => ({
		title: set.entry.sitting.form,
		table: tableByCode([set]),
		nameOf: (id: string) => id,
	}));

	test('tell the items they share from the rest, and equate nothing', () => {
		const [, anchors] = comparisonSections(forms, 'shared');
		expect(anchors?.table?.rows).toEqual([
			['anchor', '83 %', '100 %', '17 %'],
			['All of these', '83 %', '100 %', 'higher by 17 %'],
			['Everything else', '83 %', '0 %', 'lower by 83 %'],
		]);
		expect(anchors?.notes.join(' ')).toMatch(/12 and 14 students.*|Nothing here equates the forms/);
	});

	test('find the same students on both, whatever the sittings are called', () => {
		const again = satBy({
			id: 'c',
			form: 'form-b',
			items: ['z', 'y'],
			codes: codesOf('S', 12),
			isRight: (code) => code.endsWith('2'),
		});
		const pair = [first, again].map((set) => ({
			title: set.entry.id,
			table: tableByCode([set, { ...set, entry: { ...set.entry, id: `${set.entry.id}2` } }]),
			nameOf: (id: string) => id,
		}));
		const [scores] = comparisonSections(pair, 'shared');
		expect(scores?.notes.join()).toMatch(/The same students sat both forms/);
		expect(scores?.table?.rows[0]).toEqual(['Students', 12, 12]);
	});

	test('are hidden in a shared copy where one has fewer than ten students', () => {
		const few = [
			forms[0],
			{ ...(forms[1] as (typeof forms)[number]), table: tableByCode([satBy({ codes: codesOf('T', 4) })]) },
		];
		for (const { table, notes } of comparisonSections(few as typeof forms, 'shared')) {
			expect([table, notes]).toEqual([undefined, ['Hidden: fewer than 10 students.']]);
		}
	});
});

describe('change since the sitting before', () => {
	const lens = { framework: 'teks-math', edition: '2012' };
	const earlier = satBy({ id: 'early', codes: codesOf('S', 12), isRight: (_code, item) => item === 0 });
	const later = satBy({ id: 'late', date: '2026-11-02', codes: codesOf('S', 12) });

	test('stands by standard with both counts', () => {
		const [section] = changeSections([later, earlier], lens, 'shared');
		expect(section?.table?.rows).toHaveLength(1);
		expect(section?.table?.rows[0]?.slice(1, 6)).toEqual(['50 %', 12, '100 %', 12, 'up 50 %']);
		expect(section?.table?.rows[0]?.[7]).toMatch(/^A hint only, from 12 students: a change: 50 %/);
	});

	test('is hidden for few students in a shared copy, and absent where no group sat twice', () => {
		const few = [earlier, later].map((set) =>
			satBy({ id: set.entry.id, date: set.entry.sitting.date, codes: codesOf('S', 5) }),
		);
		expect(changeSections(few, lens, 'shared')[0]?.table?.rows[0]?.slice(1, 6)).toEqual([
			'hidden',
			null,
			'hidden',
			null,
			null,
		]);
		expect(changeSections(few, lens, 'own')[0]?.table?.rows[0]?.[1]).toBe('100 %');
		expect(changeSections([earlier], lens, 'shared')).toEqual([]);
	});
});

describe('wrong ideas by class', () => {
	const tableFor = (count: number) =>
		classPatternSections(
			{
				classes: codesOf('Class', count).map((name) => ({ name, students: 20 })),
				patterns: [
					{
						pattern: 'signs-dropped',
						counts: codesOf('n', count).map((_unused, place) => (place === 1 ? undefined : 4)),
					},
				],
			},
			'Form',
			'shared',
		)[0]?.table;

	test('stand in columns for few classes and in rows for many', () => {
		expect(tableFor(3)).toEqual({
			headings: ['Answers consistent with', 'Class-1', 'Class-2', 'Class-3'],
			rows: [['every sign is dropped', '4 of 20', 'hidden', '4 of 20']],
		});
		const many = tableFor(12);
		expect(many?.headings).toEqual(['Class', 'every sign is dropped']);
		expect(many?.rows.slice(0, 2)).toEqual([
			['Class-1', '4 of 20'],
			['Class-2', 'hidden'],
		]);
		expect(many?.rows).toHaveLength(12);
	});

	test('say nothing of one class', () => {
		expect(tableFor(1)).toBeUndefined();
	});
});

describe('answers that say little', () => {
	const kinds = ['coverage', 'class', 'items', 'item', 'form', 'patterns', 'groups', 'compare', 'pack'] as const;
	const both = (sat: Omit<Sat, 'id' | 'form'>): readonly ResultSet[] => [
		satBy({ ...sat, id: 'one', form: 'form-a' }),
		satBy({ ...sat, id: 'two', form: 'form-b', group: 'class-b', date: '2026-10-01' }),
	];
	const five = ['a', 'b', 'c', 'd', 'e'];

	test.each([
		['one student, all right', both({ codes: ['S-1'], items: five })],
		['one student, all wrong', both({ codes: ['S-1'], items: five, isRight: () => false })],
		['one item', both({ codes: codesOf('S', 12), items: ['a'], isRight: (code) => code.endsWith('1') })],
		['everybody all right', both({ codes: codesOf('S', 12), items: five })],
		['everybody all wrong', both({ codes: codesOf('S', 12), items: five, isRight: () => false })],
		['everybody alike', both({ codes: codesOf('S', 12), items: five, isRight: (_code, item) => item < 2 })],
		['items that tell the same', both({ codes: codesOf('S', 12), items: five, isRight: (code) => code < 'S-3' })],
		[
			'ten students at random',
			both({ codes: codesOf('S', 10), items: five, isRight: (code, item) => (code.length + item * 7) % 3 > 0 }),
		],
	])('still make every report, in both copies, on paper too: %s', (_title, sets) => {
		for (const kind of kinds) {
			for (const copy of ['shared', 'own'] as const) {
				const sections = composeReport(kind, {
					sets,
					sat: [],
					titles: new Map(),
					groupNames: new Map(),
					groups: new Map(),
					copy,
					lens: { framework: 'teks-math', edition: '2012' },
					cuts: [{ label: 'cut', from: 2 }],
					levels: new Map(),
					compared: { focal: new Set(['class-a']), reference: new Set() },
					item: 'a',
					bank: [],
				});
				expect(sections.length, `${kind} ${copy}`).toBeGreaterThan(0);
				const spelled = JSON.stringify(sections, (_key, value) =>
					typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
				);
				expect(spelled, `${kind} ${copy}`).not.toMatch(/NaN|undefined|Infinity/);
				const report: Report = {
					kind,
					title: kind,
					copy,
					simulated: false,
					sittings: [],
					cautions: ['Care.'],
					sections,
				};
				expect(layReport(report, 'a4').length).toBeGreaterThan(0);
				expect(writeReportCsv(report)).toContain('Care.');
			}
		}
	});
});
