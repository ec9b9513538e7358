import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { families, findFamily } from '../../../item-bank/families/index.ts';
import { checkParameters, faceOf, makeItem, makeItems } from '../../../item-bank/families/make-items.ts';
import { workOf } from '../../../item-bank/items/asked.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import type { Item } from '../../../item-bank/types.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { workWithBc } from './work-with-bc.ts';

describe('the registry', () => {
	test('has more than 24 families, each id once, each with kinds, models, standards and a depth', () => {
		expect(families.length).toBeGreaterThanOrEqual(24);
		expect(new Set(families.map(({ id }) => id)).size).toBe(families.length);
		for (const { id, kinds, given, standards, dok, version } of families) {
			expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
			expect(version).toBeGreaterThanOrEqual(1);
			for (const list of [kinds, given, standards, dok]) expect(list.length).toBeGreaterThan(0);
		}
	});

	test('covers every kind, every model and the four roles of a context', () => {
		const items = families.flatMap((family) => makeItem(family, 'cover/1') ?? []);
		expect(new Set(families.flatMap(({ kinds }) => kinds)).size).toBe(9);
		expect(new Set(families.flatMap(({ given }) => given)).size).toBe(5);
		const roles = items.flatMap(({ context }) => (context === undefined ? [] : [context.role]));
		expect(new Set(roles)).toEqual(new Set(['position', 'change', 'total-distance', 'comparison']));
	});

	test('knows no family of another name or version', () => {
		expect(findFamily('sum-of-tow')).toBeUndefined();
		expect(findFamily('sum-of-two', 99)).toBeUndefined();
		expect(findFamily('sum-of-two', 1)?.id).toBe('sum-of-two');
	});
});

describe('makeItem', () => {
	test('gives the same item for the same family, seed and parameters, and mostly another for another seed', () => {
		fc.assert(
			fc.property(fc.constantFrom(...families), fc.integer({ min: 1, max: 1e6 }), (family, seed) => {
				expect(makeItem(family, `law/${seed}`)).toEqual(makeItem(family, `law/${seed}`));
			}),
			{ numRuns: 200, seed: 4 },
		);
		for (const family of families) {
			const faces = new Set(
				Array.from({ length: 30 }, (_, seed) => makeItem(family, `other/${seed}`)).map(describeFace),
			);
			expect(faces.size, family.id).toBeGreaterThan(8);
		}
	});

	test('leaves out numbers of size 0 and 1 and equal sizes unless asked for', () => {
		for (const id of ['sum-of-two', 'difference-of-two', 'minus-negative', 'product-of-two']) {
			const family = findFamily(id);
			if (family === undefined) throw new Error(id);
			for (let seed = 1; seed <= 100; seed += 1) {
				const item = makeItem(family, `plain/${seed}`);
				const sizes = (item ? (workOf(item) ?? '') : '').match(/\d+/g)?.map(Number) ?? [];
				expect(Math.min(...sizes), item?.name).toBeGreaterThan(1);
				expect(new Set(sizes).size, item?.name).toBe(sizes.length);
			}
		}
	});

	test('puts the key of items in turn at one place after the other', () => {
		const family = findFamily('sum-of-two');
		if (family === undefined) throw new Error('sum-of-two');
		const places = new Map<string, number>();
		for (let turn = 1; turn <= 200; turn += 1) {
			const item = makeItem(family, `places/${turn}`, { answeredBy: 'choice' });
			const key = item && computeKey(item);
			if (key?.kind === 'options') places.set(key.options[0] ?? '', (places.get(key.options[0] ?? '') ?? 0) + 1);
		}
		expect(Math.max(...places.values()) / Math.min(...places.values())).toBeLessThan(2.5);
		expect(places.size).toBeGreaterThanOrEqual(3);
	});
});

describe('makeItems', () => {
	test('makes as many distinct items as asked for, and the same again', () => {
		for (const { id } of families) {
			const order = { family: id, count: 12, seed: 'batch' };
			const { items, problems } = makeItems(order);
			expect(problems, id).toEqual([]);
			expect(new Set(items.map(faceOf)).size, id).toBe(12);
			expect(makeItems(order).items).toEqual(items);
		}
	});

	test('more of the same seed begins with the same items', () => {
		const few = makeItems({ family: 'story-changes', count: 5, seed: 's' }).items;
		expect(makeItems({ family: 'story-changes', count: 9, seed: 's' }).items.slice(0, 5)).toEqual(few);
	});

	test('says how many there are when there are not enough', () => {
		const { items, problems } = makeItems({
			family: 'product-of-two',
			count: 500,
			seed: 's',
			parameters: { least: 2, largest: 4 },
		});
		expect(items.length).toBeGreaterThan(0);
		expect(problems).toMatchObject([{ code: 'family-items-short', path: '/count' }]);
		expect(problems[0]?.message).toContain(`found no more than ${items.length}`);
	});

	test('gives only items of a standard asked for', () => {
		for (const { id, standards } of families) {
			for (const { code } of standards.slice(0, 2)) {
				for (const item of makeItems({ family: id, count: 3, seed: 's', standard: code }).items) {
					expect(item.alignments.map((alignment) => alignment.code)).toContain(code);
				}
			}
		}
	});

	test('refuses a family, a standard or parameters that do not exist, with their places', () => {
		expect(makeItems({ family: 'sum', count: 1, seed: 1 }).problems).toMatchObject([{ code: 'family-unknown' }]);
		expect(makeItems({ family: 'sum-of-two', count: 1, seed: 1, standard: '5.X' }).problems).toMatchObject([
			{ code: 'family-standard-missing', path: '/standard' },
		]);
		const parameters = { largest: 1e9, colour: 'red' };
		expect(makeItems({ family: 'sum-of-two', count: 1, seed: 1, parameters }).problems).toMatchObject([
			{ code: 'family-parameter-value', path: '/parameters/largest' },
			{ code: 'family-parameter-unknown', path: '/parameters/colour' },
		]);
	});

	test('parameters within their rules either leave items or are told to be impossible, and nothing throws', () => {
		const asked = fc.constantFrom(...families).chain((family) => {
			const rules = Object.entries(family.parameters).map(([name, rule]) => [
				name,
				rule.kind === 'integer'
					? fc.integer({ min: rule.least, max: rule.most })
					: rule.kind === 'word'
						? fc.constantFrom(...rule.words)
						: fc.boolean(),
			]);
			return fc.record({ family: fc.constant(family), parameters: fc.record(Object.fromEntries(rules)) });
		});
		fc.assert(
			fc.property(asked, ({ family, parameters }) => {
				const [problem] = checkParameters(family, parameters);
				if (problem !== undefined) expect(problem.code).toBe('family-parameters-impossible');
				else expect(makeItems({ family: family.id, count: 1, seed: 'law', parameters }).items).toHaveLength(1);
			}),
			{ numRuns: 300, seed: 11 },
		);
	});
});

// Source: bc, the arbitrary precision calculator of the operating system (POSIX), integer arithmetic with scale 0.
test.skipIf(!requireOutside('bc', hasCommand('bc')))(
	'keys of 10,000 made items agree with bc',
	{ timeout: 30_000 },
	() => {
		const { ours, theirs } = workWithBc('bc', 550);
		expect(ours.length).toBeGreaterThan(10_000);
		expect(ours).toEqual(theirs);
	},
);

function describeFace(item: Item | undefined): string {
	return item === undefined ? 'none' : faceOf(item);
}
