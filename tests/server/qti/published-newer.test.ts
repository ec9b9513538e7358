import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { XmlDocument, XmlElement } from 'libxml2-wasm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { exportForm } from '../../../server/qti/export-form.ts';
import { type PlacingManner, placeItems } from '../../../server/qti/placement.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { getVersionFacts, lomNamespace } from '../../../server/qti/versions.ts';
import { writeItem, writeStimulus } from '../../../server/qti/write/item.ts';
import { writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { hasCommand, referenceFolder, requireOutside } from '../../helpers/reference.ts';
import { itemKinds, randomForm, randomItems } from './random-items.ts';
import { compileReference } from './reference-schemas.ts';
import { fileOf, unpack } from './unpacked.ts';

const hasTools = hasCommand('python3') && hasCommand('xmllint');
requireOutside('the reference folder', referenceFolder !== undefined);
requireOutside('python3 and xmllint', hasTools);
afterAll(closeValidation);

const manners: readonly PlacingManner[] = [
	{},
	{ pointStyle: 'choice', gridStyle: 'columns' },
	{ hasFeedback: true },
	{ pointStyle: 'choice', gridStyle: 'columns', hasFeedback: true },
];

/**
 * What speaks against documents by QTI 3.0 as reconstructed from the published 2.2 schema and the published 3.0.1 text, with the
 * rules no schema states: IDs, attribute names, nesting (qti3/check3.py of the reference folder). Lines "BAD file message".
 */
function judge(documents: ReadonlyMap<string, string>): readonly string[] {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-newer-'));
	try {
		for (const [name, xml] of documents) writeFileSync(join(folder, name), xml);
		const script = join(referenceFolder ?? '', 'schemas/qti3/check3.py');
		let printed: string;
		try {
			printed = execFileSync('python3', [script, ...documents.keys()], {
				cwd: folder,
				encoding: 'utf8',
				stdio: ['ignore', 'pipe', 'ignore'],
				maxBuffer: 1e8,
			});
		} catch (error) {
			printed = String((error as { stdout?: string }).stdout ?? '');
		}
		const lines = printed.trim().split('\n');
		const bad = lines.filter((line) => !line.startsWith('OK\t'));
		expect(lines.length - bad.length + new Set(bad.map((line) => line.split('\t')[1])).size).toBe(documents.size);
		return bad;
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** At least 2,000 distinct random items of every kind, in every manner of answering. */
function writeManyItems(): ReadonlyMap<string, string> {
	const documents = new Map<string, string>();
	for (const [index, kind] of itemKinds.entries()) {
		const items = randomItems(index === 0 ? 400 : 200, 3000, kind);
		for (const [at, record] of items.entries()) {
			for (const placement of placeItems([record], { ...manners[at % manners.length], sharesStimuli: true })) {
				const written = [writeStimulus(placement, 'qti-3.0', 'png'), writeItem(placement, 'qti-3.0', 'png')];
				for (const document of written) {
					if (document) documents.set(`item-${documents.size}.xml`, writeShapedXml(document.root));
				}
			}
		}
	}
	return documents;
}

const faults = [
	['<qti-item-body>', '<qti-item-body><sketch/>'],
	[' time-dependent="false"', ''],
	['<qti-item-body>', '<qti-response-processing/><qti-item-body>'],
	[' data-catalog-idref="catalog-1"', ' data-catalog-idref="catalog-99"'],
	[' max-choices="0"', ' max-choice="0"'],
] as const;

/** A sound item, and the same with one fault each. */
function writeFaultyItems(): ReadonlyMap<string, string> {
	const [placement] = placeItems(randomItems(1, 3, 'multiple-choice'));
	if (!placement) throw new Error('no item');
	const xml = writeShapedXml(writeItem(placement, 'qti-3.0', 'svg').root);
	for (const [from] of faults) expect(xml).toContain(from);
	const faulty = faults.map(([from, to], index) => [`fault-${index}.xml`, xml.replace(from, to)] as const);
	return new Map([...faulty, ['sound.xml', xml]]);
}

describe.skipIf(!referenceFolder || !hasTools)('QTI 3.0 as reconstructed', () => {
	const items = randomItems(40, 78);
	const many = writeManyItems();
	let files: ReturnType<typeof unpack>;
	let bad: readonly string[];

	// Together: the schema takes seconds to compile, and once is enough.
	beforeAll(async () => {
		const form = { form: randomForm(items, 78), items };
		const order = { as: 'qti-3.0', images: 'svg', grid: 'columns' } as const;
		files = unpack((await exportForm(form, { ...order, hasFeedback: true })).bytes);
		const quiet = unpack((await exportForm(form, order)).bytes);
		const tests = [files, quiet].map((each, index) => [`test-${index}.xml`, fileOf(each, 'test.xml')] as const);
		bad = judge(new Map([...many, ...writeFaultyItems(), ...tests]));
	}, 60_000);

	const badOnes = (kind: string): readonly string[] =>
		bad.filter((line) => line.split('\t')[1]?.startsWith(`${kind}-`) === true);

	test('2,000 distinct random items of every kind, in every manner of answering, are valid', () => {
		expect(many.size).toBeGreaterThan(2000);
		expect(badOnes('item')).toEqual([]);
	});

	test('the check does refuse: an unknown element, a missing attribute, a wrong order, a catalog that is not there', () => {
		expect(new Set(badOnes('fault').map((line) => line.split('\t')[1]))).toEqual(
			new Set(faults.map((_, index) => `fault-${index}.xml`)),
		);
		expect(bad.some((line) => line.includes('sound.xml'))).toBe(false);
	});

	test('the tests of forms are valid, manifest and metadata by their generic schemas', () => {
		expect(badOnes('test')).toEqual([]);
		const schemas = join(referenceFolder ?? '', 'schemas');
		const manifest = fileOf(files, 'imsmanifest.xml');
		// QTI 3.0 has content packaging in a namespace of its own; its profile of the manifest was not at hand.
		const generic = manifest.replaceAll(
			getVersionFacts('qti-3.0').manifestNamespace,
			getVersionFacts('qti-2.2').manifestNamespace,
		);
		const imscp = compileReference(join(schemas, 'imscp/1.1.4'), 'imscp_v1p1.xsd', {
			'http://www.w3.org/2001/xml.xsd': join(schemas, 'w3c/xml.xsd'),
		});
		const document = XmlDocument.fromString(generic);
		imscp.validate(document);
		const lom = compileReference(join(schemas, 'lom'), 'lomLoose.xsd');
		const records = document.find('//lom:lom', { lom: lomNamespace });
		const sets = items.filter(({ item }) => item.kind === 'set').length;
		// One for the package, one for the test, one for each item, part, and shared stimulus.
		expect(records.length).toBe(2 + placeItems(items).length + sets);
		for (const record of records) if (record instanceof XmlElement) lom.validate(record);
		document.dispose();
	});
});
