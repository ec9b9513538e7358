/** What the page says after something was done, and how to take it back. */
export interface Told {
	readonly text: string;
	/** Takes it back; resolves when it is. */
	readonly undo?: () => Promise<void>;
}

/** Name of the event on the window that carries a {@link Told}. */
export const toldEvent = 'zp-told';

/** Says in the frame of the page what was done, with a way to take it back where there is one. */
export function tell(text: string, undo?: () => Promise<void>): void {
	const detail: Told = undo === undefined ? { text } : { text, undo };
	window.dispatchEvent(new CustomEvent(toldEvent, { detail }));
}
