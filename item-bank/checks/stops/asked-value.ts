import { EvaluationError, evaluate } from '../../expression/evaluate.ts';
import type { MathematicsNode } from '../../expression/tree.ts';
import { workOf } from '../../items/asked.ts';
import { optionEntries, type PartFacts, tryParse } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** A last sentence that does nothing but ask for the value of one expression. */
const plainQuestion =
	/(?:^|[.?!]\s+)(?:What is|What is the value of|Find|Find the value of|Work out|Calculate|Compute|Evaluate) `([^`]+)` ?([?.])$/;

/** Where a stem only asks for the value of an expression, the key is worked from one of the same value. */
export const askedValue: Rule = {
	severity: 'stop',
	guideline: haladyna(19),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const asked = findAsked(facts);
			const work = workOf(facts.part);
			if (asked === undefined || work === undefined) return [];
			const wanted = worthOf(tryParse(asked));
			const worked = knownWorth(facts) ?? worthOf(tryParse(work));
			if (wanted === undefined || worked === undefined || wanted === worked) return [];
			const message = `the stem asks for "${asked}", which is ${wanted}, but the key is worked from "${work}", which is ${worked}`;
			return [{ code: 'key-not-asked', path: `${facts.path}/stem`, message }];
		}),
};

/** The value that the key was found to have. */
function knownWorth(facts: PartFacts): number | undefined {
	if ('key' in facts.key && facts.key.key.kind === 'value') return facts.key.key.value;
	return optionEntries(facts).find(({ isKey }) => isKey)?.number;
}

/** The one expression asked for; undefined where anything else is asked too. */
function findAsked({ part }: PartFacts): string | undefined {
	const paragraphs = part.stem.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));
	const found = plainQuestion.exec(paragraphs.at(-1)?.trim() ?? '');
	if (!found) return undefined;
	const questions =
		paragraphs
			.join(' ')
			.replace(/`[^`]*`/g, '')
			.split('?').length - 1;
	return questions === (found[2] === '?' ? 1 : 0) ? found[1] : undefined;
}

function worthOf(mathematics: MathematicsNode | undefined): number | undefined {
	if (mathematics === undefined || mathematics.kind === 'statement') return undefined;
	try {
		return evaluate(mathematics);
	} catch (error) {
		if (error instanceof EvaluationError) return undefined;
		throw error;
	}
}
