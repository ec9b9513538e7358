import type { FormRecord, ItemRecord } from '../item-bank/items/record.ts';
import type { CarriageEntry, Carriages, CarryingTable } from '../item-bank/types.ts';
import { findCartridgeObstacle } from './cartridge/choose-questions.ts';
import { carriageOf, formCarrying, type PackageVersion, packageVersions } from './qti/carrying.ts';
import { findObstacle } from './qti/obstacles.ts';
import { type Placement, placeForm } from './qti/placement.ts';

/**
 * What each version carries of a form, item by item, before anything is written: carried, converted, refused, and what is lost.
 * Throws ExportInputError when form and items do not fit together.
 */
export function tabulateCarrying(form: FormRecord, items: readonly ItemRecord[]): CarryingTable {
	const records = new Map(items.map((record) => [`${record.id} ${record.version}`, record]));
	const placed: Placement[][] = [];
	for (const placement of placeForm(form, items)) {
		if ((placement.part ?? 1) === 1) placed.push([]);
		placed.at(-1)?.push(placement);
	}
	const rows = placed.flatMap((placements, index) => {
		const [first] = placements;
		const record = first && records.get(`${first.record.id} ${first.record.version}`);
		if (!record) return [];
		const { id, version, item } = record;
		const carries = eachVersion((each) => carryItem(record, placements, each));
		return [{ position: index + 1, item: id, version, name: item.name, kind: item.kind, carries }];
	});
	const around = formCarrying.map(({ label, by }) => ({ label, carries: eachVersion((each) => by[each]) }));
	return { form: form.id, version: form.version, items: rows, around };
}

function carryItem({ item }: ItemRecord, placements: readonly Placement[], version: PackageVersion): CarriageEntry {
	const { how, as, lost } = carriageOf(item, version);
	const parts = item.kind === 'set' ? item.parts.map((part) => carriageOf(part, version)) : [];
	const converted = parts.flatMap((part, index) =>
		part.how === 'converted' ? [`part ${index + 1} to ${part.as}`] : [],
	);
	const words = converted.length === 0 ? as : `${as} (${converted.join(', ')})`;
	const losses = [...new Set([...lost, ...parts.flatMap((part) => part.lost)])];
	const obstacles = placements.flatMap(
		(placement) => (version === 'cc-1.1' ? findCartridgeObstacle(placement) : findObstacle(placement)) ?? [],
	);
	const [why] = obstacles;
	return why === undefined ? { how, as: words, lost: losses } : { how: 'refused', as: words, lost: losses, why };
}

function eachVersion(carry: (version: PackageVersion) => CarriageEntry): Carriages {
	const [older, newer, newest, cartridge] = packageVersions;
	return {
		[older]: carry(older),
		[newer]: carry(newer),
		[newest]: carry(newest),
		[cartridge]: carry(cartridge),
	};
}
