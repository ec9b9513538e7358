import { checkFigure } from '../figures/check-figure.ts';
import type { Problem } from '../problem.ts';
import type { Item } from '../types.ts';

/** Figures that cannot be drawn, ragged tables, and a stem without a word of question or instruction. */
export function checkStem(item: Item): readonly Problem[] {
	const problems = item.stem.flatMap((block, index): readonly Problem[] => {
		const path = `/stem/${index}`;
		if (block.kind === 'figure') return under(`${path}/figure`, checkFigure(block.figure));
		if (block.kind !== 'table') return [];
		return block.rows.flatMap((row, at) => {
			if (row.length === block.header.length) return [];
			const message = `expected ${block.header.length} cells as in the header, found ${row.length}`;
			return [{ code: 'table-ragged', path: `${path}/rows/${at}`, message }];
		});
	});
	if (item.stem.some((block) => block.kind === 'paragraph')) return problems;
	const message = 'expected a paragraph with the question or instruction, found none';
	return [...problems, { code: 'stem-without-question', path: '/stem', message }];
}

/** Problems of a part, with their paths below the place where the part stands. */
export function under(path: string, problems: readonly Problem[]): readonly Problem[] {
	return problems.map((problem) => ({ ...problem, path: path + problem.path }));
}
