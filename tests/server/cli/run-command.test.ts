import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames } from '../../../server/cli/commands.ts';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { choiceItem, formOf, griddedItem } from '../../helpers/sample-items.ts';

async function makeFilledCommandLine() {
	const line = makeCommandLine();
	const items = [
		{ id: 'lift-one', item: choiceItem() },
		{ id: 'tide-one', item: griddedItem() },
	];
	expect((await line.run(['items', 'add', line.write('items.json', items)])).status).toBe(0);
	const form = line.write('form.json', { id: 'form-a', form: formOf(['lift-one', 'tide-one']) });
	expect((await line.run(['forms', 'create', form])).status).toBe(0);
	return line;
}

describe('what is not understood ends with 2 and says what was expected', () => {
	test.each([
		[['itms', 'find'], 'did you mean items?'],
		[['items', 'finde'], 'did you mean find?'],
		[['items'], 'expected find, show, add, check, make, variants, approve, retire, found nothing'],
		[['items', 'find', '--stauts', 'draft'], 'did you mean --status?'],
		[['items', 'find', '--model', 'poem'], 'expected one of symbols, counters, number-line, story, table'],
		[['items', 'find', '--code', '6.6'], 'several frameworks'],
		[['items', 'find', '--code', 'XYZ'], 'expected a code of some framework, found "XYZ"'],
		[['items', 'show'], 'expected ITEM, found nothing'],
		[['items', 'show', 'one', 'two'], 'expected nothing more, found "two"'],
		[['items', 'show', 'one', '--version', '0'], 'expected a version such as 1'],
		[['items', 'find', '--limit'], 'limit'],
		[['export', 'form-a', '--to', 'x.zip'], 'expected --as qti-2.1 or qti-2.2 or qti-3.0 or cc-1.1, found none'],
		[['export', 'form-a', '--as', 'qti-2.3', '--to', 'x.zip'], 'did you mean'],
		[['export', 'form-a', '--as', 'qti-2.2'], 'expected --to FILE, found none'],
		[['serve', 'now'], 'expected nothing more, found "now"'],
	])('%j', async (words, message) => {
		const { run, data } = makeCommandLine();
		const { status, err, out } = await run(words);
		expect([status, out]).toEqual([2, '']);
		expect(err).toContain(message);
		expect(existsSync(data)).toBe(false);
	});

	test('also in JSON', async () => {
		const { run } = makeCommandLine();
		const { status, json } = await run(['itms', '--json']);
		expect(status).toBe(2);
		expect(json).toMatchObject({ code: 'usage', problems: [] });
	});
});

describe('help', () => {
	test('names every command, and what each takes', async () => {
		const { run } = makeCommandLine();
		const all = await run([]);
		expect(all.status).toBe(0);
		for (const name of commandNames) {
			expect(all.out).toContain(name);
			expect((await run(['help', name])).out).toContain(name);
		}
		expect((await run(['items', '--help'])).out).toBe((await run(['help', 'items'])).out);
	});
});

