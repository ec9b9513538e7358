import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, onTestFinished, test } from 'vitest';
import { migrateStore, readMigrations } from '../../../server/store/migrations.ts';
import { openStore, type Store, type StoreOptions } from '../../../server/store/open-store.ts';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';
import { choiceItem, formOf, griddedItem } from '../../helpers/sample-items.ts';
import { makeTestFolder } from '../../helpers/test-folder.ts';

async function open(folder: string, options: StoreOptions = {}): Promise<Store> {
	const store = await openStore(folder, { busyTimeout: 50, ...options });
	onTestFinished(() => store.close());
	return store;
}

/** Opens the database as another program would. */
function openRaw(folder: string): Database.Database {
	const database = new Database(join(folder, 'zeropair.db'), { timeout: 0 });
	onTestFinished(() => {
		database.close();
	});
	return database;
}

const modeOf = (path: string): string => (statSync(path).mode & 0o777).toString(8);

describe('the data folder', () => {
	test('is made, and only its owner can read it or anything in it', async () => {
		const folder = join(makeTestFolder(), 'deep', 'data');
		const store = await open(folder);
		await store.items.create({ item: griddedItem() });
		expect(modeOf(folder)).toBe('700');
		const files = readdirSync(folder);
		expect(files).toContain('zeropair.db');
		expect(files.length).toBeGreaterThan(1);
		for (const file of files) expect(modeOf(join(folder, file)), file).toBe('600');
	});

	test('is closed to others when it was open to them', async () => {
		const folder = makeTestFolder();
		chmodSync(folder, 0o755);
		await open(folder);
		expect(modeOf(folder)).toBe('700');
	});

	test('is left alone when it holds other things and is open to others', async () => {
		const folder = makeTestFolder();
		chmodSync(folder, 0o755);
		writeFileSync(join(folder, 'holiday.txt'), '');
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'data-folder-shared', folder });
		expect(modeOf(folder)).toBe('755');
		expect(readdirSync(folder)).toEqual(['holiday.txt']);
	});

	test('that cannot be made is named', async () => {
		const file = join(makeTestFolder(), 'file');
		writeFileSync(file, '');
		const folder = join(file, 'data');
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'data-folder-unwritable', folder });
		await expect(openStore(folder)).rejects.toThrow(folder);
	});

	test('whose database cannot be opened is named', async () => {
		const folder = makeTestFolder();
		mkdirSync(join(folder, 'zeropair.db'));
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'data-folder-unwritable' });
	});
});

describe('opening a bank', () => {
	test('finds what was kept before', async () => {
		const folder = makeTestFolder();
		const first = await openStore(folder);
		expect(await first.isNew()).toBe(true);
		await first.items.createMany([{ id: 'lift-one', item: choiceItem() }], 'approved');
		await first.forms.create({ id: 'form-a', form: formOf(['lift-one']) });
		await first.close();
		const again = await open(folder);
		expect(await again.isNew()).toBe(false);
		expect((await again.items.get('lift-one')).status).toBe('approved');
		expect((await again.items.find({ text: 'lift' })).total).toBe(1);
		expect((await again.forms.get('form-a')).items).toHaveLength(1);
	});

	test('refuses a bank of a newer version and leaves it as it was', async () => {
		const folder = makeTestFolder();
		await (await openStore(folder)).close();
		const raw = openRaw(folder);
		raw.prepare("INSERT INTO migrations VALUES (900, 'from-the-future', '2030-01-01T00:00:00Z')").run();
		raw.close();
		const before = readFileSync(join(folder, 'zeropair.db'));
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'store-newer', found: 900 });
		expect(readFileSync(join(folder, 'zeropair.db')).equals(before)).toBe(true);
	});

	test('refuses the database of another program', async () => {
		const folder = makeTestFolder();
		const raw = openRaw(folder);
		raw.exec('CREATE TABLE recipes (name TEXT)');
		raw.close();
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'store-foreign' });
	});

	test('refuses a file that is no database', async () => {
		const folder = makeTestFolder();
		writeFileSync(join(folder, 'zeropair.db'), 'once upon a time '.repeat(100));
		await expect(openStore(folder)).rejects.toMatchObject({ code: 'store-foreign' });
	});
});

