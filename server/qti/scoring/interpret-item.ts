import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { childrenOf, onlyChild, readTree, ScoringError } from './read-tree.ts';
import { type RuleScope, runRules } from './rules.ts';
import { getTemplate } from './templates.ts';
import { type Declaration, parseMember, readDeclaration, type Value } from './values.ts';

/** A response as a platform holds it: texts of the members, none for no response. */
export type PlatformResponses = Readonly<Record<string, readonly string[]>>;

/** Values of outcome variables by identifier. */
export type Outcomes = ReadonlyMap<string, Value>;

/**
 * Scores an exported item as QTI defines it: declarations, response processing by template or by rules. Every response
 * variable must be answered, with an empty list for none. An item without response processing is scored by a person: what
 * that person entered stands beside the responses, under the outcome's identifier; without it the outcome keeps its default.
 * Throws {@link ScoringError} for what exports do not use.
 */
export function interpretItem(xml: string, responses: PlatformResponses): Outcomes {
	return interpretItemTree(readTree(xml), responses);
}

/** As {@link interpretItem}, for a document read already. */
export function interpretItemTree(root: MarkupElement, responses: PlatformResponses): Outcomes {
	return openItem(root)(responses);
}

/** As {@link interpretItem}, for many responses to one document: its declarations are read once. */
export function openItem(root: MarkupElement): (responses: PlatformResponses) => Outcomes {
	if (root.name !== 'assessmentItem')
		throw new ScoringError(root.name, `expected an assessmentItem, found <${root.name}>`);
	checkParts(root);
	const inputs = childrenOf(root, 'responseDeclaration').map(readDeclaration);
	const outputs = childrenOf(root, 'outcomeDeclaration').map(readDeclaration);
	const declarations = new Map([...inputs, ...outputs].map((each) => [each.identifier, each]));
	const isRated = childrenOf(root, 'responseProcessing').length === 0;
	return (responses) => {
		const values = new Map<string, Value>();
		for (const { identifier, cardinality, baseType } of inputs) {
			const members = responses[identifier];
			if (!members) {
				throw new ScoringError('responseDeclaration', `expected a response for ${identifier}, found none`);
			}
			values.set(identifier, members.length === 0 ? null : { cardinality, baseType, members });
		}
		for (const { identifier, initial } of outputs) values.set(identifier, initial);
		if (isRated) enterScores(outputs, responses, values);
		else processResponse(onlyChild(root, 'responseProcessing'), { declarations, values });
		return new Map(outputs.map(({ identifier }) => [identifier, values.get(identifier) ?? null]));
	};
}

const parts: ReadonlySet<string> = new Set([
	'responseDeclaration',
	'outcomeDeclaration',
	'assessmentStimulusRef',
	'stylesheet',
	'itemBody',
	'catalogInfo',
	'responseProcessing',
	'modalFeedback',
]);

/** Templates and further attempts change what is right: they must not be passed over. */
function checkParts(root: MarkupElement): void {
	for (const { name } of childrenOf(root)) {
		if (!parts.has(name)) throw new ScoringError(name, `expected parts of an item that exports use, found <${name}>`);
	}
	if (root.attributes.adaptive === 'true') {
		throw new ScoringError(root.name, 'expected an item that is answered once, found adaptive="true"');
	}
}

function processResponse(processing: MarkupElement, scope: RuleScope): void {
	const { template } = processing.attributes;
	runRules(template === undefined ? childrenOf(processing) : getTemplate(template), scope);
}

function enterScores(outputs: readonly Declaration[], entered: PlatformResponses, values: Map<string, Value>): void {
	for (const { identifier, cardinality, baseType } of outputs) {
		const members = entered[identifier];
		if (!members) continue;
		values.set(identifier, { cardinality, baseType, members: members.map((text) => parseMember(text, baseType)) });
	}
}