describe('items', () => {
	test('are added, found, shown, approved and retired', async () => {
		const { run } = await makeFilledCommandLine();
		expect((await run(['items', 'approve', 'lift-one'])).out).toBe('lift-one version 1 is approved.');
		const found = await run(['items', 'find', '--status', 'approved', '--json']);
		expect(found.json.items.map(({ id }: { id: string }) => id)).toEqual(['lift-one']);
		expect((await run(['items', 'find', 'mine', 'lift'])).out).toContain('1 of 1');
		expect((await run(['items', 'find', '--code', '7.NS.A.1b'])).out).toContain('tide-one');
		const shown = await run(['items', 'show', 'lift-one']);
		expect(shown.out).toContain('* a) -13');
		expect(shown.out).toContain('Worked steps:');
		expect((await run(['items', 'retire', 'lift-one', '--json'])).json).toMatchObject({
			id: 'lift-one',
			status: 'retired',
		});
	});

	test('that cannot be kept are refused with every place, and none is kept', async () => {
		const { run, write } = await makeFilledCommandLine();
		const file = write('bad.json', [griddedItem(), griddedItem({ key: 1 }), { ...griddedItem(), colour: 'red' }]);
		const { status, json } = await run(['items', 'add', file, '--json']);
		expect(status).toBe(1);
		expect(json.code).toBe('content-refused');
		expect(json.problems.map(({ code, path }: { code: string; path: string }) => `${code} ${path}`)).toEqual([
			'key-mismatch /1/item/key',
			'field-unknown /2/item/colour',
		]);
		expect((await run(['items', 'find', '--json'])).json.total).toBe(2);
	});

	test('a draft with faults is not approved', async () => {
		const { run, write } = makeCommandLine();
		const file = write('half.json', { id: 'half-done', item: griddedItem({ given: 'counters' }) });
		expect((await run(['items', 'add', file])).out).toContain('1 to mend');
		const { status, json } = await run(['items', 'approve', 'half-done', '--json']);
		expect(status).toBe(1);
		expect(json).toMatchObject({ code: 'item-not-approvable', problems: [{ path: '/given' }] });
	});

	test.each([
		['no JSON', '{"kind": ', 'json-malformed'],
		['a number', '7', 'content-refused'],
		['an empty object', '{}', 'content-refused'],
		['null', 'null', 'content-refused'],
	])('a file with %s is refused', async (_title, text, code) => {
		const { run, write } = makeCommandLine();
		const { status, json } = await run(['items', 'add', write('bad.json', text), '--json']);
		expect([status, json.code]).toEqual([1, code]);
	});

	test('a file that is not there is named', async () => {
		const { run, folder } = makeCommandLine();
		const { status, err } = await run(['items', 'add', join(folder, 'nothing.json')]);
		expect(status).toBe(1);
		expect(err).toContain('nothing.json');
	});

	test('are not looked for where there is no bank, and none is begun', async () => {
		const { run, data } = makeCommandLine();
		const { status, json } = await run(['items', 'find', '--json']);
		expect([status, json.code]).toEqual([1, 'bank-missing']);
		expect(existsSync(data)).toBe(false);
	});

	test('another folder is named with --data', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const { json } = await run(['items', 'find', '--json', '--data', join(folder, 'other')]);
		expect(json.code).toBe('bank-missing');
	});
});

describe('forms and groups', () => {
	test('are listed and shown', async () => {
		const { run, write } = await makeFilledCommandLine();
		expect((await run(['forms', 'list'])).out).toContain('form-a v1  Integers, form A  (2 items');
		expect((await run(['forms', 'show', 'form-a'])).out).toMatch(/1\. lift-one[\s\S]*2\. tide-one/);
		expect((await run(['groups', 'list'])).out).toBe('There are no groups yet.');
		const group = write('group.json', { id: 'class-7b', group: { name: 'Class 7B', studentCodes: ['7B-01'] } });
		expect((await run(['groups', 'add', group])).out).toContain('class-7b  Class 7B  (1 students)');
		expect((await run(['groups', 'list', '--json'])).json).toHaveLength(1);
	});

	test('a form that names an unknown item is refused', async () => {
		const { run, write } = await makeFilledCommandLine();
		const { status, json } = await run(['forms', 'create', write('f.json', formOf(['nobody'])), '--json']);
		expect(status).toBe(1);
		expect(json.problems[0].code).toBe('form-item-unknown');
	});
});

