import { listNodes } from '../../expression/count.ts';
import { parseMathematics } from '../../expression/parse.ts';
import { workOf } from '../../items/asked.ts';
import { haladyna, type ReviewRule } from '../review-note.ts';

/** A number of a story that the answer does not use: padding, unless leaving it out is the point. */
export const unusedNumber: ReviewRule = {
	code: 'review-unused-number',
	guideline: haladyna(16),
	find: (item) => {
		const work = workOf(item);
		if (item.given !== 'story' || work === undefined || item.kind === 'set') return [];
		const used = sizesIn(work);
		return item.stem.flatMap((block, index) => {
			if (block.kind !== 'paragraph') return [];
			const told = [...block.text.replace(/\b\d+(:\d+)? ?[ap]\.?m\b\.?/g, '').matchAll(/\d+/g)].map(([digits]) =>
				Number(digits),
			);
			return told
				.filter((number) => number !== 0 && !used.includes(number))
				.map((number) => ({
					path: `/stem/${index}/text`,
					message: `expected only numbers the answer needs, found ${number}`,
				}));
		});
	},
};

function sizesIn(work: string): readonly number[] {
	try {
		return listNodes(parseMathematics(work)).flatMap((node) => (node.kind === 'number' ? [Math.abs(node.value)] : []));
	} catch {
		return [];
	}
}
