import { describe, expect, test } from 'vitest';
import type { SittingAnswers, SittingPlace } from '../../../item-bank/types.ts';
import { entryOf, listCells, readBlock } from '../../../web/results/entry-cells.ts';
import { keepEntries, readEntries } from '../../../web/results/kept-entries.ts';

const choice: SittingPlace = { position: 2, label: '2', item: 'a', version: 1, name: 'A', kind: 'choice', points: 1 };
const part: SittingPlace = { ...choice, position: 3, part: 2, label: '3.2', kind: 'gridded' };
const score = { state: 'correct', points: 1, maximum: 1 } as const;

describe('cells of the class grid', () => {
	test('show letters as capitals, numbers as typed, and a sign for what is no response', () => {
		const answers = [
			{ position: 2, raw: 'a', given: { kind: 'response', response: { kind: 'choice', options: ['a'] } }, score },
			{ position: 3, part: 2, raw: '-7', given: { kind: 'response', response: { kind: 'entry', text: '-7' } }, score },
		] as const;
		const omitted = { position: 2, raw: '', given: { kind: 'mark', mark: 'not-reached' }, score } as const;
		const grid = {
			places: [choice, part],
			students: [
				{ code: '7A-01', answers },
				{ code: '7A-02', answers: [omitted] },
			],
		} as unknown as SittingAnswers;
		expect([...listCells(grid)]).toEqual([
			['7A-01 2', 'A'],
			['7A-01 3.2', '-7'],
			['7A-02 2', '//'],
		]);
	});

	test('are sent as texts, signs as marks, emptied ones as omitted', () => {
		expect(entryOf(part, ' -50 ')).toEqual({ position: 3, part: 2, text: '-50' });
		expect(entryOf(choice, '//')).toEqual({ position: 2, given: { kind: 'mark', mark: 'not-reached' } });
		expect(entryOf(choice, '?')).toEqual({ position: 2, given: { kind: 'mark', mark: 'invalid' } });
		expect(entryOf(choice, '  ')).toEqual({ position: 2, given: { kind: 'mark', mark: 'omitted' } });
	});

	test('come from a spreadsheet as rows and columns', () => {
		expect(readBlock('A\t-7\r\nB\t 12 \r\n')).toEqual([
			['A', '-7'],
			['B', '12'],
		]);
		expect(readBlock('A')).toEqual([['A']]);
	});
});

describe('typed cells the bank does not have', () => {
	test('are kept, read back and forgotten; what cannot be read is none', () => {
		const held = new Map<string, string>();
		const storage = {
			getItem: (name: string) => held.get(name) ?? null,
			setItem: (name: string, text: string) => void held.set(name, text),
			removeItem: (name: string) => void held.delete(name),
		};
		expect(keepEntries(storage, 's', new Map([['7A-01 2', 'B']]))).toBe(true);
		expect([...readEntries(storage, 's')]).toEqual([['7A-01 2', 'B']]);
		keepEntries(storage, 's', new Map());
		expect(held.size).toBe(0);
		held.set('zeropair-entry:s', '{"a":');
		expect(readEntries(storage, 's').size).toBe(0);
		const full = {
			...storage,
			setItem: () => {
				throw new Error('full');
			},
		};
		expect(keepEntries(full, 's', new Map([['x', 'y']]))).toBe(false);
	});
});
