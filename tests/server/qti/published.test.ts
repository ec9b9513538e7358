import { join } from 'node:path';
import { XmlDocument, XmlElement, type XsdValidator } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { exportForm } from '../../../server/qti/export-form.ts';
import { type Placement, placeItems } from '../../../server/qti/placement.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { findPublishedSchema } from '../../../server/qti/validate/published.ts';
import { getPublishedValidator } from '../../../server/qti/validate/schema-set.ts';
import { getVersionFacts, lomNamespace, type QtiVersion } from '../../../server/qti/versions.ts';
import { writeItem } from '../../../server/qti/write/item.ts';
import { writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { referenceFolder, requireOutside } from '../../helpers/reference.ts';
import { itemKinds, randomForm, randomItems } from './random-items.ts';
import { compileReference } from './reference-schemas.ts';
import { fileOf, unpack } from './unpacked.ts';

requireOutside('the reference folder', referenceFolder !== undefined);
afterAll(closeValidation);

/** The published QTI 2.2.0 schema of 1 September 2015 (schemas/README.md of the reference folder). */
function published22(): XsdValidator {
	const schema = findPublishedSchema(join(referenceFolder ?? '', 'schemas'), 'qti-2.2');
	if (!schema) throw new Error('the reference folder holds no published QTI 2.2 schema');
	return getPublishedValidator(schema);
}

function validate(validator: XsdValidator, xml: string): void {
	const document = XmlDocument.fromString(xml);
	try {
		validator.validate(document);
	} finally {
		document.dispose();
	}
}

/** Names that QTI 2.1 does not have: externalScored, variableIdentifierRef, stimuli, HTML5, ARIA (qti-facts.md of the reference folder, from memory of the 2.1 model). */
const newerNames =
	/externalScored|variableIdentifierRef|assessmentStimulusRef|aria-|data-|role=|html5|templateConstraint|<(?:article|aside|audio|bdi|figcaption|figure|footer|header|label|nav|ruby|section|video)\b/;

/** A 2.1 document under 2.2's names, so that the published 2.2 schema can judge it. */
function swapToNewer(xml: string): string {
	if (newerNames.test(xml)) expect(xml).not.toMatch(newerNames);
	const [older, newer] = [getVersionFacts('qti-2.1'), getVersionFacts('qti-2.2')];
	return xml
		.replaceAll(older.location, newer.location)
		.replaceAll(older.namespace, newer.namespace)
		.replaceAll(older.templates, newer.templates);
}

/** Points on lines once with areas to click on, once with letters to choose; some items column by column and with feedback. */
function placeEachWay(items: readonly ItemRecord[]): readonly Placement[] {
	const hasPoints = items.some(({ item }) => item.kind === 'point');
	const some = items.slice(0, 200);
	return [
		...placeItems(items),
		...(hasPoints ? placeItems(items, { pointStyle: 'choice' }) : []),
		...placeItems(some, { gridStyle: 'columns', hasFeedback: true }),
		...placeItems(some, { pointStyle: 'choice', hasFeedback: true }),
	];
}

describe.skipIf(!referenceFolder)('checked against published schemas', () => {
	test.each(itemKinds)('400 distinct random items of kind %s are valid QTI 2.2', (kind) => {
		const validator = published22();
		for (const placement of placeEachWay(randomItems(400, 2022, kind))) {
			validate(validator, writeShapedXml(writeItem(placement, 'qti-2.2', 'png').root));
		}
	});

	test.each(itemKinds)(
		'400 distinct random items of kind %s as QTI 2.1 are valid under the names of 2.2, and use no newer name',
		(kind) => {
			const validator = published22();
			for (const placement of placeEachWay(randomItems(400, 2021, kind))) {
				validate(validator, swapToNewer(writeShapedXml(writeItem(placement, 'qti-2.1', 'png').root)));
			}
		},
	);

	test('the published schema does refuse: an unknown element, a missing attribute, a wrong order', () => {
		const validator = published22();
		const [placement] = placeItems(randomItems(1, 3));
		if (!placement) throw new Error('no item');
		const xml = writeShapedXml(writeItem(placement, 'qti-2.2', 'svg').root);
		validate(validator, xml);
		for (const [from, to] of [
			['<itemBody>', '<itemBody><sketch/>'],
			[' timeDependent="false"', ''],
			['<itemBody>', '<responseProcessing/><itemBody>'],
		] as const) {
			expect(xml).toContain(from);
			expect(() => validate(validator, xml.replace(from, to))).toThrow();
		}
	});

	test.each(['qti-2.1', 'qti-2.2'] as const)(
		'manifest, metadata and test of a %s form are valid by their published schemas',
		async (as: QtiVersion) => {
			const items = randomItems(60, 77);
			const files = unpack((await exportForm({ form: randomForm(items, 77), items }, { as, images: 'svg' })).bytes);
			const schemas = join(referenceFolder ?? '', 'schemas');
			// Generic content packaging 1.1.4 and IEEE LOM loose: the manifest's own QTI profile was not at hand.
			const imscp = compileReference(join(schemas, 'imscp/1.1.4'), 'imscp_v1p1.xsd', {
				'http://www.w3.org/2001/xml.xsd': join(schemas, 'w3c/xml.xsd'),
			});
			const manifest = fileOf(files, 'imsmanifest.xml');
			validate(imscp, manifest);
			expect(() => validate(imscp, manifest.replace('<organizations/>', ''))).toThrow();
			const lom = compileReference(join(schemas, 'lom'), 'lomLoose.xsd');
			const document = XmlDocument.fromString(manifest);
			const records = document.find('//lom:lom', { lom: lomNamespace });
			// One for the package, one for the test, one for each item and each part of a set.
			expect(records.length).toBe(2 + placeItems(items).length);
			for (const record of records) if (record instanceof XmlElement) lom.validate(record);
			document.dispose();
			const test = fileOf(files, 'test.xml');
			validate(published22(), as === 'qti-2.1' ? swapToNewer(test) : test);
		},
	);
});
