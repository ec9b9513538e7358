import type { Problem } from '../../item-bank/problem.ts';

/** Something wrong with a document of a package: which file, where in it. */
export interface DocumentProblem extends Problem {
	/** Path within the package, such as items/item-007.xml. */
	readonly file: string;
	/** Line of the document, counted from 1; undefined where the fault has no line. */
	readonly line: number | undefined;
	/** Name of the element at fault, without namespace; undefined where the fault is no element's. */
	readonly element: string | undefined;
	/** Bank id of the item the document was written from. */
	readonly item?: string;
}

/** Nothing was written because what would have been written is not valid. */
export class ExportRefusedError extends Error {
	readonly code = 'export-invalid';
	readonly problems: readonly DocumentProblem[];

	constructor(problems: readonly DocumentProblem[]) {
		const [first] = problems;
		const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
		super(`expected a valid export, found ${first ? describe(first) : 'a fault'}${more}`);
		this.name = 'ExportRefusedError';
		this.problems = problems;
	}
}

/** Why an export cannot begin. */
export type ExportInputCode =
	| 'export-empty'
	| 'export-too-large'
	| 'export-item-missing'
	| 'export-item-repeated'
	| 'export-identifier-repeated';

/** What was asked to be exported does not fit together. */
export class ExportInputError extends Error {
	readonly code: ExportInputCode;

	constructor(code: ExportInputCode, message: string) {
		super(message);
		this.name = 'ExportInputError';
		this.code = code;
	}
}

/** The export was given up before its end; nothing was written. */
export class ExportCancelledError extends Error {
	readonly code = 'export-cancelled';

	constructor(cause?: unknown) {
		super('the export was given up before its end; nothing was written', cause === undefined ? undefined : { cause });
		this.name = 'ExportCancelledError';
	}
}

function describe(problem: DocumentProblem): string {
	const item = problem.item === undefined ? '' : ` of item "${problem.item}"`;
	const line = problem.line === undefined ? '' : `, line ${problem.line}`;
	const element = problem.element === undefined ? '' : `, <${problem.element}>`;
	return `in ${problem.file}${item}${line}${element}: ${problem.message}`;
}
