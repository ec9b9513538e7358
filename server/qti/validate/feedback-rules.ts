import type { Rule } from './rule.ts';

const item = '/q:assessmentItem';
const processing = `${item}/q:responseProcessing`;
const expected = 'response processing by a template, or written out where there is feedback or a grid column by column';

/** Response processing that is written out, and what is said of answers. */
export const feedbackRules: readonly Rule[] = [
	{
		code: 'qti-processing-mismatch',
		at: processing,
		fault:
			"boolean(@template) = boolean(q:responseCondition) or boolean(@template) = boolean(../q:modalFeedback or ../q:responseDeclaration[@identifier != 'RESPONSE'])",
		expected,
	},
	{
		code: 'qti-processing-mismatch',
		at: processing,
		fault:
			"q:responseCondition and count(q:responseCondition) != 1 + boolean(../q:modalFeedback) + count(../q:responseDeclaration[@identifier != 'RESPONSE'])",
		expected: 'a condition for the score, one for feedback, and one for each column',
	},
	{
		code: 'qti-processing-mismatch',
		at: processing,
		fault:
			"q:responseCondition and ../q:responseDeclaration/@identifier = 'RESPONSE' and not(q:responseCondition[1]/q:responseIf/q:match/q:correct and not(../q:responseDeclaration/q:mapping) or q:responseCondition[1]/q:responseElse/q:setOutcomeValue/q:mapResponse and ../q:responseDeclaration/q:mapping)",
		expected: 'a score by the key, or by the mapping where there is one',
	},
	{
		code: 'qti-processing-mismatch',
		at: `${processing}//q:variable`,
		fault:
			'not(@identifier = /q:assessmentItem/q:responseDeclaration/@identifier or @identifier = /q:assessmentItem/q:outcomeDeclaration/@identifier)',
		expected: 'a variable that is declared',
	},
	{
		code: 'qti-processing-mismatch',
		at: `${processing}//q:setOutcomeValue`,
		fault:
			"not(@identifier = /q:assessmentItem/q:outcomeDeclaration/@identifier) or (@identifier = 'STEPS') != (q:baseValue = 'SHOWN') or (@identifier = 'SCORE') != (q:mapResponse or q:baseValue[@baseType = 'float'])",
		expected: 'an outcome that is declared, with a value of its own',
	},
	{
		code: 'qti-feedback-mismatch',
		at: `${item}/q:modalFeedback`,
		fault:
			"not(@outcomeIdentifier = ../q:outcomeDeclaration/@identifier) or (@outcomeIdentifier = 'STEPS') != (@identifier = 'SHOWN') or (@outcomeIdentifier = 'STEPS') != (@title = 'Worked steps')",
		expected: 'feedback that hangs on its outcome',
	},
	{
		code: 'qti-feedback-mismatch',
		at: `${item}/q:modalFeedback[@outcomeIdentifier = 'FEEDBACK']`,
		fault: "@identifier != 'RIGHT' and @identifier != 'WRONG' and not(@identifier = ../q:itemBody//*/@identifier)",
		expected: 'feedback on an option that is there',
	},
	{
		code: 'qti-feedback-mismatch',
		at: `${item}/q:outcomeDeclaration[@identifier = 'FEEDBACK' or @identifier = 'STEPS']`,
		fault: "not(@identifier = ../q:modalFeedback/@outcomeIdentifier) or @baseType != 'identifier' or q:defaultValue",
		expected: 'an outcome without default that feedback hangs on',
	},
	{
		code: 'qti-feedback-mismatch',
		at: `${item}/q:itemBody/q:rubricBlock`,
		fault: 'not(../q:extendedTextInteraction)',
		expected: 'a rubric where a person scores, and nowhere else',
	},
	{
		code: 'qti-outcome-default',
		at: "/*/q:outcomeDeclaration[@identifier = 'SCORE' or @identifier = 'MAXSCORE']",
		fault: "@cardinality != 'single' or @baseType != 'float' or not(number(q:defaultValue/q:value) >= 0)",
		expected: 'a number with a default',
	},
	{
		code: 'qti-outcome-default',
		at: '/q:assessmentTest/q:outcomeDeclaration',
		fault: "@identifier != 'SCORE' and @identifier != 'MAXSCORE'",
		expected: 'SCORE and MAXSCORE alone',
	},
	{
		code: 'qti-feedback-mismatch',
		at: '/q:assessmentTest/q:testPart',
		fault: "(q:itemSessionControl/@showFeedback = 'true') != (@submissionMode = 'individual')",
		expected: 'items handed in one by one where feedback is shown, and all at once otherwise',
	},
];

/** What QTI 3.0 has beside: catalogs and shared stimuli. Under the names of 2.x, as all rules are. */
export const newerRules: readonly Rule[] = [
	{
		code: 'qti-stimulus-mismatch',
		at: item,
		fault:
			'boolean(q:assessmentStimulusRef) != boolean(q:itemBody/q:div) or q:assessmentStimulusRef and not(q:assessmentStimulusRef/@identifier = q:itemBody/q:div/@data-stimulus-idref)',
		expected: 'a shared stimulus and the place for it',
	},
	{
		code: 'qti-stimulus-mismatch',
		at: '/q:assessmentStimulus/q:stimulusBody//*',
		fault: 'self::q:textEntryInteraction or self::q:inlineChoiceInteraction',
		expected: 'a stimulus with nothing to answer',
	},
	{
		code: 'qti-catalog-mismatch',
		at: '//*[self::q:img or self::q:object]',
		fault: "not(@data-catalog-idref = //q:catalog[q:card/@support = 'long-description']/@id)",
		expected: 'a figure with a long description in a catalog',
	},
	{
		code: 'qti-catalog-mismatch',
		at: '//*[@data-catalog-idref][not(self::q:img or self::q:object)]',
		fault: "not(@data-catalog-idref = //q:catalog[q:card/@support = 'spoken']/@id)",
		expected: 'a spoken form in a catalog',
	},
	{
		code: 'qti-catalog-mismatch',
		at: '//q:catalog',
		fault: "not(@id = //*/@data-catalog-idref) or @id != concat('catalog-', count(preceding-sibling::*) + 1)",
		expected: 'catalogs in order, each used',
	},
];
