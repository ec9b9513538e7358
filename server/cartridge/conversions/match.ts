import type { MatchItem, MatchPair, Option, StemBlock } from '../../../item-bank/types.ts';
import type { Converted } from '../question.ts';
import { exchange, offerArrangements } from './arrangements.ts';

/** A match with credit in parts as one choice for each entry on the left, each worth a share. */
export function splitMatch(item: MatchItem, key: readonly MatchPair[]): readonly Converted[] {
	return item.left.map((left): Converted => {
		const partner = key.find((pair) => pair.left === left.id)?.right;
		return {
			asks: 'choice',
			added: [...showEntry(left), { kind: 'paragraph', text: 'Which of these is its partner?' }],
			options: item.right.map(({ id, content }) => ({ bank: `${left.id}-${id}`, content })),
			right: item.right.flatMap(({ id }, index) => (id === partner ? [index] : [])),
		};
	});
}

/** A match that is right as a whole or not at all as a choice among whole lists of pairs, by numbers and letters. */
export function convertMatch(item: MatchItem, key: readonly MatchPair[]): Converted {
	const right = item.left.map(({ id }) => {
		const partner = key.find(({ left }) => left === id)?.right;
		return item.right.findIndex((entry) => entry.id === partner);
	});
	const spare = item.right.findIndex((_, index) => !right.includes(index));
	const exchanged = right.slice(1).map((_, index) => exchange(right, index, index + 1));
	const replaced = spare < 0 ? [] : right.map((_, at) => right.map((value, index) => (index === at ? spare : value)));
	const turned = [...right.slice(1), ...right.slice(0, 1)];
	const { offered, right: spot } = offerArrangements(right, [
		turned,
		...replaced.slice(0, 1),
		...exchanged,
		...replaced,
	]);
	return {
		asks: 'choice',
		added: [
			...item.left.flatMap((entry, index) => showEntry(entry, `${index + 1}`)),
			...item.right.flatMap((entry, index) => showEntry(entry, letterOf(index))),
			{ kind: 'paragraph', text: 'Which list of pairs is right?' },
		],
		options: offered.map((each) => ({
			bank: each.map((partner, index) => `${item.left[index]?.id}-${item.right[partner]?.id}`).join(' '),
			content: {
				kind: 'text',
				text: each.map((partner, index) => `${index + 1} with ${letterOf(partner)}`).join(', '),
			},
		})),
		right: [spot],
	};
}

function letterOf(index: number): string {
	return 'ABCDEFGH'.charAt(index);
}

/** An entry as blocks of a stem, behind its number or letter if it has one. */
function showEntry({ content }: Option, mark?: string): readonly StemBlock[] {
	const before = mark === undefined ? '' : `${mark}: `;
	switch (content.kind) {
		case 'mathematics':
			return [{ kind: 'paragraph', text: `${before}\`${content.math}\`` }];
		case 'text':
			return [{ kind: 'paragraph', text: before + content.text }];
		case 'figure':
			return [
				...(mark === undefined ? [] : [{ kind: 'paragraph' as const, text: `${mark}:` }]),
				{ kind: 'figure', figure: content.figure },
			];
	}
}
