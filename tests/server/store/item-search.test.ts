import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import type { FacetCount, Item, ItemPage, ItemQuery } from '../../../item-bank/types.ts';
import type { Store } from '../../../server/store/open-store.ts';
import { isLead } from '../../../server/store/standing-index.ts';
import { alignTo, choiceItem, griddedItem } from '../../helpers/sample-items.ts';
import { openTestStore } from '../../helpers/test-store.ts';

const codes = ['7.NS.A.1a', '7.NS.A.1b', '7.NS.A.2a', '6.NS.C.7c'] as const;
const places = ['mine-lift', 'tide-gauge', 'cold-store'] as const;
const roles = ['position', 'change', 'comparison'] as const;
const models = ['symbols', 'story', 'table'] as const;
const texas = { framework: 'teks-math', edition: '2012', grade: '6', primary: false } as const;

/** Items that differ in everything a search looks at, by number. */
function numberedItem(index: number): Item {
	const pick = <T>(list: readonly T[], step: number): T => list[Math.floor(index / step) % list.length] as T;
	const alignments = [
		alignTo(pick(codes, 1)),
		...(index % 3 === 0
			? [alignTo(pick(codes, 2) === pick(codes, 1) ? '7.NS.A.3' : pick(codes, 2), { primary: false })]
			: []),
		...(index % 2 === 0 ? [alignTo(pick(['6.3(C)', '6.3(D)'], 4), texas), alignTo('6.2(C)', texas)] : []),
	];
	const hasContext = index % 4 !== 0;
	const table = { kind: 'table', header: ['Day', 'Level'], rows: [['1', '`-2`']] } as const;
	const common = {
		name: `Reading ${index % 7}`,
		given: hasContext ? pick(models, 2) : 'symbols',
		dok: 1 + (index % 3),
		points: 1 + (index % 2),
		alignments,
		...(!hasContext ? {} : { context: { setting: pick(places, 1), role: pick(roles, 3) } }),
		tags: index % 5 === 0 ? ['review'] : [],
	};
	const words = pick(['gauge', 'lift', 'warehouse', 'lift gauge'], 3);
	return index % 5 < 3
		? griddedItem({ ...common, stem: [{ kind: 'paragraph', text: `The ${words} shows what? Work out.` }, table] })
		: choiceItem({ ...common, stem: [{ kind: 'paragraph', text: `Which is the ${words}?` }, table] });
}

/** Every version a search can find, in the order it came into the bank. */
async function fillStore(store: Store): Promise<readonly ItemRecord[]> {
	const items = Array.from({ length: 120 }, (_unused, index) => ({
		id: `n-${String(index).padStart(3, '0')}`,
		item: numberedItem(index),
	}));
	const approved = await store.items.createMany(items.slice(0, 60), 'approved');
	const drafts = await store.items.createMany(items.slice(60));
	const revised = await store.items.revise('n-005', 1, numberedItem(6));
	const replaced = await store.items.revise('n-070', 1, numberedItem(71));
	await store.items.retire('n-080', 1);
	return [
		...approved,
		...drafts
			.filter(({ id }) => id !== 'n-070')
			.map((record): ItemRecord => (record.id === 'n-080' ? { ...record, status: 'retired' } : record)),
		revised.record,
		replaced.record,
	];
}

/** What a search should find, by looking at every version in turn. */
function fits({ item, status }: ItemRecord, query: ItemQuery): boolean {
	const isIn = <T>(wanted: readonly T[] | undefined, value: T): boolean =>
		!wanted || wanted.length === 0 || wanted.includes(value);
	const isAligned =
		query.code === undefined ||
		item.alignments.some(
			(alignment) =>
				alignment.framework === query.framework &&
				(query.below ? alignment.code.startsWith(query.code ?? '') : alignment.code === query.code) &&
				(query.alignment === 'any' || isLead(alignment, item.alignments)),
		);
	const words = JSON.stringify([item.name, item.stem, item.tags]).toLowerCase();
	return (
		isAligned &&
		isIn(query.model, item.given) &&
		isIn(query.kind, item.kind) &&
		isIn(query.dok, item.dok) &&
		isIn(query.points, item.points) &&
		isIn(query.status, status) &&
		(!query.setting?.length || query.setting.includes(item.context?.setting ?? '')) &&
		(!query.role?.length || (item.context !== undefined && query.role.includes(item.context.role))) &&
		(query.text ?? '').split(' ').every((word) => words.includes(word))
	);
}

