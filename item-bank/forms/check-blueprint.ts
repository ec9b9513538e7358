import type { Problem } from '../problem.ts';
import { findGridProfile, gridProfiles } from '../responses/grid-profiles.ts';
import { findFramework, normalizeCode, suggestCodes } from '../standards/code.ts';
import { frameworks } from '../standards/frameworks.ts';
import type { Blueprint, Range } from '../types.ts';
import { underStandard } from './requirements.ts';

/**
 * What is wrong with a blueprint before any bank is looked at: unknown codes, ranges that contradict each other, the same cell
 * or item twice, score bands out of order. An empty list does not say that a bank can meet it.
 */
export function checkBlueprint(blueprint: Blueprint): readonly Problem[] {
	return [
		...checkNames(blueprint),
		...checkRanges(blueprint),
		...checkSums(blueprint),
		...checkNamedItems(blueprint),
		...checkScoreBands(blueprint),
	];
}

/** Most items on one form: a longer test is a mistake. Common practice, no source. */
const mostItems = 200;

function checkNames(blueprint: Blueprint): readonly Problem[] {
	const problems: Problem[] = [];
	if (!findGridProfile(blueprint.gridProfile)) {
		const known = gridProfiles.map(({ id }) => id).join(', ');
		const message = `expected a grid profile among ${known}, found "${blueprint.gridProfile}"`;
		problems.push({ code: 'unknown-grid-profile', path: '/gridProfile', message });
	}
	const framework = findFramework(blueprint.framework, blueprint.edition);
	if (!framework) {
		const known = frameworks.map(({ id, edition }) => `${id} ${edition}`).join(', ');
		const message = `expected a framework and edition among ${known}, found "${blueprint.framework} ${blueprint.edition}"`;
		return [...problems, { code: 'unknown-framework', path: '/framework', message }];
	}
	const codes = [
		...blueprint.cells.map(({ standard }, index) => ({ code: standard, path: `/cells/${index}/standard` })),
		...blueprint.sections.flatMap(({ standards }, section) =>
			(standards ?? []).map((code, index) => ({ code, path: `/sections/${section}/standards/${index}` })),
		),
	];
	for (const { code, path } of codes) {
		if (code === undefined || framework.standards.some((standard) => standard.code === code)) continue;
		const near = normalizeCode(framework, code) ?? suggestCodes(framework, code).join(', ');
		const message = `expected a code of ${framework.id} ${framework.edition}${near ? `, such as ${near}` : ''}; found "${code}"`;
		problems.push({ code: 'unknown-standard', path, message });
	}
	return problems;
}

function checkRanges(blueprint: Blueprint): readonly Problem[] {
	const problems: Problem[] = [];
	for (const { path, range } of allRanges(blueprint)) {
		if (range.min !== undefined && range.max !== undefined && range.min > range.max) {
			const message = `expected a smallest number up to the largest, found at least ${range.min} and at most ${range.max}`;
			problems.push({ code: 'range-contradictory', path, message });
		}
	}
	blueprint.cells.forEach((cell, index) => {
		if (cell.items === undefined && cell.points === undefined) {
			const message = 'expected a range of items or of points, found neither';
			problems.push({ code: 'cell-without-range', path: `/cells/${index}`, message });
		}
		const first = blueprint.cells.findIndex(
			({ standard, model }) => standard === cell.standard && model === cell.model,
		);
		if (first < index) {
			problems.push({
				code: 'cell-repeated',
				path: `/cells/${index}`,
				message: `expected each cell once, found the cell of /cells/${first} again`,
			});
		}
	});
	if (blueprint.items.max === undefined) {
		problems.push({
			code: 'items-without-maximum',
			path: '/items',
			message: 'expected a largest number of items, found none',
		});
	}
	const most = Math.max(blueprint.items.max ?? 0, blueprint.items.min ?? 0);
	if (most > mostItems) {
		problems.push({
			code: 'blueprint-too-long',
			path: '/items',
			message: `expected at most ${mostItems} items on a form, found ${most}`,
		});
	}
	return problems;
}

interface Part {
	readonly path: string;
	readonly range: Range;
}

function allRanges(blueprint: Blueprint): readonly Part[] {
	const lists = (['cells', 'dok', 'kinds', 'pointValues', 'roles', 'shapes'] as const).flatMap((name) =>
		(blueprint[name] ?? []).flatMap((entry, index) =>
			(['items', 'points'] as const).flatMap((unit) => {
				const range = (entry as Readonly<Record<string, unknown>>)[unit];
				return typeof range === 'object' && range !== null
					? [{ path: `/${name}/${index}/${unit}`, range: range as Range }]
					: [];
			}),
		),
	);
	return [
		{ path: '/items', range: blueprint.items },
		...(blueprint.points ? [{ path: '/points', range: blueprint.points }] : []),
		...lists,
		...(blueprint.readingLoad?.words ? [{ path: '/readingLoad/words', range: blueprint.readingLoad.words }] : []),
		...blueprint.sections.map(({ items }, index) => ({ path: `/sections/${index}/items`, range: items })),
	];
}

