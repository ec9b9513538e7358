/** Largest file the bank takes from a browser, in bytes. The command line reads any size. */
export const largestFile = 32 * 1024 * 1024;
/** How much of a file is enough to look at its first rows, in bytes. */
const enough = 256 * 1024;

/** A file as base64. */
export async function readBase64(file: Blob): Promise<string> {
	const address = await new Promise<string>((done, fail) => {
		const reader = new FileReader();
		reader.onload = () => done(String(reader.result));
		reader.onerror = () => fail(reader.error);
		reader.readAsDataURL(file);
	});
	return address.slice(address.indexOf(',') + 1);
}

/** The beginning of a file up to the end of a row. */
export async function cutBeginning(file: Blob): Promise<Blob> {
	if (file.size <= enough) return file;
	const bytes = new Uint8Array(await file.slice(0, enough).arrayBuffer());
	return file.slice(0, endOfRows(bytes));
}

/** How many of the bytes make whole rows; in UTF-16 a line end takes two. */
export function endOfRows(bytes: Uint8Array): number {
	const last = bytes.lastIndexOf(0x0a);
	if (last < 0) return bytes.length;
	return bytes[0] === 0xff && bytes[1] === 0xfe ? last + 2 : last + 1;
}
