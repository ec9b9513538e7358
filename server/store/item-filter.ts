import {
	findFramework,
	findStandard,
	normalizeCode,
	standardsBelow,
	suggestCodes,
} from '../../item-bank/standards/code.ts';
import { frameworks } from '../../item-bank/standards/frameworks.ts';
import type { ItemQuery } from '../../item-bank/types.ts';
import { UnknownStandardError } from './store-errors.ts';
import type { Traits } from './traits.ts';

/** Traits a search can narrow by, by the name the query gives them. */
export const traitFields = {
	model: 'given',
	kind: 'kind',
	dok: 'dok',
	status: 'status',
	points: 'points',
	setting: 'setting',
	role: 'role',
} as const satisfies Partial<Record<keyof ItemQuery, keyof Traits>>;

/** Name of a trait in a query. */
export type TraitField = keyof typeof traitFields;

/** A framework, and codes of it in their normal spelling; no codes: the framework alone. */
export interface StandardFilter {
	readonly framework: string;
	readonly edition: string;
	readonly codes: readonly string[];
	/** Only the alignment that counts the item in its framework. */
	readonly isLeadOnly: boolean;
}

/** The standard a query names. Throws UnknownStandardError, with near codes, for one the bank does not know. */
export function readStandardFilter(query: ItemQuery): StandardFilter | undefined {
	const { framework: id, edition, code } = query;
	if (id === undefined || edition === undefined) return undefined;
	const framework = findFramework(id, edition);
	if (!framework) {
		const near = frameworks.filter((each) => each.id === id).map((each) => `${each.id} ${each.edition}`);
		throw new UnknownStandardError(id, edition, undefined, near);
	}
	const isLeadOnly = query.alignment !== 'any';
	if (code === undefined) return { framework: id, edition, codes: [], isLeadOnly };
	const normal = findStandard(id, edition, code) ? code : normalizeCode(framework, code);
	if (normal === undefined) throw new UnknownStandardError(id, edition, code, suggestCodes(framework, code));
	const codes = query.below === true ? standardsBelow(framework, normal).map((standard) => standard.code) : [normal];
	return { framework: id, edition, codes, isLeadOnly };
}

/** Fields of a query that narrow the traits. */
export function activeFields(query: ItemQuery): readonly TraitField[] {
	return (Object.keys(traitFields) as TraitField[]).filter((field) => (query[field]?.length ?? 0) > 0);
}

/** Whether traits fit everything a query asks of them. */
export function fitsTraits(query: ItemQuery, traits: Traits): boolean {
	return activeFields(query).every((field) => fitsField(query, traits, field));
}

/** Whether traits fit what a query asks in one field. */
export function fitsField(query: ItemQuery, traits: Traits, field: TraitField): boolean {
	const wanted: readonly (string | number)[] = query[field] ?? [];
	return wanted.length === 0 || wanted.includes(traits[traitFields[field]]);
}
