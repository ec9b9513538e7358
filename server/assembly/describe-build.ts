import { positionsOf } from '../../item-bank/forms/check-form.ts';
import { type FindItem, formTraits, type ReportScope } from '../../item-bank/forms/compare-forms.ts';
import { count } from '../../item-bank/forms/requirements.ts';
import type {
	BalanceReport,
	BuildAnswer,
	BuildProof,
	ConflictEntry,
	Form,
	MissingItems,
	Shortfall,
} from '../../item-bank/types.ts';

/** What came of a build as plain text of at most about 100 columns, for the command line. */
export function describeBuild(answer: BuildAnswer, findItem: FindItem, scope: ReportScope): string {
	switch (answer.kind) {
		case 'built':
			return paragraphs([
				`Built ${count(answer.forms.length, 'form')}. ${proofWords(answer.proof, answer.balance.forms.length)}`,
				...answer.forms.map((form) => describeForm(form, findItem, scope)),
				describeBalance(answer.balance),
				answer.departures.length > 0 &&
					list('Order rules that could not be kept:', answer.departures.map(shortfallWords)),
			]);
		case 'impossible':
			return paragraphs([
				'No forms can be built.',
				list(conflictHead(answer.conflict.length, answer.isIrreducible), answer.conflict.map(conflictWords)),
				answer.missing.length > 0 &&
					list('With these new items it can be done (the fewest there are):', answer.missing.map(missingWords)),
				answer.missing.length === 0 && 'No small number of new items was found that would make it possible.',
				answer.nearest && list('The nearest forms fall short of:', answer.nearest.shortfalls.map(shortfallWords)),
				...(answer.nearest?.forms ?? []).map((form) => describeForm(form, findItem, scope)),
			]);
		case 'undecided':
			return `${answer.message[0]?.toUpperCase()}${answer.message.slice(1)}.\n`;
		default:
			return answer satisfies never;
	}
}

/** A balance report as a table: one line a measure, differences marked, bands beside them. */
export function describeBalance(report: BalanceReport): string {
	const isCompared = report.forms.length > 1;
	const rows = report.rows.map(({ label, values, difference, allowed }) => [
		label,
		...values.map(String),
		...(isCompared
			? [difference === 0 ? 'same' : String(difference), allowed === undefined ? '' : String(allowed)]
			: []),
	]);
	const names = report.forms.map((_, index) => columnName(index));
	const head = ['measure', ...names, ...(isCompared ? ['apart', 'allowed'] : [])];
	const representation = [
		"Webb's balance of representation",
		...report.representation.map((value) => value.toFixed(2)),
	];
	const shared = report.shared.length === 0 ? 'no item shared' : `shared: ${report.shared.join(', ')}`;
	return paragraphs([
		[...report.forms.map((title, index) => `${columnName(index)} = ${title}`), ...(isCompared ? [shared] : [])].join(
			'\n',
		),
		table([head, ...rows, representation]),
	]).trimEnd();
}

/** One form as text: sections, and for each place what stands there. */
export function describeForm(form: Form, findItem: FindItem, scope: ReportScope): string {
	const traits = new Map(formTraits(form, findItem, scope).map((one) => [one.id, one]));
	const places = positionsOf(form);
	const sections = form.sections.map(({ title }, sectionIndex) => {
		const rows = places
			.filter((place) => place.sectionIndex === sectionIndex)
			.map(({ position, entry }) => {
				const one = traits.get(entry.item);
				const name = findItem(entry.item, entry.version)?.name ?? 'not in the bank';
				if (!one) return [String(position), entry.item, '', '', '', '', '', name];
				const answer = one.keyPlace === undefined ? (one.answer ?? '') : `option ${'ABCDEFGH'[one.keyPlace]}`;
				return [
					String(position),
					one.id,
					`${one.standard ?? '-'} ${one.model}`,
					one.kind,
					`DOK ${one.dok}`,
					`${one.points} pt`,
					`est. ${one.difficulty}`,
					answer.length > 14 ? '' : answer,
					name,
				];
			});
		return `${title}\n${table(rows)}`;
	});
	return `${form.title} (${count(places.length, 'item')})\n\n${sections.join('\n\n')}`;
}

function proofWords({ status, unevenness, bound, nodes, method }: BuildProof, compared: number): string {
	const how = {
		'like-for-like': 'every form takes the same number from each class of like items',
		'near-alike': 'every form takes the same number from each class of nearly like items',
		'in-turn': 'form after form',
		classes: 'each form chosen by itself',
		items: 'item by item',
	}[method];
	const what =
		unevenness === 0
			? compared > 1
				? 'Proved: as even as forms can be; only places of keys and the spread of difficulty may differ.'
				: 'It keeps the plan, and its target of difficulty to a step.'
			: status === 'optimal'
				? `Proved: an unevenness of ${unevenness} is the least possible.`
				: `The unevenness is ${unevenness}; that less than ${bound} is impossible is proved, between the two it is open.`;
	return `${what}\n(${how}; ${count(nodes, 'node')} searched)`;
}

function conflictHead(length: number, isIrreducible: boolean): string {
	if (length === 1) return 'This cannot be met:';
	return isIrreducible
		? 'These cannot be met together; without any one of them the rest can:'
		: 'These cannot be met together; the limits ended the search for fewer:';
}

function conflictWords({ requirement, inBank, usable, excluded }: ConflictEntry): string {
	const has = `the bank has ${inBank}${usable === inBank ? '' : `, of which ${usable} may be used`}`;
	const reasons = excluded.slice(0, 6).map(({ item, reason }) => `${item} is excluded because ${reason}`);
	const more = excluded.length > 6 ? [`and ${excluded.length - 6} more are excluded`] : [];
	return [`${requirement}; ${has}`, ...reasons, ...more].join('\n      ');
}

function missingWords({ count: number, standard, model, kind, dok, points, role, shape }: MissingItems): string {
	const more = [
		`DOK ${dok}`,
		count(points, 'point'),
		...(role ? [`context role ${role}`] : []),
		...(shape ? [shape] : []),
	];
	return `${number} × ${kind} on ${standard} with ${model} (${more.join(', ')})`;
}

function shortfallWords({ form, requirement, found }: Shortfall): string {
	return `${form === undefined ? '' : `form ${columnName(form - 1)}: `}${requirement}; found ${found}`;
}

function columnName(index: number): string {
	return 'ABCDEFGHIJ'[index] ?? String(index + 1);
}

function list(head: string, entries: readonly string[]): string {
	return [head, ...entries.map((entry) => `  - ${entry}`)].join('\n');
}

function paragraphs(parts: readonly (string | false | undefined)[]): string {
	return `${parts.filter((part) => typeof part === 'string').join('\n\n')}\n`;
}

/** Columns padded to their widest cell; numbers to the right. */
function table(rows: readonly (readonly string[])[]): string {
	const widths = rows.reduce<readonly number[]>(
		(most, row) =>
			Array.from({ length: Math.max(most.length, row.length) }, (_, at) =>
				Math.max(most[at] ?? 0, row[at]?.length ?? 0),
			),
		[],
	);
	const isNumber = (cell: string): boolean => /^-?[\d.]+$/.test(cell);
	return rows
		.map((row) =>
			row
				.map((cell, at) => (isNumber(cell) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0)))
				.join('  ')
				.trimEnd(),
		)
		.join('\n');
}
