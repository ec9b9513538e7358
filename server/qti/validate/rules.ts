import { getVersionFacts, type QtiVersion } from '../versions.ts';

/** A rule that no XML Schema can state: nodes that its XPath finds are at fault. */
export interface Rule {
	readonly code: string;
	/** XPath 1.0; the prefix q is the QTI namespace, cp the manifest's. */
	readonly finds: string;
	/** What was expected of the node. */
	readonly expected: string;
}

const declaration = '/q:assessmentItem/q:responseDeclaration';
const body = '/q:assessmentItem/q:itemBody';
const choices = `${body}/q:choiceInteraction`;

/** Rules for items and tests of one version. */
export function rulesOf(version: QtiVersion): readonly Rule[] {
	const { namespace, location, templates } = getVersionFacts(version);
	return [
		{
			code: 'qti-newer-name',
			finds: version === 'qti-2.1' ? newerNames : '/*[false()]',
			expected: 'only names that QTI 2.1 has',
		},
		{
			code: 'qti-schema-location',
			finds: `/*[@xsi:schemaLocation != '${namespace} ${location}' or not(@xsi:schemaLocation)]`,
			expected: `the schema location "${namespace} ${location}"`,
		},
		{
			code: 'qti-response-mismatch',
			finds: [
				`${declaration}[@baseType = 'identifier' and not(${choices})]`,
				`${declaration}[@baseType = 'string' and ${choices}]`,
				`${declaration}[@baseType = 'string' and @cardinality != 'single']`,
				`${choices}[@maxChoices = '1' and ${declaration}[@cardinality != 'single']]`,
				`${choices}[@maxChoices != '1' and ${declaration}[@cardinality = 'single']]`,
			].join(' | '),
			expected: 'a response declaration that fits its interaction',
		},
		{
			code: 'qti-correct-count',
			finds: `${declaration}[@cardinality = 'single']/q:correctResponse[count(q:value) != 1]`,
			expected: 'one correct value for a response of single cardinality',
		},
		{
			code: 'qti-correct-unknown',
			finds: [
				`${declaration}[@baseType = 'identifier']/q:correctResponse/q:value[not(. = ${choices}/q:simpleChoice/@identifier)]`,
				`${declaration}[@baseType = 'string']/q:correctResponse/q:value[not(. = ../../q:mapping/q:mapEntry/@mapKey)]`,
			].join(' | '),
			expected: 'a correct value that is an option, or a spelling in the mapping',
		},
		{
			code: 'qti-template-mismatch',
			finds: [
				`/q:assessmentItem/q:responseProcessing[@template = '${templates}match_correct' and ${declaration}/q:mapping]`,
				`/q:assessmentItem/q:responseProcessing[@template = '${templates}map_response' and not(${declaration}/q:mapping)]`,
			].join(' | '),
			expected: 'match_correct without a mapping, or map_response with one',
		},
		{
			code: 'qti-option-order',
			finds: `${choices}/q:simpleChoice[@identifier != substring('ABCDEFGH', count(preceding-sibling::q:simpleChoice) + 1, 1)]`,
			expected: 'options named A, B, C … in order',
		},
		{
			code: 'qti-outcome-default',
			finds: [
				"/*/q:outcomeDeclaration[@identifier = 'SCORE' and q:defaultValue/q:value != '0']",
				"/q:assessmentItem/q:outcomeDeclaration[@identifier = 'MAXSCORE' and q:defaultValue/q:value != '1']",
				"/q:assessmentTest/q:outcomeDeclaration[@identifier = 'MAXSCORE' and q:defaultValue/q:value != sum(//q:weight/@value)]",
			].join(' | '),
			expected: 'SCORE from 0, MAXSCORE 1 in an item and the sum of the weights in a test',
		},
		{
			code: 'qti-stray-text',
			finds: [
				`${body}/q:p[not(*) and normalize-space(.) = '']`,
				`${body}/q:p[q:img and text()]`,
				`${choices}/q:simpleChoice[not(*) and normalize-space(.) = '']`,
				`${choices}/q:simpleChoice[q:img and text()]`,
			].join(' | '),
			expected: 'text, or one image alone',
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
			finds: `/*[not(@xsi:schemaLocation = 'http://www.imsglobal.org/xsd/imscp_v1p1 ${manifestLocation}')]`,
			expected: `the schema location of ${manifestLocation}`,
		},
		{
			code: 'package-resource-file',
			finds: `${resource}[@href != cp:file/@href]`,
			expected: 'a resource that lists the file it points at',
		},
		{
			code: 'package-resource-type',
			finds: [
				`${resource}[@href = 'test.xml' and @type != '${testType}']`,
				`${resource}[@href != 'test.xml' and @type = '${testType}']`,
				`${resource}[contains(@href, '.xml') and @href != 'test.xml' and @type != '${itemType}']`,
				`${resource}[contains(@href, 'images/') and @type != 'webcontent']`,
			].join(' | '),
			expected: 'a resource of the type of its file',
		},
		{
			code: 'package-resource-metadata',
			finds: `${resource}[@type = 'webcontent' and cp:metadata] | ${resource}[@type != 'webcontent' and not(cp:metadata)] | ${resource}[@type = '${itemType}' and not(cp:metadata/*[local-name() = 'qtiMetadata'])]`,
			expected: 'metadata on items and tests, QTI metadata on items, none on images',
		},
	];
}

// From memory of the QTI 2.1 model, as qti-facts lists them: no 2.1 schema was at hand.
const newerNames =
	"//q:assessmentStimulusRef | //@externalScored | //@variableIdentifierRef | //@role | //@*[starts-with(name(), 'aria-')] | //@*[starts-with(name(), 'data-')] | //*[namespace-uri() = 'http://www.imsglobal.org/xsd/imsqtiv2p2_html5_v1p0' or namespace-uri() = 'http://www.w3.org/2010/10/synthesis' or namespace-uri() = 'http://www.w3.org/2010/Math/MathML']";
