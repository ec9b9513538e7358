import type { CountersFigure, PartItem } from '../../types.ts';
import type { PartFacts } from '../facts.ts';
import { commonPractice, type Rule } from '../rule.ts';
import { sentencesOf } from '../words.ts';

const counted = /\b(\d+) (plus|minus|positive|negative) counters?\b/gi;
/** Sentences about counters that need not be drawn. */
const imagined =
	/\b(add\w*|put|more|another|if|need\w*|would|could|must|join\w*|new|extra|remov\w*|tak(?:e|es|en|ing))\b/i;

/** Words that count other counters than the figure has. */
export const countersMiscounted: Rule = {
	severity: 'advise',
	guideline: commonPractice,
	find: ({ parts }) => parts.flatMap(checkPart),
};

function checkPart({ part, path }: PartFacts) {
	const figure = findCounters(part);
	if (figure === undefined) return [];
	return part.stem.flatMap((block, index) => {
		if (block.kind !== 'paragraph') return [];
		const told = sentencesOf(block.text).filter((sentence) => !imagined.test(sentence));
		const claims = told.flatMap((sentence) => [...sentence.matchAll(counted)]);
		return claims.flatMap(([claim, number, sign = '']) => {
			const drawn = countsOf(figure, /^(?:plus|positive)$/i.test(sign) ? 'plus' : 'minus');
			if (drawn.includes(Number(number))) return [];
			const message = `expected counters as in the figure, which has ${drawn[0]} of this sign, found "${claim}"`;
			return [{ code: 'review-counters-miscounted', path: `${path}/stem/${index}/text`, message }];
		});
	});
}

/** The one counters figure of a stem without other figures. */
function findCounters({ stem }: PartItem): CountersFigure | undefined {
	const figures = stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	const [figure] = figures;
	return figures.length === 1 && figure?.kind === 'counters' ? figure : undefined;
}

/** Every number of counters of a sign that can be pointed at, all of them first. */
function countsOf({ plus, minus, addedPairs = 0, ringedPairs = 0, removed }: CountersFigure, sign: 'plus' | 'minus') {
	const start = sign === 'plus' ? plus : minus;
	const gone = removed?.sign === sign ? removed.count : 0;
	return [start + addedPairs, start, addedPairs, ringedPairs, start - ringedPairs, gone, start + addedPairs - gone];
}
