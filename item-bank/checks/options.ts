import { evaluate } from '../expression/evaluate.ts';
import { parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import { checkFigure } from '../figures/check-figure.ts';
import type { Problem } from '../problem.ts';
import type { Item, Option } from '../types.ts';
import { under } from './stem.ts';

/** Options out of letter order, saying the same, of mixed kinds, with figures that cannot be drawn, or numbers out of order. */
export function checkOptions(item: Item): readonly Problem[] {
	if (item.kind === 'gridded') return [];
	const { options } = item;
	return [
		...checkLetters(options),
		...checkKinds(options),
		...options.flatMap(({ content }, index) =>
			content.kind === 'figure' ? under(`/options/${index}/content/figure`, checkFigure(content.figure)) : [],
		),
		...checkDistinct(options),
		...checkNumericOrder(options),
	];
}

function checkLetters(options: readonly Option[]): readonly Problem[] {
	return options.flatMap((option, index) => {
		const expected = String.fromCharCode(97 + index);
		const message = `expected option id "${expected}" at place ${index + 1}, found "${option.id}"`;
		return option.id === expected ? [] : [{ code: 'option-id-order', path: `/options/${index}/id`, message }];
	});
}

function checkKinds(options: readonly Option[]): readonly Problem[] {
	const kinds = new Set(options.map(({ content }) => content.kind));
	const message = `expected options of one kind, found ${[...kinds].join(' and ')}`;
	return kinds.size === 1 ? [] : [{ code: 'option-kinds-mixed', path: '/options', message }];
}

function checkDistinct(options: readonly Option[]): readonly Problem[] {
	const seen = new Map<string, string>();
	return options.flatMap(({ id, content }, index) => {
		const face = content.kind === 'mathematics' ? printed(content.math) : JSON.stringify(content);
		const twin = seen.get(face);
		seen.set(face, twin ?? id);
		const message = `expected distinct options, but "${id}" says the same as "${twin}"`;
		return twin === undefined ? [] : [{ code: 'option-repeated', path: `/options/${index}`, message }];
	});
}

/** Plain numbers stand in increasing order (item-writing guideline 21 of Haladyna, Downing and Rodriguez 2002). */
function checkNumericOrder(options: readonly Option[]): readonly Problem[] {
	const values = options.map(({ content }) => (content.kind === 'mathematics' ? plainNumber(content.math) : undefined));
	return values.flatMap((value, index) => {
		const before = values[index - 1];
		if (index === 0 || value === undefined || before === undefined || before < value) return [];
		if (values.includes(undefined)) return [];
		const message = `expected numbers in increasing order, found ${value} after ${before}`;
		return [{ code: 'option-number-order', path: `/options/${index}`, message }];
	});
}

function plainNumber(math: string): number | undefined {
	const parsed = tryParse(math);
	return parsed?.kind === 'number' ? evaluate(parsed) : undefined;
}

function printed(math: string): string {
	const parsed = tryParse(math);
	return parsed ? printMathematics(parsed) : math;
}

/** Unreadable mathematics is another check's problem. */
function tryParse(math: string): ReturnType<typeof parseMathematics> | undefined {
	try {
		return parseMathematics(math);
	} catch {
		return undefined;
	}
}
