import type { FormRecord } from '../../../item-bank/items/record.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { testIdentifier, variables } from '../identifiers.ts';
import { getVersionFacts, instanceNamespace, type QtiVersion } from '../versions.ts';
import { renameToNewer } from '../vocabulary.ts';
import { writeFloat } from './item.ts';
import type { ListedItem } from './manifest.ts';

/** Path of the test within the package. */
export const testPath = 'test.xml';

/**
 * Writes a form as an assessmentTest: its sections in one part that students move through freely and hand in as a whole.
 * The total is the sum of item scores times their weights; MAXSCORE is a constant, because items a student never opened
 * may have no variables to add up.
 */
export function writeTest(form: FormRecord, items: readonly ListedItem[], version: QtiVersion): MarkupElement {
	const facts = getVersionFacts(version);
	const hasFeedback = items.some((item) => item.hasFeedback);
	// Handed in all at once, no item is scored, and nothing said of it, before the end.
	const submissionMode = hasFeedback ? 'individual' : 'simultaneous';
	// Points shared out among the parts of a set may have no end; together they are whole again.
	const total = Math.round(items.reduce((sum, { points }) => sum + points, 0));
	const attributes = {
		xmlns: facts.namespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${facts.namespace} ${facts.location}`,
		identifier: testIdentifier(form.id, form.version),
		title: form.form.title,
		toolName: 'Zeropair',
	};
	const sections = form.form.sections.flatMap((section, index) => {
		const placed = items.filter((item) => item.section === index);
		if (placed.length === 0) return [];
		const sectionAttributes = { identifier: `section-${index + 1}`, title: section.title, visible: 'true' };
		return [element('assessmentSection', sectionAttributes, writePlaced(placed))];
	});
	const root = element('assessmentTest', attributes, [
		writeFloat(variables.score, '0'),
		writeFloat(variables.maximum, String(total)),
		element('testPart', { identifier: 'part-1', navigationMode: 'nonlinear', submissionMode }, [
			element('itemSessionControl', {
				maxAttempts: 1,
				showFeedback: String(hasFeedback),
				allowReview: 'false',
				showSolution: 'false',
				allowComment: 'false',
				allowSkipping: 'true',
				validateResponses: 'false',
			}),
			...sections,
		]),
		element('outcomeProcessing', {}, [
			element('setOutcomeValue', { identifier: variables.score }, [
				element('sum', {}, [
					element('testVariables', { variableIdentifier: variables.score, weightIdentifier: variables.weight }),
				]),
			]),
		]),
	]);
	return facts.hasNewerNames ? renameToNewer(root) : root;
}

/** Items in order; the parts of a set stay together in a section of their own, which students do not see. */
function writePlaced(placed: readonly ListedItem[]): readonly MarkupElement[] {
	return placed.flatMap((item) => {
		if (item.part === undefined) return [writeReference(item)];
		if (item.part > 1) return [];
		const attributes = {
			identifier: `set-${item.position}`,
			title: `Item ${item.position}`,
			visible: 'false',
			keepTogether: 'true',
		};
		const parts = placed.filter(({ position }) => position === item.position);
		return [element('assessmentSection', attributes, parts.map(writeReference))];
	});
}

function writeReference({ identifier, path, points }: ListedItem): MarkupElement {
	return element('assessmentItemRef', { identifier, href: path }, [
		element('weight', { identifier: variables.weight, value: points }),
	]);
}
