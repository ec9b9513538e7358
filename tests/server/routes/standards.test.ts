import { describe, expect, test } from 'vitest';
import { alignTo, choiceItem, griddedItem } from '../../helpers/sample-items.ts';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

const teks = { framework: 'teks-math', edition: '2012', grade: '6', primary: false } as const;

describe('standards', () => {
	test('the frameworks are listed by id and edition', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/standards');
		expectShape('framework-list', answer.json);
		expect(answer.json).toContainEqual(expect.objectContaining({ framework: 'ccss-m', edition: '2010' }));
	});

	test('supply counts approved items once a framework, under the primary or else the first alignment there', async () => {
		const { send, store } = await openTestApp();
		const alignments = [
			alignTo('7.NS.A.1b'),
			alignTo('6.3(C)', teks),
			alignTo('6.3(D)', teks),
			alignTo('7.NS.A.3', { primary: false }),
		];
		await store.items.createMany(
			[{ item: griddedItem({ alignments }) }, { item: choiceItem({ alignments }) }],
			'approved',
		);
		await store.items.create({ item: griddedItem({ alignments }) });

		const ccss = await send('GET', '/api/standards/ccss-m/2010');
		expectShape('supply', ccss.json);
		const supplyOf = (answer: typeof ccss, code: string) =>
			answer.json.standards.find((standard: { code: string }) => standard.code === code);
		expect(supplyOf(ccss, '7.NS.A.1b')).toMatchObject({ total: 2, supply: { symbols: 1, story: 1, table: 0 } });
		expect(supplyOf(ccss, '7.NS.A.3').total).toBe(0);
		const texas = await send('GET', '/api/standards/teks-math/2012');
		expect(supplyOf(texas, '6.3(C)').total).toBe(2);
		expect(supplyOf(texas, '6.3(D)').total).toBe(0);
	});

	test('a cell of the supply opens exactly the items it counts', async () => {
		const { send, store } = await openTestApp();
		const alignments = [alignTo('7.NS.A.1b'), alignTo('7.NS.A.3', { primary: false })];
		await store.items.createMany([{ item: griddedItem({ alignments }) }], 'approved');
		const find = async (more: string): Promise<number> =>
			(await send('GET', `/api/items?framework=ccss-m&edition=2010&status=approved&model=symbols&${more}`)).json.total;
		expect(await find('code=7.NS.A.1b')).toBe(1);
		expect(await find('code=7.NS.A.3')).toBe(0);
		expect(await find('code=7.NS.A.3&alignment=any')).toBe(1);
		expect(await find('code=7.NS.A&below=true')).toBe(1);
	});

	test('an approved item under revision still counts, by its approved version', async () => {
		const { send, store } = await openTestApp();
		await store.items.createMany([{ id: 'tide-one', item: griddedItem() }], 'approved');
		await store.items.revise(
			'tide-one',
			1,
			griddedItem({ given: 'story', context: { setting: 'tide-gauge', role: 'change' } }),
		);
		const { json } = await send('GET', '/api/standards/ccss-m/2010');
		const row = json.standards.find((standard: { code: string }) => standard.code === '7.NS.A.1b');
		expect(row).toMatchObject({ total: 1, supply: { symbols: 1, story: 0 } });
		await store.items.retire('tide-one', 1);
		const after = await send('GET', '/api/standards/ccss-m/2010');
		expect(after.json.standards.every((standard: { total: number }) => standard.total === 0)).toBe(true);
	});

	test('supply can be asked for by kind, DOK, status and points', async () => {
		const { send, store } = await openTestApp();
		const alignments = [alignTo('7.NS.A.1b')];
		await store.items.createMany(
			[{ item: griddedItem({ alignments, dok: 2 }) }, { item: choiceItem({ alignments, dok: 1 }) }],
			'approved',
		);
		await store.items.create({ item: griddedItem({ alignments, points: 2 }) });
		const total = async (query: string): Promise<number> => {
			const { json } = await send('GET', `/api/standards/ccss-m/2010?${query}`);
			return json.standards.find((standard: { code: string }) => standard.code === '7.NS.A.1b').total;
		};
		expect(await total('')).toBe(2);
		expect(await total('kind=gridded')).toBe(1);
		expect(await total('kind=gridded&kind=choice&dok=1')).toBe(1);
		expect(await total('status=draft')).toBe(1);
		expect(await total('status=draft&status=approved&kind=gridded')).toBe(2);
		expect(await total('status=draft&points=1')).toBe(0);
		const refused = await send('GET', '/api/standards/ccss-m/2010?kind=riddle');
		expect([refused.status, refused.json.code]).toEqual([400, 'query-refused']);
	});

	test('the same code in another edition is another standard', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/standards/va-sol-math/1999');
		expect([answer.status, answer.json.code]).toEqual([404, 'framework-unknown']);
	});
});
