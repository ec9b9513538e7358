import type { Alignment, Item } from '../../item-bank/types.ts';

const codes = [
	'7.NS.A.1a',
	'7.NS.A.1b',
	'7.NS.A.1c',
	'7.NS.A.1d',
	'7.NS.A.2a',
	'7.NS.A.2b',
	'7.NS.A.2c',
	'7.NS.A.3',
] as const;
const texasCodes = ['6.3(C)', '6.3(D)', '6.2(B)', '6.2(C)'] as const;
const places = ['mine-lift', 'tide-gauge', 'cold-store', 'garden-fund', 'battery-bench', 'mountain-rail'] as const;
const nouns = [
	'lift',
	'gauge',
	'warehouse',
	'fund',
	'battery',
	'station',
	'platform',
	'ledger',
	'shaft',
	'harbour',
] as const;
const verbs = ['falls', 'rises', 'changes', 'drops', 'gains', 'loses'] as const;
const roles = ['position', 'change', 'comparison'] as const;

/** Numbers that look random and are the same every time (mulberry32). */
function countFrom(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
	};
}

/** The item of a number: all different, all fit to be approved, spread over standards, model types, kinds and words. */
export function manyItem(index: number): Item {
	const next = countFrom(index + 1);
	const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
	const a = -1 - Math.floor(next() * 400);
	const b = 1 + Math.floor(next() * 400);
	const expression = pick([`${a} + ${b}`, `${a} - ${b}`, `${b} - (${a})`, `${b} + (${a})`]);
	const given = pick(['symbols', 'story', 'table', 'number-line'] as const);
	const [noun, verb] = [pick(nouns), pick(verbs)];
	const question = {
		kind: 'paragraph',
		text: `Reading ${index}: the ${noun} ${verb}. What is \`${expression}\`?`,
	} as const;
	const common = {
		name: `Reading ${index} of the ${noun}`,
		given,
		points: pick([1, 1, 1, 2]),
		dok: pick([1, 2, 2, 3]),
		alignments: [align('ccss-m', '2010', pick(codes), true), align('teks-math', '2012', pick(texasCodes), false)],
		tags: [pick(['review', 'warm-up', 'unit-check'])],
		...(given === 'symbols' ? {} : { context: { setting: pick(places), role: pick(roles) } }),
	};
	const stem = [
		question,
		...(given === 'table'
			? [
					{
						kind: 'table',
						header: ['Day', 'Level'],
						rows: [
							['1', `\`${a}\``],
							['2', `\`${b}\``],
						],
					} as const,
				]
			: []),
		...(given === 'number-line'
			? [
					{
						kind: 'figure',
						figure: {
							kind: 'number-line',
							orientation: 'horizontal',
							from: -10,
							to: 10,
							tickEvery: 1,
							points: [{ at: (index % 19) - 9 }],
						},
					} as const,
				]
			: []),
	];
	if (next() < 0.4)
		return { kind: 'gridded', answerIn: 'number', expression, grid: 'plain-sign-first', stem, ...common };
	const options = [expression, `${expression} + 1`, `${expression} + 2`, `${expression} - 7`].map((math, at) => ({
		id: 'abcd'.charAt(at),
		content: { kind: 'mathematics', math } as const,
	}));
	return { kind: 'choice', answerIn: 'expression', options, rule: { kind: 'same-value', expression }, stem, ...common };
}

function align(framework: string, edition: string, code: string, primary: boolean): Alignment {
	return { framework, edition, code, grade: code.charAt(0), extent: 'partial', primary };
}
