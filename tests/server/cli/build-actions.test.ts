import { expect, test } from 'vitest';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';

async function makeDemoLine() {
	const line = makeCommandLine();
	expect((await line.run(['demo'])).status).toBe(0);
	return line;
}

test('a department plans, builds, compares, swaps and gives', async () => {
	const { run } = await makeDemoLine();
	expect((await run(['blueprints', 'list'])).out.split('\n')).toHaveLength(4);
	expect((await run(['blueprints', 'show', 'srm-unit-check-plan'])).out).toContain('6.3(C), counters: 2 items');
	const built = await run([
		'forms',
		'build',
		'--blueprint',
		'srm-unit-check-plan',
		'--count',
		'2',
		'--seed',
		'autumn',
		'--keep',
		'--json',
	]);
	expect(built.status).toBe(0);
	const [first, second] = built.json.kept;
	const compared = await run(['forms', 'compare', first, second]);
	expect(compared.out).toContain('no item shared');
	expect((await run(['forms', 'swap', first, '--position', '3'])).out).toContain('likeness');
	expect((await run(['blueprints', 'of', first])).out).toContain('12 items');
	expect((await run(['forms', 'give', first, '--group', 'srm-class-6a', '--date', '2026-10-12'])).out).toContain(
		'was given to srm-class-6a',
	);
	expect((await run(['forms', 'show', first])).out).toContain('on 2026-10-12');
});

test('what cannot be built says why and ends with 1', async () => {
	const { run, write } = await makeDemoLine();
	const cells = [{ standard: '6.2(D)', model: 'counters' as const, items: { min: 1, max: 1 } }];
	const plan = makeBlueprint({
		items: { min: 1, max: 1 },
		cells,
		kinds: [],
		sections: [{ title: 'All', items: { min: 1, max: 1 } }],
	});
	await run(['blueprints', 'add', write('plan.json', { id: 'plan-one', blueprint: plan })]);
	const { status, out } = await run(['forms', 'explain', '--blueprint', 'plan-one']);
	expect(status).toBe(1);
	expect(out).toContain('No forms can be built.');
	expect(out).toMatch(/on 6\.2\(D\) with counters.*the bank has 0/);
});

test('a blueprint file is checked and added', async () => {
	const { run, write } = makeCommandLine();
	expect((await run(['blueprints', 'check', write('good.json', makeBlueprint())])).out).toBe('nothing to mend');
	expect(
		(await run(['blueprints', 'check', write('bad.json', makeBlueprint({ items: { min: 5, max: 2 } }))])).status,
	).toBe(1);
	expect(
		(await run(['blueprints', 'add', write('plan.json', { id: 'plan-one', blueprint: makeBlueprint() })])).out,
	).toContain('plan-one v1');
});

test('forms are kept under the ids and titles asked for', async () => {
	const { run } = await makeDemoLine();
	const words = ['forms', 'build', '--blueprint', 'srm-unit-check-plan', '--count', '2', '--title', 'Blue'];
	expect(await run([...words, '--title', 'Green'])).toMatchObject({ status: 0 });
	expect((await run(words)).err).toContain('expected titles for 2');
	const kept = await run([...words, '--title', 'Green', '--keep', '--id', 'unit-blue', '--id', 'unit-green']);
	expect(kept.out).toContain('kept as unit-blue\nkept as unit-green');
	expect((await run(['forms', 'show', 'unit-green'])).out).toContain('Green');
	const again = await run([...words, '--title', 'Green', '--keep', '--id', 'unit-blue', '--id', 'unit-red']);
	expect(again).toMatchObject({ status: 1 });
	expect(again.err).toContain('unit-blue');
});

test('a swap is taken as a new version of the form', async () => {
	const { run } = await makeDemoLine();
	const offers = (
		await run(['forms', 'swap', 'srm-unit-check-a', '--position', '3', '--beside', 'srm-unit-check-b', '--json'])
	).json;
	expect(offers.length).toBeGreaterThan(0);
	const parallel = (await run(['forms', 'show', 'srm-unit-check-b', '--json'])).json.items.map(
		(item: { id: string }) => item.id,
	);
	expect(offers.filter((offer: { item: string }) => parallel.includes(offer.item))).toEqual([]);
	const take = (item: string, position = '3') =>
		run(['forms', 'swap', 'srm-unit-check-a', '--position', position, '--take', item]);
	expect((await take(offers[0].item)).out).toContain(`version 2 has ${offers[0].item} v1 at position 3`);
	expect((await run(['forms', 'show', 'srm-unit-check-a', '--json'])).json.items[2].id).toBe(offers[0].item);
	expect((await take('no-item')).err).toContain('no-item');
	expect((await take(offers[1].item, '99')).err).toContain('expected a place from 1 to 20');
	await run(['items', 'retire', offers[1].item]);
	expect((await take(offers[1].item)).err).toContain('no version is approved');
});

