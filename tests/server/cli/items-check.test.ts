import { expect, test } from 'vitest';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { makeChoice, makeGridded, numberOptions } from '../../helpers/items.ts';

test('items check says what stops an item of the bank, and what is advice, with the guideline', async () => {
	const { run, write } = makeCommandLine();
	await run([
		'items',
		'add',
		write('items.json', [
			{ id: 'sum', item: makeChoice() },
			{ id: 'difference', item: makeGridded() },
		]),
	]);
	expect(await run(['items', 'check', 'difference'])).toMatchObject({ status: 0, out: 'nothing to mend' });
	const advised = await run(['items', 'check', 'sum']);
	expect(advised.status).toBe(0);
	expect(advised.out).toContain('sum/options/0: advice: expected the error patterns that lead to option A');
	expect(advised.out).toContain('Haladyna, Downing and Rodriguez 2002, guideline 30)');
});

test('items check looks at a file without keeping it, and ends with 1 when something stops an item', async () => {
	const { run, write } = makeCommandLine();
	const faulty = write('faulty.json', [
		{ item: makeChoice({ options: numberOptions(-7, -11, 7) }) },
		{ item: { kind: 'poem' } },
	]);
	const { status, out } = await run(['items', 'check', faulty]);
	expect(status).toBe(1);
	expect(out).toContain('item 1/options/1: stops approval: expected numbers in increasing order');
	expect(out).toContain('item 2');
	expect((await run(['items', 'check', 'nowhere.json'])).status).toBe(1);
	expect((await run(['items', 'check'])).status).toBe(2);
});
