import { strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { exportForm } from '../../../server/qti/export-form.ts';
import { readZip } from '../../../server/qti/package/read-zip.ts';
import { joinSegments, packFiles } from '../../../server/qti/package/write-zip.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { validatePackage } from '../../../server/qti/validate-package.ts';
import { sampleForm, sampleItems } from './sample-form.ts';
import { sampleKinds, sampleKindsForm } from './sample-kinds.ts';

let files: Record<string, Uint8Array>;

beforeAll(async () => {
	const { bytes } = await exportForm({ form: sampleForm, items: sampleItems }, { as: 'qti-2.2', images: 'png' });
	files = unzipSync(bytes);
});
afterAll(closeValidation);

/** Codes of what is wrong with the sample package after a change. */
async function codesAfter(change: (files: Record<string, Uint8Array>) => void): Promise<readonly string[]> {
	const copy = { ...files };
	change(copy);
	return (await validatePackage(zipSync(copy))).map(({ code }) => code);
}

function replaceIn(held: Record<string, Uint8Array>, path: string, from: string, to: string): void {
	const text = Buffer.from(held[path] ?? []).toString('utf8');
	expect(text).toContain(from);
	held[path] = strToU8(text.replaceAll(from, to));
}

test('an untouched package is valid, whoever zipped it', async () => {
	expect(await codesAfter(() => {})).toEqual([]);
});

describe('what documents say of each other', () => {
	test('a missing image is found in the manifest and in the item', async () => {
		expect(await codesAfter((held) => delete held['items/images/item-003-figure-1.png'])).toEqual([
			'package-file-missing',
			'package-href-missing',
		]);
	});

	test('a missing line to mark, and a missing part of a set, are found in the same way', async () => {
		const form = { form: sampleKindsForm, items: sampleKinds };
		const kinds = unzipSync((await exportForm(form, { as: 'qti-2.1', images: 'png' })).bytes);
		for (const path of ['items/images/item-001-line.png', 'items/item-008-part-2.xml']) {
			const { [path]: _, ...held } = kinds;
			const problems = await validatePackage(zipSync(held));
			const element = path.endsWith('png') ? 'object' : 'assessmentItemRef';
			expect(problems.map(({ code }) => code)).toEqual(['package-file-missing', 'package-href-missing']);
			expect(problems[1]?.element).toBe(element);
		}
	});

	test('what the parts of a set share is looked for where they name it', async () => {
		const form = { form: sampleKindsForm, items: sampleKinds };
		const kinds = unzipSync((await exportForm(form, { as: 'qti-3.0', images: 'svg' })).bytes);
		const codesWith = async (change: (held: Record<string, Uint8Array>) => void): Promise<readonly string[]> => {
			const held = { ...kinds };
			change(held);
			return (await validatePackage(zipSync(held))).map(({ code }) => code);
		};
		const path = 'items/item-008-stimulus.xml';
		expect(await codesWith(() => {})).toEqual([]);
		expect(await codesWith((held) => delete held[path])).toEqual([
			'package-file-missing',
			'package-href-missing',
			'package-href-missing',
		]);
		const renamed = (held: Record<string, Uint8Array>): void =>
			replaceIn(held, path, 'stimulus-29594e4ba8a1', 'stimulus-29594e4ba8a2');
		// In the manifest, in both parts, and where it needs its own figure.
		expect([...(await codesWith(renamed))].sort()).toEqual([
			'package-dependency-missing',
			...Array(3).fill('package-identifier-mismatch'),
		]);
		const unneeded = (held: Record<string, Uint8Array>): void =>
			replaceIn(held, 'imsmanifest.xml', '<dependency identifierref="stimulus-29594e4ba8a1"/>', '');
		expect(await codesWith(unneeded)).toEqual(['package-dependency-missing', 'package-dependency-missing']);
		const capital = (held: Record<string, Uint8Array>): void => {
			held['items/Item-001.xml'] = held['items/item-001.xml'] ?? new Uint8Array();
		};
		expect(await codesWith(capital)).toEqual(['package-stray-file', 'package-file-unlisted']);
	});

	test('a missing item is found in the manifest and in the test', async () => {
		expect(await codesAfter((held) => delete held['items/item-003.xml'])).toEqual([
			'package-file-missing',
			'package-href-missing',
		]);
	});

	test('a file the manifest does not list is found, and one that has no place in a package', async () => {
		const [item = new Uint8Array()] = [files['items/item-001.xml']];
		expect(await codesAfter((held) => (held['items/item-004.xml'] = item))).toEqual(['package-file-unlisted']);
		expect(await codesAfter((held) => (held['answer-map.csv'] = strToU8('A')))).toEqual([
			'package-stray-file',
			'package-file-unlisted',
		]);
	});

	test('an item that changed its identifier is found in manifest and test', async () => {
		expect(
			await codesAfter((held) => replaceIn(held, 'items/item-001.xml', 'item-4954a7d8cc99', 'item-4954a7d8cc98')),
		).toEqual(['package-identifier-mismatch', 'package-identifier-mismatch']);
	});

	test('a dependency left out is found', async () => {
		const dependency = '<dependency identifierref="image-item-003-figure-1"/>';
		expect(await codesAfter((held) => replaceIn(held, 'imsmanifest.xml', dependency, ''))).toEqual([
			'package-dependency-missing',
		]);
	});

	test('a picture that is no picture is found', async () => {
		const path = 'items/images/item-003-figure-1.png';
		expect(await codesAfter((held) => (held[path] = strToU8('<script/>')))).toEqual(['package-stray-file']);
	});
});

describe('documents that are not what they should be', () => {
	test('an item outside the profile is refused with file, element and line', async () => {
		const copy = { ...files };
		replaceIn(copy, 'items/item-001.xml', 'shuffle="false"', 'shuffle="true"');
		expect(await validatePackage(zipSync(copy))).toEqual([
			expect.objectContaining({
				code: 'qti-not-in-profile',
				file: 'items/item-001.xml',
				element: 'choiceInteraction',
				line: 28,
			}),
		]);
	});

	test('text that is not XML, and a document type, are refused', async () => {
		expect(await codesAfter((held) => (held['test.xml'] = strToU8('<assessmentTest>')))).toContain(
			'qti-not-well-formed',
		);
		const bomb = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;">]><x>&b;</x>';
		expect(await codesAfter((held) => (held['test.xml'] = strToU8(bomb)))).toContain('qti-doctype');
	});

	test('a package without manifest, or of an unknown version, is refused', async () => {
		expect(await codesAfter((held) => delete held['imsmanifest.xml'])).toEqual(['package-manifest-missing']);
		expect(
			await codesAfter((held) => replaceIn(held, 'imsmanifest.xml', 'QTIv2.2 Package', 'QTIv2.3 Package')),
		).toEqual(['package-version-unknown']);
	});

	test('a package that mixes versions is refused', async () => {
		expect(await codesAfter((held) => replaceIn(held, 'items/item-001.xml', 'imsqti_v2p2"', 'imsqti_v2p1"'))).toContain(
			'qti-not-in-profile',
		);
	});
});

describe('archives nobody should trust', () => {
	const sound = (): Buffer =>
		Buffer.from(joinSegments([packFiles([{ path: 'imsmanifest.xml', bytes: strToU8('<a/>'.repeat(99)) }])]));

	test('bytes that are no archive, a cut archive and an empty one', async () => {
		for (const bytes of [new Uint8Array(), strToU8('hello'), sound().subarray(0, 60)]) {
			expect((await validatePackage(bytes)).map(({ code }) => code)).toEqual(['package-not-zip']);
		}
	});

	test.each(['../climbs.xml', '/absolute.xml', 'C:/drive.xml', 'back\\slash.xml'])('the path %s', async (path) => {
		const bytes = zipSync({ [path]: strToU8('x') });
		expect((await validatePackage(bytes)).map(({ code }) => code)).toEqual(['package-path']);
	});

	test('a path given twice', async () => {
		const twice = joinSegments([
			packFiles([
				{ path: 'a.xml', bytes: strToU8('1') },
				{ path: 'a.xml', bytes: strToU8('2') },
			]),
		]);
		expect((await validatePackage(twice)).map(({ code }) => code)).toEqual(['package-path-repeated']);
	});

	test('a checksum that does not match', async () => {
		const bytes = sound();
		const central = bytes.readUInt32LE(bytes.length - 6);
		bytes.writeUInt32LE(bytes.readUInt32LE(central + 16) ^ 1, central + 16);
		expect((await validatePackage(bytes)).map(({ code }) => code)).toEqual(['package-damaged']);
	});

	test('a size that is a lie', async () => {
		const bytes = sound();
		const central = bytes.readUInt32LE(bytes.length - 6);
		bytes.writeUInt32LE(5, central + 24);
		expect((await validatePackage(bytes)).map(({ code }) => code)).toEqual(['package-damaged']);
	});

	test('a file, an archive or a count beyond the limits, before anything is unpacked', async () => {
		const bomb = zipSync({ 'a.xml': new Uint8Array(3_000_000), 'b.xml': new Uint8Array(3_000_000) });
		expect(bomb.length).toBeLessThan(20_000);
		const wide = { entries: 9, file: 9e6, total: 9e6 };
		await expect(readZip(bomb, { ...wide, file: 2e6 })).rejects.toMatchObject({
			code: 'package-too-large',
			file: 'a.xml',
		});
		await expect(readZip(bomb, { ...wide, total: 5e6 })).rejects.toMatchObject({
			code: 'package-too-large',
			file: 'b.xml',
		});
		await expect(readZip(bomb, { ...wide, entries: 1 })).rejects.toMatchObject({ code: 'package-too-large' });
		expect((await readZip(bomb, wide)).size).toBe(2);
	});
});
