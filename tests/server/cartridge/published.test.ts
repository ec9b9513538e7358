import { join } from 'node:path';
import { XmlDocument, type XsdValidator } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';
import { closeCartridges } from '../../../server/cartridge/cartridge-pool.ts';
import { exportCartridge } from '../../../server/cartridge/export-cartridge.ts';
import { validateAssessment } from '../../../server/cartridge/validate/validate-cartridge.ts';
import { referenceFolder, requireOutside } from '../../helpers/reference.ts';
import { itemKinds, randomForm, randomItems } from '../qti/random-items.ts';
import { fileOf, unpack } from '../qti/unpacked.ts';
import { brokenRules, publishedAssessment, publishedManifest, publishedRules } from './published-rules.ts';
import { writeWhole } from './written.ts';

requireOutside('the reference folder', referenceFolder !== undefined);
afterAll(closeCartridges);

const schemas = join(referenceFolder ?? '', 'schemas');
const assessmentFile = join(schemas, 'qti1.2/ccv1p1_qtiasiv1p2p1_v1p0.xsd');
const manifestFile = join(schemas, 'cc1.1/ccv1p1_imscp_v1p2_v1p0.xsd');

function isValid(validator: XsdValidator, xml: string): boolean {
	const document = XmlDocument.fromString(xml);
	try {
		validator.validate(document);
		return true;
	} catch {
		return false;
	} finally {
		document.dispose();
	}
}

describe.skipIf(!referenceFolder)('checked against the published Common Cartridge 1.1 schemas', () => {
	test.each(itemKinds)('300 distinct random items of kind %s, types and Schematron rules', (kind) => {
		const validator = publishedAssessment(schemas);
		const rules = publishedRules(assessmentFile);
		expect(rules.length).toBeGreaterThan(60);
		for (let from = 0; from < 300; from += 150) {
			const { xml, asked } = writeWhole(randomItems(150, 3000 + from, kind));
			expect(asked.length).toBeGreaterThan(120);
			expect(isValid(validator, xml)).toBe(true);
			expect(brokenRules(xml, rules)).toEqual([]);
			expect(validateAssessment(xml).problems).toEqual([]);
		}
	});

	test('the manifest and the assessment of a whole form', async () => {
		const items = randomItems(80, 31);
		const { bytes } = await exportCartridge(
			{ form: randomForm(items, 31), items },
			{ images: 'svg', convert: true, leaveOut: true },
		);
		const files = unpack(bytes);
		const manifest = fileOf(files, 'imsmanifest.xml');
		expect(isValid(publishedManifest(schemas), manifest)).toBe(true);
		const rules = publishedRules(manifestFile);
		expect(rules.length).toBeGreaterThan(30);
		expect(brokenRules(manifest, rules)).toEqual([]);
		expect(isValid(publishedAssessment(schemas), fileOf(files, 'assessment/assessment.xml'))).toBe(true);
	});

	test('they do refuse: a lost weight, a choice of two, an assessment with an address, an unknown type', async () => {
		const items = randomItems(30, 32);
		const files = unpack(
			(await exportCartridge({ form: randomForm(items, 32), items }, { images: 'svg', convert: true, leaveOut: true }))
				.bytes,
		);
		const manifest = fileOf(files, 'imsmanifest.xml');
		const xml = fileOf(files, 'assessment/assessment.xml');
		const [assessmentRules, manifestRules] = [publishedRules(assessmentFile), publishedRules(manifestFile)];
		const change = (text: string, from: string | RegExp, to: string): string => {
			expect(text).toMatch(from);
			return text.replace(from, to);
		};
		const heavy = change(xml, /(cc_weighting<\/fieldlabel>\s*<fieldentry>)\d+/, '$1100');
		expect(brokenRules(heavy, assessmentRules)).toEqual(['2c']);
		const mistaken = change(xml, 'cc.multiple_choice.v0p1', 'cc.multiple_response.v0p1');
		expect(brokenRules(mistaken, assessmentRules)).toContain('5a');
		const addressed = change(manifest, 'assessment">', 'assessment" href="assessment/assessment.xml">');
		expect(brokenRules(addressed, manifestRules)).toEqual(['3c']);
		expect(isValid(publishedManifest(schemas), change(manifest, 'type="webcontent"', 'type="picture"'))).toBe(false);
		expect(isValid(publishedAssessment(schemas), change(xml, '<setvar ', '<setvar sort="1" '))).toBe(false);
	});
});