const some = <T>(values: readonly T[]): fc.Arbitrary<readonly T[]> => fc.subarray([...values], { minLength: 1 });
const queries: fc.Arbitrary<ItemQuery> = fc
	.record(
		{
			standard: fc.constantFrom<Partial<ItemQuery>>(
				{ framework: 'ccss-m', edition: '2010' },
				{ framework: 'teks-math', edition: '2012', code: '6.3(C)' },
				{ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1b' },
				{ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1b', alignment: 'any' },
				{ framework: 'ccss-m', edition: '2010', code: '7.NS', below: true },
				{ framework: 'ccss-m', edition: '2010', code: '7.NS.A', below: true, alignment: 'any' },
			),
			model: some(models),
			kind: some(['choice', 'gridded'] as const),
			dok: some([1, 2, 3]),
			points: some([1, 2]),
			status: some(['draft', 'approved', 'retired'] as const),
			setting: some(places),
			role: some(roles),
			text: fc.constantFrom('gauge', 'lift', 'the lift', 'review', 'warehouse shows', 'whic'),
		},
		{ requiredKeys: [] },
	)
	.map(({ standard, ...rest }) => ({ ...rest, ...standard }) as ItemQuery);

describe.each([
	['few hits are collected', 2000],
	['the bank is walked in order', 0],
])('find, where %s', (_title, fewHits) => {
	let store: Store;
	let standing: readonly ItemRecord[];

	beforeAll(async () => {
		store = await openTestStore({ fewHits });
		standing = await fillStore(store);
	});

	async function readAll(query: ItemQuery): Promise<readonly ItemPage['items'][number][]> {
		const found: ItemPage['items'][number][] = [];
		let cursor: string | undefined;
		do {
			const page: ItemPage = await store.items.find({
				...query,
				limit: 7,
				...(cursor === undefined ? {} : { cursor }),
			});
			expect(page.items.length).toBeLessThanOrEqual(7);
			found.push(...page.items);
			cursor = page.next;
		} while (cursor !== undefined);
		return found;
	}

	test('finds exactly what fits, page by page, in the order the versions came', async () => {
		await fc.assert(
			fc.asyncProperty(queries, async (query) => {
				const expected = standing.filter((record) => fits(record, query));
				const { total } = await store.items.find(query);
				expect(total).toBe(expected.length);
				expect(await store.items.find({ ...query, limit: 200, facets: false })).toEqual({
					items: expected,
					total: expected.length,
				});
				expect(await readAll(query)).toEqual(expected);
			}),
			{ numRuns: 150 },
		);
	});

	test('other orders find the same', async () => {
		await fc.assert(
			fc.asyncProperty(queries, fc.constantFrom('name' as const, 'changed' as const), async (query, sort) => {
				const key = ({ id, version }: ItemRecord): string => `${id} ${version}`;
				const found = await readAll({ ...query, sort });
				const expected = standing.filter((record) => fits(record, query));
				expect(found.map(key).sort()).toEqual(expected.map(key).sort());
				if (sort === 'name')
					expect(found.map(({ item }) => item.name)).toEqual(expected.map(({ item }) => item.name).sort());
			}),
			{ numRuns: 60 },
		);
	});

	test('counts each field as if it had not been asked for', async () => {
		await fc.assert(
			fc.asyncProperty(queries, async (query) => {
				const { facets } = await store.items.find({ ...query, limit: 1 });
				const count = (field: keyof ItemQuery, read: (record: ItemRecord) => string | number | undefined) => {
					const { [field]: _lifted, ...others } = query;
					const sums = new Map<string | number, number>();
					for (const record of standing.filter((each) => fits(each, others))) {
						const value = read(record);
						if (value !== undefined) sums.set(value, (sums.get(value) ?? 0) + 1);
					}
					return Object.fromEntries(sums);
				};
				const found = Object.fromEntries(
					Object.entries(facets ?? {}).map(([field, counts]) => [
						field,
						Object.fromEntries(counts.map(({ value, count }: FacetCount) => [value, count])),
					]),
				);
				expect(found.model).toEqual(count('model', ({ item }) => item.given));
				expect(found.kind).toEqual(count('kind', ({ item }) => item.kind));
				expect(found.dok).toEqual(count('dok', ({ item }) => item.dok));
				expect(found.points).toEqual(count('points', ({ item }) => item.points));
				expect(found.status).toEqual(count('status', ({ status }) => status));
				expect(found.setting).toEqual(count('setting', ({ item }) => item.context?.setting));
				expect(found.role).toEqual(count('role', ({ item }) => item.context?.role));
				if (query.framework !== undefined && query.alignment === undefined) {
					const leadCode = ({ item }: ItemRecord) =>
						item.alignments.find((each) => each.framework === query.framework && isLead(each, item.alignments))?.code;
					expect(found.code).toEqual(count('code', leadCode));
				}
			}),
			{ numRuns: 80 },
		);
	});

	test('the counts can be left out', async () => {
		expect((await store.items.find({ facets: false })).facets).toBeUndefined();
	});

	test('a code is known by any of its spellings', async () => {
		const one = await store.items.find({ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1b' });
		const other = await store.items.find({
			framework: 'ccss-m',
			edition: '2010',
			code: 'CCSS.MATH.CONTENT.7.NS.A.1.B',
		});
		expect(one.total).toBeGreaterThan(0);
		expect(other.total).toBe(one.total);
	});

	test.each([
		['words in any order', 'gauge lift', true],
		['the beginning of the last word', 'wareh', true],
		['not the beginning of another word', 'wareh shows', false],
		['text between double quotes as it stands', '"lift gauge"', true],
		['not the same words in another order', '"gauge lift"', false],
		['a code', '7.NS.A.1b', true],
		['a tag', 'review', true],
		['capital letters', 'LIFT', true],
		['signs that mean something to the engine', 'lift" OR name:* NOT (', false],
		['nothing for signs alone', '*** "', false],
	])('text finds %s', async (_title, text, isFound) => {
		const { total, items } = await store.items.find({ text });
		expect(total > 0).toBe(isFound);
		expect(items.length > 0).toBe(isFound);
	});

	test('a cursor belongs to one order', async () => {
		const { next } = await store.items.find({ limit: 3 });
		await expect(store.items.find({ sort: 'name', cursor: next ?? '' })).rejects.toMatchObject({
			code: 'cursor-refused',
		});
		await expect(store.items.find({ cursor: 'bm9uZQ' })).rejects.toMatchObject({ code: 'cursor-refused' });
	});

	test('an unknown standard or framework is an error that says what is near', async () => {
		await expect(store.items.find({ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1q' })).rejects.toMatchObject({
			code: 'unknown-standard',
			near: expect.arrayContaining([expect.stringContaining('7.NS.A.1')]),
		});
		await expect(store.items.find({ framework: 'ccss-m', edition: '1999' })).rejects.toMatchObject({
			code: 'unknown-standard',
			near: ['ccss-m 2010'],
		});
	});
});
