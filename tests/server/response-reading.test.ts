import { describe, expect, test } from 'vitest';
import { writeAnswerMap } from '../../server/qti/answer-map.ts';
import { itemIdentifier } from '../../server/qti/identifiers.ts';
import { placeForm } from '../../server/qti/placement.ts';
import { previewResponses } from '../../server/response-reading.ts';
import { readCodes } from '../../server/results/code-list.ts';
import type { Store } from '../../server/store/open-store.ts';
import { fillSatBank, readText, rightRow, wideFile } from '../helpers/sat-bank.ts';
import { expectShape } from '../helpers/test-app.ts';
import { openTestStore } from '../helpers/test-store.ts';

async function openBank(): Promise<Store> {
	const store = await openTestStore();
	await fillSatBank(store);
	return store;
}

const onlySitting = async (store: Store): Promise<string> => (await store.sittings.list())[0]?.id ?? '';
/** State of every answer by code and place. */
async function statesOf(store: Store, id?: string): Promise<Readonly<Record<string, readonly string[]>>> {
	const { students } = await store.responses.grid(id ?? (await onlySitting(store)));
	return Object.fromEntries(
		students
			.filter(({ answers }) => answers.length > 0)
			.map(({ code, answers }) => [code, answers.map(({ score }) => score.state)]),
	);
}

