import { describe, expect, test } from 'vitest';
import { choiceItem, formOf, griddedItem } from '../../helpers/sample-items.ts';
import { openTestStore } from '../../helpers/test-store.ts';

async function openBank() {
	const store = await openTestStore();
	await store.items.createMany(
		[
			{ id: 'lift-one', item: choiceItem() },
			{ id: 'tide-one', item: griddedItem() },
		],
		'approved',
	);
	return store;
}

describe('several forms at once', () => {
	test('are kept in their order, with ids of the bank where they bring none', async () => {
		const { forms } = await openBank();
		const kept = await forms.createMany([
			{ form: formOf(['lift-one'], { title: 'A' }) },
			{ id: 'form-b', form: formOf(['tide-one'], { title: 'B' }) },
		]);
		expect(kept.map(({ id, version, form }) => `${id} ${version} ${form.title}`)).toEqual([
			'test-0001 1 A',
			'form-b 1 B',
		]);
		expect((await forms.get('form-b')).items.map(({ id }) => id)).toEqual(['tide-one']);
	});

	test('are kept all or none', async () => {
		const { forms } = await openBank();
		const good = { id: 'form-a', form: formOf(['lift-one']) };
		await expect(forms.createMany([good, { id: 'form-b', form: formOf(['no-item']) }])).rejects.toMatchObject({
			code: 'content-refused',
			problems: [{ code: 'form-item-unknown', path: '/1/form/sections/0/items/0' }],
		});
		await expect(forms.createMany([good, good])).rejects.toMatchObject({ code: 'id-taken', id: 'form-a' });
		expect(await forms.list()).toEqual([]);
	});
});

describe('where items were used', () => {
	test('is told by form and day for the versions that were given, once each', async () => {
		const { forms, groups } = await openBank();
		await forms.create({ id: 'form-a', form: formOf(['lift-one'], { title: 'Form A' }) });
		await forms.revise('form-a', 1, formOf(['tide-one'], { title: 'Form A' }));
		await forms.create({ id: 'form-b', form: formOf(['lift-one'], { title: 'Form B' }) });
		for (const name of ['6A', '6B'])
			await groups.add({ id: `class-${name.toLowerCase()}`, group: { name, studentCodes: [`${name}-01`] } });
		await forms.give('form-a', { version: 1, group: 'class-6a', date: '2026-10-12' });
		await forms.give('form-a', { version: 1, group: 'class-6b', date: '2026-10-12' });
		await forms.give('form-a', { version: 1, group: 'class-6b', date: '2026-10-13' });
		expect(await forms.uses()).toEqual([
			{ item: 'lift-one', form: 'Form A', date: '2026-10-12' },
			{ item: 'lift-one', form: 'Form A', date: '2026-10-13' },
		]);
	});

	test('is nothing while no form was given', async () => {
		const { forms } = await openBank();
		await forms.create({ id: 'form-a', form: formOf(['lift-one']) });
		expect(await forms.uses()).toEqual([]);
	});
});

describe('a form given to students', () => {
	test('is refused on a day no calendar has, twice, for no group, and in a version there is none of', async () => {
		const { forms, groups } = await openBank();
		await forms.create({ id: 'form-a', form: formOf(['lift-one']) });
		await groups.add({ id: 'class-6a', group: { name: '6A', studentCodes: ['6A-01'] } });
		const giving = { version: 1, group: 'class-6a', date: '2026-10-12' };
		const give = (change: object) => forms.give('form-a', { ...giving, ...change });
		await give({});
		await expect(give({})).rejects.toMatchObject({ code: 'already-given' });
		await expect(give({ date: '2026-02-30' })).rejects.toMatchObject({
			code: 'content-refused',
			problems: [{ code: 'date-unknown', path: '/date' }],
		});
		await expect(give({ group: 'class-6b' })).rejects.toMatchObject({ code: 'not-found', subject: 'group' });
		await expect(give({ version: 2 })).rejects.toMatchObject({ code: 'not-found', subject: 'form' });
		expect((await forms.get('form-a')).givings).toEqual([giving]);
	});
});
