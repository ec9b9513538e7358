import { expect, test } from 'vitest';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

test('a figure is drawn as SVG and described', async () => {
	const { send } = await openTestApp();
	const answer = await send('POST', '/api/figures/drawing', { kind: 'counters', plus: 3, minus: 8 });
	expect(answer.status).toBe(200);
	expectShape('figure-drawing', answer.json);
	expect(answer.json.svg).toMatch(/<svg[\s\S]*<\/svg>\s*$/);
	expect(answer.json.description).toContain('8');
});

test('a figure that cannot be drawn is refused with the place', async () => {
	const { send } = await openTestApp();
	const answer = await send('POST', '/api/figures/drawing', { kind: 'counters', plus: 1, minus: 1, ringedPairs: 5 });
	expect([answer.status, answer.json.code]).toEqual([400, 'content-refused']);
	expect(answer.json.problems[0].path).toBe('/ringedPairs');
	const shapeless = await send('POST', '/api/figures/drawing', { kind: 'counters', plus: -1, minus: 1 });
	expect(shapeless.json.problems[0].code).toBe('value-out-of-range');
});
