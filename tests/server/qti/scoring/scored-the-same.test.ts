import { expect, test } from 'vitest';
import { exportForm } from '../../../../server/qti/export-form.ts';
import { placeForm, placeItems } from '../../../../server/qti/placement.ts';
import { interpretItem, interpretItemTree } from '../../../../server/qti/scoring/interpret-item.ts';
import { interpretTest } from '../../../../server/qti/scoring/interpret-test.ts';
import { readTree } from '../../../../server/qti/scoring/read-tree.ts';
import type { QtiVersion } from '../../../../server/qti/versions.ts';
import { writeItem } from '../../../../server/qti/write/item.ts';
import { writeXml } from '../../../../server/xml.ts';
import { pairResponses } from '../platform-responses.ts';
import { drawFrom } from '../random-draw.ts';
import { randomForm, randomItems } from '../random-items.ts';
import { fileOf, unpack } from '../unpacked.ts';

const versions: readonly QtiVersion[] = ['qti-2.1', 'qti-2.2'];

test.each(versions)('%s items score as the bank does on every subset of options and every spelling', (version) => {
	const states = new Map<string, number>();
	for (const placement of placeItems(randomItems(300, 41))) {
		const tree = readTree(writeXml(writeItem(placement, version, 'svg').root));
		for (const { held, score } of pairResponses(placement)) {
			const outcomes = interpretItemTree(tree, { RESPONSE: held });
			const earned = Number(outcomes.get('SCORE')?.members[0]) * placement.points;
			const found = { id: placement.record.id, held, earned, maximum: outcomes.get('MAXSCORE')?.members };
			expect(found).toEqual({ id: placement.record.id, held, earned: score.points, maximum: [1] });
			states.set(score.state, (states.get(score.state) ?? 0) + 1);
		}
	}
	expect(new Set(states.keys())).toEqual(new Set(['correct', 'incorrect', 'omitted', 'invalid']));
	expect(states.get('correct')).toBeGreaterThan(600);
});

test.each(versions)('whole %s tests add up to the points of the form', async (version) => {
	const items = randomItems(40, 42);
	const form = randomForm(items, 42);
	const { bytes } = await exportForm({ form, items }, { as: version, images: 'svg' });
	const files = unpack(bytes);
	const documents = new Map([...files].filter(([path]) => path.endsWith('.xml')));
	const placements = placeForm(form, items);
	const paired = placements.map((placement) => ({ placement, responses: pairResponses(placement) }));
	const draw = drawFrom(42);
	for (let student = 0; student < 25; student += 1) {
		const chosen = paired.map(({ placement, responses }) => {
			const right = responses.filter((response) => response.score.state === 'correct');
			return { placement, response: draw.pick(draw.chance(student / 25) ? right : responses) };
		});
		const held = new Map(chosen.map(({ placement, response }) => [placement.identifier, { RESPONSE: response.held }]));
		const outcomes = interpretTest(fileOf(files, 'test.xml'), documents, held);
		const earned = chosen.reduce(
			(sum, { placement, response }) => sum + (response.score.points / response.score.maximum) * placement.points,
			0,
		);
		expect(outcomes.get('SCORE')?.members).toEqual([earned]);
		expect(outcomes.get('MAXSCORE')?.members).toEqual([placements.reduce((sum, { points }) => sum + points, 0)]);
	}
});

test('no response to an exported item earns nothing', () => {
	for (const placement of placeItems(randomItems(20, 5))) {
		const xml = writeXml(writeItem(placement, 'qti-2.2', 'svg').root);
		expect(interpretItem(xml, { RESPONSE: [] }).get('SCORE')?.members).toEqual([0]);
	}
});
