import { listAnswerPlaces } from '../item-bank/forms/answer-places.ts';
import type { Problem } from '../item-bank/problem.ts';
import type {
	PreviewOrder,
	ReadingOrder,
	ReadingPreview,
	ReadingReport,
	RejectedRow,
	ResponseMapping,
	SittingRead,
} from '../item-bank/types.ts';
import { checkShape } from './json-schemas.ts';
import { readAnswerMap } from './results/answer-map-file.ts';
import type { ByteSource } from './results/byte-encoding.ts';
import { listColumns } from './results/columns.ts';
import { findLayout } from './results/file-layout.ts';
import { createPlaceFinder } from './results/place-names.ts';
import { previewRows } from './results/preview-rows.ts';
import { type ReadingPlan, type RosterGroup, readRows } from './results/read-rows.ts';
import { problemsOfRows, ResultFileError } from './results/result-errors.ts';
import { suggestMapping } from './results/suggest-mapping.ts';
import { createTally } from './results/tally.ts';
import type { Store } from './store/open-store.ts';
import type { KeepingReport, NewRow } from './store/response-keeping.ts';

/** What a file is read into, and how. The file itself is given apart, because it may be larger than memory. */
export type ResponseReading = Omit<ReadingOrder, 'content' | 'codes'> & {
	readonly codes?: ReadonlyMap<string, string>;
	readonly simulated?: boolean;
};

/**
 * Reads a file of responses into sittings, or says what reading it would do. Rows that do not fit are left out and listed; a
 * replacement with such a row is refused, because it would lose what was there. Nothing is changed when it throws: ResultFileError,
 * ResponsesPresentError, NotFoundError.
 */
export async function readResponses(
	store: Store,
	source: ByteSource,
	reading: ResponseReading,
	onReject?: (row: RejectedRow) => void,
): Promise<ReadingReport> {
	const { form: formId, version, date, mode, mapping, onto = 'nothing', dryRun = false } = reading;
	const { record, items } = await store.forms.get(formId, version);
	const places = listAnswerPlaces(record.form, items);
	const map = reading.answerMap === undefined ? [] : readAnswerMap(reading.answerMap, places);
	const findPlace = createPlaceFinder(places, map);
	checkMapping(mapping);
	const { layout, problems } = await findLayout(source, mapping, findPlace);
	refuseProblems(problems);
	const groups = await listGroups(store, reading);
	const plan: ReadingPlan = {
		source,
		layout,
		mapping,
		places,
		findPlace,
		groups,
		...(reading.codes ? { codes: reading.codes } : {}),
	};
	const tally = createTally(onReject);
	const kept = await store.responses.keep(readRows(plan, tally), {
		sitting: {
			form: record.id,
			version: record.version,
			date,
			mode,
			...(reading.simulated === true ? { simulated: true } : {}),
		},
		onto,
		isTrial: dryRun,
		refuse: (row, place) => tally.reject(refuseRow(row, place, tally.untake)),
		settle: (report) => settle(report, tally.rejected, onto, dryRun),
	});
	const columns = listColumns(layout.plan);
	const missing = places.filter(
		({ label }) => mapping.layout !== 'long' && !columns.some(({ place }) => place === label),
	);
	return {
		dryRun,
		encoding: layout.encoding,
		delimiter: layout.delimiter,
		columns,
		rows: tally.rows,
		students: sum(kept.sittings.map(({ students }) => students)),
		answers: sum(kept.sittings.map(({ answers }) => answers)),
		absent: tally.absent,
		unchanged: kept.unchanged,
		rejected: [...tally.rejected].sort((a, b) => a.line - b.line),
		states: tally.states,
		notes: [
			...layout.notes,
			...tally.notes(),
			...(missing.length === 0
				? []
				: [
						`The form has places without a column: ${missing.map(({ label }) => label).join(', ')}. They count as not given.`,
					]),
		],
		sittings: kept.sittings.map(
			({ id, isNew, group, students, answers }): SittingRead => ({
				...(dryRun && isNew ? {} : { id }),
				group,
				students,
				answers,
			}),
		),
	};
}

/** The beginning of a file as it would be read, and a mapping to begin with. Throws ResultFileError, NotFoundError. */
export async function previewResponses(
	store: Store,
	source: ByteSource,
	order: Omit<PreviewOrder, 'content'>,
): Promise<ReadingPreview> {
	const { record, items } = await store.forms.get(order.form, order.version);
	const places = listAnswerPlaces(record.form, items);
	const map = order.answerMap === undefined ? [] : readAnswerMap(order.answerMap, places);
	const findPlace = createPlaceFinder(places, map);
	const groups = (await store.groups.list()).map(({ id, group }) => ({ id, ...group }));
	if (order.mapping !== undefined) checkMapping(order.mapping);
	const mapping = order.mapping ?? (await suggestMapping(source, findPlace, groups));
	const { layout, problems } = await findLayout(source, mapping, findPlace);
	return {
		encoding: layout.encoding,
		delimiter: layout.delimiter,
		columns: listColumns(layout.plan),
		mapping,
		problems: problems.map(({ code, path, message }) => ({ code, path, message })),
		rows: problems.length > 0 ? [] : await previewRows({ source, layout, mapping, places, findPlace, groups }),
	};
}

function checkMapping(mapping: ResponseMapping): void {
	refuseProblems(checkShape('response-mapping.schema.json', mapping));
}

function refuseProblems(problems: readonly Problem[]): void {
	if (problems.length === 0) return;
	const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
	const message = `the mapping does not fit: ${problems[0]?.message ?? ''}${more}`;
	throw new ResultFileError('mapping-refused', message, problems);
}

async function listGroups(store: Store, { group, mapping }: ResponseReading): Promise<readonly RosterGroup[]> {
	if (group !== undefined && mapping.group !== undefined) {
		throw new ResultFileError('mapping-refused', 'expected one group or a column of groups, found both');
	}
	if (group !== undefined) return [{ id: group, ...(await store.groups.get(group)).group }];
	if (mapping.group === undefined) {
		throw new ResultFileError('mapping-refused', 'expected a class group or a column of groups, found neither');
	}
	return (await store.groups.list()).map((entry) => ({ id: entry.id, ...entry.group }));
}

function refuseRow(
	row: NewRow,
	{ position, part }: { readonly position: number; readonly part: number | undefined },
	untake: (answers: NewRow['answers']) => void,
): RejectedRow {
	untake(row.answers);
	const place = part === undefined ? position : `${position}.${part}`;
	return {
		line: row.line,
		code: 'row-present',
		message: `expected responses of "${row.code}" that are not in the bank, found another response at place ${place}: replace or correct it there`,
	};
}

/** Decides whether what was read may stand; what it throws undoes everything. */
function settle(
	{ sittings }: KeepingReport,
	rejected: readonly RejectedRow[],
	onto: 'nothing' | 'add' | 'replace',
	isTrial: boolean,
): void {
	if (isTrial) return;
	const problems = problemsOfRows(rejected.slice(0, 1000));
	if (onto === 'replace' && rejected.length > 0) {
		const message = `expected every row to fit before responses are replaced, found ${rejected.length} that do not: nothing was changed`;
		throw new ResultFileError('rows-rejected', message, problems);
	}
	if (sittings.length === 0) {
		const message = 'expected at least one row that can be taken, found none: nothing was changed';
		throw new ResultFileError('rows-none', message, problems);
	}
}

function sum(numbers: readonly number[]): number {
	return numbers.reduce((total, number) => total + number, 0);
}