describe('export', () => {
	test('writes the package and the answer map for their owner, and says how it was checked', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const to = join(folder, 'unit.zip');
		const { status, json } = await run(['export', 'form-a', '--as', 'qti-2.2', '--to', to, '--json']);
		expect(status).toBe(0);
		expect(json).toMatchObject({ file: to, answerMap: join(folder, 'unit-answer-map.csv'), bytes: statSync(to).size });
		expect(json.report.notes.join(' ')).toContain('placement in the grid is not enforced');
		expect((statSync(to).mode & 0o777).toString(8)).toBe('600');
		expect(readFileSync(json.answerMap, 'utf8')).toContain('tide-one');
		expect((await run(['validate', to])).out).toContain('nothing to mend');
	});

	test('writes QTI 3.0 column by column with feedback, and says that the package holds keys', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const to = join(folder, 'newer.zip');
		const words = ['export', 'form-a', '--as', 'qti-3.0', '--grid', 'columns', '--with-feedback', '--to', to];
		const { status, json } = await run([...words, '--json']);
		expect(status).toBe(0);
		expect(json.report.notes.join(' ')).toContain('one list of marks for each column');
		expect(json.report.notes.join(' ')).toContain('The package holds the keys');
		expect(readFileSync(json.answerMap, 'utf8')).toContain('COLUMN-1 ');
		expect((await run(['validate', to])).out).toContain('nothing to mend');
		expect((await run([...words, '--grid', 'rows'])).err).toContain('expected --grid number or columns, found "rows"');
	});

	test('never overwrites unless told to, not even the answer map', async () => {
		const { run, folder, write } = await makeFilledCommandLine();
		write('unit-answer-map.csv', 'mine');
		const words = ['export', 'form-a', '--as', 'qti-2.1', '--to', join(folder, 'unit.zip'), '--json'];
		expect((await run(words)).json).toMatchObject({ code: 'file-exists' });
		expect(existsSync(join(folder, 'unit.zip'))).toBe(false);
		expect(readFileSync(join(folder, 'unit-answer-map.csv'), 'utf8')).toBe('mine');
		expect((await run([...words, '--replace'])).status).toBe(0);
		expect(readFileSync(join(folder, 'unit-answer-map.csv'), 'utf8')).not.toBe('mine');
	});

	test('given up before its end leaves nothing', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const before = readdirSync(folder).sort();
		const stopped = new AbortController();
		stopped.abort();
		const words = ['export', 'form-a', '--as', 'qti-2.2', '--to', join(folder, 'unit.zip'), '--json'];
		const { status, json } = await run(words, stopped.signal);
		expect([status, json.code]).toEqual([1, 'export-cancelled']);
		expect(readdirSync(folder).sort()).toEqual(before);
	});

	test('into a folder that is not there leaves nothing', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const before = readdirSync(folder).sort();
		const { json } = await run([
			'export',
			'form-a',
			'--as',
			'qti-2.2',
			'--to',
			join(folder, 'missing', 'unit.zip'),
			'--json',
		]);
		expect(json.code).toBe('file-refused');
		expect(readdirSync(folder).sort()).toEqual(before);
	});

	test('of a form nobody knows is refused', async () => {
		const { run, folder } = await makeFilledCommandLine();
		const { json } = await run(['export', 'nobody', '--as', 'qti-2.2', '--to', join(folder, 'unit.zip'), '--json']);
		expect(json.code).toBe('not-found');
	});
});

describe('validate', () => {
	test('finds faults in items before they are added', async () => {
		const { run, write } = makeCommandLine();
		const { status, out } = await run([
			'validate',
			write('items.json', [griddedItem(), { item: griddedItem({ key: 1 }) }]),
		]);
		expect(status).toBe(1);
		expect(out).toContain('/1/item/key');
	});

	test('finds that bytes are no package', async () => {
		const { run, write } = makeCommandLine();
		const { status, out } = await run(['validate', write('unit.zip', 'PK once upon a time')]);
		expect(status).toBe(1);
		expect(out).toContain('1 to mend');
	});
});

describe('demo, backup and restore', () => {
	test('go together', async () => {
		const { run, folder } = makeCommandLine();
		expect((await run(['demo'])).out).toContain('600 items, 2 forms');
		expect((await run(['demo', '--json'])).json.code).toBe('demo-present');
		const copy = join(folder, 'copy.db');
		expect((await run(['backup', copy])).status).toBe(0);
		await run(['items', 'retire', 'srm-cnt-001']);
		const { json } = await run(['restore', copy, '--json']);
		expect(json).toMatchObject({ before: expect.stringContaining('before-restore') });
		expect(existsSync(json.before)).toBe(true);
		expect((await run(['items', 'find', '--status', 'approved', '--json'])).json.total).toBe(600);
	});

	test('a backup that is none is refused', async () => {
		const { run, write } = makeCommandLine();
		expect((await run(['restore', write('copy.db', 'hello'), '--json'])).json.code).toBe('store-foreign');
	});
});

describe('serve', () => {
	test('refuses an address others could reach', async () => {
		const { run } = makeCommandLine();
		expect((await run(['serve', '--host', '0.0.0.0', '--json'])).json.code).toBe('address-refused');
	});

	test('refuses text that is no port', async () => {
		const { run } = makeCommandLine();
		expect((await run(['serve', '--port', 'http', '--json'])).json.code).toBe('port-refused');
	});

	test('serves until it is stopped', async () => {
		const { run } = makeCommandLine();
		const stopped = new AbortController();
		stopped.abort();
		const { status, out } = await run(['serve', '--port', '0'], stopped.signal);
		expect(status).toBe(0);
		expect(out).toMatch(/answers at http:\/\/127\.0\.0\.1:\d+\//);
	});
});
