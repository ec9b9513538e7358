/** Largest file that a request takes, in bytes. */
export const mostBytes = 32 * 2 ** 20;

/** A file as base64. */
export function encodeFile(file: Blob): Promise<string> {
	return new Promise((resolve, reject) => {
		const reader = new FileReader();
		reader.addEventListener('error', () => reject(reader.error ?? new Error('the file could not be read')));
		reader.addEventListener('load', () => {
			const address = String(reader.result);
			resolve(address.slice(address.indexOf(',') + 1));
		});
		reader.readAsDataURL(file);
	});
}
