import { getVersionFacts, type QtiVersion } from '../versions.ts';

/** A rule that no XML Schema can state: elements of which its condition holds are at fault. */
export interface Rule {
	readonly code: string;
	/** XPath 1.0 of the elements it looks at; the prefix q is the QTI namespace, cp the manifest's. */
	readonly at: string;
	/** XPath 1.0 condition, relative to such an element. */
	readonly fault: string;
	/** What was expected of the element. */
	readonly expected: string;
}

const item = '/q:assessmentItem';
const declaration = `${item}/q:responseDeclaration`;
const choices = `${item}/q:itemBody/q:choiceInteraction`;
const option = `${choices}/q:simpleChoice`;
const fits = 'a response declaration that fits its interaction';
const stray = 'text, or one image alone';

/** Rules for items and tests of one version. */
export function rulesOf(version: QtiVersion): readonly Rule[] {
	const { namespace, location, templates } = getVersionFacts(version);
	return [
		...(version === 'qti-2.1' ? [newerNames] : []),
		{
			code: 'qti-schema-location',
			at: '/*',
			fault: `not(@xsi:schemaLocation = '${namespace} ${location}')`,
			expected: `the schema location "${namespace} ${location}"`,
		},
		{
			code: 'qti-response-mismatch',
			at: declaration,
			fault: "(@baseType = 'identifier') != boolean(../q:itemBody/q:choiceInteraction)",
			expected: fits,
		},
		{
			code: 'qti-response-mismatch',
			at: declaration,
			fault: "@baseType = 'string' and @cardinality != 'single'",
			expected: fits,
		},
		{
			code: 'qti-response-mismatch',
			at: choices,
			fault: "(@maxChoices = '1') != (../../q:responseDeclaration/@cardinality = 'single')",
			expected: fits,
		},
		{
			code: 'qti-correct-count',
			at: `${declaration}/q:correctResponse`,
			fault: "../@cardinality = 'single' and count(q:value) != 1",
			expected: 'one correct value for a response of single cardinality',
		},
		{
			code: 'qti-correct-unknown',
			at: `${declaration}/q:correctResponse/q:value`,
			fault:
				"../../@baseType = 'identifier' and not(. = ../../../q:itemBody/q:choiceInteraction/q:simpleChoice/@identifier)",
			expected: 'a correct value that is an option',
		},
		{
			code: 'qti-correct-unknown',
			at: `${declaration}/q:correctResponse/q:value`,
			fault: "../../@baseType = 'string' and not(. = ../../q:mapping/q:mapEntry/@mapKey)",
			expected: 'a correct value that is a spelling in the mapping',
		},
		{
			code: 'qti-template-mismatch',
			at: `${item}/q:responseProcessing`,
			fault: `(@template = '${templates}map_response') != boolean(../q:responseDeclaration/q:mapping)`,
			expected: 'match_correct without a mapping, or map_response with one',
		},
		{
			code: 'qti-option-order',
			at: option,
			fault: "@identifier != substring('ABCDEFGH', count(preceding-sibling::q:simpleChoice) + 1, 1)",
			expected: 'options named A, B, C … in order',
		},
		{
			code: 'qti-outcome-default',
			at: '/*/q:outcomeDeclaration',
			fault: "@identifier = 'SCORE' and q:defaultValue/q:value != '0'",
			expected: 'SCORE from 0',
		},
		{
			code: 'qti-outcome-default',
			at: '/*/q:outcomeDeclaration',
			fault: "@identifier = 'MAXSCORE' and parent::q:assessmentItem and q:defaultValue/q:value != '1'",
			expected: 'MAXSCORE 1 in an item',
		},
		{
			code: 'qti-outcome-default',
			at: '/q:assessmentTest/q:outcomeDeclaration',
			fault: "@identifier = 'MAXSCORE' and q:defaultValue/q:value != sum(//q:weight/@value)",
			expected: 'MAXSCORE as the sum of the weights in a test',
		},
		{
			code: 'qti-stray-text',
			at: `${item}/q:itemBody/q:p`,
			fault: "q:img and text() or not(*) and normalize-space() = ''",
			expected: stray,
		},
		{
			code: 'qti-stray-text',
			at: option,
			fault: "q:img and text() or not(*) and normalize-space() = ''",
			expected: stray,
		},
	];
}

/** Rules for manifests. */
export function manifestRulesOf(version: QtiVersion): readonly Rule[] {
	const { itemType, testType, manifestLocation } = getVersionFacts(version);
	const resource = '/cp:manifest/cp:resources/cp:resource';
	return [
		{
			code: 'qti-schema-location',
			at: '/*',
			fault: `not(@xsi:schemaLocation = 'http://www.imsglobal.org/xsd/imscp_v1p1 ${manifestLocation}')`,
			expected: `the schema location of ${manifestLocation}`,
		},
		{
			code: 'package-resource-file',
			at: resource,
			fault: '@href != cp:file/@href',
			expected: 'a resource that lists the file it points at',
		},
		{
			code: 'package-resource-type',
			at: resource,
			fault: `(@type = '${testType}') != (@href = 'test.xml') or (@type = 'webcontent') != contains(@href, 'images/')`,
			expected: 'a resource of the type of its file',
		},
		{
			code: 'package-resource-metadata',
			at: resource,
			fault: `(@type = 'webcontent') = boolean(cp:metadata) or @type = '${itemType}' and not(cp:metadata/*[local-name() = 'qtiMetadata'])`,
			expected: 'metadata on items and tests, QTI metadata on items, none on images',
		},
	];
}

/** The XPath of the elements at fault by one rule. */
export function faultsOf({ at, fault }: Rule): string {
	return `${at}[${fault}]`;
}

/** One XPath that finds nothing exactly when no rule is broken: each kind of element is looked at once. */
export function anyFaultOf(rules: readonly Rule[]): string {
	const faults = new Map<string, string[]>();
	for (const { at, fault } of rules) faults.set(at, [...(faults.get(at) ?? []), `(${fault})`]);
	return [...faults].map(([at, conditions]) => `${at}[${conditions.join(' or ')}]`).join(' | ');
}

// From memory of the QTI 2.1 model: no 2.1 schema was at hand. The profile admits none of these names anyway.
const newerNames: Rule = {
	code: 'qti-newer-name',
	at: '//*',
	fault:
		"self::q:assessmentStimulusRef or @externalScored or @variableIdentifierRef or @role or @*[starts-with(name(), 'aria-') or starts-with(name(), 'data-')] or namespace-uri() = 'http://www.imsglobal.org/xsd/imsqtiv2p2_html5_v1p0' or namespace-uri() = 'http://www.w3.org/2010/10/synthesis' or namespace-uri() = 'http://www.w3.org/2010/Math/MathML'",
	expected: 'only names that QTI 2.1 has',
};
