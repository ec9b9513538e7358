import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { interpretItem } from '../../../../server/qti/scoring/interpret-item.ts';
import { interpretTest } from '../../../../server/qti/scoring/interpret-test.ts';

const accept = new URL('../../../fixtures/qti/accept/qti-2.2/', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, accept), 'utf8');
const choice = read('items/item-001.xml');
const multiple = read('items/item-002.xml');
const entry = read('items/item-003.xml');

function scoreOf(xml: string, ...held: readonly string[]): unknown {
	return interpretItem(xml, { RESPONSE: held }).get('SCORE')?.members[0];
}

describe('match_correct', () => {
	test('gives 1 for the key alone', () => {
		expect(['A', 'B', 'C', 'D', 'Z'].map((option) => scoreOf(choice, option))).toEqual([1, 0, 0, 0, 0]);
		expect(scoreOf(choice)).toBe(0);
	});

	test('compares whole sets, in any order', () => {
		expect(scoreOf(multiple, 'A', 'C')).toBe(1);
		expect(scoreOf(multiple, 'C', 'A')).toBe(1);
		expect(scoreOf(multiple, 'A')).toBe(0);
		expect(scoreOf(multiple, 'A', 'B', 'C')).toBe(0);
		expect(scoreOf(multiple)).toBe(0);
	});
});

describe('map_response', () => {
	test('gives 1 for every listed spelling and the default for the rest', () => {
		expect(['-5', '−5', '-005', '5', '-50', '- 5', '–5', ''].map((text) => scoreOf(entry, text))).toEqual([
			1, 1, 1, 0, 0, 0, 0, 0,
		]);
		expect(scoreOf(entry)).toBe(0);
	});

	test('keeps within the bounds of the mapping', () => {
		expect(scoreOf(entry.replace('mapKey="-5" mappedValue="1"', 'mapKey="-5" mappedValue="7"'), '-5')).toBe(1);
		expect(scoreOf(entry.replace('defaultValue="0"', 'defaultValue="-3"'), '9')).toBe(0);
	});

	test('minds case only where it is asked to', () => {
		const lettered = entry.replace('mapKey="-5"', 'mapKey="North"');
		expect(scoreOf(lettered, 'north')).toBe(1);
		expect(scoreOf(lettered.replace('caseSensitive="false"', 'caseSensitive="true"'), 'north')).toBe(0);
	});
});

describe('further kinds, by the definition of their templates', () => {
	const kinds = new URL('../../../fixtures/qti/accept/kinds-qti-2.2/', import.meta.url);
	const sample = (name: string): string => readFileSync(new URL(`items/item-${name}.xml`, kinds), 'utf8');

	test('an order counts as a whole', () => {
		const order = sample('002');
		expect(scoreOf(order, 'B', 'A', 'C')).toBe(1);
		for (const held of [['A', 'B', 'C'], ['B', 'A'], ['B', 'A', 'C', 'C'], []]) expect(scoreOf(order, ...held)).toBe(0);
	});

	test('pairs have a direction and no order among themselves', () => {
		const match = sample('003');
		expect([scoreOf(match, 'L2 R1', 'L1 R3'), scoreOf(match, 'L1 R3')]).toEqual([1, 0]);
		expect(scoreOf(match, 'R1 L2', 'R3 L1')).toBe(0);
	});

	test('each right pair earns its share, a wrong one costs nothing, and all make exactly 1', () => {
		const match = sample('004');
		expect(scoreOf(match, 'L1 R3', 'L2 R2', 'L3 R1')).toBe(1);
		expect(scoreOf(match, 'L1 R3', 'L2 R4')).toBeCloseTo(1 / 3, 10);
		expect(scoreOf(match, 'L2 R4')).toBe(0);
	});

	test('wrong options take shares away, down to nothing', () => {
		const shared = sample('006');
		expect(scoreOf(shared, 'A', 'B', 'D')).toBe(1);
		expect(scoreOf(shared, 'A', 'B', 'C', 'D')).toBeCloseTo(2 / 3, 10);
		expect([scoreOf(shared, 'A', 'C'), scoreOf(shared, 'C')]).toEqual([0, 0]);
	});

	test('an explanation scores what a person enters, and until then its default', () => {
		const explanation = sample('007');
		expect(scoreOf(explanation, 'Because.')).toBe(0);
		const outcomes = interpretItem(explanation, { RESPONSE: ['Because.'], SCORE: ['0.5'] });
		expect(outcomes.get('SCORE')?.members).toEqual([0.5]);
	});

	test('what a person enters changes nothing where the file scores', () => {
		expect(interpretItem(choice, { RESPONSE: ['B'], SCORE: ['1'] }).get('SCORE')?.members).toEqual([0]);
	});
});

