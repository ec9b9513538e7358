import { describe, expect, test } from 'vitest';
import type { FormRecord, ItemRecord } from '../../../../item-bank/items/record.ts';
import { exportForm } from '../../../../server/qti/export-form.ts';
import { type PlacingManner, placeForm, placeItems } from '../../../../server/qti/placement.ts';
import { interpretItem, interpretItemTree, openItem } from '../../../../server/qti/scoring/interpret-item.ts';
import { interpretTest } from '../../../../server/qti/scoring/interpret-test.ts';
import { readTree } from '../../../../server/qti/scoring/read-tree.ts';
import { qtiVersions } from '../../../../server/qti/versions.ts';
import { writeItem } from '../../../../server/qti/write/item.ts';
import { writeShapedXml } from '../../../../server/qti/write/shaped-xml.ts';
import { isEarned, pairResponses } from '../platform-responses.ts';
import { drawFrom } from '../random-draw.ts';
import { itemKinds, randomForm, randomItems } from '../random-items.ts';
import { fileOf, unpack } from '../unpacked.ts';

/** Every manner of answering, with and without feedback. */
const manners: readonly PlacingManner[] = [
	{},
	{ pointStyle: 'choice', gridStyle: 'columns' },
	{ hasFeedback: true },
	{ pointStyle: 'choice', gridStyle: 'columns', hasFeedback: true },
];

describe.each(qtiVersions)('%s', (version) => {
	test.each(manners)(
		'items score as the bank does on every subset, spelling, tick, order and matching, and on many griddings: %o',
		(manner) => {
			const states = new Map<string, number>();
			const kinds = new Set<string>();
			for (const placement of placeItems(randomItems(200, 41), { ...manner, sharesStimuli: version === 'qti-3.0' })) {
				const respond = openItem(readTree(writeShapedXml(writeItem(placement, version, 'svg').root)));
				const { item, id } = placement.record;
				kinds.add(item.kind);
				for (const { held, score } of pairResponses(placement)) {
					const outcomes = respond(held);
					const earned = Number(outcomes.get('SCORE')?.members[0]) * placement.points;
					if (!isEarned(earned, score, item)) expect({ id, held, earned }).toEqual({ id, held, earned: score.points });
					if (outcomes.get('MAXSCORE')?.members[0] !== 1) expect(outcomes.get('MAXSCORE')).toBe(1);
					const state = `${score.state} ${item.kind}`;
					states.set(state, (states.get(state) ?? 0) + 1);
				}
			}
			expect(kinds).toEqual(new Set(itemKinds.filter((kind) => kind !== 'set')));
			for (const kind of kinds) {
				for (const state of kind === 'explanation' ? ['correct', 'unrated'] : ['correct', 'incorrect', 'omitted']) {
					expect(states.get(`${state} ${kind}`), `${state} ${kind}`).toBeGreaterThan(10);
				}
			}
			for (const kind of ['multiple-choice', 'match', 'explanation']) {
				expect(states.get(`partly ${kind}`), kind).toBeGreaterThan(10);
			}
		},
	);

	test('every kind by itself scores as the bank does', () => {
		for (const kind of itemKinds) {
			for (const placement of placeItems(randomItems(40, 43, kind))) {
				const respond = openItem(readTree(writeShapedXml(writeItem(placement, version, 'png').root)));
				for (const { held, score } of pairResponses(placement)) {
					const earned = Number(respond(held).get('SCORE')?.members[0]) * placement.points;
					if (!isEarned(earned, score, placement.record.item))
						expect({ kind, held, earned }).toEqual({ kind, held, earned: score.points });
				}
			}
		}
	});

	test.each([manners[0] ?? {}, manners[3] ?? {}])(
		'whole tests add up to the points of the form, sets among them: %o',
		async (manner) => {
			const items = randomItems(60, 42);
			const form = randomForm(items, 42);
			const { pointStyle: points = 'hotspot', gridStyle: grid = 'number', hasFeedback = false } = manner;
			const order = { as: version, images: 'svg', points, grid, hasFeedback } as const;
			const { bytes } = await exportForm({ form, items }, order);
			const files = unpack(bytes);
			const documents = new Map([...files].filter(([path]) => path.endsWith('.xml')));
			const placements = placeForm(form, items, manner);
			expect(placements.filter(({ part }) => part !== undefined).length).toBeGreaterThan(8);
			const paired = placements.map((placement) => ({ placement, responses: pairResponses(placement) }));
			const possible = pointsPossible(form, items);
			const draw = drawFrom(42);
			for (let student = 0; student < 25; student += 1) {
				const chosen = paired.map(({ placement, responses }) => {
					const right = responses.filter((response) => response.score.state === 'correct');
					return { placement, response: draw.pick(draw.chance(student / 25) ? right : responses) };
				});
				const held = new Map(chosen.map(({ placement, response }) => [placement.identifier, response.held]));
				const outcomes = interpretTest(fileOf(files, 'test.xml'), documents, held);
				// Added up item by item, a set by the share of its own points that its parts earned.
				const earned = items.reduce((sum, { id }) => {
					const scores = chosen
						.filter(({ placement }) => placement.record.id === id)
						.map(({ response }) => response.score);
					const total = (of: 'points' | 'maximum'): number => scores.reduce((so, score) => so + score[of], 0);
					return sum + (total('points') / total('maximum')) * (possible.get(id) ?? 0);
				}, 0);
				expect(Number(outcomes.get('SCORE')?.members[0])).toBeCloseTo(earned, 8);
				expect(outcomes.get('MAXSCORE')?.members).toEqual([
					[...possible.values()].reduce((sum, each) => sum + each, 0),
				]);
			}
		},
	);
});

/** What each item of a form is worth: the form's points, or the item's. */
function pointsPossible(form: FormRecord, items: readonly ItemRecord[]): ReadonlyMap<string, number> {
	const own = new Map(items.map(({ id, item }) => [id, item.points]));
	const entries = form.form.sections.flatMap((section) => section.items);
	return new Map(entries.map(({ item, points }) => [item, points ?? own.get(item) ?? 0]));
}

test('the score of a set in the bank is the sum of its parts on the platform', () => {
	for (const record of randomItems(40, 44, 'set')) {
		const parts = placeItems([record]).map((placement) => ({
			placement,
			tree: readTree(writeShapedXml(writeItem(placement, 'qti-2.2', 'svg').root)),
			right: pairResponses(placement).filter(({ score }) => score.state === 'correct'),
		}));
		const earned = parts.reduce((sum, { placement, tree, right }) => {
			const [response] = right;
			if (!response) throw new Error('a part that nothing answers');
			return sum + Number(interpretItemTree(tree, response.held).get('SCORE')?.members[0]) * placement.points;
		}, 0);
		expect(earned).toBe(record.item.points);
	}
});

test('no response to an exported item earns nothing', () => {
	for (const placement of placeItems(randomItems(60, 5))) {
		const xml = writeShapedXml(writeItem(placement, 'qti-2.2', 'svg').root);
		expect(interpretItem(xml, { RESPONSE: [] }).get('SCORE')?.members).toEqual([0]);
	}
});
