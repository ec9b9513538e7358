import { element } from '../../../item-bank/markup/tree.ts';
import type { ExplanationItem } from '../../../item-bank/types.ts';
import { variables } from '../identifiers.ts';
import { writeQuestion } from './blocks.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';

/**
 * An explanation as extendedTextInteraction. Nothing in the file scores it, and its rubric stays out: students' platforms
 * hold the file, and a rubric tells what is right. The answer map says what a scorer enters for each level.
 */
export function writeExplanation(item: ExplanationItem, desk: WritingDesk): WrittenInteraction {
	const { above, prompt } = writeQuestion(desk);
	const declaration = { identifier: variables.response, cardinality: 'single', baseType: 'string' };
	const attributes = { responseIdentifier: variables.response, expectedLines: item.lines };
	return {
		declarations: [element('responseDeclaration', declaration)],
		body: [...above, element('extendedTextInteraction', attributes, prompt)],
		scoring: 'person',
	};
}
