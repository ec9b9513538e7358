import type { CarriageEntry, CarriedItem, CarryingTable } from '../../item-bank/types.ts';
import { tabulateCarrying } from '../carrying-table.ts';
import type { Uncarried } from '../cartridge/choose-questions.ts';
import { type PackageVersion, packageVersions, versionNames } from '../qti/carrying.ts';
import type { Call, Outcome } from './command.ts';
import { oneOf } from './words.ts';

/**
 * Shows what each version carries of a form, item by item, and writes nothing. With a version named, faults are the items that
 * would stop its export under the choices made.
 */
export async function checkExport(
	call: Call,
	id: string,
	version: number | undefined,
	uncarried: Uncarried,
): Promise<Outcome> {
	const as = call.options.as === undefined ? undefined : oneOf(call, 'as', packageVersions);
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(id, version);
	const table = tabulateCarrying(record, items);
	const stopping = as === undefined ? [] : table.items.filter((row) => stops(as, row.carries[as], uncarried));
	const lines = [
		...layTable(table),
		'',
		...explainCells(table),
		...(as === undefined ? [] : ['', sumUp(as, stopping)]),
	];
	return {
		value: { ...table, stopping: stopping.map(({ position }) => position) },
		lines,
		hasFaults: stopping.length > 0,
	};
}

/** QTI carries every kind and so leaves nothing out. */
function stops(as: PackageVersion, { how }: CarriageEntry, { convert = false, leaveOut = false }: Uncarried): boolean {
	if (how === 'refused') return as !== 'cc-1.1' || !leaveOut;
	return how === 'converted' && !convert && !leaveOut;
}

function sumUp(as: PackageVersion, stopping: readonly CarriedItem[]): string {
	if (stopping.length === 0) return `${versionNames[as]}: nothing here stops the export`;
	const positions = stopping.map(({ position }) => position).join(', ');
	const isRefused = stopping.some(({ carries }) => carries[as].how === 'refused');
	const way = isRefused ? 'the reason stands above' : 'choose --convert or --leave-out';
	return `${versionNames[as]}: stopped by item ${positions}; ${way}`;
}

/** One line an item; a star where something is lost, told below. */
function layTable({ items }: CarryingTable): readonly string[] {
	const rows = [
		['', 'item', 'kind', ...packageVersions.map((each) => versionNames[each])],
		...items.map(({ position, item, version, kind, carries }) => [
			String(position),
			`${item} v${version}`,
			kind,
			...packageVersions.map((each) => nameCell(carries[each])),
		]),
	];
	const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? [];
	return rows.map((row) =>
		row
			.map((cell, column) => cell.padEnd(widths[column] ?? 0))
			.join('  ')
			.trimEnd(),
	);
}

function nameCell({ how, lost }: CarriageEntry): string {
	return `${how}${lost.length > 0 && how !== 'refused' ? '*' : ''}`;
}

/** What stands behind the cells that are not plainly carried, the same words once. */
function explainCells({ items, around }: CarryingTable): readonly string[] {
	const told = new Map<string, string[]>();
	const note = (version: PackageVersion, entry: CarriageEntry, name: string): void => {
		const { how, as, lost, why } = entry;
		if (how === 'carried' && lost.length === 0) return;
		const loses = lost.length === 0 ? '' : `; loses ${lost.join(', ')}`;
		const text = `${versionNames[version]}: ${how === 'refused' ? `refused, ${why}` : `${how} as ${as}${loses}`}`;
		told.set(text, [...(told.get(text) ?? []), name]);
	};
	for (const version of packageVersions) {
		for (const { position, carries } of items) note(version, carries[version], String(position));
		for (const { label, carries } of around) note(version, carries[version], label);
	}
	return [...told].map(([text, names]) => {
		const isNumbered = names.every((name) => /^\d+$/.test(name));
		return `${text} (${isNumbered ? (names.length === 1 ? 'item ' : 'items ') : ''}${names.join(', ')})`;
	});
}
