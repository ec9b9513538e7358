import type { ItemRecord } from '../../item-bank/items/record.ts';
import { createRandom, type Random } from '../../item-bank/random/random.ts';
import type { Blueprint, Context, Item, ModelType } from '../../item-bank/types.ts';

const codes = ['6.2(B)', '6.2(C)', '6.2(D)', '6.3(C)', '6.3(D)', '7.3(A)', '7.3(B)'];
const models: readonly ModelType[] = ['symbols', 'counters', 'number-line', 'story', 'table'];
const settings = [
	'mine-lift',
	'tide-gauge',
	'cold-storage',
	'garden-fund',
	'battery-bench',
	'mountain-rail',
	'kite-field',
	'well-shaft',
];
const roles: readonly Context['role'][] = ['position', 'change', 'total-distance', 'comparison'];

/** Approved items no two of which ask the same: every standard, model, kind, DOK and context role in uneven shares. */
export function largePool(size: number): readonly ItemRecord[] {
	const random = createRandom(`pool ${size}`);
	const seen = new Set<string>();
	const pool: ItemRecord[] = [];
	while (pool.length < size) {
		const item = drawItem(random);
		const key = JSON.stringify({ ...item, name: '' });
		if (seen.has(key)) continue;
		seen.add(key);
		pool.push({ id: `synthetic-${String(pool.length + 1).padStart(5, '0')}`, version: 1, status: 'approved', item });
	}
	return pool;
}

function drawItem(random: Random): Item {
	const given = random.pick(models);
	const isStory = given === 'story' || given === 'table';
	const reach = random.pick([9, 12, 30, 90]);
	const expression = drawExpression(random, reach);
	const context = isStory ? { context: { setting: random.pick(settings), role: random.pick(roles) } } : {};
	const words = Array.from(
		{ length: isStory ? random.nextInteger(12, 45) : random.nextInteger(2, 12) },
		() => 'word',
	).join(' ');
	const common = {
		name: `Synthetic ${expression}`,
		given,
		answerIn: 'number' as const,
		stem: [{ kind: 'paragraph' as const, text: `${words} \`${expression}\`?` }],
		points: random.nextInteger(1, 6) === 6 ? 2 : 1,
		dok: random.pick([1, 1, 1, 2, 2, 2, 2, 3]),
		alignments: [
			{
				framework: 'teks-math',
				edition: '2012',
				code: random.pick(codes),
				grade: '6',
				extent: 'full' as const,
				primary: true,
			},
		],
		...context,
	};
	if (random.nextInteger(0, 2) === 0) return { kind: 'gridded', ...common, expression, grid: 'plain-sign-first' };
	const key = random.nextInteger(0, 3);
	const options = ['a', 'b', 'c', 'd'].map((id, at) => ({
		id,
		content: { kind: 'mathematics' as const, math: at === key ? expression : `${(at + 1) * 1000}` },
	}));
	return { kind: 'choice', ...common, options, rule: { kind: 'same-value', expression } };
}

function drawExpression(random: Random, reach: number): string {
	const number = (): number => random.nextInteger(-reach, reach) || 1;
	const show = (value: number): string => (value < 0 ? `(${value})` : String(value));
	const operator = random.pick(['+', '-', '×']);
	const first = `${number()} ${operator} ${show(number())}`;
	return random.nextInteger(0, 3) === 0 ? `${first} ${random.pick(['+', '-'])} ${show(number())}` : first;
}

/** A plan of forty items in four sections under some sixty limits. */
export function largeBlueprint(): Blueprint {
	const cells: Blueprint['cells'] = [
		{ standard: '6.2', items: { min: 8, max: 12 } },
		{ standard: '6.3(C)', items: { min: 6, max: 10 } },
		{ standard: '6.3(D)', items: { min: 8, max: 12 } },
		{ standard: '7.3', items: { min: 8, max: 14 } },
		...models.map((model) => ({ model, items: { min: 6, max: 10 } })),
		...(['symbols', 'counters', 'number-line'] as const).map((model) => ({
			standard: '6.3(D)',
			model,
			items: { min: 1, max: 4 },
		})),
		...(['story', 'table'] as const).map((model) => ({ standard: '7.3(B)', model, items: { min: 1, max: 3 } })),
		{ standard: '6.3(C)', model: 'counters', items: { min: 2 } },
		{ standard: '6.3(C)', model: 'number-line', items: { min: 2 } },
	];
	return {
		title: 'Forty items',
		framework: 'teks-math',
		edition: '2012',
		gridProfile: 'plain-sign-first',
		items: { min: 40, max: 40 },
		points: { min: 44, max: 48 },
		cells,
		dok: [1, 2, 3].map((dok) => ({ dok, items: { min: 4, max: dok === 3 ? 8 : 22 } })),
		kinds: [
			{ kind: 'choice', items: { min: 24, max: 28 } },
			{ kind: 'gridded', items: { min: 12, max: 16 } },
		],
		pointValues: [{ points: 2, items: { min: 4, max: 8 } }],
		roles: roles.map((role) => ({ role, items: { min: 2, max: 6 } })),
		shapes: [
			{ shape: 'minus-negative', items: { min: 3, max: 6 } },
			{ shape: 'sum-unlike-signs', items: { min: 3, max: 6 } },
			{ shape: 'sum-of-negatives', items: { min: 1, max: 4 } },
			{ shape: 'several-steps', items: { min: 6, max: 12 } },
		],
		readingLoad: { words: { min: 600, max: 900 }, mostPerItem: 50 },
		difficulty: { target: 4.5, band: 0.2 },
		sections: [
			{ title: 'Meaning and order', standards: ['6.2'], items: { min: 8, max: 12 } },
			{ title: 'Models', standards: ['6.3(C)'], items: { min: 6, max: 10 } },
			{ title: 'Choices', standards: ['6.3(D)', '7.3'], kinds: ['choice'], items: { min: 8, max: 16 } },
			{ title: 'Grids', standards: ['6.3(D)', '7.3'], kinds: ['gridded'], items: { min: 4, max: 12 } },
		],
		order: { within: 'easier-first', sameAnswerInARow: 2 },
		exclusions: { settingMost: 4, answerMost: 2, numbersMost: 1, keyPlaceMost: 9, giveaways: true },
		parallel: { cells: 0, kinds: 0, dok: 0, points: 0, shapes: 1, levels: 1, difficulty: 2, readingLoad: 20 },
	};
}