describe('a wide file', () => {
	test('becomes a sitting with raw responses and scores', async () => {
		const store = await openBank();
		const report = await readText(
			store,
			wideFile(['6A-01', ...rightRow], ['6a-02', 'a', 'AB', "'-5", '=-7', '', 'AC', '>', '', 'A', '−5']),
		);
		expectShape('reading-report', report);
		expect(report).toMatchObject({
			delimiter: ';',
			encoding: 'utf-8',
			rows: 2,
			students: 2,
			answers: 20,
			rejected: [],
		});
		expect(await statesOf(store)).toEqual({
			'6A-01': [
				'correct',
				'correct',
				'correct',
				'correct',
				'correct',
				'correct',
				'correct',
				'unrated',
				'correct',
				'correct',
			],
			'6A-02': [
				'incorrect',
				'incorrect',
				'incorrect',
				'correct',
				'omitted',
				'incorrect',
				'incorrect',
				'omitted',
				'incorrect',
				'incorrect',
			],
		});
		const grid = await store.responses.grid(await onlySitting(store));
		expectShape('sitting-answers', grid);
		expect(grid.students.map(({ code }) => code)).toEqual(['6A-01', '6A-02', '6A-03', '6A-04']);
		expect(grid.students[1]?.answers[3]).toMatchObject({ raw: '=-7', given: { response: { kind: 'point', at: -7 } } });
		expect(grid.entry).toMatchObject({ students: 2, answers: 20, unrated: 1 });
	});

	test('keeps nothing of columns that are not taken', async () => {
		const store = await openBank();
		const report = await readText(store, 'Name,Code,Street,3\n"Quill, Ada",6A-01,12 Tide Lane,5\n');
		expect(report.columns.map(({ as }) => as)).toEqual(['discarded', 'student', 'discarded', 'item']);
		expect(JSON.stringify(await store.readStudent('6A-01'))).not.toMatch(/Quill|Lane/);
		expect(report.notes.join()).toContain('places without a column: 1, 2, 4');
	});

	test('tells every row it cannot take with line and reason, and takes the others', async () => {
		const store = await openBank();
		const rows = wideFile(
			['6A-01', ...rightRow],
			['Ada', ...rightRow],
			['6A-02', 'x', ...rightRow.slice(1)],
			['6A-03', ...rightRow, 'more'],
			['', ...rightRow],
			['6A-04', ...rightRow.slice(0, 2), '=A1+2', ...rightRow.slice(3)],
		);
		const { rejected, students } = await readText(store, rows);
		expect(rejected.map(({ line, code }) => [line, code])).toEqual([
			[3, 'student-unknown'],
			[4, 'response-unreadable'],
			[5, 'row-length'],
			[6, 'student-missing'],
			[7, 'cell-unreadable'],
		]);
		expect(students).toBe(1);
	});

	test('refuses both of two rows of one student, or takes the one asked for', async () => {
		const file = wideFile(['6A-01', ...rightRow], ['6A-02', ...rightRow], ['6A-01', 'a', ...rightRow.slice(1)]);
		const refused = await readText(await openBank(), file);
		expect(refused.rejected.map(({ line, code }) => [line, code])).toEqual([
			[2, 'row-repeated'],
			[4, 'row-repeated'],
		]);
		for (const [repeats, state] of [
			['first', 'correct'],
			['last', 'incorrect'],
		] as const) {
			const store = await openBank();
			const report = await readText(store, file, { repeats });
			expect([report.rejected, report.students]).toEqual([[], 2]);
			expect((await statesOf(store))['6A-01']?.[0]).toBe(state);
			expect(report.notes.join()).toContain('1 row was passed over');
		}
	});

	test('tells omitted, not reached and absent apart as the mapping says', async () => {
		const store = await openBank();
		const report = await readText(
			store,
			wideFile(
				['6A-01', 'b', '', 'NR', '**', '', '', '', '', '', ''],
				['6A-02', '', '', '', '', '', '', '', '', '', ''],
			),
			{ blanksAtEnd: 'not-reached', codes: { omitted: ['nr'], invalid: ['**'] } },
		);
		expect(report.absent).toEqual(['6A-02']);
		expect(await statesOf(store)).toEqual({
			'6A-01': ['correct', 'omitted', 'omitted', 'invalid', ...Array(6).fill('not-reached')],
		});
	});

	test('can hold points or shares, never above what is possible', async () => {
		const store = await openBank();
		const report = await readText(store, 'Code;6;8\n6A-01;1,5;2\n6A-02;4;0\n6A-03;-1;0\n6A-04;3;0\n', {
			holds: 'points',
		});
		expect(report.rejected.map(({ line, code }) => [line, code])).toEqual([
			[3, 'points-above-maximum'],
			[4, 'points-unreadable'],
		]);
		expect(await statesOf(store)).toEqual({ '6A-01': ['partly', 'correct'], '6A-04': ['correct', 'incorrect'] });
		const shares = await openBank();
		await readText(shares, 'Code,6\n6A-01,0.5\n', { holds: 'shares' });
		expect((await shares.responses.grid(await onlySitting(shares))).students[0]?.answers[0]?.score.points).toBe(1.5);
	});

	test('can be in Windows-1252, or Unicode text with tabs', async () => {
		for (const bytes of [
			Buffer.from('Schüler\t3\n6A-01\t\x965\n', 'latin1'),
			Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from('Schüler\t3\r\n6A-01\t−5\r\n', 'utf16le')]),
		]) {
			const store = await openBank();
			const report = await readText(store, bytes, { student: 'schüler' });
			expect([report.students, report.delimiter]).toEqual([1, '\t']);
			expect((await statesOf(store))['6A-01']).toEqual(['incorrect']);
		}
	});

	test('that mixes encodings loses only the rows whose answers it touches', async () => {
		const store = await openBank();
		const bytes = Buffer.concat([
			Buffer.from('Name,Code,3\nJosé,6A-01,−5\n'),
			Buffer.from('Jos\xe9,6A-02,5\nx,6A-03,\x965\n', 'latin1'),
		]);
		const report = await readText(store, bytes);
		expect(report.rejected.map(({ line, code }) => [line, code])).toEqual([[4, 'cell-unreadable']]);
		expect(report.notes.join()).toContain('mixes encodings from line 3');
		expect(Object.keys(await statesOf(store))).toEqual(['6A-01', '6A-02']);
	});
});

describe('a long file', () => {
	test('holds a response in each row, in any order', async () => {
		const store = await openBank();
		const mapping = { layout: 'long', student: 'who', place: 'item', answer: 'response' } as const;
		const report = await readText(
			store,
			'who,item,response\n6A-02,3,5\n6A-01,Q1,b\n6A-01,every-kind-item-3,-5\n6A-02,99,b\n6A-02,1,b\n6A-02,1,c\n',
			mapping,
		);
		expect(report.rejected.map(({ line, code }) => [line, code])).toEqual([
			[5, 'place-unknown'],
			[6, 'row-repeated'],
			[7, 'row-repeated'],
		]);
		expect(await statesOf(store)).toEqual({ '6A-01': ['correct', 'incorrect'], '6A-02': ['correct'] });
	});
});

