import { strFromU8, unzipSync } from 'fflate';

/** Files of a package as text, by path; pictures as PNG come out garbled and are not for reading. */
export function unpack(bytes: Uint8Array): ReadonlyMap<string, string> {
	return new Map(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));
}

/** The text of one file. */
export function fileOf(files: ReadonlyMap<string, string>, path: string): string {
	const text = files.get(path);
	if (text === undefined) throw new Error(`no ${path} among ${[...files.keys()].join(', ')}`);
	return text;
}
