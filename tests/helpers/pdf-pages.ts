/** Pages of a PDF file, counted by its page objects. */
export function countPages(bytes: Uint8Array): number {
	return (
		Buffer.from(bytes)
			.toString('latin1')
			.match(/\/Type \/Page\b(?!s)/g)?.length ?? 0
	);
}