describe('a file of a platform', () => {
	test('names students its own way and items by identifiers', async () => {
		const store = await openBank();
		const { record, items } = await store.forms.get('every-kind');
		const answerMap = writeAnswerMap(record, placeForm(record, items, { pointStyle: 'choice' }));
		const identify = (index: number, part?: number) => itemIdentifier(`every-kind-item-${index}`, 1, part);
		const right = answerMap.split('\r\n').find((line) => line.includes(`,${identify(4)},`)) ?? '';
		const [, letter] = /,point,1,([A-H]),/.exec(right) ?? [];
		const codes = readCodes('login,code\nada@tide.example,6A-01\nbo@tide.example,6A-02\n');
		const file = `Full name,E-mail,${identify(1)},${identify(4)},${identify(6)},${identify(9, 2)}\nAda Quill,Ada@tide.example,B,${letter},"L1 R3; L2 R1; L3 R4",5\nBo,bo@tide.example,A,,,\nCy,cy@tide.example,A,,,\n`;
		const report = await readText(store, file, { student: 'E-mail' }, { answerMap, codes, mode: 'platform' });
		expect(report.rejected).toMatchObject([{ line: 4, code: 'student-unknown' }]);
		expect((await statesOf(store))['6A-01']).toEqual(['correct', 'correct', 'correct', 'correct']);
		expect(JSON.stringify(await store.readStudent('6A-01'))).not.toMatch(/Quill|tide\.example/);
	});

	test('is not read with the answer map of another form', async () => {
		const store = await openBank();
		await fillSatBank(store, undefined, 'other-form');
		const { record, items } = await store.forms.get('other-form');
		const answerMap = writeAnswerMap(record, placeForm(record, items));
		await expect(readText(store, 'Code,1\n6A-01,b\n', {}, { answerMap })).rejects.toMatchObject({
			code: 'answer-map-mismatch',
		});
		await expect(readText(store, 'Code,1\n6A-01,b\n', {}, { answerMap: 'a,b\n' })).rejects.toMatchObject({
			code: 'answer-map-unreadable',
		});
	});

	test('of several classes makes a sitting for each', async () => {
		const store = await openBank();
		const report = await readText(
			store,
			'Class,Code,1\nclass-6a,6A-01,b\nClass 6B,6B-01,a\n6C,6A-01,a\nClass 6B,6A-01,a\n',
			{ group: 'Class' },
		);
		expect(report.sittings.map(({ group, students }) => [group, students])).toEqual([
			['class-6a', 1],
			['class-6b', 1],
		]);
		expect(report.rejected.map(({ line, code }) => [line, code])).toEqual([
			[4, 'group-unknown'],
			[5, 'student-unknown'],
		]);
	});
});

describe('what is there already', () => {
	const first = wideFile(['6A-01', ...rightRow], ['6A-02', ...rightRow]);

	test('stops a second reading until somebody says what shall become of it', async () => {
		const store = await openBank();
		await readText(store, first);
		await expect(readText(store, first)).rejects.toMatchObject({ code: 'responses-present' });
	});

	test('stays when rows are added, and a row that contradicts it is told', async () => {
		const store = await openBank();
		await readText(store, first);
		const file = wideFile(['6A-01', ...rightRow], ['6A-02', 'a', ...rightRow.slice(1)], ['6A-03', ...rightRow]);
		const report = await readText(store, file, {}, { onto: 'add' });
		expect(report).toMatchObject({ unchanged: 1, students: 1, rejected: [{ line: 3, code: 'row-present' }] });
		expect((await statesOf(store))['6A-02']?.[0]).toBe('correct');
		expect(report.states).toMatchObject({ correct: 18 });
	});

	test('goes when it is replaced by a file that fits whole', async () => {
		const store = await openBank();
		await readText(store, first);
		const faulty = wideFile(['6A-01', 'a', ...rightRow.slice(1)], ['6A-02', 'Q', ...rightRow.slice(1)]);
		await expect(readText(store, faulty, {}, { onto: 'replace' })).rejects.toMatchObject({ code: 'rows-rejected' });
		expect((await statesOf(store))['6A-01']?.[0]).toBe('correct');
		await readText(store, wideFile(['6A-01', 'a', ...rightRow.slice(1)]), {}, { onto: 'replace' });
		expect(Object.keys(await statesOf(store))).toEqual(['6A-01']);
		expect((await statesOf(store))['6A-01']?.[0]).toBe('incorrect');
	});

	test('is untouched by a dry run, which says the same as the reading', async () => {
		const store = await openBank();
		const trial = await readText(store, first, {}, { dryRun: true });
		expect(await store.sittings.list()).toEqual([]);
		const report = await readText(store, first);
		expect({ ...trial, dryRun: false, sittings: [] }).toEqual({ ...report, sittings: [] });
		expect(trial.sittings).toMatchObject([{ group: 'class-6a', students: 2, answers: 20 }]);
	});
});

