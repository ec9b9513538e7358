/** One constraint: lower ≤ Σ values · columns ≤ upper. All numbers are integers or infinite. */
export interface ProgramRow {
	readonly name: string;
	readonly lower: number;
	readonly upper: number;
	readonly columns: readonly number[];
	readonly values: readonly number[];
}

/** One unknown, always a whole number. */
export interface ProgramColumn {
	readonly name: string;
	readonly lower: number;
	readonly upper: number;
	readonly cost: number;
}

/** An integer program: the cheapest whole numbers that keep every row. */
export interface Program {
	readonly columns: readonly ProgramColumn[];
	readonly rows: readonly ProgramRow[];
}

/** Collects the columns and rows of a program. */
export interface ProgramDraft {
	/** Adds an unknown and returns its number. */
	readonly addColumn: (name: string, lower: number, upper: number, cost: number) => number;
	/** Adds a constraint; terms with value 0 are dropped, terms on one column are summed. */
	readonly addRow: (name: string, lower: number, upper: number, terms: readonly (readonly [number, number])[]) => void;
	readonly finish: () => Program;
}

/** An empty program to add to. */
export function draftProgram(): ProgramDraft {
	const columns: ProgramColumn[] = [];
	const rows: ProgramRow[] = [];
	return {
		addColumn: (name, lower, upper, cost) => {
			columns.push({ name, lower, upper, cost });
			return columns.length - 1;
		},
		addRow: (name, lower, upper, terms) => {
			if (lower === -Infinity && upper === Infinity) return;
			const sums = new Map<number, number>();
			for (const [column, value] of terms) if (value !== 0) sums.set(column, (sums.get(column) ?? 0) + value);
			rows.push({ name, lower, upper, columns: [...sums.keys()], values: [...sums.values()] });
		},
		finish: () => ({ columns, rows }),
	};
}

/** Names of the bounds and rows that whole numbers break, counted without the solver; a wrong length breaks everything. */
export function brokenRows(program: Program, values: readonly number[]): readonly string[] {
	if (values.length !== program.columns.length) return ['length'];
	const columns = program.columns.filter(({ lower, upper }, index) => {
		const value = values[index] ?? Number.NaN;
		return !(Number.isInteger(value) && value >= lower && value <= upper);
	});
	const rows = program.rows.filter((row) => {
		const sum = row.columns.reduce((total, column, at) => total + (values[column] ?? 0) * (row.values[at] ?? 0), 0);
		return sum < row.lower || sum > row.upper;
	});
	return [...columns, ...rows].map(({ name }) => name);
}

/** The cost of whole numbers, rounded to the integer it is. */
export function costOf(program: Program, values: readonly number[]): number {
	return Math.round(program.columns.reduce((sum, { cost }, index) => sum + cost * (values[index] ?? 0), 0));
}

/** The program in the LP text format that solvers share: minimise, named rows and columns, all columns general integers. */
export function writeLp(program: Program): string {
	const sum = (columns: readonly number[], values: readonly number[]): string =>
		columns.length === 0
			? '0 c0'
			: columns
					.map((column, at) => `${(values[at] ?? 0) < 0 ? '-' : '+'} ${Math.abs(values[at] ?? 0)} c${column}`)
					.join('\n  ');
	const costs = program.columns.flatMap(({ cost }, index) => (cost === 0 ? [] : [[index, cost] as const]));
	const objective = sum(
		costs.map(([column]) => column),
		costs.map(([, cost]) => cost),
	);
	const rows = program.rows.flatMap((row, index) => {
		const left = sum(row.columns, row.values);
		if (row.lower === row.upper) return [` r${index}: ${left} = ${row.lower}`];
		return [
			...(row.lower === -Infinity ? [] : [` r${index}l: ${left} >= ${row.lower}`]),
			...(row.upper === Infinity ? [] : [` r${index}u: ${left} <= ${row.upper}`]),
		];
	});
	const bounds = program.columns.map(({ lower, upper }, index) =>
		upper === Infinity ? ` c${index} >= ${lower}` : ` ${lower} <= c${index} <= ${upper}`,
	);
	const names = program.columns.map((_, index) => ` c${index}`);
	return [
		'Minimize',
		` cost: ${objective}`,
		'Subject To',
		...rows,
		'Bounds',
		...bounds,
		'Generals',
		...names,
		'End',
		'',
	].join('\n');
}