test('rules written out score as their template does', () => {
	const rules = `<responseProcessing><responseCondition><responseIf><match><variable identifier="RESPONSE"/><correct identifier="RESPONSE"/></match>
		<setOutcomeValue identifier="SCORE"><baseValue baseType="float">1</baseValue></setOutcomeValue></responseIf>
		<responseElseIf><isNull><variable identifier="RESPONSE"/></isNull><setOutcomeValue identifier="SCORE"><baseValue baseType="float">-1</baseValue></setOutcomeValue></responseElseIf>
		<responseElse><setOutcomeValue identifier="SCORE"><baseValue baseType="float">0</baseValue></setOutcomeValue></responseElse></responseCondition></responseProcessing>`;
	const written = choice.replace(/<responseProcessing[^>]*>/, rules);
	expect([scoreOf(written, 'A'), scoreOf(written, 'B'), scoreOf(written)]).toEqual([1, 0, -1]);
});

describe('anything it does not understand is refused by name', () => {
	test.each([
		['a rule', /<responseProcessing[^>]*>/, '<responseProcessing><exitResponse/></responseProcessing>', 'exitResponse'],
		[
			'an expression',
			/<responseProcessing[^>]*>/,
			'<responseProcessing><setOutcomeValue identifier="SCORE"><randomFloat min="0" max="1"/></setOutcomeValue></responseProcessing>',
			'randomFloat',
		],
		['a template', /rptemplates\/match_correct/, 'rptemplates/match_nearly', 'responseProcessing'],
		[
			'a cardinality',
			/cardinality="single" baseType="identifier"/,
			'cardinality="record" baseType="identifier"',
			'responseDeclaration',
		],
		['a base type', /baseType="identifier"/, 'baseType="point"', 'responseDeclaration'],
		['part of a declaration', /<correctResponse>/, '<areaMapping/><correctResponse>', 'areaMapping'],
		['a missing mapping', /match_correct/, 'map_response', 'mapResponse'],
		['another vocabulary', /imsqti_v2p2"/, 'imsqti_v9"', 'assessmentItem'],
	])('%s', (_, from, to, element) => {
		const changed = choice.replace(from, to);
		expect(changed).not.toBe(choice);
		expect(() => interpretItem(changed, { RESPONSE: ['A'] })).toThrow(
			expect.objectContaining({ code: 'scoring-unsupported', element }),
		);
	});

	test('an unanswered variable, and a document of the wrong kind', () => {
		expect(() => interpretItem(choice, {})).toThrow('expected a response for RESPONSE');
		expect(() => interpretItem(read('test.xml'), {})).toThrow('expected an assessmentItem');
		expect(() => interpretTest(choice, new Map(), new Map())).toThrow('expected an assessmentTest');
	});
});

test('a test adds item scores times their weights', () => {
	const items = new Map(
		['items/item-001.xml', 'items/item-002.xml', 'items/item-003.xml'].map((path) => [path, read(path)]),
	);
	const total = (first: string[], second: string[], third: string[]): unknown => {
		const held = [first, second, third].map((members) => ({ RESPONSE: members }));
		const identifiers = ['item-4954a7d8cc99', 'item-c21fcf1ef3b8', 'item-b666a2fdde7e'];
		const responses = new Map(identifiers.map((identifier, index) => [identifier, held[index] ?? {}]));
		return interpretTest(read('test.xml'), items, responses).get('SCORE')?.members[0];
	};
	// Weights 1, 2 (the item's own points) and 3 (the form's).
	expect(total(['A'], ['A', 'C'], ['-5'])).toBe(6);
	expect(total(['A'], [], ['−005'])).toBe(4);
	expect(total(['B'], ['C', 'A'], ['5'])).toBe(2);
	expect(total([], [], [])).toBe(0);
});

test('weights and variables that the test does not use as written are refused', () => {
	const items = new Map([['items/item-001.xml', choice]]);
	expect(() => interpretTest(read('test.xml'), items, new Map())).toThrow('expected the item');
});
