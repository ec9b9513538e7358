import { describe, expect, test } from 'vitest';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { makeGridded } from '../../helpers/items.ts';

describe('patterns', () => {
	test('lists every pattern by id and name', async () => {
		const { run } = makeCommandLine();
		const { status, out } = await run(['patterns', 'list']);
		expect(status).toBe(0);
		expect(out.split('\n')).toHaveLength(26);
	});

	test('says what a wrong answer is consistent with', async () => {
		const { run, write } = makeCommandLine();
		await run(['items', 'add', write('item.json', [{ id: 'difference', item: makeGridded() }])]);
		const { status, out } = await run(['patterns', 'explain', 'difference', '--answer', '-11']);
		expect(status).toBe(0);
		expect(out).toContain('Consistent with');
		expect(out).not.toMatch(/\bhas\b/);
		expect((await run(['patterns', 'explain', 'difference', '--answer', '5'])).out).toContain('right answer');
	});

	test('finds items that tell patterns apart', async () => {
		const { run } = makeCommandLine();
		const { json } = await run(['patterns', 'probes', 'signs-dropped', 'wall-at-zero', '--most', '2', '--json']);
		expect(json.items.length).toBeGreaterThan(0);
		expect(json.items.length).toBeLessThanOrEqual(2);
		expect(json.together).toEqual([]);
	});

	test('refuses what it cannot read', async () => {
		const { run, write } = makeCommandLine();
		await run(['items', 'add', write('item.json', [{ id: 'difference', item: makeGridded() }])]);
		expect(await run(['patterns', 'explain', 'difference'])).toMatchObject({ status: 2 });
		expect((await run(['patterns', 'explain', 'difference', '--answer', 'five'])).err).toContain('found "five"');
		expect((await run(['patterns', 'probes', 'no-such-pattern'])).err).toContain('found "no-such-pattern"');
		expect(await run(['patterns', 'probes'])).toMatchObject({ status: 2 });
		expect(await run(['patterns', 'probes', 'signs-dropped', '--most', '0'])).toMatchObject({ status: 2 });
	});
});