describe('migrations', () => {
	const clock = (): Date => new Date('2026-09-14T08:00:00Z');
	const [first] = readMigrations();
	const broken = { number: 2, name: 'broken', text: 'CREATE TABLE half (a); CREATE TABLE half (a);' };

	test('are numbered without gaps', () => {
		const numbers = readMigrations().map(({ number }) => number);
		expect(numbers).toEqual(numbers.map((_number, index) => index + 1));
	});

	test('a bank from before blueprints keeps what happened in it and takes blueprints', async () => {
		const folder = makeTestFolder();
		const database = new Database(join(folder, 'zeropair.db'));
		migrateStore(database, folder, clock, first ? [first] : []);
		database.exec(
			"INSERT INTO happenings (subject, subject_id, version, what, at) VALUES ('group', 'class-6a', NULL, 'added', '2026-09-01')",
		);
		database.close();
		const store = await open(folder);
		await store.blueprints.create({ id: 'plan-one', blueprint: makeBlueprint() });
		const happened = openRaw(folder).prepare('SELECT subject, what FROM happenings ORDER BY id').raw().all();
		expect(happened).toEqual([
			['group', 'added'],
			['blueprint', 'created'],
		]);
	});

	test('a step that fails leaves no trace', () => {
		const database = new Database(':memory:');
		expect(() => migrateStore(database, ':memory:', clock, first ? [first, broken] : [])).toThrow();
		const tables = database.prepare("SELECT name FROM sqlite_schema WHERE name = 'half'").all();
		expect(tables).toEqual([]);
		expect(database.prepare('SELECT number FROM migrations').pluck().all()).toEqual([1]);
	});

	test('run once each', () => {
		const database = new Database(':memory:');
		const steps = first ? [first] : [];
		migrateStore(database, ':memory:', clock, steps);
		migrateStore(database, ':memory:', clock, [...steps, { number: 2, name: 'more', text: 'CREATE TABLE more (a);' }]);
		expect(database.prepare('SELECT number, name, done_at FROM migrations').raw().all()).toEqual([
			[1, 'bank', '2026-09-14T08:00:00.000Z'],
			[2, 'more', '2026-09-14T08:00:00.000Z'],
		]);
	});
});

describe('documents', () => {
	test.each([
		["UPDATE item_versions SET document = '{}'", 'a version of an item never changes'],
		['UPDATE item_versions SET version = 7', 'a version of an item never changes'],
		['DELETE FROM item_versions', 'a version of an item is never deleted'],
		["UPDATE form_versions SET document = '{}'", 'a version of a form never changes'],
		['DELETE FROM form_versions', 'a version of a form is never deleted'],
	])('are guarded by the database itself: %s', async (statement, message) => {
		const folder = makeTestFolder();
		const store = await open(folder);
		await store.items.create({ id: 'tide-one', item: griddedItem() });
		await store.forms.create({ form: formOf(['tide-one']) });
		const raw = openRaw(folder);
		raw.pragma('foreign_keys = OFF');
		expect(() => raw.exec(statement)).toThrow(message);
	});
});

describe('two writers', () => {
	test('one that waits too long is told so, and nothing of its work is kept', async () => {
		const folder = makeTestFolder();
		const store = await open(folder);
		const other = openRaw(folder);
		other.exec('BEGIN IMMEDIATE');
		await expect(store.items.create({ item: griddedItem() })).rejects.toMatchObject({ code: 'store-busy' });
		expect(await store.items.count()).toBe(0);
		other.exec('ROLLBACK');
		await store.items.create({ item: griddedItem() });
		expect(await store.items.count()).toBe(1);
	});

	test('readers go on while another writes', async () => {
		const folder = makeTestFolder();
		const store = await open(folder);
		await store.items.create({ id: 'tide-one', item: griddedItem() });
		openRaw(folder).exec('BEGIN IMMEDIATE');
		expect((await store.items.find({})).total).toBe(1);
	});

	test('two banks open on one folder see each other, and keep only one of two changes to a version', async () => {
		const folder = makeTestFolder();
		const [one, two] = [await open(folder), await open(folder)];
		await one.items.create({ id: 'tide-one', item: griddedItem() });
		await two.items.revise('tide-one', 1, griddedItem({ name: 'Two', dok: 3 }));
		await expect(one.items.revise('tide-one', 1, griddedItem({ name: 'One' }))).rejects.toMatchObject({
			code: 'version-conflict',
		});
		expect((await one.items.find({ dok: [3] })).total).toBe(1);
	});
});

describe('a full disk', () => {
	test('is told, and nothing is half kept', async () => {
		const folder = makeTestFolder();
		const store = await open(folder, { mostPages: 90 });
		await store.items.create({ id: 'first-one', item: griddedItem() });
		const many = Array.from({ length: 400 }, () => ({ item: choiceItem() }));
		await expect(store.items.createMany(many)).rejects.toMatchObject({ code: 'disk-full' });
		expect(await store.items.count()).toBe(1);
		expect((await store.items.find({})).total).toBe(1);
		expect((await store.items.find({ text: 'lift' })).total).toBe(0);
		await store.items.approve('first-one', 1);
		expect((await store.items.get('first-one')).status).toBe('approved');
	});
});
