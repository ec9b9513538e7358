/** Puts the keyboard on the field nearest to a place of the item, a JSON pointer that a check speaks of. */
export function followNote(root: ParentNode, path: string): void {
	const fields = [...root.querySelectorAll<HTMLElement>('[data-path]')];
	const placeOf = ({ dataset }: HTMLElement): string => dataset.path ?? '';
	const fits = fields.filter((field) => `${path}/`.startsWith(`${placeOf(field)}/`));
	const [around] = fits.sort((a, b) => placeOf(b).length - placeOf(a).length);
	const nearest = around ?? fields.find((field) => placeOf(field).startsWith(path));
	const controls = 'input, textarea, select';
	const control = nearest?.matches(controls) ? nearest : nearest?.querySelector<HTMLElement>(controls);
	control?.focus();
	control?.scrollIntoView({ block: 'center' });
}
