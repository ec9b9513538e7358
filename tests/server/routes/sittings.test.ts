import { describe, expect, test } from 'vitest';
import { makeChoice, makeExplanation, makeGridded, makeSet } from '../../helpers/items.ts';
import { fillSatBank } from '../../helpers/sat-bank.ts';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

const sitting = { form: 'every-kind', version: 1, group: 'class-6a', date: '2026-09-14', mode: 'hand' };
const base64 = (text: string) => Buffer.from(text).toString('base64');

async function openSatApp() {
	const test = await openTestApp();
	await fillSatBank(test.store, [makeChoice(), makeGridded(), makeExplanation(), makeSet()]);
	const added = await test.send('POST', '/api/sittings', { id: 'first-check', sitting });
	expect(added.status).toBe(201);
	return test;
}

describe('sittings', () => {
	test('are added, listed and shown', async () => {
		const { send } = await openSatApp();
		expectShape('sitting-entry', (await send('GET', '/api/sittings/first-check')).json);
		expect((await send('GET', '/api/sittings')).json).toMatchObject([{ id: 'first-check', students: 0, scoring: 1 }]);
		const twin = await send('POST', '/api/sittings', { sitting });
		expect([twin.status, twin.json.code]).toEqual([409, 'sitting-present']);
		expect((await send('GET', '/api/sittings/nobody')).status).toBe(404);
	});

	test('take responses by hand, one student at a time, all or none', async () => {
		const { send } = await openSatApp();
		const url = '/api/sittings/first-check/students/6A-01';
		const answers = [
			{ position: 1, text: 'b' },
			{ position: 2, given: { kind: 'response', response: { kind: 'grid', columns: [[], ['5'], [], [], []] } } },
			{ position: 4, part: 2, text: '' },
			{ position: 3, given: { kind: 'mark', mark: 'not-reached' } },
		];
		const grid = await send('PUT', url, { answers });
		expect(grid.status).toBe(200);
		expectShape('sitting-answers', grid.json);
		const states = grid.json.students[0].answers.map(
			({ position, part, score }: { position: number; part?: number; score: { state: string } }) => [
				position,
				part,
				score.state,
			],
		);
		expect(states).toEqual([
			[1, undefined, 'correct'],
			[2, undefined, expect.stringMatching(/correct|invalid/)],
			[3, undefined, 'not-reached'],
			[4, 2, 'omitted'],
		]);
		const changed = await send('PUT', url, { answers: [{ position: 1, text: 'a' }] });
		expect(changed.json.students[0].answers).toHaveLength(4);
		expect(changed.json.students[0].answers[0].score.state).toBe('incorrect');
	});

	test.each([
		['a text no choice has', [{ position: 1, text: 'Q' }], 'response-unreadable'],
		['a place the form lacks', [{ position: 9, text: 'b' }], 'place-unknown'],
		['a part an item lacks', [{ position: 1, part: 1, text: 'b' }], 'place-unknown'],
		[
			'a place twice',
			[
				{ position: 1, text: 'b' },
				{ position: 1, text: 'a' },
			],
			'place-repeated',
		],
		['neither text nor given', [{ position: 1 }], 'order-contradictory'],
		['too many points', [{ position: 1, given: { kind: 'points', points: 2 } }], 'points-above-maximum'],
		[
			'a response of another kind',
			[{ position: 1, given: { kind: 'response', response: { kind: 'point', at: 1 } } }],
			'response-kind',
		],
	])('by hand refuse %s and keep nothing', async (_title, answers, code) => {
		const { send } = await openSatApp();
		const both = [{ position: 2, text: '5' }, ...answers];
		const answer = await send('PUT', '/api/sittings/first-check/students/6A-01', { answers: both });
		expect([answer.status, answer.json.problems[0].code]).toEqual([400, code]);
		expect((await send('GET', '/api/sittings/first-check')).json.answers).toBe(0);
	});

	test('by hand refuse a student of another group', async () => {
		const { send } = await openSatApp();
		const answer = await send('PUT', '/api/sittings/first-check/students/6B-01', {
			answers: [{ position: 1, text: 'b' }],
		});
		expect([answer.status, answer.json.code]).toEqual([404, 'not-found']);
	});

	test('have explanations rated by two readers', async () => {
		const { send } = await openSatApp();
		for (const code of ['6A-01', '6A-02'])
			await send('PUT', `/api/sittings/first-check/students/${code}`, { answers: [{ position: 3, text: 'Because' }] });
		const rate = (reader: string, ...points: number[]) =>
			send('POST', '/api/sittings/first-check/ratings', {
				reader,
				ratings: points.map((each, index) => ({ code: `6A-0${index + 1}`, position: 3, points: each })),
			});
		await rate('first', 1, 2);
		const answer = await rate('second', 1, 1);
		expectShape('rating-agreement', answer.json);
		expect(answer.json.places).toMatchObject([{ label: '3', both: 2, exact: 0.5, kappa: 0 }]);
		expect(answer.json.places[0].caution).toContain('swings widely');
		expect((await send('GET', '/api/sittings/first-check/ratings')).json).toEqual(answer.json);
		const read = async (reader: string) => {
			const { json } = await send('GET', `/api/sittings/first-check/ratings?reader=${reader}`);
			expectShape('rating-agreement', json);
			return json.places[0].responses;
		};
		expect(await read('second')).toEqual([
			{ code: '6A-01', text: 'Because', points: 1 },
			{ code: '6A-02', text: 'Because', points: 1 },
		]);
		expect(await read('agreed')).toEqual([
			{ code: '6A-01', text: 'Because', first: 1, second: 1 },
			{ code: '6A-02', text: 'Because', first: 2, second: 1 },
		]);
		expect((await send('GET', '/api/sittings/first-check/ratings?reader=third')).status).toBe(400);
		const refused = await rate('first', 7);
		expect([refused.status, refused.json.code]).toEqual([422, 'rating-refused']);
	});

	test('are scored anew, shown and purged by code and by sitting', async () => {
		const { send } = await openSatApp();
		await send('PUT', '/api/sittings/first-check/students/6A-01', { answers: [{ position: 1, text: 'b' }] });
		const report = await send('POST', '/api/sittings/first-check/rescore', { version: 1, why: 'to be sure' });
		expectShape('rescoring-report', report.json);
		const record = await send('GET', '/api/students/6A-01');
		expectShape('student-record', record.json);
		expect(record.json.sittings[0].answers[0].scores).toHaveLength(2);
		const wrong = await send('POST', '/api/students/6A-01/purge', { confirm: '6A-02' });
		expect([wrong.status, wrong.json.code]).toEqual([400, 'confirmation-missing']);
		const purged = await send('POST', '/api/students/6A-01/purge', { confirm: '6A-01' });
		expectShape('purge-report', purged.json);
		expect((await send('GET', '/api/students/6A-01')).status).toBe(404);
		expectShape(
			'purge-report',
			(await send('POST', '/api/sittings/first-check/purge', { confirm: 'first-check' })).json,
		);
		expect((await send('GET', '/api/sittings')).json).toEqual([]);
	});
});

