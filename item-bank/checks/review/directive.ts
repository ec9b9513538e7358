import { partsOf } from '../../items/parts.ts';
import { haladyna, type ReviewRule } from '../review-note.ts';

const verbs =
	/\b(choose|select|mark|find|work|write|explain|show|put|order|match|complete|place|name|give|compare|decide|describe|use|fill|draw)\b/i;

/** A stem that neither asks nor instructs leaves students guessing what to do. */
export const directive: ReviewRule = {
	code: 'review-directive',
	guideline: haladyna(14),
	find: (item) =>
		partsOf(item).flatMap((part, index) => {
			const told = part.stem.some(
				(block) => block.kind === 'paragraph' && (block.text.includes('?') || verbs.test(block.text)),
			);
			const path = item.kind === 'set' ? `/parts/${index}/stem` : '/stem';
			return told ? [] : [{ path, message: 'expected a question or an instruction, found neither' }];
		}),
};
