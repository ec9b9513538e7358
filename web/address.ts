/** Pages of the app by the first part of the address. */
export type PageName = 'board' | 'find' | 'items' | 'forms' | 'sittings' | 'reports';

/** Where the reader is: a page, perhaps one thing on it, and how it is looked at. Stands behind the # of the address. */
export interface Address {
	readonly page: PageName;
	/** Id of the item, form or sitting, or kind of the report; "new" where one is being made. */
	readonly id?: string;
	readonly query: URLSearchParams;
}

const pages: readonly PageName[] = ['board', 'find', 'items', 'forms', 'sittings', 'reports'];

/** Reads "#/items/ID?from=…". The board where nothing is said; undefined for a page that is not there. */
export function parseAddress(hash: string): Address | undefined {
	const [path = '', search = ''] = hash.replace(/^#\/?/, '').split(/\?(.*)/s);
	const [page = '', id = ''] = path.split('/');
	const query = new URLSearchParams(search);
	if (page === '') return { page: 'board', query };
	const known = pages.find((name) => name === page);
	if (!known) return undefined;
	return { page: known, query, ...(id === '' ? {} : { id: decodeURIComponent(id) }) };
}

/** Writes an address for a link. Fields that are undefined or empty are left out; a list repeats its field. */
export function printAddress(
	page: PageName,
	query: Readonly<Record<string, string | number | boolean | readonly (string | number)[] | undefined>> = {},
	id?: string,
): string {
	const fields = new URLSearchParams();
	for (const [name, value] of Object.entries(query)) {
		for (const each of Array.isArray(value) ? value : [value]) {
			if (each !== undefined && each !== '') fields.append(name, String(each));
		}
	}
	const search = fields.toString();
	const path = id === undefined ? `#/${page}` : `#/${page}/${encodeURIComponent(id)}`;
	return search === '' ? path : `${path}?${search}`;
}

/** Goes to an address; isNoted: as a step that the back button takes back. Pages hear of it as "hashchange" of the window. */
export function goTo(address: string, isNoted = true): void {
	if (address === location.hash) return;
	history[isNoted ? 'pushState' : 'replaceState'](null, '', address);
	window.dispatchEvent(new HashChangeEvent('hashchange'));
}
