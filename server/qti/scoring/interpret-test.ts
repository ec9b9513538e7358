import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { interpretItem, type Outcomes, type PlatformResponses } from './interpret-item.ts';
import { childrenOf, onlyChild, readTree, ScoringError } from './read-tree.ts';
import { runRules } from './rules.ts';
import { readDeclaration, type Value } from './values.ts';

interface PlacedItem {
	readonly outcomes: Outcomes;
	readonly weights: ReadonlyMap<string, number>;
}

/**
 * Scores an exported test: every item by its own response processing, then outcome processing over them. Item documents are
 * given by the address the test names them with, responses by item identifier. Throws {@link ScoringError}.
 */
export function interpretTest(
	testXml: string,
	itemXmls: ReadonlyMap<string, string>,
	responses: ReadonlyMap<string, PlatformResponses>,
): Outcomes {
	const root = readTree(testXml);
	if (root.name !== 'assessmentTest')
		throw new ScoringError(root.name, `expected an assessmentTest, found <${root.name}>`);
	const part = onlyChild(root, 'testPart');
	const items = referencesIn(part).map((reference) => interpretReference(reference, itemXmls, responses));
	const outputs = childrenOf(root, 'outcomeDeclaration').map(readDeclaration);
	const values = new Map<string, Value>(outputs.map(({ identifier, initial }) => [identifier, initial]));
	const declarations = new Map(outputs.map((each) => [each.identifier, each]));
	const testVariables = (node: MarkupElement): Value => gatherVariables(node, items);
	runRules(childrenOf(onlyChild(root, 'outcomeProcessing')), { declarations, values, testVariables });
	return values;
}

/** In order, those of sections within sections too. */
function referencesIn(parent: MarkupElement): readonly MarkupElement[] {
	return childrenOf(parent).flatMap((child) => {
		if (child.name === 'assessmentItemRef') return [child];
		return child.name === 'assessmentSection' ? referencesIn(child) : [];
	});
}

function interpretReference(
	reference: MarkupElement,
	itemXmls: ReadonlyMap<string, string>,
	responses: ReadonlyMap<string, PlatformResponses>,
): PlacedItem {
	const { identifier = '', href = '' } = reference.attributes;
	const xml = itemXmls.get(href);
	const given = responses.get(identifier);
	if (xml === undefined || !given) {
		throw new ScoringError('assessmentItemRef', `expected the item ${href} and a response for ${identifier}`);
	}
	const weights = childrenOf(reference, 'weight').map(
		({ attributes }) => [attributes.identifier ?? '', Number(attributes.value)] as const,
	);
	return { outcomes: interpretItem(xml, given), weights: new Map(weights) };
}

/** QTI 2.2, testVariables: the variable of every item that has it, each times its weight, 1 where the item has no such weight. */
function gatherVariables(node: MarkupElement, items: readonly PlacedItem[]): Value {
	const { variableIdentifier = '', weightIdentifier } = node.attributes;
	for (const name of Object.keys(node.attributes)) {
		if (name !== 'variableIdentifier' && name !== 'weightIdentifier') {
			throw new ScoringError('testVariables', `expected variableIdentifier and weightIdentifier alone, found ${name}`);
		}
	}
	const members = items.flatMap(({ outcomes, weights }) => {
		const value = outcomes.get(variableIdentifier);
		if (!value) return [];
		const weight = weightIdentifier === undefined ? 1 : (weights.get(weightIdentifier) ?? 1);
		return value.members.map((member) => Number(member) * weight);
	});
	return members.length === 0 ? null : { cardinality: 'multiple', baseType: 'float', members };
}
