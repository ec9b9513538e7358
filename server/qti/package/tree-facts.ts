import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { DocumentFacts, DocumentReference } from '../validate/validate-document.ts';

/** Facts of a manifest or test as its tree is written, in the making. */
export interface TreeFacts {
	readonly identifier: string;
	readonly references: DocumentReference[];
	readonly dependencies: (readonly [from: string, to: string])[];
}

/**
 * The facts that reading the written document would give, taken from its tree: asking a parsed manifest of ten thousand items
 * for each attribute takes as long as checking it. The document itself is parsed and checked all the same.
 */
export function collectFacts(root: MarkupElement): TreeFacts & DocumentFacts {
	const facts: TreeFacts = { identifier: root.attributes.identifier ?? '', references: [], dependencies: [] };
	for (const child of root.children) if (typeof child !== 'string') addFacts(facts, child);
	return facts;
}

const listing: ReadonlySet<string> = new Set(['resource', 'assessmentItemRef', 'qti-assessment-item-ref']);

/** Adds what an element below the root tells, in document order. */
export function addFacts(facts: TreeFacts, node: MarkupElement): void {
	const { identifier = '', href = '' } = node.attributes;
	if (listing.has(node.name)) facts.references.push({ href, identifier });
	const isResource = node.name === 'resource';
	for (const child of node.children) {
		if (typeof child === 'string') continue;
		if (!isResource) addFacts(facts, child);
		else if (child.name === 'dependency') facts.dependencies.push([identifier, child.attributes.identifierref ?? '']);
	}
}
