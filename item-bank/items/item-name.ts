/** The name of an item with true minus signs, as its text prints them; hyphens between words stay. */
export function printItemName(name: string): string {
	return name.replace(/(?<=[\d)|?]) - (?=[\d(|−-])/g, ' − ').replace(/(?<![\p{L}\p{N}])-(?=[\d(|])/gu, '−');
}