describe('files of responses', () => {
	const order = {
		form: 'every-kind',
		group: 'class-6a',
		date: '2026-09-14',
		mode: 'hand',
		mapping: { student: 'Code' },
	};

	test('are previewed, tried and read', async () => {
		const { send } = await openSatApp();
		const content = base64('Name;Code;1;2\nQuill;6A-01;b;=-5\nZeal;Nobody;b;5\n');
		const preview = await send('POST', '/api/responses/preview', { form: 'every-kind', content });
		expectShape('reading-preview', preview.json);
		const trial = await send('POST', '/api/responses/read', { ...order, content, dryRun: true });
		expectShape('reading-report', trial.json);
		expect((await send('GET', '/api/sittings/first-check')).json.students).toBe(0);
		const report = await send('POST', '/api/responses/read', { ...order, content });
		expect(report.json).toMatchObject({ students: 1, rejected: [{ line: 3 }], sittings: [{ id: 'first-check' }] });
		const again = await send('POST', '/api/responses/read', { ...order, content });
		expect([again.status, again.json.code]).toEqual([409, 'responses-present']);
	});

	test('may be larger than other requests', async () => {
		const { send } = await openSatApp();
		const content = base64(
			`Code;1;x\n6A-01;b;${'y'.repeat(150_000)}\n${`6A-09;b;${'y'.repeat(150_000)}\n`.repeat(10)}`,
		);
		expect(content.length).toBeGreaterThan(2_000_000);
		const report = await send('POST', '/api/responses/read', { ...order, content });
		expect(report.json).toMatchObject({ students: 1 });
	});

	test('that do not fit are refused with their problems', async () => {
		const { send } = await openSatApp();
		const answer = await send('POST', '/api/responses/read', { ...order, content: base64('Kode;1\n6A-01;b\n') });
		expect([answer.status, answer.json.code, answer.json.problems[0].code]).toEqual([
			422,
			'mapping-refused',
			'column-unknown',
		]);
		const codes = [['ada', 'ada']];
		const bad = await send('POST', '/api/responses/read', {
			...order,
			codes: [['x', 'A1'], ...codes],
			content: base64('Code;1\n'),
		});
		expect([bad.status, bad.json.code]).toEqual([400, 'code-list-unreadable']);
	});
});
