const prefix = 'zeropair-entry:';

/** Typed cells of a sitting that the bank does not have yet, kept in this browser; none where there are none or they cannot be read. */
export function readEntries(storage: Pick<Storage, 'getItem'>, sitting: string): ReadonlyMap<string, string> {
	try {
		const kept: unknown = JSON.parse(storage.getItem(prefix + sitting) ?? '{}');
		if (typeof kept !== 'object' || kept === null) return new Map();
		return new Map(Object.entries(kept).filter((entry): entry is [string, string] => typeof entry[1] === 'string'));
	} catch {
		return new Map();
	}
}

/** Keeps typed cells in this browser; false when it has no room or forbids it. */
export function keepEntries(
	storage: Pick<Storage, 'setItem' | 'removeItem'>,
	sitting: string,
	entries: ReadonlyMap<string, string>,
): boolean {
	try {
		if (entries.size === 0) storage.removeItem(prefix + sitting);
		else storage.setItem(prefix + sitting, JSON.stringify(Object.fromEntries(entries)));
		return true;
	} catch {
		return false;
	}
}
