import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { families } from '../../../item-bank/families/index.ts';
import { makeCommandLine } from '../../helpers/command-line.ts';

describe('families', () => {
	test('lists every family, and shows what may be asked of one', async () => {
		const { run } = makeCommandLine();
		expect((await run(['families', 'list'])).out.split('\n')).toHaveLength(families.length);
		const { status, out } = await run(['families', 'show', 'sum-of-several']);
		expect(status).toBe(0);
		expect(out).toMatch(/terms +.*3 to 6; 3 when left out/);
		expect(out).toContain('6.3(D)');
	});

	test('names the nearest family for one there is not', async () => {
		const { run } = makeCommandLine();
		const { status, err } = await run(['families', 'show', 'sum-of-tow']);
		expect(status).toBe(2);
		expect(err).toContain('did you mean sum-of-two?');
	});
});

describe('items make', () => {
	test('shows items without beginning a bank on a dry run', async () => {
		const { run, data } = makeCommandLine();
		const words = ['items', 'make', '--family', 'minus-negative', '--count', '3', '--seed', 'a', '--dry-run'];
		const { status, out } = await run(words);
		expect(status).toBe(0);
		expect(out.split('\n')).toHaveLength(4);
		expect(out).toContain('3 made, nothing kept');
		expect(existsSync(data)).toBe(false);
		expect((await run(words)).out).toBe(out);
	});

	test('keeps items by the parameters typed, once', async () => {
		const { run } = makeCommandLine();
		const words = [
			'items',
			'make',
			'--family',
			'sum-of-two',
			'--count',
			'2',
			'--with',
			'signs=--',
			'--with',
			'largest=9',
		];
		const { json } = await run([...words, '--approve', '--json']);
		for (const { item } of json.items) expect(item.name).toMatch(/: -\d \+ \(-\d\)$/);
		expect((await run(words)).out).toContain('0 kept in the bank');
		expect((await run(['items', 'find', '--status', 'approved'])).out).toContain('2 of 2');
	});

	test('makes items of one standard only', async () => {
		const { run } = makeCommandLine();
		const words = ['items', 'make', '--family', 'sum-of-two', '--count', '2', '--dry-run', '--json', '--standard'];
		const { json } = await run([...words, '7.NS.A.1b']);
		for (const { item } of json.items)
			expect(item.alignments.map(({ code }: { code: string }) => code)).toContain('7.NS.A.1b');
		expect(await run([...words, '7.XX.1'])).toMatchObject({ status: 1 });
	});

	test.each([
		[['items', 'make'], 2, '--family'],
		[['items', 'make', '--family', 'sum-of-two', '--count', '0'], 2, '--count'],
		[['items', 'make', '--family', 'sum-of-two', '--with', 'largest'], 2, 'NAME=VALUE'],
		[['items', 'make', '--family', 'sum-of-two', '--with', 'largest=many'], 1, 'whole number'],
		[['items', 'make', '--family', 'sum-of-two', '--seed', 'ä'], 2, '--seed'],
		[['items', 'find', '--family', 'sum-of-two'], 2, 'items find'],
	])('refuses %j', async (words, status, told) => {
		const { run } = makeCommandLine();
		const ended = await run(words);
		expect(ended.status).toBe(status);
		expect(ended.err).toContain(told);
	});
});

describe('items variants', () => {
	test('keeps items of the shape of one of the bank', async () => {
		const { run } = makeCommandLine();
		const made = await run(['items', 'make', '--family', 'product-of-two', '--json']);
		const { json } = await run(['items', 'variants', made.json.items[0].id, '--count', '3', '--json']);
		expect(json.family).toBe('product-of-two');
		expect(json.items).toHaveLength(3);
		expect((await run(['items', 'find'])).out).toContain('4 of 4');
	});

	test('refuses an item the bank does not have', async () => {
		const { run } = makeCommandLine();
		await run(['items', 'make', '--family', 'product-of-two']);
		expect((await run(['items', 'variants', 'nobody'])).err).toContain('nobody');
	});
});
