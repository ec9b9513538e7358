import type { Blueprint, MeasureGroup } from '../types.ts';
import type { ItemTraits } from './item-traits.ts';
import { cellWords, underStandard } from './requirements.ts';

/** One number by which forms are compared: a sum over their items. */
export interface Measure {
	readonly group: MeasureGroup;
	readonly label: string;
	/** What a difference of 1 costs when forms are built; 0 for what is only reported. */
	readonly weight: number;
	/** What an item adds, an integer. */
	readonly worth: (item: ItemTraits) => number;
	/** Largest difference the blueprint allows. */
	readonly band?: number;
}

/** Easy, middle and hard by the estimate. */
export const difficultyLevels: readonly { readonly label: string; readonly from: number; readonly to: number }[] = [
	{ label: 'estimated easy (1 to 3)', from: 1, to: 3 },
	{ label: 'estimated middle (4 to 6)', from: 4, to: 6 },
	{ label: 'estimated hard (7 to 10)', from: 7, to: 10 },
];

/**
 * The measures forms are balanced by: blueprint cells, each standard × model type the items have, kinds, DOK, roles,
 * shapes and passing zero, difficulty levels and sum, points, reading load. A measure that no item adds to is left out.
 */
export function measuresOf(items: readonly ItemTraits[], blueprint?: Blueprint): readonly Measure[] {
	const bands = blueprint?.parallel ?? {};
	const planned: readonly Measure[] = (blueprint?.cells ?? []).map(({ standard, model }) => {
		const isUnder = underStandard(
			blueprint ?? { framework: '', edition: '' },
			standard === undefined ? undefined : [standard],
		);
		return {
			group: 'cells',
			label: `plan: ${cellWords(standard, model)}`,
			weight: 3,
			worth: (item) => (isUnder(item) && (model === undefined || item.model === model) ? 1 : 0),
			...band(bands.cells),
		};
	});
	const measures: readonly Measure[] = [
		{ group: 'items', label: 'items', weight: 4, worth: () => 1 },
		{ group: 'points', label: 'points', weight: 4, worth: ({ points }) => points, ...band(bands.points) },
		...planned,
		...tally(items, 'cells', (item) => `${item.standard ?? 'no standard'} × ${item.model}`, 2),
		...tally(items, 'kinds', ({ kind }) => `kind ${kind}`, 2, bands.kinds),
		...tally(items, 'dok', ({ dok }) => `DOK ${dok}`, 2, bands.dok),
		...tally(items, 'roles', ({ role }) => role && `context of a ${role}`, 1),
		...tally(items, 'shapes', ({ shape }) => shape, 1, bands.shapes),
		...tally(items, 'shapes', (item) => (item.crossesZero ? 'passes zero' : undefined), 1, bands.shapes),
		...difficultyLevels.map(
			({ label, from, to }): Measure => ({
				group: 'levels',
				label,
				weight: 1,
				worth: ({ difficulty }) => (difficulty >= from && difficulty <= to ? 1 : 0),
				...band(bands.levels),
			}),
		),
		{
			group: 'difficulty',
			label: 'estimated difficulty, summed',
			weight: 1,
			worth: ({ difficulty }) => difficulty,
			...band(bands.difficulty),
		},
		{
			group: 'readingLoad',
			label: 'words to read',
			weight: 0.2,
			worth: ({ reading }) => reading,
			...band(bands.readingLoad),
		},
		...tally(
			items,
			'keyPlaces',
			({ keyPlace }) => (keyPlace === undefined ? undefined : `key at option ${'ABCDEFGH'[keyPlace]}`),
			0,
		),
	];
	return measures.filter(({ worth }) => items.some((item) => worth(item) !== 0));
}

/** One measure for each label that some item has, labels in alphabetical order. */
function tally(
	items: readonly ItemTraits[],
	group: MeasureGroup,
	labelOf: (item: ItemTraits) => string | undefined,
	weight: number,
	bandOf?: number,
): readonly Measure[] {
	const labels = new Set(items.flatMap((item) => labelOf(item) ?? []));
	return [...labels].sort().map((label) => ({
		group,
		label,
		weight,
		worth: (item: ItemTraits) => (labelOf(item) === label ? 1 : 0),
		...band(bandOf),
	}));
}

function band(value: number | undefined): { readonly band?: number } {
	return value === undefined ? {} : { band: value };
}
