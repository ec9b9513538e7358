import { workOf } from '../../items/asked.ts';
import type { Figure, Item, PartItem, StemBlock } from '../../types.ts';
import { haladyna, type Rule } from '../rule.ts';
import { sizesIn } from './unused-number.ts';

const units =
	'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
		' ',
	);
const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
/** Words that stand for a number to be worked out: half an hour. */
const derived = /\b(half|halves|quarters?|thirds?|doubl\w*|twice|tripl\w*|dozens?|average|mean)\b/i;
/** Numbers everybody has at hand: none, one, twice, and how many days, months, minutes and degrees there are. */
const known: readonly number[] = [0, 1, 2, 7, 12, 24, 60, 100];

/** A number the key is worked from that stands neither in the stem nor in its tables and figures: most often a slip of the pen. */
export const numberNotShown: Rule = {
	severity: 'advise',
	guideline: haladyna(15),
	find: ({ item, parts }) =>
		parts.flatMap(({ part, path }) => {
			const work = workOf(part);
			if (work === undefined || isTotal(part) || isDerived(item, part)) return [];
			const shown = shownIn(item, part);
			const missing = [...new Set(sizesIn(work))].filter((size) => !known.includes(size) && !shown.has(size));
			return missing.map((size) => {
				const message = `expected every number the key is worked from in the stem, found ${size} in "${work}" only`;
				return { code: 'review-number-not-shown', path: `${path}/stem`, message };
			});
		}),
};

/** A key that was typed as a number is not worked from anything. */
function isTotal(part: PartItem): boolean {
	const work = workOf(part) ?? '';
	return /^\s*\(?[-−–]?\s*\d+\)?\s*$/.test(work);
}

function isDerived(item: Item, part: PartItem): boolean {
	const blocks = item.kind === 'set' ? [...item.stem, ...part.stem] : part.stem;
	return blocks.some((block) => block.kind === 'paragraph' && derived.test(block.text));
}

function shownIn(item: Item, part: PartItem): ReadonlySet<number> {
	const blocks = item.kind === 'set' ? [...item.stem, ...part.stem] : part.stem;
	const figures = part.kind === 'point' ? numbersOfFigure(part.line) : [];
	return new Set([...blocks.flatMap(numbersOfBlock), ...figures]);
}

function numbersOfBlock(block: StemBlock): readonly number[] {
	switch (block.kind) {
		case 'paragraph':
			return numbersOfText(block.text);
		case 'mathematics':
			return numbersOfText(block.math);
		case 'table':
			return [
				block.rows.length,
				...[block.caption ?? '', ...block.header, ...block.rows.flat()].flatMap(numbersOfText),
			];
		case 'figure':
			return numbersOfFigure(block.figure);
		default:
			return block satisfies never;
	}
}

function numbersOfText(text: string): readonly number[] {
	const digits = (text.match(/\d+/g) ?? []).map(Number);
	const written = text.toLowerCase().match(/[a-z]+/g) ?? [];
	return [...digits, ...written.flatMap(readNumber)];
}

/** The number a word says, alone and after tens before it: five is 5, and 25 in twenty-five. */
function readNumber(word: string, index: number, written: readonly string[]): readonly number[] {
	const ten = tens.indexOf(word);
	if (ten >= 0) return [ten * 10 + 20];
	const unit = units.indexOf(word);
	if (unit < 0) return [];
	const before = tens.indexOf(written[index - 1] ?? '');
	return before < 0 ? [unit] : [unit, before * 10 + 20 + unit];
}

function numbersOfFigure(figure: Figure): readonly number[] {
	switch (figure.kind) {
		case 'counters': {
			const { plus, minus, addedPairs = 0, ringedPairs = 0, removed } = figure;
			const left = [plus - ringedPairs, minus - ringedPairs];
			return [
				plus,
				minus,
				plus + addedPairs,
				minus + addedPairs,
				addedPairs,
				ringedPairs,
				removed?.count ?? 0,
				...left,
			];
		}
		case 'counter-groups':
			return [figure.groups, figure.each, figure.groups * figure.each];
		case 'number-line': {
			const { from = 0, to = 0, start = 0, arrows = [], points = [] } = figure;
			return [from, to, start, ...arrows, arrows.length, ...points.map(({ at }) => at)].map(Math.abs);
		}
		default:
			return figure satisfies never;
	}
}
