import { join } from 'node:path';
import { XmlDocument, type XsdValidator } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';
import { encodeGrid } from '../../item-bank/responses/grid.ts';
import { gridProfiles } from '../../item-bank/responses/grid-profiles.ts';
import { exportForm } from '../../server/qti/export-form.ts';
import { type PlacingManner, placeItems } from '../../server/qti/placement.ts';
import { openItem } from '../../server/qti/scoring/interpret-item.ts';
import { readTree } from '../../server/qti/scoring/read-tree.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { findPublishedSchema } from '../../server/qti/validate/published.ts';
import { getPublishedValidator } from '../../server/qti/validate/schema-set.ts';
import { validatePackage } from '../../server/qti/validate-package.ts';
import { getVersionFacts, type QtiVersion, qtiVersions } from '../../server/qti/versions.ts';
import { writeItem, writeStimulus } from '../../server/qti/write/item.ts';
import { writeShapedXml } from '../../server/qti/write/shaped-xml.ts';
import { writeXml } from '../../server/xml.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { tryStates } from '../server/qti/grid-states.ts';
import { isEarned, pairResponses } from '../server/qti/platform-responses.ts';
import { itemKinds, randomForm, randomItems } from '../server/qti/random-items.ts';
import { compileReference } from '../server/qti/reference-schemas.ts';

afterAll(closeValidation);

const count = 10_000;
/** Every manner of answering in turn; for the law of scores each of them for every item. */
const manners: readonly PlacingManner[] = [
	{},
	{ pointStyle: 'choice', gridStyle: 'columns' },
	{ hasFeedback: true },
	{ pointStyle: 'choice', gridStyle: 'columns', hasFeedback: true },
];

/** The published 2.2 schema, which judges 2.1 under its names; for 3.0 the reconstructed one (schemas/README.md of the reference folder). */
function openSchema(version: QtiVersion): XsdValidator {
	const schemas = join(referenceFolder ?? '', 'schemas');
	if (version === 'qti-3.0') return compileReference(join(schemas, 'qti3'), 'qti3-reconstructed.xsd');
	const schema = findPublishedSchema(schemas, 'qti-2.2');
	if (!schema) throw new Error('needs the reference folder with the published QTI 2.2 schema');
	return getPublishedValidator(schema);
}

function nameForJudge(xml: string, version: QtiVersion): string {
	if (version !== 'qti-2.1') return xml;
	const [mine, newer] = [getVersionFacts(version), getVersionFacts('qti-2.2')];
	// The export profile keeps out names that only 2.2 has.
	return xml
		.replaceAll(mine.location, newer.location)
		.replaceAll(mine.namespace, newer.namespace)
		.replaceAll(mine.templates, newer.templates);
}

describe.each(qtiVersions)('10,000 distinct random items as %s', (version) => {
	const sharesStimuli = version === 'qti-3.0';

	test.each(itemKinds)(
		'of kind %s are written as xmlbuilder2 writes them, and valid by the schema, in every manner of answering',
		(kind) => {
			const validator = openSchema(version);
			for (const [index, record] of randomItems(count, 31, kind).entries()) {
				for (const placement of placeItems([record], { ...manners[index % manners.length], sharesStimuli })) {
					for (const written of [writeStimulus(placement, version, 'svg'), writeItem(placement, version, 'svg')]) {
						if (!written) continue;
						const xml = writeShapedXml(written.root);
						if (xml !== writeXml(written.root)) expect(xml).toBe(writeXml(written.root));
						const document = XmlDocument.fromString(nameForJudge(xml, version));
						validator.validate(document);
						document.dispose();
					}
				}
			}
		},
	);

	test.each(manners)(
		'score as the bank does on every subset, spelling and tick, on many orders and griddings: %o',
		(manner) => {
			let responses = 0;
			for (const placement of placeItems(randomItems(count, 32), { ...manner, sharesStimuli })) {
				const respond = openItem(readTree(writeShapedXml(writeItem(placement, version, 'svg').root)));
				for (const { held, score } of pairResponses(placement)) {
					const earned = Number(respond(held).get('SCORE')?.members[0]);
					if (!isEarned(earned * placement.points, score, placement.record.item)) {
						expect({ id: placement.record.id, held, earned }).toEqual({
							id: placement.record.id,
							held,
							earned: score.points,
						});
					}
					responses += 1;
				}
			}
			console.log(`${version}, ${JSON.stringify(manner)}: ${responses} responses scored twice`);
			expect(responses).toBeGreaterThan(400_000);
		},
	);

	test.each(gridProfiles)(
		'answer grids column by column earn the score in exactly the states the bank reads as the key: $id',
		(profile) => {
			for (const value of [0, -7, 12, -305, 9999]) {
				const { differing, accepted, tried } = tryStates(value, profile, version, { hasFeedback: value === 12 });
				expect(differing).toEqual([]);
				expect(accepted).toBe(encodeGrid(value, profile).length);
				console.log(`${version}, ${profile.id}, ${value}: ${tried} states, ${accepted} accepted`);
			}
		},
	);

	test('go out as one package that is found valid again', async () => {
		const items = randomItems(count, 33);
		for (const more of [{}, { grid: 'columns', points: 'choice', hasFeedback: true }] as const) {
			const order = { as: version, images: 'svg', ...more } as const;
			const { bytes } = await exportForm({ form: randomForm(items, 33), items }, order);
			expect(await validatePackage(bytes)).toEqual([]);
		}
	});
});
