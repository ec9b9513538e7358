import { join } from 'node:path';
import { XmlDocument, type XsdValidator } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';
import { families } from '../../item-bank/families/index.ts';
import { faceOf, makeItem } from '../../item-bank/families/make-items.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { exportForm } from '../../server/qti/export-form.ts';
import { placeItems } from '../../server/qti/placement.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { findPublishedSchema } from '../../server/qti/validate/published.ts';
import { getPublishedValidator } from '../../server/qti/validate/schema-set.ts';
import { validatePackage } from '../../server/qti/validate-package.ts';
import { type QtiVersion, qtiVersions } from '../../server/qti/versions.ts';
import { writeItem, writeStimulus } from '../../server/qti/write/item.ts';
import { writeShapedXml } from '../../server/qti/write/shaped-xml.ts';
import { hasCommand, referenceFolder, requireOutside } from '../helpers/reference.ts';
import { workWithBc } from '../item-bank/families/work-with-bc.ts';
import { brokenRules, publishedAssessment, publishedRules } from '../server/cartridge/published-rules.ts';
import { writeWhole } from '../server/cartridge/written.ts';
import { randomForm } from '../server/qti/random-items.ts';
import { compileReference } from '../server/qti/reference-schemas.ts';

afterAll(closeValidation);

const schemas = join(referenceFolder ?? '', 'schemas');

test.skipIf(!requireOutside('bc', hasCommand('bc')))('keys of 100,000 made items agree with bc', () => {
	const { ours, theirs } = workWithBc('prove', 5500);
	const differing = ours.filter((line, index) => line !== theirs[index]);
	console.log(`${ours.length} items, ${new Set(ours).size} of them with work of their own, ${differing.length} differ`);
	expect(ours.length).toBeGreaterThan(100_000);
	expect(differing).toEqual([]);
});

/** At most 240 items of every family, no two of a family with the same face; some families have fewer. */
function makeTenThousand(): readonly ItemRecord[] {
	const each = 240;
	return families.flatMap((family) => {
		const faces = new Set<string>();
		const records: ItemRecord[] = [];
		for (let turn = 1; records.length < each && turn < 20 * each; turn += 1) {
			const item = makeItem(family, `export/${turn}`);
			if (item === undefined || faces.has(faceOf(item))) continue;
			faces.add(faceOf(item));
			records.push({ id: `${family.id}-${turn}`, version: 1, status: 'approved', item });
		}
		return records;
	});
}

describe('10,000 made items', () => {
	const records = makeTenThousand();

	test('are there, of every family', () => {
		console.log(`${records.length} items of ${families.length} families`);
		expect(records.length).toBeGreaterThanOrEqual(10_000);
	});

	// 2.1 has no published schema at hand: the export profile judges it, which every package below passes.
	test.each<QtiVersion>(['qti-2.2', 'qti-3.0'])(
		'are valid by the schema of %s in every manner of answering',
		(version) => {
			const validator = openSchema(version);
			const manners = [{}, { pointStyle: 'choice', gridStyle: 'columns', hasFeedback: true }] as const;
			for (const manner of manners) {
				for (const placement of placeItems(records, { ...manner, sharesStimuli: version === 'qti-3.0' })) {
					for (const written of [writeStimulus(placement, version, 'svg'), writeItem(placement, version, 'svg')]) {
						if (!written) continue;
						const document = XmlDocument.fromString(writeShapedXml(written.root));
						validator.validate(document);
						document.dispose();
					}
				}
			}
		},
	);

	test.each(qtiVersions)('go out as one valid package of %s', async (version) => {
		for (const more of [{}, { grid: 'columns', points: 'choice', hasFeedback: true }] as const) {
			const order = { as: version, images: 'svg', ...more } as const;
			const { bytes } = await exportForm({ form: randomForm(records, 12), items: records }, order);
			expect(await validatePackage(bytes)).toEqual([]);
		}
	});

	test('are valid in a cartridge, as far as it carries them', () => {
		const validator = publishedAssessment(schemas);
		const rules = publishedRules(join(schemas, 'qti1.2/ccv1p1_qtiasiv1p2p1_v1p0.xsd'));
		const asked = new Set<string>();
		for (let from = 0; from < records.length; from += 250) {
			const whole = writeWhole(records.slice(from, from + 250));
			for (const { placement } of whole.asked) asked.add(placement.record.id);
			const document = XmlDocument.fromString(whole.xml);
			validator.validate(document);
			document.dispose();
			expect(brokenRules(whole.xml, rules)).toEqual([]);
		}
		console.log(`${asked.size} of ${records.length} items are carried by a cartridge, converted where need be`);
		expect(asked.size).toBeGreaterThan(records.length / 2);
	});
});

/** The published 2.2 schema; for 3.0 the reconstructed one (schemas/README.md of the reference folder). */
function openSchema(version: QtiVersion): XsdValidator {
	if (version === 'qti-3.0') return compileReference(join(schemas, 'qti3'), 'qti3-reconstructed.xsd');
	const schema = findPublishedSchema(schemas, version);
	if (!schema) throw new Error('needs the reference folder with the published QTI 2.2 schema');
	return getPublishedValidator(schema);
}
