import { expect, test } from 'vitest';
import {
	type Draft,
	draftKey,
	dropDraft,
	listDrafts,
	newFormId,
	readDraft,
	writeDraft,
} from '../../../web/forms/draft-storage.ts';
import { startForm } from '../../../web/forms/form-edits.ts';

/** A storage in memory that refuses text beyond a length, as browsers do. */
function makeStorage(room = 10_000) {
	const kept = new Map<string, string>();
	return {
		get length() {
			return kept.size;
		},
		key: (index: number) => [...kept.keys()][index] ?? null,
		getItem: (key: string) => kept.get(key) ?? null,
		setItem: (key: string, text: string) => {
			if (text.length > room) throw new Error('no room');
			kept.set(key, text);
		},
		removeItem: (key: string) => void kept.delete(key),
	};
}

const draft: Draft = {
	baseVersion: 2,
	form: startForm('Unit check', 'plain-sign-first', 'One'),
	changedAt: '2026-09-14T08:00:00.000Z',
};

test('what is written is read back, listed by id, and gone when dropped', () => {
	const storage = makeStorage();
	storage.setItem('something-else', '{}');
	expect(writeDraft(storage, 'form-b', draft)).toBe(true);
	writeDraft(storage, 'form-a', draft);
	expect(readDraft(storage, 'form-b')).toEqual(draft);
	expect(listDrafts(storage).map(({ id }) => id)).toEqual(['form-a', 'form-b']);
	dropDraft(storage, 'form-b');
	expect(readDraft(storage, 'form-b')).toBeUndefined();
});

test.each(['', '{', 'null', '{}', '{"baseVersion":1,"changedAt":"x","form":{"title":"A"}}'])(
	'what is no draft is not read: %s',
	(text) => {
		const storage = makeStorage();
		storage.setItem(draftKey('form-a'), text);
		expect(readDraft(storage, 'form-a')).toBeUndefined();
		expect(listDrafts(storage)).toEqual([]);
	},
);

test('says so when the browser has no room', () => {
	expect(writeDraft(makeStorage(10), 'form-a', draft)).toBe(false);
});

test('ids for new forms are ids the bank takes, and differ', () => {
	const ids = Array.from({ length: 50 }, newFormId);
	expect(new Set(ids).size).toBe(50);
	expect(ids.every((id) => /^[a-z0-9][a-z0-9-]{2,62}$/.test(id))).toBe(true);
});
