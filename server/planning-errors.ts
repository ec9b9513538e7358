/** An order that asks for two things that exclude each other, or for none. */
export class OrderContradictoryError extends Error {
	readonly code = 'order-contradictory';

	constructor(message: string) {
		super(message);
		this.name = 'OrderContradictoryError';
	}
}

/** The build was given up before its end; no form of it was kept. */
export class BuildCancelledError extends Error {
	readonly code = 'build-cancelled';

	constructor(cause?: unknown) {
		super('the build was given up before its end; nothing was kept', cause === undefined ? undefined : { cause });
		this.name = 'BuildCancelledError';
	}
}

/** A form has no place of that number. */
export class PositionUnknownError extends Error {
	readonly code = 'position-unknown';
	readonly form: string;
	readonly position: number;
	/** How many items the form has. */
	readonly items: number;

	constructor(form: string, position: number, items: number) {
		super(`expected a place from 1 to ${items} of form "${form}", found ${position}`);
		this.name = 'PositionUnknownError';
		this.form = form;
		this.position = position;
		this.items = items;
	}
}

/** An item has no approved version to put on a form. */
export class ItemNotApprovedError extends Error {
	readonly code = 'item-not-approved';
	readonly item: string;

	constructor(item: string) {
		super(`expected an approved item, found "${item}", of which no version is approved`);
		this.name = 'ItemNotApprovedError';
		this.item = item;
	}
}
