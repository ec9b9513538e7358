import { evaluate } from '../../item-bank/expression/evaluate.ts';
import { parseMathematics } from '../../item-bank/expression/parse.ts';
import type { Family } from '../../item-bank/families/family.ts';
import { families, findFamily } from '../../item-bank/families/index.ts';
import { makeItem } from '../../item-bank/families/make-items.ts';
import { workOf } from '../../item-bank/items/asked.ts';

/** Families whose items are choices with computed wrong answers; the bar is about these. */
const chosenFrom = ['sum-of-two', 'difference-of-two', 'minus-negative', 'sum-of-several', 'mixed-operations'];
const sizes = [10_000, 100_000, 1_000_000];

/** Prints items made and checked a second on one core, their growth and memory, beside a loop that evaluates the same expressions. */
export async function run(): Promise<void> {
	const makers = chosenFrom.flatMap((id) => findFamily(id) ?? []);
	const asked = { answeredBy: 'choice', largest: 90 };
	const parametersOf = ({ parameters }: Family): Record<string, string | number> => {
		const most = parameters.largest?.kind === 'integer' ? parameters.largest.most : 90;
		return { ...asked, largest: Math.min(asked.largest, most) };
	};
	for (const family of makers)
		for (let seed = 0; seed < 2_000; seed += 1) makeItem(family, `warm/${seed}`, parametersOf(family));
	for (const size of sizes) {
		globalThis.gc?.();
		const before = process.memoryUsage().heapUsed;
		let peak = 0;
		let made = 0;
		const expressions: string[] = [];
		const begun = performance.now();
		for (let turn = 1; turn <= size; turn += 1) {
			const family = makers[turn % makers.length];
			const item = family && makeItem(family, `bench ${size}/${turn}`, parametersOf(family));
			if (item === undefined) continue;
			made += 1;
			if (turn % 20 === 0) expressions.push(workOf(item) ?? '');
			if (turn % 5_000 === 0) peak = Math.max(peak, process.memoryUsage().heapUsed);
		}
		const took = performance.now() - begun;
		const trees = expressions.flatMap((text) => {
			const tree = parseMathematics(text);
			return tree.kind === 'statement' ? [] : [tree];
		});
		const evaluating = performance.now();
		for (let pass = 0; pass < 20; pass += 1) trees.forEach(evaluate);
		const plain = ((performance.now() - evaluating) / 20 / trees.length) * made;
		console.log(
			`${made.toLocaleString('en')} of ${size.toLocaleString('en')} seeds, choices with distractors, made and checked: ` +
				`${Math.round((made / took) * 1000).toLocaleString('en')} a second, ${(took / plain).toFixed(0)} times evaluating alone, ` +
				`heap ${mebibytes(before)} to at most ${mebibytes(peak)} MB`,
		);
	}
	const begun = performance.now();
	let made = 0;
	for (const family of families) {
		for (let seed = 1; seed <= 400; seed += 1) if (makeItem(family, `each/${seed}`)) made += 1;
	}
	const took = performance.now() - begun;
	console.log(
		`all ${families.length} families alike: ${made.toLocaleString('en')} items, ${Math.round((made / took) * 1000).toLocaleString('en')} a second`,
	);
}

function mebibytes(bytes: number): string {
	return (bytes / 2 ** 20).toFixed(0);
}
