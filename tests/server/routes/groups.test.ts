import { describe, expect, test } from 'vitest';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

const group = { name: 'Class 7B', grade: '7', studentCodes: ['7B-02', '7B-01'] };

describe('groups', () => {
	test('a group is kept with its codes in the order given, and listed by name', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/groups', { id: 'class-7b', group });
		expect(answer.status).toBe(201);
		expectShape('group-entry', answer.json);
		await send('POST', '/api/groups', { group: { name: 'Class 6A', studentCodes: [] } });
		expect((await send('GET', '/api/groups/class-7b')).json).toEqual({ id: 'class-7b', group });
		const names = (await send('GET', '/api/groups')).json.map((entry: { group: { name: string } }) => entry.group.name);
		expect(names).toEqual(['Class 6A', 'Class 7B']);
	});

	test.each([
		['a name in use', { id: 'other-7b', group }, 409, 'group-name-taken'],
		['an id in use', { id: 'class-7b', group: { ...group, name: 'Another' } }, 409, 'id-taken'],
		['a code twice', { group: { name: 'X', studentCodes: ['A1', 'A1'] } }, 400, 'content-refused'],
		['a name of a student for a code', { group: { name: 'X', studentCodes: ['Mary Smith'] } }, 400, 'content-refused'],
		['a field for names', { group: { name: 'X', studentCodes: [], students: [] } }, 400, 'content-refused'],
		['a name XML cannot hold', { group: { name: 'X\u0001', studentCodes: [] } }, 400, 'content-refused'],
	])('refuses %s', async (_title, body, status, code) => {
		const { send } = await openTestApp();
		await send('POST', '/api/groups', { id: 'class-7b', group });
		const answer = await send('POST', '/api/groups', body);
		expect([answer.status, answer.json.code]).toEqual([status, code]);
		expect((await send('GET', '/api/groups')).json).toHaveLength(1);
	});

	test('a group nobody knows is not found', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/groups/nobody');
		expect([answer.status, answer.json.code]).toEqual([404, 'not-found']);
	});
});
