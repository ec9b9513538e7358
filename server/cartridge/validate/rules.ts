import type { Rule } from '../../qti/validate/rule.ts';
import {
	assessmentLocation,
	assessmentNamespace,
	assessmentType,
	cartridgeLocation,
	cartridgeNamespace,
} from '../write/names.ts';
import { assessmentPath } from '../write/paths.ts';

const assessment = '/q:questestinterop/q:assessment';
const item = `${assessment}/q:section/q:item`;
const label = `${item}/q:presentation/q:response_lid/q:render_choice/q:response_label`;
const condition = `${item}/q:resprocessing/q:respcondition/q:conditionvar`;

const isOf = (name: string): string =>
	`q:itemmetadata/q:qtimetadata/q:qtimetadatafield[1]/q:fieldentry = 'cc.${name}.v0p1'`;
const fields = (labels: readonly string[]): string =>
	labels.map((name, index) => `q:qtimetadatafield[${index + 1}]/q:fieldlabel = '${name}'`).join(' and ');
const entry = (index: number): string => `q:qtimetadatafield[${index}]/q:fieldentry`;
const value = "translate(., '\u2212+', '-')";
const firstValue = "translate(../../../q:respcondition[1]/q:conditionvar/q:varequal, '\u2212+', '-')";

/** Rules for assessments, beyond the profile's schema; the numbers are those of the published schema's own rules. */
export const assessmentRules: readonly Rule[] = [
	{
		code: 'qti-schema-location',
		at: '/*',
		fault: `not(@xsi:schemaLocation = '${assessmentNamespace} ${assessmentLocation}')`,
		expected: `the schema location "${assessmentNamespace} ${assessmentLocation}"`,
	},
	{
		// 1a to 1s: every field once, with an entry that fits.
		code: 'cartridge-metadata',
		at: `${assessment}/q:qtimetadata`,
		fault: `not(${fields(['cc_profile', 'qmd_assessmenttype', 'qmd_scoretype', 'qmd_feedbackpermitted', 'qmd_hintspermitted', 'qmd_solutionspermitted', 'cc_maxattempts'])} and ${entry(1)} = 'cc.exam.v0p1' and ${entry(2)} = 'Examination' and ${entry(3)} = 'Percentage' and ${entry(4)} = 'No' and ${entry(5)} = 'No' and ${entry(6)} = 'No' and ${entry(7)} = '1')`,
		expected: 'an examination in percent, once, without feedback, hints or solutions',
	},
	{
		// 2a to 2j and 8f.
		code: 'cartridge-metadata',
		at: `${item}/q:itemmetadata/q:qtimetadata`,
		fault: `not(${fields(['cc_profile', 'cc_weighting', 'qmd_scoringpermitted', 'qmd_computerscored'])} and ${entry(3)} = 'Yes' and number(${entry(2)}) >= 1 and contains(${entry(1)}, '.v0p1') and ${entry(1)} != 'cc.exam.v0p1')`,
		expected: 'the type, the weight, that it is scored and by whom',
	},
	{
		code: 'cartridge-metadata',
		at: item,
		fault: `(q:itemmetadata/q:qtimetadata/${entry(4)} = 'Yes') != boolean(q:resprocessing) or not(q:itemmetadata/q:qtimetadata/${entry(4)} = 'Yes' or q:itemmetadata/q:qtimetadata/${entry(4)} = 'No')`,
		expected: 'response processing, or none where a person scores',
	},
	{
		// 4a to 4f.
		code: 'cartridge-question-type',
		at: item,
		fault: `(${isOf('multiple_choice')}) != boolean(q:presentation/q:response_lid[@rcardinality = 'Single'][count(q:render_choice/q:response_label) > 2])`,
		expected: 'a single choice among three options or more',
	},
	{
		// 5a to 5f.
		code: 'cartridge-question-type',
		at: item,
		fault: `(${isOf('multiple_response')}) != boolean(q:presentation/q:response_lid[@rcardinality = 'Multiple'])`,
		expected: 'a multiple response among its options',
	},
	{
		// 6a to 6d and 8a to 8d.
		code: 'cartridge-question-type',
		at: item,
		fault: `(${isOf('fib')} or ${isOf('essay')}) != boolean(q:presentation/q:response_str) or (${isOf('essay')}) = boolean(q:resprocessing)`,
		expected: 'an entry that is compared with spellings, or an essay that a person scores',
	},
	{
		code: 'qti-option-order',
		at: label,
		fault: "@ident != substring('ABCDEFGH', count(preceding-sibling::*) + 1, 1)",
		expected: 'options named A, B, C … in order',
	},
	{
		code: 'qti-correct-count',
		at: `${item}/q:resprocessing`,
		fault:
			"../q:presentation/q:response_lid and (count(q:respcondition) != 1 or (../q:presentation/q:response_lid/@rcardinality = 'Multiple') != boolean(q:respcondition/q:conditionvar/q:and)) or ../q:presentation/q:response_str and q:respcondition/q:conditionvar/q:and",
		expected: 'one condition on options, all of them in one "and" where several can be marked',
	},
	{
		code: 'qti-correct-count',
		at: `${condition}/q:and`,
		fault:
			'count(*) != count(../../../../q:presentation/q:response_lid/q:render_choice/q:response_label) or not(q:varequal) or not(q:not)',
		expected: 'a test of each option, at least one right and one wrong',
	},
	{
		code: 'qti-option-order',
		at: `${condition}/q:and/*`,
		fault: "descendant-or-self::q:varequal != substring('ABCDEFGH', count(preceding-sibling::*) + 1, 1)",
		expected: 'tests in the order of the options',
	},
	{
		code: 'qti-correct-unknown',
		at: `${condition}/q:varequal`,
		fault:
			"../../../../q:presentation/q:response_lid and not(. = ../../../../q:presentation/q:response_lid/q:render_choice/q:response_label/@ident) or ../../../../q:presentation/q:response_str and contains('ABCDEFGH', .)",
		expected: 'a right answer that is an option, or a spelling of a number',
	},
	{
		code: 'cartridge-spelling',
		at: `${condition}/q:varequal`,
		fault: `../../../../q:presentation/q:response_str and (number(${value}) != number(${firstValue}) or . = ../../preceding-sibling::q:respcondition/q:conditionvar/q:varequal)`,
		expected: 'spellings of one number, each once',
	},
	{
		code: 'qti-stray-text',
		at: `${item}/q:presentation/q:material/q:mattext`,
		fault: "@texttype != 'text/html'",
		expected: 'what stands above an answer as HTML',
	},
];

