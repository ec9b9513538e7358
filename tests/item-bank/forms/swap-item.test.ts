import { describe, expect, test } from 'vitest';
import { blueprintOf } from '../../../item-bank/forms/blueprint-of.ts';
import { checkAgainstBlueprint } from '../../../item-bank/forms/check-against-blueprint.ts';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import { swapItem, withItem } from '../../../item-bank/forms/swap-item.ts';
import { demoForms, demoPool, finderOf } from './sample-blueprints.ts';

const scope = { framework: 'teks-math', edition: '2012' };
const [form] = demoForms();
const pool = demoPool();

describe('swapItem', () => {
	test('offers the twin of an item first, and nothing that is on the form', () => {
		// srm-cnt-001 (3 plus and 8 minus counters) stands at place 5; srm-cnt-002 is the same with 2 and 9.
		const offers = swapItem({ form, position: 5, pool, scope });
		expect(offers[0]).toMatchObject({ item: 'srm-cnt-002', likeness: 100, differences: [], keepsPlan: true });
		const onForm = positionsOf(form).map(({ entry }) => entry.item);
		expect(offers.filter(({ item }) => onForm.includes(item))).toEqual([]);
		expect(offers).toHaveLength(5);
	});

	test('keeps away what a parallel form uses, and says how others differ', () => {
		const [first] = swapItem({ form, position: 5, pool, scope, avoid: new Set(['srm-cnt-002']) });
		expect(first?.item).not.toBe('srm-cnt-002');
		expect(first?.likeness).toBeLessThan(100);
		expect(first?.differences.length).toBeGreaterThan(0);
	});

	test('puts offers that keep the plan first, and they do keep it', () => {
		const blueprint = blueprintOf(form, finderOf(pool), scope);
		for (const { position } of positionsOf(form)) {
			const offers = swapItem({ form, position, pool, scope, blueprint });
			const kept = offers.map(({ keepsPlan }) => keepsPlan);
			expect(kept).toEqual([...kept].sort((a, b) => Number(b) - Number(a)));
			for (const offer of offers.filter(({ keepsPlan }) => keepsPlan)) {
				expect(checkAgainstBlueprint(withItem(form, position, offer), finderOf(pool), blueprint)).toEqual([]);
			}
		}
	});

	test('has nothing for a place that is not there, or drafts', () => {
		expect(swapItem({ form, position: 99, pool, scope })).toEqual([]);
		const onForm = new Set(positionsOf(form).map(({ entry }) => entry.item));
		const drafts = pool.map((record) => (onForm.has(record.id) ? record : { ...record, status: 'draft' as const }));
		expect(swapItem({ form, position: 5, pool: drafts, scope })).toEqual([]);
	});
});
