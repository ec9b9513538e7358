import { checkFigure } from '../figures/check-figure.ts';
import { figuresOf } from '../items/figures.ts';
import type { Problem } from '../problem.ts';
import type { Item, StemBlock } from '../types.ts';

/** Figures that cannot be drawn, wherever they stand in an item. */
export function checkFigures(item: Item): readonly Problem[] {
	return figuresOf(item).flatMap(({ path, figure }) => under(path, checkFigure(figure)));
}

/** Ragged tables, and a stem without a word of question or instruction. */
export function checkBlocks(blocks: readonly StemBlock[], path: string): readonly Problem[] {
	const problems = blocks.flatMap((block, index): readonly Problem[] => {
		if (block.kind !== 'table') return [];
		return block.rows.flatMap((row, at) => {
			if (row.length === block.header.length) return [];
			const message = `expected ${block.header.length} cells as in the header, found ${row.length}`;
			return [{ code: 'table-ragged', path: `${path}/${index}/rows/${at}`, message }];
		});
	});
	if (blocks.some((block) => block.kind === 'paragraph')) return problems;
	const message = 'expected a paragraph with the question or instruction, found none';
	return [...problems, { code: 'stem-without-question', path, message }];
}

/** Problems of a part, with their paths below the place where the part stands. */
export function under(path: string, problems: readonly Problem[]): readonly Problem[] {
	return problems.map((problem) => ({ ...problem, path: path + problem.path }));
}
