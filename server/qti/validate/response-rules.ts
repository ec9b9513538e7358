import type { Rule } from './rule.ts';

const declaration = "/q:assessmentItem/q:responseDeclaration[@identifier = 'RESPONSE']";
const body = '../q:itemBody';
const value = `${declaration}/q:correctResponse/q:value`;
const identified =
	`${body}/q:choiceInteraction or ${body}/q:orderInteraction or ${body}/q:hotspotInteraction or ` +
	`${body}/q:p/q:inlineChoiceInteraction`;
const fits = 'a response declaration that fits its interaction';

/** What a declaration and its correct response say must be what the interaction can give. */
export const responseRules: readonly Rule[] = [
	{
		code: 'qti-response-mismatch',
		at: declaration,
		fault: `(@baseType = 'identifier') != (${identified})`,
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: declaration,
		fault: `(@baseType = 'directedPair') != boolean(${body}/q:matchInteraction)`,
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: declaration,
		fault: `(@cardinality = 'ordered') != boolean(${body}/q:orderInteraction)`,
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: declaration,
		fault:
			`@cardinality != 'single' and (@baseType = 'string' or ${body}/q:hotspotInteraction or ` +
			`${body}/q:p/q:inlineChoiceInteraction) or @cardinality != 'multiple' and @baseType = 'directedPair'`,
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: '/q:assessmentItem/q:itemBody/q:choiceInteraction',
		fault: "(@maxChoices = '1') != (../../q:responseDeclaration/@cardinality = 'single')",
		expected: fits,
	},
	{
		code: 'qti-correct-count',
		at: declaration,
		fault: `boolean(q:correctResponse) = boolean(${body}/q:extendedTextInteraction)`,
		expected: 'a correct response, or none where a person scores',
	},
	{
		code: 'qti-correct-count',
		at: `${declaration}/q:correctResponse`,
		fault: "../@cardinality = 'single' and count(q:value) != 1",
		expected: 'one correct value for a response of single cardinality',
	},
	{
		code: 'qti-correct-count',
		at: `${declaration}/q:correctResponse`,
		fault:
			"../@cardinality = 'ordered' and count(q:value) != count(../../q:itemBody/q:orderInteraction/q:simpleChoice)",
		expected: 'a correct order of all entries',
	},
	{
		code: 'qti-correct-count',
		at: `${declaration}/q:correctResponse`,
		fault:
			"../@baseType = 'directedPair' and count(q:value) != count(../../q:itemBody/q:matchInteraction/q:simpleMatchSet[1]/*)",
		expected: 'one correct pair for each entry on the left',
	},
	{
		code: 'qti-correct-unknown',
		at: value,
		fault:
			"../../@baseType = 'identifier' and not(. = ../../../q:itemBody/*/*/@identifier or . = ../../../q:itemBody/q:p/q:inlineChoiceInteraction/q:inlineChoice/@identifier)",
		expected: 'a correct value that is an option',
	},
	{
		code: 'qti-correct-unknown',
		at: value,
		fault: "../../@baseType = 'string' and not(. = ../../q:mapping/q:mapEntry/@mapKey)",
		expected: 'a correct value that is a spelling in the mapping',
	},
	{
		code: 'qti-correct-unknown',
		at: value,
		fault:
			"../../@baseType = 'directedPair' and not(substring-before(., ' ') = ../../../q:itemBody/q:matchInteraction/q:simpleMatchSet[1]/*/@identifier and substring-after(., ' ') = ../../../q:itemBody/q:matchInteraction/q:simpleMatchSet[2]/*/@identifier)",
		expected: 'a correct pair of an entry on the left and one on the right',
	},
	{
		code: 'qti-pair-shared',
		at: `${declaration}/q:correctResponse`,
		fault:
			"../@baseType = 'directedPair' and ../../q:itemBody/q:matchInteraction/q:simpleMatchSet/*[contains(substring-after(string(/q:assessmentItem/q:responseDeclaration/q:correctResponse), @identifier), @identifier)]",
		expected: 'correct pairs that use no entry twice',
	},
	{
		code: 'qti-response-mismatch',
		at: declaration,
		fault:
			"q:mapping and (@baseType = 'identifier' and @cardinality != 'multiple' or @baseType = 'string' and q:mapping/q:mapEntry[contains('ABCDEFGH', @mapKey) or contains(@mapKey, ' ')])",
		expected: fits,
	},
];

/** Templates and mappings: shares add up to the whole score, and what is right is worth something. */
export function mappingRules(mapResponse: string): readonly Rule[] {
	return [
		{
			code: 'qti-template-mismatch',
			at: '/q:assessmentItem',
			fault: 'boolean(q:responseProcessing) = boolean(q:itemBody/q:extendedTextInteraction)',
			expected: 'response processing, or none where a person scores',
		},
		{
			code: 'qti-template-mismatch',
			at: '/q:assessmentItem/q:responseProcessing',
			fault: `@template and (@template = '${mapResponse}') != boolean(../q:responseDeclaration/q:mapping)`,
			expected: 'match_correct without a mapping, or map_response with one',
		},
		{
			code: 'qti-share-mismatch',
			at: `${declaration}/q:mapping`,
			fault:
				"../@cardinality = 'multiple' and (count(q:mapEntry[@mappedValue > 0]) != count(../q:correctResponse/q:value) or count(q:mapEntry[@mapKey = ../../q:correctResponse/q:value][@mappedValue > 0]) != count(../q:correctResponse/q:value))",
			expected: 'a share for each correct value and for no other',
		},
		{
			code: 'qti-share-mismatch',
			at: `${declaration}/q:mapping`,
			fault:
				"../@cardinality = 'multiple' and ../@baseType = 'identifier' and (count(q:mapEntry) != count(../../q:itemBody/q:choiceInteraction/q:simpleChoice) or q:mapEntry[not(@mapKey = ../../../q:itemBody/q:choiceInteraction/q:simpleChoice/@identifier)]) or ../@baseType = 'directedPair' and count(q:mapEntry) != count(../q:correctResponse/q:value)",
			expected: 'an entry in the mapping for each option, or each right pair',
		},
		{
			code: 'qti-share-mismatch',
			at: `${declaration}[@cardinality = 'single']/q:mapping/q:mapEntry`,
			fault: "@mappedValue != '1'",
			expected: 'the whole score for a right spelling',
		},
		{
			code: 'qti-share-mismatch',
			at: `${declaration}[@cardinality = 'multiple']/q:mapping/q:mapEntry`,
			fault:
				"translate(@mappedValue, '-', '') != translate(../q:mapEntry[1]/@mappedValue, '-', '') or round(translate(@mappedValue, '-', '') * count(../../q:correctResponse/q:value) * 1000000) != 1000000 or translate(@mappedValue, '-', '') * count(../../q:correctResponse/q:value) < 1",
			expected: 'a share that makes 1 with the others',
		},
	];
}

/** Only QTI 2.2 has a word for a score that a person gives. */
export const ratedRule: Rule = {
	code: 'qti-response-mismatch',
	at: '/q:assessmentItem/q:outcomeDeclaration',
	fault: "boolean(@externalScored) != (@identifier = 'SCORE' and boolean(../q:itemBody/q:extendedTextInteraction))",
	expected: 'a score said to be given by a person where one gives it, and nowhere else',
};
