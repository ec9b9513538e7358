import { describe, expect, test } from 'vitest';
import { type CoveredItem, coverItems } from '../../../item-bank/analysis/coverage/coverage.ts';
import { judge, judgeAlignment } from '../../../item-bank/analysis/coverage/webb.ts';
import { viewYear } from '../../../item-bank/analysis/coverage/year.ts';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { balanceOfRepresentation } from '../../../item-bank/forms/balance-of-representation.ts';
import type { Framework } from '../../../item-bank/standards/framework.ts';
import { teksMath2012 } from '../../../item-bank/standards/teks-math-2012.ts';
import { demoItems, itemsOfDemoForm } from '../../helpers/demo-bank.ts';
import { makeGridded } from '../../helpers/items.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readReference } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);
const scope = { framework: 'teks-math', edition: '2012' };
const covered = (list: typeof demoItems): readonly CoveredItem[] =>
	list.map(({ id, item }) => ({ id, item, points: item.points }));

describe('coverage', () => {
	test('counts every aligned item of the demo bank once', () => {
		const { cells, unaligned } = coverItems(covered(demoItems), scope);
		expect(cells.reduce((sum, { items }) => sum + items, 0) + unaligned.length).toBe(80);
		expect(new Set(cells.flatMap(({ ids }) => ids)).size + unaligned.length).toBe(80);
		expect(cells.every(({ points, items, partial }) => points >= items && partial <= items)).toBe(true);
	});

	test('follows the framework asked for, and leaves out what is not aligned to it', () => {
		const one = covered([{ id: 'x', item: makeGridded({ points: 2 }) }]);
		expect(coverItems(one, scope).cells).toEqual([
			{ standard: '6.3(D)', model: 'symbols', dok: 1, items: 1, points: 2, partial: 0, ids: ['x'] },
		]);
		expect(coverItems(one, { framework: 'ccss-m', edition: '2010' })).toEqual({ cells: [], unaligned: ['x'] });
	});
});

describe("Webb's criteria", () => {
	test.runIf(outside)('of balance are the worked values of the reference set, .70 met exactly', () => {
		for (const { hits, balance, acceptable_ge_0_7, ...more } of readReference().webb_balance.examples) {
			const value = balanceOfRepresentation(hits);
			expect(value).toBeCloseTo(balance, 12);
			const isMet = acceptable_ge_0_7 ?? more['acceptable_ge_0.7'];
			expect(judge(value, 0.7, 0.6).verdict === 'met', String(hits)).toBe(isMet);
		}
	});

	const framework: Framework = {
		...teksMath2012,
		standards: ['T', 'T.a', 'T.b', 'T.c', 'T.d', 'U'].map((code) => ({
			code,
			...(code.includes('.') ? { parent: 'T' } : {}),
			grade: '6',
			statement: code,
			source: 'made up for this test',
		})),
	};
	const under = (code: string, dok: 1 | 2): CoveredItem => ({
		id: code,
		points: 1,
		item: makeGridded({
			dok,
			alignments: [{ framework: 'teks-math', edition: '2012', code, grade: '6', extent: 'full', primary: true }],
		}),
	});

	test('of one standard with four objectives, worked by hand', () => {
		// Six items: four on a, one on b, one on c; DOK 1 everywhere but on c; objectives ask DOK 1, b asks 2.
		const items = [...Array.from({ length: 4 }, () => under('T.a', 1)), under('T.b', 1), under('T.c', 2)];
		const [t, u] = judgeAlignment(items, framework, (code) => (code === 'T.b' ? 2 : 1));
		expect(t).toMatchObject({
			standard: 'T',
			objectives: ['T.a', 'T.b', 'T.c', 'T.d'],
			concurrence: { value: 6, verdict: 'met' },
			range: { value: 0.75, verdict: 'met' },
		});
		expect(t && foundValue(t.dokConsistency)).toEqual({ value: 5 / 6, verdict: 'met' });
		// 1 − (|1/3 − 4/6| + 2 |1/3 − 1/6|)/2 = 1 − (1/3 + 1/3)/2 = 2/3: weak.
		expect(t && foundValue(t.balance)).toEqual({ value: expect.closeTo(2 / 3, 12), verdict: 'weak' });
		expect(u).toMatchObject({ concurrence: { value: 0, verdict: 'not-met' }, balance: { reason: 'not-applicable' } });
		expect(judgeAlignment(items, framework)[0]?.dokConsistency).toMatchObject({ reason: 'not-applicable' });
	});
});

test('the year shows what was asked when, and what never', () => {
	const [first, second] = [covered(itemsOfDemoForm(0)), covered(itemsOfDemoForm(1))];
	const rows = viewYear(
		[
			{ form: 'B', date: '2026-03-02', items: second },
			{ form: 'A', date: '2025-10-05', items: first },
		],
		['6.3(D)', '9.9(Z)'],
		scope,
	);
	expect(rows[0]?.sittings.map(({ form }) => form)).toEqual(['A', 'B']);
	expect(rows[0]).toMatchObject({ timesAsked: 2, lastAsked: '2026-03-02' });
	expect(rows[0]?.items).toBeGreaterThan(rows[0]?.sittings[0]?.items ?? 99);
	expect(rows[1]).toMatchObject({ timesAsked: 0, items: 0, lastAsked: undefined });
});
