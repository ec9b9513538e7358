import { getPattern } from '../patterns/index.ts';
import type { PatternId } from '../patterns/pattern.ts';

const opening = 'Consistent with ';

/**
 * What a teacher reads beside a wrong option: the sentences of its patterns as one, "Consistent with …; or with …".
 * Empty for the key, which no pattern leads to.
 */
export function writeFeedback(patterns: readonly PatternId[]): string {
	const ideas = patterns.map((id) => getPattern(id).sentence.slice(opening.length, -1));
	return ideas.length === 0 ? '' : `${opening}${ideas.join('; or with ')}.`;
}