test('a build that is stopped keeps nothing and says so', async () => {
	const { run } = await makeDemoLine();
	const words = ['forms', 'build', '--blueprint', 'srm-unit-check-plan', '--keep', '--id', 'unit-blue'];
	const stopped = await run(words, AbortSignal.abort());
	expect(stopped).toMatchObject({ status: 1 });
	expect(stopped.err).toContain('given up before its end');
	expect((await run(['forms', 'show', 'unit-blue'])).status).toBe(1);
});

test('what is not understood is refused', async () => {
	const { run } = await makeDemoLine();
	for (const words of [
		['forms', 'build'],
		['forms', 'build', '--blueprint', 'srm-unit-check-plan', '--count', '5'],
		['forms', 'compare', 'srm-unit-check-a'],
		['forms', 'swap', 'srm-unit-check-a'],
		['forms', 'give', 'srm-unit-check-a'],
	]) {
		expect((await run(words)).status, words.join(' ')).toBe(2);
	}
	expect((await run(['forms', 'build', '--blueprint', 'no-plan'])).status).toBe(1);
	expect(
		(await run(['forms', 'give', 'srm-unit-check-a', '--group', 'srm-class-6a', '--date', '2026-02-30'])).status,
	).toBe(1);
});

test('makes what the bank lacks for a plan, builds again, and keeps items and forms together', async () => {
	const { run, write } = makeCommandLine();
	await run(['items', 'make', '--family', 'sum-of-two', '--count', '3', '--with', 'answeredBy=gridded', '--approve']);
	const plan = makeBlueprint({
		framework: 'ccss-m',
		edition: '2010',
		items: { min: 6, max: 6 },
		cells: [
			{ standard: '7.NS.A.1b', model: 'symbols' as const, items: { min: 3, max: 3 } },
			{ standard: '7.NS.A.1c', model: 'symbols' as const, items: { min: 3, max: 3 } },
		],
		kinds: [],
		sections: [{ title: 'All', items: { min: 6, max: 6 } }],
	});
	await run(['blueprints', 'add', write('plan.json', { id: 'plan-one', blueprint: plan })]);
	expect((await run(['forms', 'build', '--blueprint', 'plan-one'])).status).toBe(1);
	const shown = await run(['forms', 'build', '--blueprint', 'plan-one', '--make-missing']);
	expect(shown.status).toBe(0);
	expect(shown.out).toContain('made because the bank lacked it');
	expect((await run(['items', 'find'])).out).toContain('3 of 3');
	const { json } = await run(['forms', 'build', '--blueprint', 'plan-one', '--make-missing', '--keep', '--json']);
	expect(json.kept).toHaveLength(1);
	expect(json.made.length).toBeGreaterThanOrEqual(3);
	const found = await run(['items', 'find', '--status', 'approved', '--json']);
	expect(found.json.total).toBe(3 + json.made.length);
	expect((await run(['forms', 'show', json.kept[0]])).out).toContain(json.made[0].id);
});

test('says that a plan stays impossible where no family makes what it lacks', async () => {
	const { run, write } = makeCommandLine();
	await run(['items', 'make', '--family', 'sum-of-two', '--count', '2', '--approve']);
	const plan = makeBlueprint({
		framework: 'ccss-m',
		edition: '2010',
		items: { min: 1, max: 1 },
		cells: [{ standard: '7.NS.A.1b', model: 'symbols' as const, items: { min: 1, max: 1 } }],
		kinds: [],
		sections: [{ title: 'All', items: { min: 1, max: 1 }, kinds: ['point' as const] }],
	});
	await run(['blueprints', 'add', write('plan.json', { id: 'plan-one', blueprint: plan })]);
	const ended = await run(['forms', 'build', '--blueprint', 'plan-one', '--make-missing', '--keep']);
	expect(ended.status).toBe(1);
	expect((await run(['items', 'find'])).out).toContain('2 of 2');
});
