import type { Alignment, Item, KindName, ModelType, NumberLineFigure, StemBlock } from '../../item-bank/types.ts';
import { fitPatterns, offerDistractors, takeDistractors } from './fit-options.ts';

/** What a new item is begun with. */
export interface Beginning {
	readonly kind: KindName;
	readonly given: ModelType;
	readonly alignment: Alignment;
}

const expression = '-3 + 8';
const line: NumberLineFigure = {
	kind: 'number-line',
	orientation: 'horizontal',
	from: -10,
	to: 10,
	tickEvery: 1,
	labels: 'ends-and-zero',
};

/** A first draft of a kind for a cell of the board: complete, so that every part shows at once what it does, and plain, to be written over. */
export function startItem({ kind, given, alignment }: Beginning): Item {
	const shared = {
		name: 'New item',
		given,
		points: 1,
		dok: 1,
		alignments: [{ ...alignment, primary: true }],
		...(given === 'story' ? { context: { setting: 'mine-lift', role: 'change' as const } } : {}),
	};
	const ask = (question: string): readonly StemBlock[] => [
		...modelBlocks(given),
		{ kind: 'paragraph', text: question },
	];
	const question = `What is \`${expression}\`?`;
	switch (kind) {
		case 'gridded':
			return { kind, ...shared, answerIn: 'number', stem: ask(question), expression, grid: 'plain-sign-first' };
		case 'choice':
			return startChoice({ ...shared, stem: ask(question) });
		case 'multiple-choice': {
			const options = ['-8 < -3', '-8 > -3', '0 > -5', '2 < -7'].map(mathematicsEntry);
			const item = {
				kind,
				...shared,
				answerIn: 'statement' as const,
				stem: ask('Which statements are true?'),
				options,
				rule: { kind: 'true-statement' as const },
			};
			return fitPatterns(item);
		}
		case 'point':
			return {
				kind,
				...shared,
				answerIn: 'number-line',
				stem: ask(`Mark the value of \`${expression}\`.`),
				line,
				expression,
			};
		case 'order': {
			const entries = ['-4', '7', '-9', '2'].map(mathematicsEntry);
			const stem = ask('Put the numbers in order from least to greatest.');
			return { kind, ...shared, answerIn: 'number', stem, entries, direction: 'ascending' };
		}
		case 'match': {
			const left = ['-3 + 8', '3 + (-8)', '-3 + (-8)'].map(mathematicsEntry);
			const right = ['-5', '11', '5', '-11'].map(mathematicsEntry);
			const stem = ask('Match each sum with its value.');
			return { kind, ...shared, answerIn: 'number', stem, left, right, partners: 'same-value' };
		}
		case 'inline-choice': {
			const choices = ['<', '>', '='].map((math, index) => ({ id: 'abc'.charAt(index), math }));
			const stem = ask('Choose the sign that makes the statement true.');
			return { kind, ...shared, answerIn: 'statement', stem, statement: '-8 _ -3', choices };
		}
		case 'explanation':
			return {
				kind,
				...shared,
				answerIn: 'words',
				stem: ask('Explain why `3 - (-8)` is greater than `3`.'),
				lines: 6,
				rubric: [
					{ points: 2, descriptor: 'Says that subtracting `-8` is adding `8`, and why that makes the value greater.' },
					{ points: 1, descriptor: 'Finds `11` without a reason.' },
					{ points: 0, descriptor: 'Neither.' },
				],
				points: 2,
				dok: 3,
			};
		case 'set': {
			const first = startChoice({ ...shared, stem: [{ kind: 'paragraph', text: question }] });
			const second = startItem({ kind: 'gridded', given: 'symbols', alignment });
			if (second.kind === 'set') return second;
			const stem = ask('Use this for both questions.');
			return { kind, ...shared, answerIn: 'number', stem, parts: [first, second], points: 2 };
		}
	}
}

function startChoice(shared: {
	readonly name: string;
	readonly given: ModelType;
	readonly stem: readonly StemBlock[];
	readonly points: number;
	readonly dok: number;
	readonly alignments: readonly Alignment[];
}): Extract<Item, { readonly kind: 'choice' }> {
	const item = {
		kind: 'choice' as const,
		...shared,
		answerIn: 'number' as const,
		options: [mathematicsEntry('5', 0), mathematicsEntry('-5', 1)],
		rule: { kind: 'same-value' as const, expression },
	};
	const offer = offerDistractors(item);
	return offer ? takeDistractors(item, offer, offer.best) : item;
}

/** What an item that gives a model shows of it, worth the expression new items begin with. */
function modelBlocks(given: ModelType): readonly StemBlock[] {
	switch (given) {
		case 'symbols':
			return [];
		case 'counters':
			return [{ kind: 'figure', figure: { kind: 'counters', plus: 8, minus: 3 } }];
		case 'number-line':
			return [{ kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', start: -3, arrows: [8] } }];
		case 'story':
			return [{ kind: 'paragraph', text: 'A mine lift stands at `-3` metres and goes up `8` metres.' }];
		case 'table':
			return [
				{
					kind: 'table',
					header: ['Step', 'Metres'],
					rows: [
						['First', '`-3`'],
						['Second', '`8`'],
					],
				},
			];
	}
}

function mathematicsEntry(math: string, index: number) {
	return { id: 'abcdefgh'.charAt(index), content: { kind: 'mathematics' as const, math } };
}
