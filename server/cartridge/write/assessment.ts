import type { FormRecord } from '../../../item-bank/items/record.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { testIdentifier } from '../../qti/identifiers.ts';
import { instanceNamespace } from '../../qti/versions.ts';
import { writeShapedPart, writeShapedXml } from '../../qti/write/shaped-xml.ts';
import { writeFields } from './item.ts';
import { assessmentLocation, assessmentNamespace } from './names.ts';

const declarations = {
	xmlns: assessmentNamespace,
	'xmlns:xsi': instanceNamespace,
	'xsi:schemaLocation': `${assessmentNamespace} ${assessmentLocation}`,
};
const emptyRoot = element('questestinterop', declarations);
const place = '<item/>';
const largeParts: ReadonlySet<string> = new Set([
	'questestinterop',
	'assessment',
	'section',
	'item',
	'qtimetadata',
	'presentation',
	'response_lid',
	'response_str',
	'response_label',
	'resprocessing',
	'respcondition',
]);
/** Lines by which a problem can be found. */
const startsLine = (name: string): boolean => largeParts.has(name);

/** The text of one item as it stands in an assessment. Throws XmlError. */
export function writeItemText(item: MarkupElement): string {
	return writeShapedPart(item, emptyRoot, startsLine);
}

/**
 * The text of an assessment around the texts of its items: an examination taken once, without feedback, hints or solutions, in
 * the one section that the profile allows. Throws XmlError.
 */
export function writeAssessment(form: FormRecord, items: readonly string[]): string {
	const root = element('questestinterop', declarations, [
		element('assessment', { ident: testIdentifier(form.id, form.version), title: form.form.title }, [
			writeFields([
				['cc_profile', 'cc.exam.v0p1'],
				['qmd_assessmenttype', 'Examination'],
				['qmd_scoretype', 'Percentage'],
				['qmd_feedbackpermitted', 'No'],
				['qmd_hintspermitted', 'No'],
				['qmd_solutionspermitted', 'No'],
				['cc_maxattempts', '1'],
			]),
			element('section', { ident: 'section-1' }, [element('item')]),
		]),
	]);
	const text = writeShapedXml(root, { declaration: true, startsLine });
	const at = text.lastIndexOf(place);
	return text.slice(0, at) + items.join('\n') + text.slice(at + place.length);
}
