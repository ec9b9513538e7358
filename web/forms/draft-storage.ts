import type { Form } from '../../item-bank/types.ts';

/** Work on a form that is not in the bank yet. */
export interface Draft {
	/** Version it is based on; 0 for a form the bank does not have. */
	readonly baseVersion: number;
	readonly form: Form;
	/** ISO 8601 time of the last change. */
	readonly changedAt: string;
}

const prefix = 'zeropair-form-draft:';

/** Under which name the storage holds the work on a form. */
export function draftKey(id: string): string {
	return prefix + id;
}

/** The unsaved work on a form kept in this browser; undefined where there is none or it cannot be read. */
export function readDraft(storage: Pick<Storage, 'getItem'>, id: string): Draft | undefined {
	const text = storage.getItem(draftKey(id));
	if (text === null) return undefined;
	try {
		const draft: unknown = JSON.parse(text);
		return isDraft(draft) ? draft : undefined;
	} catch {
		return undefined;
	}
}

/** Keeps unsaved work in this browser; false when the browser has no room or forbids it. */
export function writeDraft(storage: Pick<Storage, 'setItem'>, id: string, draft: Draft): boolean {
	try {
		storage.setItem(draftKey(id), JSON.stringify(draft));
		return true;
	} catch {
		return false;
	}
}

/** Forgets unsaved work, once the bank has it or somebody gave it up. */
export function dropDraft(storage: Pick<Storage, 'removeItem'>, id: string): void {
	storage.removeItem(draftKey(id));
}

/** Every form with unsaved work in this browser, by id. */
export function listDrafts(
	storage: Pick<Storage, 'getItem' | 'key' | 'length'>,
): readonly { readonly id: string; readonly draft: Draft }[] {
	return Array.from({ length: storage.length }, (_unused, index) => storage.key(index))
		.flatMap((key) => (key?.startsWith(prefix) ? [key.slice(prefix.length)] : []))
		.sort()
		.flatMap((id) => {
			const draft = readDraft(storage, id);
			return draft ? [{ id, draft }] : [];
		});
}

const planPrefix = 'zeropair-form-plan:';

/** The blueprint this browser holds a form against; empty for none. */
export function readPlan(storage: Pick<Storage, 'getItem'>, id: string): string {
	return storage.getItem(planPrefix + id) ?? '';
}

/** Remembers which blueprint a form is held against; empty for none. */
export function writePlan(storage: Pick<Storage, 'setItem' | 'removeItem'>, id: string, blueprint: string): void {
	if (blueprint === '') storage.removeItem(planPrefix + id);
	else storage.setItem(planPrefix + id, blueprint);
}

/** An id for a form that is not in the bank yet: the browser chooses it, so that saving twice cannot make two forms. */
export function newFormId(): string {
	return `form-${crypto.randomUUID().slice(0, 13)}`;
}

function isDraft(value: unknown): value is Draft {
	if (!isRecord(value) || !isRecord(value.form)) return false;
	const { title, gridProfile, sections } = value.form;
	return (
		typeof value.baseVersion === 'number' &&
		typeof value.changedAt === 'string' &&
		typeof title === 'string' &&
		typeof gridProfile === 'string' &&
		Array.isArray(sections) &&
		sections.length > 0 &&
		sections.every((section) => isRecord(section) && typeof section.title === 'string' && areEntries(section.items))
	);
}

function areEntries(value: unknown): boolean {
	const isEntry = (entry: unknown): boolean =>
		isRecord(entry) && typeof entry.item === 'string' && typeof entry.version === 'number';
	return Array.isArray(value) && value.every(isEntry);
}

function isRecord(value: unknown): value is Record<string, unknown> {
	return typeof value === 'object' && value !== null;
}
