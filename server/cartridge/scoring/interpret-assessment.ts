import { XmlDocument } from 'libxml2-wasm';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { childrenOf, onlyChild, readElement, ScoringError, textOf } from '../../qti/scoring/read-tree.ts';
import { safeParsing } from '../../qti/validate/schema-set.ts';
import { assessmentNamespace } from '../write/names.ts';

/** What a platform holds of a student: for each item the options marked, or the one text typed. */
export type PlatformMarks = ReadonlyMap<string, readonly string[]>;

/** What came of one item. */
export interface ItemResult {
	/** SCORE, from 0 to 100; undefined where a person scores and has not yet. */
	readonly score: number | undefined;
	readonly weight: number;
}

/** An item as read for scoring. */
export interface ScoredItem {
	readonly weight: number;
	readonly variable: string;
	readonly response: string;
	readonly isSingle: boolean;
	readonly conditions: readonly MarkupElement[] | undefined;
}

/**
 * Reads the items of an assessment by their identifiers. Covers what the exports use and refuses anything else by name. Throws
 * XmlParseError and ScoringError.
 */
export function readAssessment(xml: string): ReadonlyMap<string, ScoredItem> {
	const document = XmlDocument.fromString(xml, { option: safeParsing });
	let root: MarkupElement;
	try {
		const { namespaceUri, name } = document.root;
		if (namespaceUri !== assessmentNamespace) {
			throw new ScoringError(name, `expected QTI 1.2.1, found namespace "${namespaceUri}"`);
		}
		root = readElement(document.root);
	} finally {
		document.dispose();
	}
	const section = onlyChild(onlyChild(root, 'assessment'), 'section');
	return new Map(childrenOf(section, 'item').map((item) => [item.attributes.ident ?? '', readItem(item)]));
}

/** Scores every item of an assessment; those without marks as unanswered. Throws ScoringError. */
export function scoreAssessment(
	items: ReadonlyMap<string, ScoredItem>,
	marks: PlatformMarks,
): ReadonlyMap<string, ItemResult> {
	return new Map(
		[...items].map(([ident, item]) => [ident, { score: scoreItem(item, marks.get(ident) ?? []), weight: item.weight }]),
	);
}

/** Points in all: each item's share of its weight, those that nobody scored left out. */
export function addWeighted(results: ReadonlyMap<string, ItemResult>): number {
	return [...results.values()].reduce((sum, { score, weight }) => sum + ((score ?? 0) / 100) * weight, 0);
}

function readItem(item: MarkupElement): ScoredItem {
	const fields = childrenOf(onlyChild(onlyChild(item, 'itemmetadata'), 'qtimetadata'), 'qtimetadatafield');
	const field = (name: string): string | undefined => {
		const found = fields.find((each) => textOf(onlyChild(each, 'fieldlabel')) === name);
		return found && textOf(onlyChild(found, 'fieldentry'));
	};
	const responses = childrenOf(onlyChild(item, 'presentation')).filter(({ name }) => name !== 'material');
	const [response, ...more] = responses;
	if (!response || more.length > 0 || !/^response_(?:lid|str)$/.test(response.name)) {
		const found = responses.map(({ name }) => name).join(', ') || 'none';
		throw new ScoringError('presentation', `expected one response_lid or response_str, found ${found}`);
	}
	const [processing] = childrenOf(item, 'resprocessing');
	const outcome = processing && onlyChild(onlyChild(processing, 'outcomes'), 'decvar');
	return {
		weight: Number(field('cc_weighting') ?? 1),
		variable: outcome?.attributes.varname ?? 'SCORE',
		response: response.attributes.ident ?? '',
		isSingle: response.attributes.rcardinality !== 'Multiple',
		conditions: processing && childrenOf(processing, 'respcondition'),
	};
}

/**
 * SCORE of one item, from 0 to 100; undefined where a person scores. QTI 1.2.1, response processing: conditions in order; one that
 * holds ends it unless it says to continue. Throws ScoringError.
 */
export function scoreItem(item: ScoredItem, marks: readonly string[]): number | undefined {
	if (!item.conditions) return undefined;
	if (item.isSingle && marks.length > 1) {
		throw new ScoringError('response_lid', `expected at most one mark, found ${marks.join(', ')}`);
	}
	let score = 0;
	for (const condition of item.conditions) {
		if (!holds(onlyTest(onlyChild(condition, 'conditionvar')), item, marks)) continue;
		const { varname = 'SCORE', action = 'Set' } = onlyChild(condition, 'setvar').attributes;
		if (varname !== item.variable || action !== 'Set') {
			throw new ScoringError('setvar', `expected to set ${item.variable}, found ${action} ${varname}`);
		}
		score = Number(textOf(onlyChild(condition, 'setvar')));
		if (condition.attributes.continue !== 'Yes') break;
	}
	return score;
}

/** What several tests side by side mean is read in two ways, so they are refused. */
function onlyTest(conditionvar: MarkupElement): MarkupElement {
	const [test, ...more] = childrenOf(conditionvar);
	if (test && more.length === 0) return test;
	throw new ScoringError('conditionvar', `expected one test, found ${more.length + (test ? 1 : 0)}`);
}

function holds(test: MarkupElement, item: ScoredItem, marks: readonly string[]): boolean {
	switch (test.name) {
		case 'varequal': {
			const { respident, case: isExact = 'No' } = test.attributes;
			if (respident !== item.response) {
				throw new ScoringError('varequal', `expected the response ${item.response}, found "${respident}"`);
			}
			const fold = (text: string): string => (isExact === 'Yes' ? text : text.toLowerCase());
			return marks.some((mark) => fold(mark) === fold(textOf(test)));
		}
		case 'and':
			return childrenOf(test).every((each) => holds(each, item, marks));
		case 'not':
			return !holds(onlyTest(test), item, marks);
		default:
			throw new ScoringError(test.name, `expected varequal, and or not, found <${test.name}>`);
	}
}
