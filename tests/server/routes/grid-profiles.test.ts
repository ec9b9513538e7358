import { expect, test } from 'vitest';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

test('the answer grids are listed with their rules', async () => {
	const { send } = await openTestApp();
	const answer = await send('GET', '/api/grid-profiles');
	expect(answer.json.length).toBeGreaterThanOrEqual(3);
	for (const profile of answer.json) expectShape('grid-profile', profile);
});

test('the service says that it answers', async () => {
	const { send } = await openTestApp();
	expect((await send('GET', '/api/health')).json).toEqual({ status: 'ok' });
});
