import type { Store } from '../../server/store/open-store.ts';
import { makeChoice, makeGridded } from './items.ts';

/** Keeps three sums to choose and three differences to grid, all approved, in a bank. */
export async function fillBuildBank({ items }: Pick<Store, 'items'>): Promise<void> {
	await items.createMany(
		[
			...[2, 3, 4].map((second) => ({
				id: `sum-${second}`,
				item: makeChoice({
					name: `Sum with ${second}`,
					stem: [{ kind: 'paragraph', text: `What is \`-9 + ${second}\`?` }],
					rule: { kind: 'same-value', expression: `-9 + ${second}` },
					options: [-9 - second, second - 9, 9 - second, 9 + second].map((value, index) => ({
						id: 'abcd'[index] ?? '',
						content: { kind: 'mathematics', math: String(value) },
					})),
				}),
			})),
			...[5, 6, 7].map((second) => ({
				id: `difference-${second}`,
				item: makeGridded({
					name: `Difference with ${second}`,
					stem: [{ kind: 'paragraph', text: `What is \`-3 - (-${second})\`?` }],
					expression: `-3 - (-${second})`,
				}),
			})),
		],
		'approved',
	);
}
