import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { getVersionFacts, qtiVersions } from '../versions.ts';
import { ScoringError } from './read-tree.ts';

const score = (expression: MarkupElement): MarkupElement =>
	element('setOutcomeValue', { identifier: 'SCORE' }, [expression]);
const response = { identifier: 'RESPONSE' };
const number = (value: string): MarkupElement => element('baseValue', { baseType: 'float' }, [value]);

/**
 * The standard templates by their definition (QTI 2.2, response processing templates): match_correct scores 1 for the correct
 * response and 0 otherwise; map_response scores 0 for no response and the mapped response otherwise.
 */
const templates: Readonly<Record<'match_correct' | 'map_response', readonly MarkupElement[]>> = {
	match_correct: [
		element('responseCondition', {}, [
			element('responseIf', {}, [
				element('match', {}, [element('variable', response), element('correct', response)]),
				score(number('1')),
			]),
			element('responseElse', {}, [score(number('0'))]),
		]),
	],
	map_response: [
		element('responseCondition', {}, [
			element('responseIf', {}, [element('isNull', {}, [element('variable', response)]), score(number('0'))]),
			element('responseElse', {}, [score(element('mapResponse', response))]),
		]),
	],
};

/** The rules of a standard template by its name. */
export function getTemplateRules(name: 'match_correct' | 'map_response'): readonly MarkupElement[] {
	return templates[name];
}

/** Besides the addresses that exports use, those of published QTI 3.0 examples (qti-facts.md of the reference folder). */
const prefixes: readonly string[] = [
	...qtiVersions.map((version) => getVersionFacts(version).templates),
	'https://www.imsglobal.org/question/qti_v3p0/rptemplates/',
	'http://www.imsglobal.org/question/qti_v3p0/rptemplates/',
];

/** The rules of the template at an address. Throws {@link ScoringError} for any other. */
export function getTemplate(address: string): readonly MarkupElement[] {
	const prefix = prefixes.find((known) => address.startsWith(known));
	const name = prefix === undefined ? '' : address.slice(prefix.length).replace(/\.xml$/, '');
	if (name === 'match_correct' || name === 'map_response') return templates[name];
	throw new ScoringError('responseProcessing', `expected match_correct or map_response, found "${address}"`);
}