/** Sums that cannot come out in any bank, because parts that exclude each other ask for more than the whole, or allow less. */
function checkSums(blueprint: Blueprint): readonly Problem[] {
	const whole = blueprint.items;
	const list = (name: 'dok' | 'kinds' | 'pointValues' | 'roles' | 'shapes'): readonly (Range | undefined)[] =>
		(blueprint[name] ?? []).map(({ items }) => items);
	return [
		...checkLeast('/cells', disjointCells(blueprint), whole),
		...(['dok', 'kinds', 'pointValues', 'roles', 'shapes'] as const).flatMap((name) =>
			checkLeast(`/${name}`, list(name), whole),
		),
		...checkLeast(
			'/sections',
			blueprint.sections.map(({ items }) => items),
			whole,
		),
		...checkMost(
			'/sections',
			blueprint.sections.map(({ items }) => items),
			whole,
		),
	];
}

function checkLeast(path: string, parts: readonly (Range | undefined)[], whole: Range): readonly Problem[] {
	const least = parts.reduce((sum, range) => sum + (range?.min ?? 0), 0);
	if (whole.max === undefined || least <= whole.max) return [];
	const message = `expected parts that ask for at most ${whole.max} items, the most a form may have; together they ask for ${least}`;
	return [{ code: 'parts-exceed-whole', path, message }];
}

function checkMost(path: string, parts: readonly Range[], whole: Range): readonly Problem[] {
	if (whole.min === undefined || parts.some(({ max }) => max === undefined)) return [];
	const most = parts.reduce((sum, { max }) => sum + (max ?? 0), 0);
	if (most >= whole.min) return [];
	const message = `expected sections that hold at least ${whole.min} items, the fewest a form may have; together they hold at most ${most}`;
	return [{ code: 'parts-below-whole', path, message }];
}

/** Ranges of cells no two of which an item can be in: greedy in document order. */
function disjointCells(blueprint: Blueprint): readonly (Range | undefined)[] {
	const chosen: Blueprint['cells'][number][] = [];
	const overlaps = (a: Blueprint['cells'][number], b: Blueprint['cells'][number]): boolean => {
		if (a.model !== undefined && b.model !== undefined && a.model !== b.model) return false;
		if (a.standard === undefined || b.standard === undefined) return true;
		const isIn = (code: string, above: string) => underStandard(blueprint, [above])({ standard: code } as never);
		return isIn(a.standard, b.standard) || isIn(b.standard, a.standard);
	};
	for (const cell of blueprint.cells) if (!chosen.some((other) => overlaps(cell, other))) chosen.push(cell);
	return chosen.map(({ items }) => items);
}

function checkNamedItems(blueprint: Blueprint): readonly Problem[] {
	const problems: Problem[] = [];
	const seen = new Map<string, string>();
	for (const name of ['anchors', 'forced', 'forbidden'] as const) {
		(blueprint[name] ?? []).forEach(({ item }, index) => {
			const path = `/${name}/${index}`;
			const before = seen.get(item);
			if (before !== undefined) {
				const message = `expected each item at one place among anchors, forced and forbidden items; found "${item}" at ${before} too`;
				problems.push({ code: 'item-named-twice', path, message });
			}
			seen.set(item, before ?? path);
		});
	}
	(blueprint.anchors ?? []).forEach(({ section }, index) => {
		if (section === undefined || section <= blueprint.sections.length) return;
		const message = `expected a section from 1 to ${blueprint.sections.length}, found ${section}`;
		problems.push({ code: 'anchor-section-unknown', path: `/anchors/${index}/section`, message });
	});
	return problems;
}

function checkScoreBands({ scoreBands, points }: Blueprint): readonly Problem[] {
	if (!scoreBands) return [];
	const problems: Problem[] = [];
	scoreBands.bands.forEach(({ name, from }, index) => {
		const before = scoreBands.bands[index - 1];
		const expected =
			before === undefined
				? 'expected the lowest band to start at 0 points'
				: `expected a band above ${before.from} points`;
		const isRight = before === undefined ? from === 0 : from > before.from;
		if (!isRight)
			problems.push({
				code: 'score-bands-order',
				path: `/scoreBands/bands/${index}/from`,
				message: `${expected}, found "${name}" from ${from}`,
			});
		if (points?.max !== undefined && from > points.max) {
			const message = `expected a cut within ${points.max} points, the most a form may have; found "${name}" from ${from}`;
			problems.push({ code: 'score-band-out-of-reach', path: `/scoreBands/bands/${index}/from`, message });
		}
	});
	return problems;
}
