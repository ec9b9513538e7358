import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { openStore } from '../../../server/store/open-store.ts';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';
import { makeTestFolder } from '../../helpers/test-folder.ts';
import { openTestStore } from '../../helpers/test-store.ts';

describe('blueprints', () => {
	test('are kept as versions that stay readable', async () => {
		const { blueprints } = await openTestStore();
		const first = await blueprints.create({ id: 'plan-one', blueprint: makeBlueprint() });
		expect(first).toEqual({ id: 'plan-one', version: 1, blueprint: makeBlueprint() });
		const second = await blueprints.revise('plan-one', 1, makeBlueprint({ title: 'Two items again' }));
		expect(second.version).toBe(2);
		expect((await blueprints.get('plan-one')).blueprint.title).toBe('Two items again');
		expect((await blueprints.get('plan-one', 1)).blueprint.title).toBe('Two items');
		expect((await blueprints.list()).map(({ id, version }) => `${id} ${version}`)).toEqual(['plan-one 2']);
	});

	test('get an id of the bank when they bring none', async () => {
		const { blueprints } = await openTestStore();
		expect((await blueprints.create({ blueprint: makeBlueprint() })).id).toBe('test-0001');
	});

	test('are refused when they contradict themselves, are misshapen, taken, outdated or unknown', async () => {
		const { blueprints } = await openTestStore();
		const create = (blueprint: unknown, id = 'plan-one') => blueprints.create({ id, blueprint: blueprint as never });
		await expect(create(makeBlueprint({ items: { min: 5, max: 2 } }))).rejects.toMatchObject({
			code: 'content-refused',
		});
		await expect(create({ ...makeBlueprint(), colour: 'red' })).rejects.toMatchObject({
			code: 'content-refused',
			problems: [expect.objectContaining({ code: 'field-unknown' })],
		});
		await create(makeBlueprint());
		await expect(create(makeBlueprint())).rejects.toMatchObject({ code: 'id-taken' });
		await expect(blueprints.revise('plan-one', 2, makeBlueprint())).rejects.toMatchObject({ code: 'version-conflict' });
		await expect(blueprints.get('plan-two')).rejects.toMatchObject({ code: 'not-found' });
		await expect(blueprints.get('plan-one', 9)).rejects.toMatchObject({ code: 'not-found' });
		expect(await blueprints.list()).toHaveLength(1);
	});

	test('never change and never go, whatever statement asks', async () => {
		const folder = makeTestFolder();
		const store = await openStore(folder);
		await store.blueprints.create({ id: 'plan-one', blueprint: makeBlueprint() });
		await store.close();
		const database = new Database(join(folder, 'zeropair.db'));
		expect(() => database.exec("UPDATE blueprint_versions SET document = '{}'")).toThrow(/never changes/);
		expect(() => database.exec('DELETE FROM blueprint_versions')).toThrow(/never deleted/);
		database.close();
	});
});
