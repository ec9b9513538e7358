import { ExpressionSyntaxError } from '../../item-bank/expression/syntax-error.ts';
import { ItemKeyError } from '../../item-bank/items/key.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { RichTextError } from '../../item-bank/markup/rich-text.ts';
import type { Problem } from '../../item-bank/problem.ts';
import { type Carriage, carriageOf } from '../qti/carrying.ts';
import {
	type DocumentProblem,
	ExportCancelledError,
	ExportInputError,
	ExportRefusedError,
} from '../qti/export-errors.ts';
import { type Placement, placeForm } from '../qti/placement.ts';
import { KeyTooWideError } from '../qti/write/gridded.ts';
import { FigureTooSmallError } from '../qti/write/hotspots.ts';
import { askQuestions } from './ask-questions.ts';
import { NotCarriedError } from './cartridge-errors.ts';
import type { Question } from './question.ts';
import { assessmentPath } from './write/paths.ts';

/** What to do with items that are not carried as they are. Without either the export is refused, with the list. */
export interface Uncarried {
	/** Convert those that can be. */
	readonly convert?: boolean;
	/** Leave those out that are neither carried nor, with convert, converted; those that cannot be asked at all as well. */
	readonly leaveOut?: boolean;
}

/** What a form becomes in a cartridge. */
export interface ChosenQuestions {
	readonly questions: readonly Question[];
	/** Every item or part left out, with the reason. */
	readonly leftOut: readonly { readonly placement: Placement; readonly reason: string }[];
	/** Of sets that were taken apart, positions. */
	readonly setPositions: readonly number[];
}

interface Placed {
	readonly placement: Placement;
	/** The set it is a part of, or the item itself. */
	readonly whole: ItemRecord;
}

/**
 * Chooses what of a form becomes questions, and how. Throws ExportInputError when form and items do not fit together or nothing
 * is left, {@link NotCarriedError} with the list when items need a choice that was not made, ExportRefusedError for items
 * that cannot be asked at all and are not left out, and ExportCancelledError.
 */
export async function chooseQuestions(
	form: FormRecord,
	items: readonly ItemRecord[],
	{ convert = false, leaveOut = false }: Uncarried,
	signal?: AbortSignal,
): Promise<ChosenQuestions> {
	const records = new Map(items.map((record) => [`${record.id} ${record.version}`, record]));
	const questions: Question[] = [];
	const leftOut: { placement: Placement; reason: string }[] = [];
	const undecided: Problem[] = [];
	const broken: DocumentProblem[] = [];
	const setPositions = new Set<number>();
	for (const [at, placement] of placeForm(form, items).entries()) {
		if (at % 100 === 0) await new Promise((resolve) => setImmediate(resolve));
		if (signal?.aborted) throw new ExportCancelledError(signal.reason);
		const { id, version } = placement.record;
		const placed = { placement, whole: records.get(`${id} ${version}`) ?? placement.record };
		// A set is converted whatever its parts are.
		const carriage = carriageOf(placed.whole.item, 'cc-1.1');
		if (carriage.how === 'converted' && !convert) {
			if (leaveOut) leftOut.push({ placement, reason: 'it would have to be converted' });
			else undecided.push(describeChoice(form, placed, carriage));
			continue;
		}
		try {
			questions.push(...askQuestions(placement));
			if (placed.whole.item.kind === 'set') setPositions.add(placement.position);
		} catch (error) {
			const problem = askingProblem(error, placement);
			if (leaveOut) leftOut.push({ placement, reason: reasonOf(error) });
			else broken.push(problem);
		}
	}
	if (undecided.length > 0) throw new NotCarriedError(onePerItem(undecided));
	if (broken.length > 0) throw new ExportRefusedError(broken);
	if (questions.length === 0) {
		const message = 'expected at least one item that can be taken out, found none: every one was left out';
		throw new ExportInputError('export-empty', message);
	}
	return { questions, leftOut, setPositions: [...setPositions] };
}

/** Why an item at its place cannot be asked, found by asking it; undefined where it can. */
export function findCartridgeObstacle(placement: Placement): string | undefined {
	try {
		askQuestions(placement);
		return undefined;
	} catch (error) {
		askingProblem(error, placement);
		return reasonOf(error);
	}
}

function reasonOf(error: unknown): string {
	return error instanceof Error ? error.message : String(error);
}

function describeChoice(form: FormRecord, { placement, whole }: Placed, { as }: Carriage): Problem {
	const { position, section } = placement;
	const before = form.form.sections.slice(0, section).reduce((sum, { items }) => sum + items.length, 0);
	const named = `item ${position} ("${whole.id}" version ${whole.version}, ${whole.item.kind})`;
	const parts = whole.item.kind === 'set' ? describeParts(whole) : '';
	return {
		code: 'item-not-carried',
		path: `/sections/${section}/items/${position - 1 - before}`,
		message: `expected a kind that Common Cartridge 1.1 carries, found ${named}: convert it to ${as}${parts}, or leave it out`,
	};
}

function describeParts({ item }: ItemRecord): string {
	if (item.kind !== 'set') return '';
	const changed = item.parts.flatMap((part, index) => {
		const { how, as } = carriageOf(part, 'cc-1.1');
		return how === 'converted' ? [`part ${index + 1} to ${as}`] : [];
	});
	return changed.length === 0 ? '' : ` (${changed.join(', ')})`;
}

function onePerItem(problems: readonly Problem[]): readonly Problem[] {
	return [...new Map(problems.map((problem) => [problem.path, problem])).values()];
}

/** Keys and figures that cannot be asked are the item's problems; anything else is our own fault and goes on. */
function askingProblem(error: unknown, { record, title }: Placement): DocumentProblem {
	if (
		error instanceof ItemKeyError ||
		error instanceof KeyTooWideError ||
		error instanceof FigureTooSmallError ||
		error instanceof RichTextError ||
		error instanceof ExpressionSyntaxError
	) {
		const at = { path: assessmentPath, file: assessmentPath, line: undefined, element: undefined };
		return { ...at, code: error.code, item: record.id, message: `${title}: ${error.message}` };
	}
	throw error;
}