/** Rules for the HTML within texts. */
export const textRules: readonly Rule[] = [
	{
		code: 'qti-stray-text',
		at: '/texts/text/p',
		fault: "img and text() or not(img) and normalize-space() = ''",
		expected: 'text, or one image alone',
	},
	{
		code: 'cartridge-table',
		at: '/texts/text/table/tbody/tr',
		fault: 'count(td) != count(../../thead/tr/th)',
		expected: 'as many cells as there are headings',
	},
];

const resource = '/cp:manifest/cp:resources/cp:resource';

/** Rules for manifests of cartridges; the numbers are those of the published schema's own rules. */
export const cartridgeManifestRules: readonly Rule[] = [
	{
		code: 'qti-schema-location',
		at: '/*',
		fault: `not(@xsi:schemaLocation = '${cartridgeNamespace} ${cartridgeLocation}')`,
		expected: `the schema location of ${cartridgeLocation}`,
	},
	{
		// 3c: an assessment has no href of its own; 10a: what has one lists that file.
		code: 'package-resource-file',
		at: resource,
		fault: `(@type = 'webcontent') != boolean(@href) or @href and @href != cp:file/@href`,
		expected: 'a figure with the address of its file, an assessment without',
	},
	{
		code: 'package-resource-type',
		at: resource,
		fault: `(@type = '${assessmentType}') != (cp:file/@href = '${assessmentPath}') or (@type = '${assessmentType}') != starts-with(@identifier, 'form-') or (@type = '${assessmentType}') = boolean(preceding-sibling::cp:resource[1])`,
		expected: 'the assessment first, then figures, each of the type of its file',
	},
	{
		// 7b.
		code: 'package-dependency-missing',
		at: `${resource}[1]`,
		fault: `count(cp:dependency) != count(../cp:resource) - 1`,
		expected: 'one dependency on each figure',
	},
	{
		code: 'package-dependency-missing',
		at: `${resource}[position() > 1]`,
		fault: 'cp:dependency',
		expected: 'figures that depend on nothing',
	},
];
