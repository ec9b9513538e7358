import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { Blueprint, Form } from '../../item-bank/types.ts';

/** How far a search may go. The same limits give the same forms on any machine, so time is no limit. */
export interface BuildLimits {
	/** Nodes of the search tree in each integer program. */
	readonly nodes: number;
	/** Simplex iterations in each integer program. */
	readonly iterations: number;
}

/** What searches are limited to unless a request says otherwise. */
export const defaultLimits: BuildLimits = { nodes: 200, iterations: 15_000 };

/** That an item stood on a form given to students. */
export interface ItemUse {
	readonly item: string;
	/** Title of the form, for messages. */
	readonly form: string;
	/** ISO 8601 calendar date. */
	readonly date: string;
}

/** A form whose items the blueprint may exclude. */
export interface NamedForm {
	readonly id: string;
	readonly title: string;
	readonly items: readonly string[];
}

/** What forms to build and from what. All facts about use come with it; the builder has no clock and no store. */
export interface BuildRequest {
	readonly blueprint: Blueprint;
	/** Any records; only approved ones are used, at the highest approved version of each id. */
	readonly pool: readonly ItemRecord[];
	/** How many forms, 1 to 4. */
	readonly count: number;
	readonly seed: string | number;
	readonly limits?: Partial<BuildLimits>;
	/** ISO 8601 calendar date that days since use are counted from; needed where the blueprint excludes by days. */
	readonly today?: string;
	readonly uses?: readonly ItemUse[];
	/** The forms that the blueprint's notOnForms names. */
	readonly otherForms?: readonly NamedForm[];
	/** A form the new ones are to be parallel to, as for a retake; its items are not used again. */
	readonly like?: Form;
}

/** How far a build is. */
export interface BuildProgress {
	readonly phase: 'reading' | 'searching' | 'choosing' | 'explaining' | 'checking';
	/** Nodes searched in the integer program under way. */
	readonly nodes?: number;
	/** Unevenness of the best forms so far. */
	readonly best?: number;
	/** No forms can be less uneven. */
	readonly bound?: number;
}

/** A request that no search can answer. */
export class BuildRequestError extends Error {
	readonly code = 'build-request-refused';

	constructor(message: string) {
		super(message);
		this.name = 'BuildRequestError';
	}
}
