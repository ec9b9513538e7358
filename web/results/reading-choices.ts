import type { ReadingPreview, ResponseMapping, TakenColumn } from '../../item-bank/types.ts';

/** What a column of a file is used for; "item:7.2" for the responses at a place. */
export type ColumnUse = 'discarded' | 'student' | 'group' | 'place' | 'answer' | `item:${string}`;

/** What a reader of a file has chosen, as the page holds it. */
export interface ReadingChoices {
	readonly layout: 'wide' | 'long';
	/** Use of each column, the first column first. */
	readonly uses: readonly ColumnUse[];
	readonly delimiter: NonNullable<ResponseMapping['delimiter']> | '';
	readonly headingRows: number;
	readonly holds: NonNullable<ResponseMapping['holds']>;
	readonly numbers: NonNullable<ResponseMapping['numbers']>;
	readonly blanks: NonNullable<ResponseMapping['blanks']>;
	readonly blanksAtEnd: NonNullable<ResponseMapping['blanksAtEnd']>;
	readonly repeats: NonNullable<ResponseMapping['repeats']>;
	readonly newStudents: NonNullable<ResponseMapping['newStudents']>;
	/** Texts that stand for no response, parted by blanks or commas. */
	readonly omitted: string;
	readonly notReached: string;
	readonly invalid: string;
}

/** What is still missing before a file can be looked at. */
export type MissingChoice = 'student' | 'items' | 'place' | 'answer';

/** Choices before anything is known of a file. */
export const firstChoices: ReadingChoices = {
	layout: 'wide',
	uses: [],
	delimiter: '',
	headingRows: 1,
	holds: 'responses',
	numbers: 'places',
	blanks: 'omitted',
	blanksAtEnd: 'omitted',
	repeats: 'refuse',
	newStudents: 'refuse',
	omitted: '',
	notReached: '',
	invalid: '',
};

/** Choices with the columns as the bank understood them. Where no column held student codes, isStudentKnown is false and none is chosen. */
export function takeColumns(
	choices: ReadingChoices,
	{ columns, mapping }: Pick<ReadingPreview, 'columns' | 'mapping'>,
	isStudentKnown: boolean,
): ReadingChoices {
	const uses = columns.map((column): ColumnUse => {
		const use = useOf(column);
		return use === 'student' && !isStudentKnown ? 'discarded' : use;
	});
	return { ...choices, layout: mapping.layout ?? 'wide', uses };
}

function useOf({ as, place }: TakenColumn): ColumnUse {
	return as === 'item' ? `item:${place ?? ''}` : as;
}

/** Gives a column a use; whichever column had it before is discarded, because each use has one column. */
export function useColumn(choices: ReadingChoices, column: number, use: ColumnUse): ReadingChoices {
	const uses = choices.uses.map((each, index): ColumnUse => {
		if (index === column) return use;
		return each === use && use !== 'discarded' ? 'discarded' : each;
	});
	return { ...choices, uses };
}

/** Columns of the other layout are let go, so that none is taken unseen. */
export function useLayout(choices: ReadingChoices, layout: ReadingChoices['layout']): ReadingChoices {
	const isKept = (use: ColumnUse): boolean =>
		use === 'student' || use === 'group' || (layout === 'wide' ? use.startsWith('item:') : !use.startsWith('item:'));
	return { ...choices, layout, uses: choices.uses.map((use) => (isKept(use) ? use : 'discarded')) };
}

/** What has to be chosen before the file can be looked at, in the order in which it is asked. */
export function listMissing({ layout, uses }: ReadingChoices): readonly MissingChoice[] {
	const missing: MissingChoice[] = uses.includes('student') ? [] : ['student'];
	if (layout === 'wide') return uses.some((use) => use.startsWith('item:')) ? missing : [...missing, 'items'];
	return [...missing, ...(['place', 'answer'] as const).filter((use) => !uses.includes(use))];
}

/** Headings of discarded columns that read like a place of a form, such as Q99. */
export function listStray(columns: readonly TakenColumn[], uses: readonly ColumnUse[]): readonly string[] {
	return columns
		.filter((_unused, index) => uses[index] === 'discarded')
		.map(({ heading }) => heading)
		.filter((heading) =>
			/^(q|item|question|no\.?|nr\.?|#)?\s*\.?\s*\d{1,4}([.][1-9]|[a-f])?\.?$/i.test(heading.trim()),
		);
}

/** The mapping choices stand for. Columns go by their number, so that headings may repeat. */
export function mappingOf(choices: ReadingChoices): ResponseMapping {
	const { layout, uses, delimiter, headingRows, holds, numbers, blanks, blanksAtEnd, repeats, newStudents } = choices;
	const columnOf = (use: ColumnUse): number | undefined => {
		const index = uses.indexOf(use);
		return index < 0 ? undefined : index + 1;
	};
	const optional = (name: 'group' | 'place' | 'answer') => {
		const column = columnOf(name);
		return column === undefined ? {} : { [name]: column };
	};
	const items = uses.flatMap((use, index) =>
		use.startsWith('item:') ? [{ column: index + 1, place: use.slice('item:'.length) }] : [],
	);
	return {
		layout,
		...(delimiter === '' ? {} : { delimiter }),
		headingRows,
		student: columnOf('student') ?? 1,
		...optional('group'),
		...(layout === 'long' ? { ...optional('place'), ...optional('answer') } : {}),
		...(layout === 'wide' && items.length > 0 ? { items } : {}),
		...(layout === 'wide' ? { blanksAtEnd } : {}),
		holds,
		numbers,
		blanks,
		repeats,
		newStudents,
		codes: {
			omitted: splitCodes(choices.omitted),
			notReached: splitCodes(choices.notReached),
			invalid: splitCodes(choices.invalid),
		},
	};
}

function splitCodes(text: string): readonly string[] {
	return text.split(/[\s,;]+/).filter((code) => code !== '');
}
