import { listNodes } from '../../expression/count.ts';
import { workOf } from '../../items/asked.ts';
import type { PartItem } from '../../types.ts';
import { tryParse } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

const timesAndYears =
	/\b\d+(:\d+)? ?[ap]\.?m\b\.?|\b\d+:\d\d\b|\b(?:in|since|by|from|to|until|of|between|and) (?:19|20)\d\d\b/gi;
/** Numbers that name something: room 4, day 2. */
const names =
	/\b(?:rooms?|lifts?|days?|weeks?|moves?|steps?|stops?|batter(?:y|ies)|tests?|rounds?|stations?|lines?|tracks?|shafts?|levels?|teams?|parts?|trains?|cars?|bus|grades?|questions?|platforms?|tanks?|gauges?|cards?|players?|minutes?|hours?) \d+(?:(?:,| and| or| to) \d+)*\b/gi;

/** A number of a story that the answer does not use: padding, unless leaving it out is the point. */
export const unusedNumber: Rule = {
	severity: 'advise',
	guideline: haladyna(16),
	find: ({ parts }) =>
		parts.flatMap(({ part, path }) => {
			const work = part.given === 'story' ? workOf(part) : undefined;
			return work === undefined
				? []
				: findUnused(part, sizesIn(work)).map((found) => ({ ...found, path: path + found.path }));
		}),
};

function findUnused({ stem }: PartItem, used: readonly number[]) {
	return stem.flatMap((block, index) => {
		if (block.kind !== 'paragraph') return [];
		const told = block.text.replace(timesAndYears, '').replace(names, '').match(/\d+/g) ?? [];
		return told
			.map(Number)
			.filter((number) => number !== 0 && !used.includes(number))
			.map((number) => ({
				code: 'review-unused-number',
				path: `/stem/${index}/text`,
				message: `expected only numbers the answer needs, found ${number}`,
			}));
	});
}

/** Sizes of the numbers in a piece of mathematics. */
export function sizesIn(math: string): readonly number[] {
	const mathematics = tryParse(math);
	if (mathematics === undefined) return [];
	return listNodes(mathematics).flatMap((node) => (node.kind === 'number' ? [Math.abs(node.value)] : []));
}
