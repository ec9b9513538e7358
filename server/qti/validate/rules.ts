import { getVersionFacts, type QtiVersion, templateAddress } from '../versions.ts';
import { renamePath } from '../vocabulary.ts';
import { feedbackRules, newerRules } from './feedback-rules.ts';
import { gridRules } from './grid-rules.ts';
import { interactionRules } from './interaction-rules.ts';
import { mappingRules, ratedRule, responseRules } from './response-rules.ts';
import type { Rule } from './rule.ts';

const testRules: readonly Rule[] = [
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
		// Shares of points that have no end are whole again together, but for the last places.
		fault: "@identifier = 'MAXSCORE' and round((q:defaultValue/q:value - sum(//q:weight/@value)) * 1000000) != 0",
		expected: 'MAXSCORE as the sum of the weights in a test',
	},
];

/** Rules for items and tests of one version. */
export function rulesOf(version: QtiVersion): readonly Rule[] {
	const { namespace, location, hasNewerNames } = getVersionFacts(version);
	const rules: readonly Rule[] = [
		...(version === 'qti-2.1' ? [newerNames] : []),
		{
			code: 'qti-schema-location',
			at: '/*',
			fault: `not(@xsi:schemaLocation = '${namespace} ${location}')`,
			expected: `the schema location "${namespace} ${location}"`,
		},
		...responseRules,
		...mappingRules(templateAddress(version, 'map_response')),
		...interactionRules,
		...gridRules,
		...feedbackRules,
		...(hasNewerNames ? newerRules : []),
		...(version === 'qti-2.1' ? [] : [ratedRule]),
		...testRules,
	];
	if (!hasNewerNames) return rules;
	return rules.map((rule) => ({ ...rule, at: renamePath(rule.at), fault: renamePath(rule.fault) }));
}

/** Rules for manifests. */
export function manifestRulesOf(version: QtiVersion): readonly Rule[] {
	const { itemType, testType, stimulusType, manifestLocation, manifestNamespace } = getVersionFacts(version);
	const isShared = stimulusType === undefined ? 'false()' : `(@type = '${stimulusType}')`;
	const resource = '/cp:manifest/cp:resources/cp:resource';
	return [
		{
			code: 'qti-schema-location',
			at: '/*',
			fault: `not(@xsi:schemaLocation = '${manifestNamespace} ${manifestLocation}')`,
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
			fault: `(@type = '${testType}') != (@href = 'test.xml') or (@type = 'webcontent') != contains(@href, 'images/') or ${isShared} != contains(@href, '-stimulus.xml')`,
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

// From memory of the QTI 2.1 model: no 2.1 schema was at hand. The profile admits none of these names anyway.
const newerNames: Rule = {
	code: 'qti-newer-name',
	at: '//*',
	fault:
		"self::q:assessmentStimulusRef or @externalScored or @variableIdentifierRef or @role or @*[starts-with(name(), 'aria-') or starts-with(name(), 'data-')] or namespace-uri() = 'http://www.imsglobal.org/xsd/imsqtiv2p2_html5_v1p0' or namespace-uri() = 'http://www.w3.org/2010/10/synthesis' or namespace-uri() = 'http://www.w3.org/2010/Math/MathML'",
	expected: 'only names that QTI 2.1 has',
};
