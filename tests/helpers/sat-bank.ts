import type { Item, ReadingReport, ResponseMapping } from '../../item-bank/types.ts';
import { type ResponseReading, readResponses } from '../../server/response-reading.ts';
import type { Store } from '../../server/store/open-store.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	makeSet,
} from './items.ts';

/** One item of every kind at positions 1 to 9; position 9 is a set with the parts 9.1 and 9.2. Keys: b, ac, 5, -7, cadb, a-c b-a c-d, a, by rubric, b and 5. */
export const everyKind: readonly Item[] = [
	makeChoice(),
	makeMultipleChoice(),
	makeGridded(),
	makePoint(),
	makeOrder(),
	makeMatch(),
	makeInlineChoice(),
	makeExplanation(),
	makeSet(),
];

/** Keeps a form of the items ("every-kind" unless named) and a group "class-6a" of the codes 6A-01 to 6A-04. */
export async function fillSatBank(
	store: Store,
	items: readonly Item[] = everyKind,
	form = 'every-kind',
): Promise<void> {
	const entries = items.map((item, index) => ({ id: `${form}-item-${index + 1}`, item }));
	await store.items.createMany(entries, 'approved');
	await store.forms.create({
		id: form,
		form: {
			title: form,
			gridProfile: 'plain-sign-first',
			sections: [{ title: 'All', items: entries.map(({ id }) => ({ item: id, version: 1 })) }],
		},
	});
	if ((await store.groups.list()).length > 0) return;
	await store.groups.add({
		id: 'class-6a',
		group: { name: 'Class 6A', studentCodes: ['6A-01', '6A-02', '6A-03', '6A-04'] },
	});
	await store.groups.add({ id: 'class-6b', group: { name: 'Class 6B', studentCodes: ['6B-01', '6B-02'] } });
}

/** Reads text (or bytes) as a file into a sitting of "every-kind" by class 6A. */
export function readText(
	store: Store,
	content: string | Uint8Array,
	mapping: Partial<ResponseMapping> = {},
	changes: Partial<ResponseReading> = {},
): Promise<ReadingReport> {
	const bytes = typeof content === 'string' ? Buffer.from(content) : content;
	return readResponses(store, () => [bytes], {
		form: 'every-kind',
		date: '2026-09-14',
		mode: 'paper',
		mapping: { student: 'Code', ...mapping },
		...('group' in changes || mapping.group !== undefined ? {} : { group: 'class-6a' }),
		...changes,
	});
}

/** Heading and rows of a wide file with a column for every place of "every-kind". */
export function wideFile(...rows: readonly (readonly string[])[]): string {
	const heading = ['Code', '1', '2', '3', '4', '5', '6', '7', '8', '9.1', '9.2'];
	return `${[heading, ...rows].map((row) => row.join(';')).join('\r\n')}\r\n`;
}

/** A student who has everything right but the explanation, which waits for a scorer. */
export const rightRow = ['b', 'AC', '5', '-7', 'CADB', 'a-c b-a c-d', '<', 'Because.', 'B', '5'];
