import { afterAll, expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { score } from '../../../item-bank/items/score.ts';
import { printRichText } from '../../../item-bank/markup/rich-text.ts';
import type { ItemResponse, MatchItem, OrderItem } from '../../../item-bank/types.ts';
import { closeCartridges } from '../../../server/cartridge/cartridge-pool.ts';
import { exportCartridge } from '../../../server/cartridge/export-cartridge.ts';
import type { Question } from '../../../server/cartridge/question.ts';
import {
	addWeighted,
	readAssessment,
	scoreAssessment,
	scoreItem,
} from '../../../server/cartridge/scoring/interpret-assessment.ts';
import { type Placement, placeForm } from '../../../server/qti/placement.ts';
import { writeMathematics } from '../../../server/qti/write/blocks.ts';
import { pairResponses } from '../qti/platform-responses.ts';
import { drawFrom } from '../qti/random-draw.ts';
import { itemKinds, randomForm, randomItems } from '../qti/random-items.ts';
import { fileOf, unpack } from '../qti/unpacked.ts';
import { writeWhole } from './written.ts';

afterAll(closeCartridges);

const letters = 'ABCDEFGH';
/** What a platform holds, and what the bank would make of the same answer. */
interface Pair {
	readonly held: readonly string[];
	readonly response: ItemResponse;
}

/** What the one option marked means, by the words of the answer map. */
function meaning({ record }: Placement, bank: string): ItemResponse {
	if (record.item.kind === 'order') return { kind: 'order', order: bank.split('>') };
	const pairs = bank.split(' ').map((pair) => {
		const [left = '', right = ''] = pair.split('-');
		return { left, right };
	});
	return { kind: 'match', pairs };
}

function pairsOf(placement: Placement, question: Question): readonly Pair[] {
	const { item } = placement.record;
	if (!('options' in question)) return [];
	const ids = question.options.map(({ bank }) => bank);
	if (item.kind === 'order' || item.kind === 'match') {
		return ids.map((bank, index) => ({ held: [letters.charAt(index)], response: meaning(placement, bank) }));
	}
	const marks = Array.from({ length: 2 ** ids.length }, (_, mask) => ids.filter((_id, at) => (mask >> at) % 2 === 1));
	return marks
		.filter((options) => question.asks === 'several' || options.length < 2)
		.map((options) => ({
			held: options.map((id) => letters.charAt(ids.indexOf(id))),
			response: { kind: 'choice', options },
		}));
}

test('every kind but a split match scores as the bank does, on every subset, spelling, letter, order and list offered', () => {
	const seen = new Map<string, number>();
	const { asked, xml } = writeWhole(itemKinds.flatMap((kind, index) => randomItems(60, 70 + index, kind)));
	const read = readAssessment(xml);
	for (const { placement, questions } of asked) {
		const [question, ...more] = questions;
		const { item, id } = placement.record;
		if (!question || more.length > 0 || item.kind === 'explanation') continue;
		const direct = item.kind === 'gridded' || item.kind === 'point';
		const scored = read.get(question.identifier);
		if (!scored) throw new Error('an item that is not there');
		const pairs = direct
			? pairResponses(placement).map(({ held, score: wanted }) => ({ held: held.RESPONSE ?? [], wanted }))
			: pairsOf(placement, question).map(({ held, response }) => ({ held, wanted: score(item, response) }));
		for (const { held, wanted } of pairs) {
			const result = scoreItem(scored, held);
			// Credit in parts is what a cartridge loses, and the report says so.
			const earned = wanted.state === 'correct' ? 100 : 0;
			if (result !== earned) expect({ id, held, score: result }).toEqual({ id, held, score: earned });
			const state = `${wanted.state} ${item.kind}`;
			seen.set(state, (seen.get(state) ?? 0) + 1);
		}
	}
	for (const kind of ['choice', 'multiple-choice', 'gridded', 'point', 'order', 'match', 'inline-choice']) {
		for (const state of ['correct', 'incorrect']) {
			expect(seen.get(`${state} ${kind}`), `${state} ${kind}`).toBeGreaterThan(20);
		}
	}
	expect(seen.get('partly multiple-choice')).toBeGreaterThan(20);
	// Two options, both marked.
	expect(seen.get('invalid choice')).toBeGreaterThan(3);
});

test('a match with credit in parts earns the same shares, question by question, for every matching that uses no entry twice', () => {
	const matches = randomItems(120, 90, 'match').filter(({ item }) => item.kind === 'match' && item.credit === 'parts');
	const { asked, xml } = writeWhole(matches);
	const read = readAssessment(xml);
	const draw = drawFrom(5);
	expect(asked.length).toBeGreaterThan(20);
	for (const { placement, questions } of asked) {
		const { item } = placement.record;
		if (item.kind !== 'match') throw new Error('no match');
		for (let turn = 0; turn < 25; turn += 1) {
			const free = item.right.map(({ id }) => id);
			const held = new Map<string, readonly string[]>();
			const pairs = questions.flatMap((question, index) => {
				if (draw.chance(0.2)) return [];
				const [right = ''] = free.splice(draw.whole(0, free.length - 1), 1);
				held.set(question.identifier, [letters.charAt(item.right.findIndex(({ id }) => id === right))]);
				return [{ left: item.left[index]?.id ?? '', right }];
			});
			const earned = questions.reduce((sum, { identifier, points }) => {
				const scored = read.get(identifier);
				return sum + (((scored && scoreItem(scored, held.get(identifier) ?? [])) ?? Number.NaN) / 100) * points;
			}, 0);
			expect(earned).toBeCloseTo(score(item, { kind: 'match', pairs }).points, 9);
		}
	}
});

test('options of orders and lists say what the answer map says they mean', () => {
	const { asked } = writeWhole([...randomItems(60, 91, 'order'), ...randomItems(60, 92, 'match')]);
	let lists = 0;
	for (const { placement, questions } of asked) {
		const { item } = placement.record;
		const [question] = questions;
		if (questions.length > 1 || !question || !('options' in question)) continue;
		for (const { bank, content } of question.options) {
			if (content.kind !== 'text') throw new Error('no text');
			const text = printRichText(content.text);
			if (item.kind === 'order') expect(text.split(/[;,] /)).toEqual(shownOrder(item, bank).join(', ').split(/[;,] /));
			else if (item.kind === 'match') expect(text).toBe(shownPairs(item, bank));
			lists += 1;
		}
	}
	expect(lists).toBeGreaterThan(200);
});

function shownOrder(item: OrderItem, bank: string): readonly string[] {
	return bank.split('>').map((id) => {
		const content = item.entries.find((entry) => entry.id === id)?.content;
		if (content?.kind === 'mathematics') return writeMathematics(content.math);
		return content?.kind === 'text' ? printRichText(content.text) : '';
	});
}

function shownPairs(item: MatchItem, bank: string): string {
	return bank
		.split(' ')
		.map((pair) => {
			const [left, right] = pair.split('-');
			const number = item.left.findIndex(({ id }) => id === left) + 1;
			return `${number} with ${letters.charAt(item.right.findIndex(({ id }) => id === right))}`;
		})
		.join(', ');
}

test('the place of the right option among orders and lists follows no rule', () => {
	for (const kind of ['order', 'match'] as const) {
		const places = [0, 0, 0, 0];
		for (const { questions } of writeWhole(randomItems(200, 93, kind)).asked) {
			const [question] = questions;
			if (questions.length > 1 || !question || !('right' in question) || question.options.length < 4) continue;
			const at = question.right[0] ?? 0;
			places[at] = (places[at] ?? 0) + 1;
		}
		const total = places.reduce((sum, each) => sum + each, 0);
		for (const count of places) expect(count / total, `${kind}: ${places.join(' ')}`).toBeGreaterThan(0.08);
	}
});

test('whole cartridges add up to the points of the form times the factor', async () => {
	const items = randomItems(40, 94).filter(({ item }) => item.kind !== 'explanation' && !hasPart(item, 'explanation'));
	const form = randomForm(items, 94);
	const { bytes, answerMap } = await exportCartridge({ form, items }, { images: 'svg', convert: true, leaveOut: true });
	const xml = fileOf(unpack(bytes), 'assessment/assessment.xml');
	const rows = answerMap.split('\r\n').slice(1, -1);
	const key = new Map(
		rows.map((row) => {
			const cells = row.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
			return [cells[7] ?? '', (cells[13] ?? '').replace(/^'/, '').split(' ')] as const;
		}),
	);
	const results = scoreAssessment(readAssessment(xml), key);
	expect([...results.values()].map((result) => result.score)).toEqual([...results].map(() => 100));
	const wanted = placeForm(form, items).reduce((sum, { points }) => sum + points, 0);
	const weights = [...results.values()].reduce((sum, { weight }) => sum + weight, 0);
	expect(addWeighted(results)).toBe(weights);
	expect(weights % Math.round(wanted)).toBe(0);
});

function hasPart(item: ItemRecord['item'], kind: string): boolean {
	return item.kind === 'set' && item.parts.some((part) => part.kind === kind);
}
