import type { Report } from '../../item-bank/types.ts';
import type { ReportQuery } from '../../server/api.ts';
import { printAddress } from '../address.ts';

/** A report as an address asks for it. */
export interface AskedReport {
	readonly kind: Report['kind'];
	readonly fields: ReportQuery;
}

/** Kinds of reports in the order in which a meeting needs them. */
export const reportKinds: readonly Report['kind'][] = [
	'pack',
	'coverage',
	'class',
	'groups',
	'patterns',
	'items',
	'item',
	'form',
	'compare',
];

/** Reads what an address asks for; the meeting pack where it names no report there is. Fields that make no sense are left out. */
export function readAsked(kind: string, query: URLSearchParams): AskedReport {
	const known = reportKinds.find((each) => each === kind) ?? 'pack';
	const cut = query
		.getAll('cut')
		.map(Number)
		.filter((each) => each > 0 && each <= 10_000);
	const fields = {
		...list('sitting', query.getAll('sitting')),
		...(query.get('copy') === 'own' ? { copy: 'own' as const } : {}),
		...text('framework', query),
		...text('edition', query),
		...list('cut', cut),
		...text('blueprint', query),
		...text('item', query),
		...list('focal', query.getAll('focal')),
	};
	return { kind: known, fields };
}

/** The address of a report; what is the same without being said is left out. */
export function writeAsked({ kind, fields }: AskedReport): string {
	const { copy, item, focal, cut, ...rest } = fields;
	return printAddress(
		'reports',
		{
			...rest,
			copy: copy === 'own' ? copy : undefined,
			item: kind === 'item' ? item : undefined,
			focal: kind === 'items' ? focal : undefined,
			cut: kind === 'form' || kind === 'compare' || kind === 'pack' ? cut : undefined,
		},
		kind,
	);
}

function list<Name extends string, Value>(name: Name, values: readonly Value[]): { [name in Name]?: readonly Value[] } {
	return values.length === 0 ? {} : ({ [name]: values } as { [name in Name]: readonly Value[] });
}

function text<Name extends string>(name: Name, query: URLSearchParams): { [name in Name]?: string } {
	const value = query.get(name);
	return value === null || value === '' ? {} : ({ [name]: value } as { [name in Name]: string });
}
