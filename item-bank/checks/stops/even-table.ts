import type { Problem } from '../../problem.ts';
import type { StemBlock } from '../../types.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Every row of a table has a cell for each cell of the header. */
export const evenTable: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ item, parts }) => [
		...(item.kind === 'set' ? checkTables(item.stem, '/stem') : []),
		...parts.flatMap(({ part, path }) => checkTables(part.stem, `${path}/stem`)),
	],
};

function checkTables(blocks: readonly StemBlock[], path: string): readonly Problem[] {
	return blocks.flatMap((block, index) => {
		if (block.kind !== 'table') return [];
		return block.rows.flatMap((row, at) => {
			if (row.length === block.header.length) return [];
			const message = `expected ${block.header.length} cells as in the header, found ${row.length}`;
			return [{ code: 'table-ragged', path: `${path}/${index}/rows/${at}`, message }];
		});
	});
}
