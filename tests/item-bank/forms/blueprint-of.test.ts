import { describe, expect, test } from 'vitest';
import { blueprintOf } from '../../../item-bank/forms/blueprint-of.ts';
import { checkAgainstBlueprint } from '../../../item-bank/forms/check-against-blueprint.ts';
import { checkBlueprint } from '../../../item-bank/forms/check-blueprint.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { makeChoice, makeGridded } from '../../helpers/items.ts';
import { demoForms, demoPool, finderOf, recordsOf } from './sample-blueprints.ts';

const scope = { framework: 'teks-math', edition: '2012' };

describe('the blueprint of an existing form', () => {
	test.each(demoForms().map((form) => [form.title, form] as const))(
		'%s keeps its own, which is sound',
		(_title, form) => {
			const blueprint = blueprintOf(form, finderOf(demoPool()), scope);
			expect(checkShape('blueprint.schema.json', blueprint)).toEqual([]);
			expect(checkBlueprint(blueprint)).toEqual([]);
			expect(checkAgainstBlueprint(form, finderOf(demoPool()), blueprint)).toEqual([]);
		},
	);

	test('is kept by a parallel form made by hand, reading and order apart', () => {
		const [a, b] = demoForms();
		const blueprint = blueprintOf(a, finderOf(demoPool()), scope);
		const paths = checkAgainstBlueprint(b, finderOf(demoPool()), blueprint).map(({ path }) => path);
		expect(paths.filter((path) => !/^\/(order|readingLoad)/.test(path))).toEqual([]);
	});

	test('counts cells, sections of one kind and the order', () => {
		const records = recordsOf(
			makeGridded(),
			makeChoice({ given: 'story', context: { setting: 'mine-lift', role: 'change' } }),
		);
		const items = ['item-1', 'item-2'].map((item) => ({ item, version: 1 }));
		const form = {
			title: 'F',
			gridProfile: 'plain-sign-first',
			sections: [
				{ title: 'S', items },
				{ title: 'Empty', items: [] },
			],
		};
		expect(blueprintOf(form, finderOf(records), scope)).toMatchObject({
			items: { min: 2, max: 2 },
			cells: [
				{ standard: '6.3(D)', model: 'story', items: { min: 1, max: 1 } },
				{ standard: '6.3(D)', model: 'symbols', items: { min: 1, max: 1 } },
			],
			roles: [{ role: 'change', items: { min: 1, max: 1 } }],
			sections: [
				{ title: 'S', items: { min: 2, max: 2 } },
				{ title: 'Empty', items: { min: 0, max: 0 } },
			],
		});
	});
});
