import { join } from 'node:path';
import { XmlDocument } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';
import { exportForm } from '../../server/qti/export-form.ts';
import { placeItems } from '../../server/qti/placement.ts';
import { interpretItemTree } from '../../server/qti/scoring/interpret-item.ts';
import { readTree } from '../../server/qti/scoring/read-tree.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { findPublishedSchema } from '../../server/qti/validate/published.ts';
import { getPublishedValidator } from '../../server/qti/validate/schema-set.ts';
import { validatePackage } from '../../server/qti/validate-package.ts';
import { getVersionFacts, qtiVersions } from '../../server/qti/versions.ts';
import { writeItem } from '../../server/qti/write/item.ts';
import { writeShapedXml } from '../../server/qti/write/shaped-xml.ts';
import { writeXml } from '../../server/xml.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { pairResponses } from '../server/qti/platform-responses.ts';
import { itemKinds, randomForm, randomItems } from '../server/qti/random-items.ts';

afterAll(closeValidation);

const count = 10_000;

describe.each(qtiVersions)('10,000 distinct random items as %s', (version) => {
	test.each(itemKinds)(
		'of kind %s are written as xmlbuilder2 writes them, and valid by the published 2.2 schema',
		(kind) => {
			const schema = findPublishedSchema(join(referenceFolder ?? '', 'schemas'), 'qti-2.2');
			if (!schema) throw new Error('needs the reference folder with the published QTI 2.2 schema');
			const validator = getPublishedValidator(schema);
			const [mine, newer] = [getVersionFacts(version), getVersionFacts('qti-2.2')];
			const items = randomItems(count, 31, kind);
			const hasPoints = kind === 'point' || kind === 'set';
			for (const placement of [
				...placeItems(items),
				...(hasPoints ? placeItems(items, { pointStyle: 'choice' }) : []),
			]) {
				const { root } = writeItem(placement, version, 'svg');
				const xml = writeShapedXml(root);
				if (xml !== writeXml(root)) expect(xml).toBe(writeXml(root));
				// QTI 2.1 is judged under the names of 2.2; the export profile keeps out names that only 2.2 has.
				const judged = xml
					.replaceAll(mine.location, newer.location)
					.replaceAll(mine.namespace, newer.namespace)
					.replaceAll(mine.templates, newer.templates);
				const document = XmlDocument.fromString(judged);
				validator.validate(document);
				document.dispose();
			}
		},
	);

	test('score as the bank does, on every subset, spelling and tick, and on many orders and matchings', () => {
		let responses = 0;
		for (const placement of placeItems(randomItems(count, 32))) {
			const tree = readTree(writeShapedXml(writeItem(placement, version, 'svg').root));
			for (const { held, score } of pairResponses(placement)) {
				const earned = Number(interpretItemTree(tree, held).get('SCORE')?.members[0]);
				// Shares without an end are rounded after twelve places.
				if (Math.abs(earned * placement.points - score.points) > (score.state === 'partly' ? 1e-9 : 0)) {
					expect({ id: placement.record.id, held, earned }).toEqual({
						id: placement.record.id,
						held,
						earned: score.points,
					});
				}
				responses += 1;
			}
		}
		console.log(`${version}: ${responses} responses scored twice`);
		expect(responses).toBeGreaterThan(400_000);
	});

	test('go out as one package that is found valid again', async () => {
		const items = randomItems(count, 33);
		const { bytes } = await exportForm({ form: randomForm(items, 33), items }, { as: version, images: 'svg' });
		expect(await validatePackage(bytes)).toEqual([]);
	});
});
