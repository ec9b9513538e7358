/**
 * Moves the cursor between the fields of a grid (data-row, data-column): Enter and the arrows up and down by rows, the arrows
 * left and right from the ends of a text.
 */
export function moveInGrid(event: KeyboardEvent, columns: number): void {
	const field = event.target;
	if (!(field instanceof HTMLInputElement) || event.ctrlKey || event.metaKey || event.altKey) return;
	const step = stepOf(event, field);
	if (!step) return;
	const row = Number(field.dataset.row) + step[0];
	const column = Number(field.dataset.column) + step[1];
	if (column < 0 || column >= columns) return;
	const next = field
		.closest('table')
		?.querySelector<HTMLInputElement>(`input[data-row="${row}"][data-column="${column}"]`);
	if (!next) return;
	event.preventDefault();
	next.focus();
	next.select();
}

function stepOf(
	{ key, shiftKey }: KeyboardEvent,
	{ selectionStart, selectionEnd, value }: HTMLInputElement,
): readonly [rows: number, columns: number] | undefined {
	const isWhole = selectionStart === 0 && selectionEnd === value.length;
	switch (key) {
		case 'Enter':
			return [shiftKey ? -1 : 1, 0];
		case 'ArrowDown':
			return [1, 0];
		case 'ArrowUp':
			return [-1, 0];
		case 'ArrowLeft':
			return isWhole || selectionEnd === 0 ? [0, -1] : undefined;
		case 'ArrowRight':
			return isWhole || selectionStart === value.length ? [0, 1] : undefined;
		default:
			return undefined;
	}
}
