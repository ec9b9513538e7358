import type { PartItem } from '../../types.ts';
import { haladyna, type Rule } from '../rule.ts';
import { sentencesOf } from '../words.ts';

/** Verbs that are instructions wherever they stand. */
const plainVerbs =
	/\b(choose|select|find|explain|evaluate|simplify|calculate|compute|determine|describe|decide|solve|write|draw|fill in|justify|arrange|work out|tell)\b/i;
/** Verbs that are nouns or tell a story as well: instructions at the start of a sentence or of its main clause. */
const otherVerbs =
	/(?:^|[,:;]\s*|\b(?:and|then|to|words?|please)\s+)(mark|work|show|put|order|sort|match|complete|place|name|give|compare|use|add|subtract|multiply|divide|circle|plot|label|answer|enter|record|state|list|rewrite|estimate|check|count|locate|identify|tick|point|pick|build|make|model)\b/i;

/** A stem that neither asks nor instructs leaves students guessing what to do. */
export const directive: Rule = {
	severity: 'advise',
	guideline: haladyna(14),
	find: ({ parts }) =>
		parts.flatMap(({ part, path }) => {
			if (isDirected(part)) return [];
			const message = 'expected a question or an instruction, found neither';
			return [{ code: 'review-directive', path: `${path}/stem`, message }];
		}),
};

function isDirected({ stem }: PartItem): boolean {
	return stem.some((block) => {
		if (block.kind !== 'paragraph') return false;
		if (block.text.includes('?') || plainVerbs.test(block.text)) return true;
		return sentencesOf(block.text).some((sentence) => otherVerbs.test(sentence));
	});
}
