import { describe, expect, test } from 'vitest';
import type { Store } from '../../../server/store/open-store.ts';
import { makeChoice, makeExplanation, makeGridded, makeSet, numberOptions } from '../../helpers/items.ts';
import { fillSatBank, readText } from '../../helpers/sat-bank.ts';
import { expectShape } from '../../helpers/test-app.ts';
import { openTestStore } from '../../helpers/test-store.ts';

const sitting = { form: 'every-kind', version: 1, group: 'class-6a', date: '2026-09-14', mode: 'paper' } as const;

async function openBank(): Promise<Store> {
	const store = await openTestStore();
	await fillSatBank(store, [makeChoice(), makeGridded(), makeExplanation(), makeSet()]);
	return store;
}
const firstId = async (store: Store) => (await store.sittings.list())[0]?.id ?? '';
const scoreOf = async (store: Store, code: string, position: number) =>
	(await store.responses.grid(await firstId(store))).students
		.find((student) => student.code === code)
		?.answers.find((answer) => answer.position === position)?.score;

describe('a sitting', () => {
	test('is kept once for form version, group, day and mode', async () => {
		const store = await openBank();
		const entry = await store.sittings.add({ id: 'first-check', sitting });
		expectShape('sitting-entry', entry);
		await expect(store.sittings.add({ sitting })).rejects.toMatchObject({ code: 'sitting-present', id: 'first-check' });
		await store.sittings.add({ sitting: { ...sitting, date: '2026-09-15' } });
		expect((await store.sittings.list()).map((each) => each.sitting.date)).toEqual(['2026-09-15', '2026-09-14']);
	});

	test.each([
		['an unknown form', { form: 'nothing' }, 'not-found'],
		['an unknown version', { version: 9 }, 'not-found'],
		['an unknown group', { group: 'nobody' }, 'not-found'],
		['a day that is none', { date: '2026-02-30' }, 'content-refused'],
		['a field for names', { teacher: 'Ada' }, 'content-refused'],
	])('is refused for %s', async (_title, changes, code) => {
		const store = await openBank();
		await expect(store.sittings.add({ sitting: { ...sitting, ...changes } })).rejects.toMatchObject({ code });
	});
});

describe('scoring anew', () => {
	/** Version 2 of the form asks version 2 of the choice, whose stem and key differ. */
	async function correctKey(store: Store): Promise<void> {
		const changed = makeChoice({
			stem: [{ kind: 'paragraph', text: 'What is `-9 - 2`?' }],
			options: numberOptions(-11, -7, 7, 11),
			rule: { kind: 'same-value', expression: '-9 - 2' },
		});
		await store.items.revise('every-kind-item-1', 1, changed);
		await store.items.approve('every-kind-item-1', 2);
		const { record } = await store.forms.get('every-kind');
		const sections = record.form.sections.map((section) => ({
			...section,
			items: section.items.map((entry, index) => (index === 0 ? { ...entry, version: 2 } : entry)),
		}));
		await store.forms.revise('every-kind', 1, { ...record.form, sections });
	}

	test('follows the corrected key and keeps the earlier scores', async () => {
		const store = await openBank();
		await readText(store, 'Code;1;2\n6A-01;b;5\n6A-02;a;7\n');
		await correctKey(store);
		const id = await firstId(store);
		const report = await store.responses.rescore(id, { version: 2, why: 'the key of item 1 was corrected' });
		expectShape('rescoring-report', report);
		expect(report.changed.map(({ code, before, after }) => [code, before.state, after.state])).toEqual([
			['6A-01', 'correct', 'incorrect'],
			['6A-02', 'incorrect', 'correct'],
		]);
		expect(await scoreOf(store, '6A-02', 1)).toMatchObject({ state: 'correct' });
		const [first] = (await store.readStudent('6A-02')).sittings[0]?.answers ?? [];
		expect(first?.scores.map(({ scoring, scoredAs, score }) => [scoring, scoredAs, score.state])).toEqual([
			[1, 1, 'incorrect'],
			[2, 2, 'correct'],
		]);
	});

	test('reaches responses that come later, and leaves points that somebody else gave', async () => {
		const store = await openBank();
		await readText(store, 'Code;1\n6A-01;b\n');
		await correctKey(store);
		const id = await firstId(store);
		await store.responses.rescore(id, { version: 2, why: 'corrected' });
		await readText(store, 'Code;1\n6A-02;a\n', {}, { version: 1, onto: 'add' });
		await readText(store, 'Code;1\n6A-03;1\n', { holds: 'points' }, { version: 1, onto: 'add' });
		expect(await scoreOf(store, '6A-02', 1)).toMatchObject({ state: 'correct' });
		expect(await scoreOf(store, '6A-03', 1)).toMatchObject({ state: 'correct', points: 1 });
		const again = await store.responses.rescore(id, { version: 1, why: 'back' });
		expect(again.kept).toBe(1);
		expect(await scoreOf(store, '6A-03', 1)).toMatchObject({ state: 'correct' });
	});

	test('is refused by a version that asks something else', async () => {
		const store = await openBank();
		await readText(store, 'Code;1\n6A-01;b\n');
		const { record } = await store.forms.get('every-kind');
		const sections = record.form.sections.map((section) => ({ ...section, items: [...section.items].reverse() }));
		await store.forms.revise('every-kind', 1, { ...record.form, sections });
		const id = await firstId(store);
		await expect(store.responses.rescore(id, { version: 2, why: 'x' })).rejects.toMatchObject({
			code: 'places-differ',
		});
		expect((await store.sittings.get(id)).scoring).toBe(1);
	});
});

describe('rating explanations', () => {
	test('scores by the first reader until both agree, all ratings or none', async () => {
		const store = await openBank();
		await readText(store, 'Code;3\n6A-01;Because\n6A-02;So\n');
		const id = await firstId(store);
		expect((await store.sittings.get(id)).unrated).toBe(2);
		const one = (points: number, code = '6A-01') => ({ code, position: 3, points });
		await store.ratings.rate(id, { reader: 'second', ratings: [one(2)] });
		expect(await scoreOf(store, '6A-01', 3)).toMatchObject({ state: 'unrated' });
		await store.ratings.rate(id, { reader: 'first', ratings: [one(1)] });
		expect(await scoreOf(store, '6A-01', 3)).toMatchObject({ state: 'partly', points: 1 });
		await store.ratings.rate(id, { reader: 'agreed', ratings: [one(2)] });
		expect(await scoreOf(store, '6A-01', 3)).toMatchObject({ state: 'correct', points: 2 });
		const refused = { reader: 'first', ratings: [one(2, '6A-02'), one(5)] } as const;
		await expect(store.ratings.rate(id, refused)).rejects.toMatchObject({ code: 'rating-refused' });
		expect(await scoreOf(store, '6A-02', 3)).toMatchObject({ state: 'unrated' });
		await expect(
			store.ratings.rate(id, { reader: 'first', ratings: [{ code: '6A-01', position: 1, points: 1 }] }),
		).rejects.toMatchObject({ code: 'rating-refused' });
	});
});
