import { expect, test } from 'vitest';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';
import { openTestApp } from '../../helpers/test-app.ts';

test('a blueprint is kept, listed, shown and revised', async () => {
	const { send } = await openTestApp();
	expect(await send('POST', '/api/blueprints', { id: 'plan-one', blueprint: makeBlueprint() })).toMatchObject({
		status: 201,
		json: { id: 'plan-one', version: 1 },
	});
	const change = { baseVersion: 1, blueprint: makeBlueprint({ title: 'Other title' }) };
	expect(await send('PUT', '/api/blueprints/plan-one', change)).toMatchObject({ status: 200, json: { version: 2 } });
	expect(await send('PUT', '/api/blueprints/plan-one', change)).toMatchObject({
		status: 409,
		json: { code: 'version-conflict' },
	});
	expect((await send('GET', '/api/blueprints/plan-one?version=1')).json.blueprint.title).toBe('Two items');
	expect((await send('GET', '/api/blueprints')).json).toMatchObject([{ id: 'plan-one', version: 2 }]);
	expect(await send('GET', '/api/blueprints/plan-two')).toMatchObject({ status: 404 });
});

test('a blueprint that contradicts itself is refused with its place, and can be checked before', async () => {
	const { send } = await openTestApp();
	const blueprint = makeBlueprint({ items: { min: 5, max: 2 } });
	const refused = await send('POST', '/api/blueprints', { blueprint });
	expect(refused).toMatchObject({ status: 400, json: { code: 'content-refused' } });
	expect(refused.json.problems[0].path).toMatch(/^\/blueprint\/items/);
	const checked = await send('POST', '/api/blueprints/check', blueprint);
	expect(checked).toMatchObject({ status: 200 });
	expect(checked.json.length).toBeGreaterThan(0);
	expect((await send('POST', '/api/blueprints/check', makeBlueprint())).json).toEqual([]);
	const misshapen = await send('POST', '/api/blueprints/check', { ...makeBlueprint(), colour: 'red' });
	expect(misshapen.json).toMatchObject([{ code: 'field-unknown', path: '/colour' }]);
	expect(await send('POST', '/api/blueprints/check', [])).toMatchObject({ status: 400 });
});
