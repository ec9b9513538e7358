import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Box } from '../../../../server/print/page/box.ts';
import { dealPieces, type ReportPiece } from '../../../../server/print/report/report-flow.ts';
import type { LaidTable } from '../../../../server/print/report/report-table.ts';

interface Named extends Box {
	readonly name: string;
}

const boxOf = (name: string, height: number): Named => ({ name, width: 100, height, place: () => [] });

/** A table of rows 10 points high below headings of 12, whose pieces are named by their rows. */
function tableOf(name: string, rows: number): LaidTable {
	const heightOf = (from: number, to: number): number => 12 + (to - from) * 10;
	return { width: 100, rows, heightOf, piece: (from, to) => boxOf(`${name} ${from}-${to}`, heightOf(from, to)) };
}

const namesOf = (pages: readonly (readonly Box[])[]): readonly (readonly string[])[] =>
	pages.map((page) => page.map((box) => (box as Named).name));

test('a long table fills its page and goes on with its headings, never leaving one or two rows alone', () => {
	const pages = dealPieces([{ box: boxOf('title', 30) }, { table: tableOf('t', 35) }], 200, 4);
	expect(namesOf(pages)).toEqual([['title', 't 0-15'], ['t 15-32'], ['t 32-35']]);
});

test('a short table moves to the next page whole, with its heading', () => {
	const pieces: readonly ReportPiece[] = [
		{ box: boxOf('before', 120) },
		{ box: boxOf('heading', 20), isHeading: true },
		{ table: tableOf('t', 8) },
	];
	expect(namesOf(dealPieces(pieces, 200, 4))).toEqual([['before'], ['heading', 't 0-8']]);
});

test('what follows a turn begins on a new page', () => {
	const pieces: readonly ReportPiece[] = [{ box: boxOf('a', 20) }, { turn: true }, { box: boxOf('b', 20) }];
	expect(namesOf(dealPieces(pieces, 200, 4))).toEqual([['a'], ['b']]);
});

test('every row comes once and in order, pages hold what fits, and no heading ends a page', () => {
	const piece = fc.oneof(
		fc.integer({ min: 5, max: 150 }).map((height) => ({ kind: 'box' as const, height })),
		fc.integer({ min: 5, max: 20 }).map((height) => ({ kind: 'heading' as const, height })),
		fc.integer({ min: 0, max: 60 }).map((rows) => ({ kind: 'table' as const, rows })),
	);
	fc.assert(
		fc.property(fc.array(piece, { maxLength: 12 }), (list) => {
			const pieces = [...list, { kind: 'box' as const, height: 10 }].map((each, index): ReportPiece => {
				if (each.kind === 'table') return { table: tableOf(`t${index}`, each.rows) };
				return { box: boxOf(`${each.kind}${index}`, each.height), isHeading: each.kind === 'heading' };
			});
			const pages = dealPieces(pieces, 200, 4);
			const names = namesOf(pages).flat();
			const order = names.map((name) => Number(/\d+/.exec(name)?.[0]));
			expect(order).toEqual([...order].sort((a, b) => a - b));
			for (const [index, each] of list.entries()) {
				if (each.kind !== 'table') continue;
				const spans = names.flatMap((name) => /^t(\d+) (\d+)-(\d+)$/.exec(name) ?? []);
				const rows = spans.flatMap((_unused, at) =>
					at % 4 === 0 && Number(spans[at + 1]) === index ? [[Number(spans[at + 2]), Number(spans[at + 3])]] : [],
				);
				expect(rows[0]?.[0]).toBe(0);
				expect(rows.at(-1)?.[1]).toBe(each.rows);
				for (const [at, [from]] of rows.entries()) if (at > 0) expect(from).toBe(rows[at - 1]?.[1]);
			}
			for (const [at, page] of pages.entries()) {
				const headings = page.filter((box) => (box as Named).name.startsWith('heading'));
				const height = page.reduce((sum, box) => sum + box.height, 0) + (page.length - 1) * 4;
				// Many headings in a row may be taller than a page; nothing else is.
				if (headings.length < 2) expect(height).toBeLessThanOrEqual(200);
				if (at < pages.length - 1 && headings.length < 2) expect((page.at(-1) as Named).name).not.toMatch(/^heading/);
			}
		}),
	);
});
