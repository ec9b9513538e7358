import { XmlDocument, XmlXPath } from 'libxml2-wasm';
import { describe, expect, it } from 'vitest';
import { anyFaultOf } from '../../../../server/qti/validate/any-fault.ts';
import { faultsOf } from '../../../../server/qti/validate/rules.ts';

const rule = (at: string, fault: string) => ({ code: 'test', at, fault, expected: 'nothing' });

// Slashes, brackets and quotes within conditions, steps shared by rules, and steps at any depth.
const rules = [
	rule("/line/stop[@name = 'a/b]']", '@height > 3'),
	rule("/line/stop[@name = 'a/b]']/lift", 'not(@load)'),
	rule('/line/stop', "lift[@load = '9']/@load = ../@most"),
	rule('/line//lift', "@load = '7'"),
	rule('/*', 'count(stop) > 3'),
];

const documents: Readonly<Record<string, string>> = {
	'nothing wrong': '<line><stop name="a/b]" height="2"><lift load="1"/></stop></line>',
	'a condition of a step with a condition': '<line><stop name="a/b]" height="4"/></line>',
	'a step below one with a condition': '<line><stop name="a/b]"><lift/></stop></line>',
	'the same below another stop': '<line><stop name="c"><lift/></stop></line>',
	'a path within a condition': '<line most="9"><stop><lift load="9"/></stop></line>',
	'a step at any depth': '<line><stop><deck><lift load="7"/></deck></stop></line>',
	'the root': '<line><stop/><stop/><stop/><stop/></line>',
	'another root': '<rail><stop name="a/b]" height="4"/></rail>',
};

describe('all rules at once', () => {
	const all = XmlXPath.compile(anyFaultOf(rules));

	it.each(Object.entries(documents))('find something exactly when one rule does: %s', (name, text) => {
		const document = XmlDocument.fromString(text);
		const single = rules.filter((each) => document.find(XmlXPath.compile(faultsOf(each))).length > 0);
		const isClean = ['nothing wrong', 'the same below another stop', 'another root'].includes(name);
		expect(single.length === 0).toBe(isClean);
		expect(document.find(all).length > 0).toBe(!isClean);
		document.dispose();
	});
});
