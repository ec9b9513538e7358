import type { Rule } from './rule.ts';

const item = '/q:assessmentItem';
const column = `${item}/q:responseDeclaration[@identifier != 'RESPONSE']`;
const cell = `${item}/q:itemBody/q:table/q:tbody/q:tr/q:td`;
const way = `${item}/q:responseProcessing/q:responseCondition/q:responseIf/q:or/q:and`;
const fits = 'a response declaration that fits its interaction';

/** An answer grid column by column: responses, marks and griddings in the order of the columns. */
export const gridRules: readonly Rule[] = [
	{
		code: 'qti-response-mismatch',
		at: column,
		fault:
			"@identifier != concat('COLUMN-', count(preceding-sibling::q:responseDeclaration) + 1) or @cardinality != 'single' or @baseType != 'identifier' or q:mapping or not(contains('D0D1D2D3D4D5D6D7D8D9MINUSPLUSBLANK', q:correctResponse/q:value))",
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: item,
		fault: "q:responseDeclaration[@identifier = 'RESPONSE'] and count(q:responseDeclaration) != 1",
		expected: 'one response, or one for each column',
	},
	{
		code: 'qti-correct-count',
		at: column,
		fault: 'count(q:correctResponse/q:value) != 1',
		expected: 'one correct mark a column',
	},
	{
		code: 'qti-response-mismatch',
		at: `${cell}/q:inlineChoiceInteraction`,
		fault: "@responseIdentifier != concat('COLUMN-', count(../preceding-sibling::q:td) + 1)",
		expected: fits,
	},
	{
		code: 'qti-response-mismatch',
		at: `${item}/q:itemBody/q:p/q:inlineChoiceInteraction`,
		fault: "@responseIdentifier != 'RESPONSE'",
		expected: fits,
	},
	{
		code: 'qti-option-order',
		at: `${cell}/q:inlineChoiceInteraction/q:inlineChoice`,
		fault:
			"(@identifier = 'BLANK') != not(preceding-sibling::*) or @identifier = 'BLANK' and . != 'blank' or @identifier = 'MINUS' and . != '−' or @identifier = 'PLUS' and . != '+' or starts-with(@identifier, 'D') and . != substring(@identifier, 2) or string-length(@identifier) = 1",
		expected: 'a blank first, then marks named by what they show',
	},
	{
		code: 'qti-stray-text',
		at: cell,
		fault: "not(*) and normalize-space() = '' or * and text()[normalize-space() != '']",
		expected: 'text, or the column of a grid alone',
	},
	{
		code: 'qti-outcome-default',
		at: `${item}/q:outcomeDeclaration[starts-with(@identifier, 'MARK-')]`,
		fault: "@cardinality != 'single' or @baseType != 'identifier' or not(q:defaultValue/q:value = 'BLANK')",
		expected: 'a mark that is blank from the start',
	},
	{
		code: 'qti-processing-mismatch',
		at: item,
		fault:
			"count(q:outcomeDeclaration[starts-with(@identifier, 'MARK-')]) != count(q:responseDeclaration[@identifier != 'RESPONSE'])",
		expected: 'an outcome for the mark of each column',
	},
	{
		code: 'qti-processing-mismatch',
		at: way,
		fault: 'count(q:match) != count(/q:assessmentItem/q:responseDeclaration)',
		expected: 'griddings that name every column',
	},
	{
		code: 'qti-processing-mismatch',
		at: `${way}/q:match`,
		fault:
			"q:variable/@identifier != concat('MARK-', count(preceding-sibling::q:match) + 1) or not(q:baseValue[@baseType = 'identifier'][contains('D0D1D2D3D4D5D6D7D8D9MINUSPLUSBLANK', .)])",
		expected: 'the marks of a gridding in the order of the columns',
	},
	{
		code: 'qti-processing-mismatch',
		at: `${way}`,
		fault: '. = preceding-sibling::q:and',
		expected: 'each gridding once',
	},
];
