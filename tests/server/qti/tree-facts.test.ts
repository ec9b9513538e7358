import { expect, test } from 'vitest';
import { manifestSchema } from '../../../server/qti/package/frame.ts';
import { collectFacts } from '../../../server/qti/package/tree-facts.ts';
import { placeForm, placeItems } from '../../../server/qti/placement.ts';
import { validateDocument } from '../../../server/qti/validate/validate-document.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { listItem, manifestPath, writeManifest } from '../../../server/qti/write/manifest.ts';
import { writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { testPath, writeTest } from '../../../server/qti/write/test.ts';
import { randomForm, randomItems } from './random-items.ts';

const items = randomItems(120, 63);
const form = randomForm(items, 63);

test.each(qtiVersions)('the tree of a manifest or test tells what its document does, %s', (version) => {
	const listed = placeForm(form, items, { sharesStimuli: version === 'qti-3.0' }).map((placement) =>
		listItem(placement, 'svg'),
	);
	const manifest = writeManifest(form, listed, version);
	const read = validateDocument({
		path: manifestPath,
		xml: writeShapedXml(manifest),
		schema: manifestSchema(version),
	}).facts;
	expect(read?.dependencies.length).toBeGreaterThan(120);
	expect(collectFacts(manifest)).toEqual(read);

	const written = writeTest(form, listed, version);
	const found = validateDocument({ path: testPath, xml: writeShapedXml(written), schema: version }).facts;
	expect(listed.length).toBeGreaterThan(120);
	expect(found?.references).toHaveLength(listed.length);
	expect(collectFacts(written)).toEqual(found);
});

test('a manifest without a test tells of its items and figures', () => {
	const listed = placeItems(items.slice(0, 30)).map((placement) => listItem(placement, 'png'));
	const manifest = writeManifest(undefined, listed, 'qti-2.2');
	const xml = writeShapedXml(manifest);
	expect(collectFacts(manifest)).toEqual(validateDocument({ path: manifestPath, xml, schema: 'manifest-2.2' }).facts);
});
