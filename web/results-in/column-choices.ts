import type { MappedItem, ReadingPreview, ResponseMapping, TakenColumn } from '../../item-bank/types.ts';

/** What a column is taken for; "item 7.2" for the responses to a place. */
export type ColumnChoice = 'discarded' | 'student' | 'group' | 'place' | 'answer' | `item ${string}`;

/** What every column is taken for, by its number. */
export type ColumnChoices = ReadonlyMap<number, ColumnChoice>;

/** The choices of a preview, to begin with. */
export function choicesOf({ columns }: Pick<ReadingPreview, 'columns'>): ColumnChoices {
	return new Map(columns.map((column) => [column.number, choiceOf(column)]));
}

/** A column taken for something else. What only one column can be is taken from the one that was it. */
export function chooseColumn(choices: ColumnChoices, number: number, choice: ColumnChoice): ColumnChoices {
	return new Map(
		[...choices].map(([each, now]) => {
			if (each === number) return [each, choice];
			return [each, choice !== 'discarded' && now === choice ? 'discarded' : now];
		}),
	);
}

/** What the columns can be taken for in a layout, places of the form last. */
export function listChoices(layout: 'wide' | 'long', places: readonly string[]): readonly ColumnChoice[] {
	const one = ['discarded', 'student', 'group'] as const;
	return layout === 'long' ? [...one, 'place', 'answer'] : [...one, ...places.map((label) => `item ${label}` as const)];
}

/** The mapping that the choices say, with everything else of a mapping as it was. */
export function mappingOf(
	choices: ColumnChoices,
	layout: 'wide' | 'long',
	base: Partial<ResponseMapping>,
): ResponseMapping {
	const { items: _items, place: _place, answer: _answer, group: _group, student: _student, ...rest } = base;
	const numberOf = (choice: ColumnChoice) => [...choices].find(([, each]) => each === choice)?.[0];
	const optional = (name: 'group' | 'place' | 'answer') => {
		const number = numberOf(name);
		return number === undefined ? {} : { [name]: number };
	};
	const items = [...choices].flatMap(([column, choice]): readonly MappedItem[] =>
		choice.startsWith('item ') ? [{ column, place: choice.slice(5) }] : [],
	);
	return {
		...rest,
		layout,
		student: numberOf('student') ?? '',
		...optional('group'),
		...(layout === 'long' ? { ...optional('place'), ...optional('answer') } : {}),
		...(layout === 'wide' && items.length > 0 ? { items } : {}),
	};
}

/** Why a file cannot be read with these choices yet; undefined when it can. */
export function missingChoice(
	choices: ColumnChoices,
	layout: 'wide' | 'long',
): 'student' | 'items' | 'place' | 'answer' | undefined {
	const taken = new Set(choices.values());
	if (!taken.has('student')) return 'student';
	if (layout === 'long') return taken.has('place') ? (taken.has('answer') ? undefined : 'answer') : 'place';
	return [...taken].some((choice) => choice.startsWith('item ')) ? undefined : 'items';
}

/** Words between commas, such as codes for an omission; none for a blank text. */
export function readWords(text: string): readonly string[] {
	return text
		.split(',')
		.map((word) => word.trim())
		.filter((word) => word !== '');
}

/** Lines of a list of codes, "name in the file; student code" with a comma, semicolon or tab between. */
export function readCodeLines(text: string): readonly (readonly string[])[] {
	return text
		.split('\n')
		.map((line) => line.split(/[\t;,]/).map((cell) => cell.trim()))
		.filter((cells) => cells.some((cell) => cell !== ''));
}

function choiceOf({ as, place }: TakenColumn): ColumnChoice {
	if (as === 'item') return place === undefined ? 'discarded' : `item ${place}`;
	return as;
}