describe('files that cannot be read at all change nothing', () => {
	test.each([
		['an empty file', '', {}, 'results-empty', undefined],
		['a heading row alone', 'Code,1\n', {}, 'rows-none', undefined],
		['rows none of which fits', 'Code,1\nAda,b\n', {}, 'rows-none', 'student-unknown'],
		['another delimiter than named', 'Code;1\n6A-01;b\n', { delimiter: ',' }, 'mapping-refused', 'delimiter-wrong'],
		['a missing column', 'Kode,1\n6A-01,b\n', {}, 'mapping-refused', 'column-unknown'],
		['two columns of one name', 'Code,Code,1\n6A-01,6A-01,b\n', {}, 'mapping-refused', 'column-repeated'],
		['no column of an item', 'Code,x\n6A-01,b\n', {}, 'mapping-refused', 'columns-without-items'],
		['two columns of one place', 'Code,1,Q1\n6A-01,b,b\n', {}, 'mapping-refused', 'place-repeated'],
		[
			'an unknown place',
			'Code,x\n6A-01,b\n',
			{ items: [{ column: 'x', place: '77' }] },
			'mapping-refused',
			'place-unknown',
		],
		['ratings of a choice', 'Code,1\n6A-01,1\n', { holds: 'ratings' }, 'mapping-refused', 'rating-refused'],
		['an unknown field', 'Code,1\n6A-01,b\n', { colour: 'red' }, 'mapping-refused', 'field-unknown'],
		[
			'a long file without its column of responses',
			'Code,1\n6A-01,b\n',
			{ layout: 'long', place: '1' },
			'mapping-refused',
			'field-missing',
		],
	])('%s', async (_title, text, mapping, code, problem) => {
		const store = await openBank();
		const error = await readText(store, text, mapping as object).catch((caught: unknown) => caught);
		expect(error).toMatchObject({ code, ...(problem ? { problems: [{ code: problem }] } : {}) });
		expect(await store.sittings.list()).toEqual([]);
	});

	test('a file that fits nowhere is given up and not listed without end', async () => {
		const store = await openBank();
		const rows = Array.from({ length: 10_050 }, (_unused, index) => `X-${index},b`).join('\n');
		await expect(readText(store, `Code,1\n6A-01,b\n${rows}\n`)).rejects.toMatchObject({ code: 'rows-rejected' });
		expect(await store.sittings.list()).toEqual([]);
	});
});

describe('a preview', () => {
	test('finds the columns by itself and shows nothing of those it does not take', async () => {
		const store = await openBank();
		const text = 'Name;Student;1;3\nQuill;6A-01;b;=A1\nZeal;6A-02;x;5\n';
		const preview = await previewResponses(store, () => [Buffer.from(text)], { form: 'every-kind' });
		expectShape('reading-preview', preview);
		expect(preview.mapping).toEqual({ student: 'Student' });
		expect(preview.rows[0]?.answers[0]).toEqual({ place: '1', raw: 'b', reads: 'correct' });
		expect(preview.rows[1]?.answers[0]?.reads).toContain('expected letters among A, B, C, D');
		expect(JSON.stringify(preview)).not.toMatch(/Quill|Zeal/);
	});

	test('knows a long file and its column of groups', async () => {
		const store = await openBank();
		const text = 'class,code,item,response\nclass-6a,6A-01,1,b\nclass-6b,6B-01,3,5\n';
		const { mapping, rows } = await previewResponses(store, () => [Buffer.from(text)], { form: 'every-kind' });
		expect(mapping).toEqual({ layout: 'long', place: 'item', answer: 'response', student: 'code', group: 'class' });
		expect(rows.map(({ answers }) => answers[0]?.reads)).toEqual(['correct', 'correct']);
	});

	test('says so when no column holds student codes', async () => {
		const store = await openBank();
		const source = () => [Buffer.from('Name,1\nQuill,b\n')];
		await expect(previewResponses(store, source, { form: 'every-kind' })).rejects.toMatchObject({
			code: 'student-column-unknown',
		});
	});
});
