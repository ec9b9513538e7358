import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeText, findEncoding } from '../../../server/results/byte-encoding.ts';

const cut = (bytes: Uint8Array, size: number) => () =>
	Array.from({ length: Math.ceil(bytes.length / size) }, (_unused, index) =>
		bytes.subarray(index * size, (index + 1) * size),
	);

async function decode(bytes: Uint8Array, size = 3): Promise<string> {
	const source = cut(bytes, size);
	const { encoding } = await findEncoding(source);
	let text = '';
	for await (const piece of decodeText(source, encoding)) text += piece;
	return text;
}

describe('encodings', () => {
	test('UTF-8 is found and read whatever it holds and however it is cut', async () => {
		await fc.assert(
			fc.asyncProperty(
				fc.string({ minLength: 1, unit: 'grapheme' }),
				fc.integer({ min: 1, max: 5 }),
				async (text, size) => {
					fc.pre(!text.includes('\0') && !text.startsWith('PK') && !text.startsWith('\uFEFF'));
					expect(await decode(Buffer.from(text), size)).toBe(text);
				},
			),
		);
	});

	test('a byte-order mark goes', async () => {
		expect(await decode(Buffer.from('\uFEFFCode,1'))).toBe('Code,1');
	});

	test('Windows-1252 is found by bytes that never form UTF-8', async () => {
		const bytes = Buffer.from([0x4e, 0xe4, 0x0a, 0x96, 0x35]);
		expect(await findEncoding(cut(bytes, 2))).toEqual({ encoding: 'windows-1252' });
		expect(await decode(bytes)).toBe('Nä\n–5');
	});

	test('UTF-16 is known by its mark', async () => {
		expect(await decode(Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from('a\t−5', 'utf16le')]))).toBe('a\t−5');
	});

	test('a mixture is told with its line', async () => {
		const bytes = Buffer.concat([Buffer.from('−5\n7\n'), Buffer.from([0x4e, 0xe4])]);
		expect(await findEncoding(cut(bytes, 4))).toEqual({ encoding: 'utf-8', mixedAt: 3 });
	});

	test.each([
		['nothing', [], 'results-empty'],
		['a workbook', [0x50, 0x4b, 3, 4], 'results-not-text'],
		['an old workbook', [0xd0, 0xcf, 0x11, 0xe0], 'results-not-text'],
		['bytes that are no text', [0x41, 0, 0x42], 'results-not-text'],
	])('%s is refused', async (_title, bytes, code) => {
		await expect(findEncoding(() => [Uint8Array.from(bytes)])).rejects.toMatchObject({ code });
	});
});
