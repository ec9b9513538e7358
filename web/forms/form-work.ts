import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { checkForm, positionsOf } from '../../item-bank/forms/check-form.ts';
import type { Problem } from '../../item-bank/problem.ts';
import type { ErrorReport, Form, FormDetails } from '../../item-bank/types.ts';
import { ApiError, bankFoundEvent } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { formsText } from '../messages/forms.ts';
import { type Draft, draftKey, dropDraft, readDraft, writeDraft } from './draft-storage.ts';
import { addItem, isSameForm, startForm } from './form-edits.ts';
import { KnownItems } from './known-items.ts';

/** What a step changed, in words, and the form before it. */
interface Step {
	readonly what: string;
	readonly form: Form;
}

/** Steps that can be taken back. */
const mostSteps = 200;

/**
 * The work on one form: what the bank has, what stands on the desk, and the steps between. Every change is kept in this
 * browser at once and in the bank when saved. The host is drawn again after each change.
 */
export class FormWork implements ReactiveController {
	id = '';
	/** The newest version in the bank; undefined while there is none. */
	saved: FormDetails | undefined;
	/** The form on the desk; undefined while it is read. */
	form: Form | undefined;
	failure: ApiError | undefined;
	problems: ErrorReport['problems'] = [];
	/** What somebody else saved meanwhile. */
	conflict: FormDetails | undefined;
	/** waiting: the bank does not answer, and the work is saved when it does. */
	saving: 'idle' | 'busy' | 'waiting' = 'idle';
	/** False when this browser keeps nothing, so that closing the page would lose the work. */
	isKept = true;
	/** Whether another window of this browser has changed the work since. */
	isOutdated = false;
	/** Goes up with every change, for elements that are handed this object. */
	revision = 0;
	private baseVersion = 0;
	private past: Step[] = [];
	private future: Step[] = [];
	/** What the desk knows of items. */
	readonly items = new KnownItems();
	private readonly host: ReactiveControllerHost;
	private readonly resume = (): void => {
		if (this.saving === 'waiting') void this.save();
	};

	constructor(host: ReactiveControllerHost) {
		this.host = host;
		host.addController(this);
	}

	private readonly hear = (event: StorageEvent): void => {
		if (event.key !== draftKey(this.id) || !this.form) return;
		this.isOutdated = event.newValue !== null;
		this.show();
	};

	/** Only where this browser keeps nothing; else leaving loses nothing. */
	private readonly warn = (event: BeforeUnloadEvent): void => {
		if (!this.isKept && this.isUnsaved) event.preventDefault();
	};

	hostConnected(): void {
		window.addEventListener('beforeunload', this.warn);
		window.addEventListener('storage', this.hear);
		window.addEventListener(bankFoundEvent, this.resume);
	}

	hostDisconnected(): void {
		window.removeEventListener('beforeunload', this.warn);
		window.removeEventListener('storage', this.hear);
		window.removeEventListener(bankFoundEvent, this.resume);
	}

	/** Version in the bank that the desk is based on; 0 for none. */
	get version(): number {
		return this.baseVersion;
	}

	/** Whether the desk holds what the bank does not. */
	get isUnsaved(): boolean {
		return this.form !== undefined && (!this.base || !isSameForm(this.base, this.form));
	}

	/** What the next undo takes back; undefined when there is nothing. */
	get undoable(): string | undefined {
		return this.past.at(-1)?.what;
	}

	/** What the next redo brings back; undefined when there is nothing. */
	get redoable(): string | undefined {
		return this.future.at(-1)?.what;
	}

	private get base(): Form | undefined {
		return this.saved?.record.version === this.baseVersion ? this.saved.record.form : undefined;
	}

	/** Lays a form on the desk: the unsaved work of this browser, else what the bank has. */
	async open(id: string): Promise<void> {
		Object.assign(this, { id, saved: undefined, form: undefined, failure: undefined, conflict: undefined });
		Object.assign(this, { problems: [], saving: 'idle', past: [], future: [], baseVersion: 0, isOutdated: false });
		this.show();
		const draft = readDraft(localStorage, id);
		try {
			const details = draft?.baseVersion === 0 ? undefined : await this.read(id);
			if (this.id !== id) return;
			this.saved = details;
			this.baseVersion = draft && details ? draft.baseVersion : (details?.record.version ?? 0);
			this.form = draft?.form ?? details?.record.form;
			if (this.form) await this.items.readMissing(this.form);
			if (draft && details && !this.isUnsaved) this.keep();
			if (draft && details && draft.baseVersion < details.record.version) this.meet(details);
		} catch (error) {
			if (!(error instanceof ApiError) || this.id !== id) throw error;
			this.form = draft?.form;
			this.baseVersion = draft?.baseVersion ?? 0;
			this.failure = error;
		}
		this.show();
	}

	/** Changes the form on the desk; what says what was done, as in "Item removed". */
	change(form: Form, what: string): void {
		if (!this.form || isSameForm(form, this.form)) return;
		this.past = [...this.past, { what, form: this.form }].slice(-mostSteps);
		this.future = [];
		this.lay(form);
	}

	/** Takes the last change back and says what it was. */
	undo(): string | undefined {
		return this.step(this.past, this.future);
	}

	/** Makes the change taken back last again and says what it was. */
	redo(): string | undefined {
		return this.step(this.future, this.past);
	}

	/** Keeps the form in the bank as a new version. True when the bank has it; else the desk says why not. */
	async save(): Promise<boolean> {
		const { form, id } = this;
		if (!form || this.saving === 'busy') return false;
		Object.assign(this, { saving: 'busy', failure: undefined });
		this.show();
		try {
			await this.send(id, form);
			if (this.id !== id) return false;
			this.saving = 'idle';
			this.keep();
			return true;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			if (this.id === id) await this.explain(error);
			return false;
		} finally {
			this.show();
		}
	}

	/** Ends a conflict: with mine as the next version, with theirs, or with theirs and my new items at the end. */
	async settle(choice: 'mine' | 'theirs' | 'both'): Promise<void> {
		const { conflict, form } = this;
		if (!conflict || !form) return;
		this.saved = conflict;
		this.conflict = undefined;
		this.baseVersion = conflict.record.version;
		const theirs = conflict.record.form;
		if (choice === 'mine') this.lay(form);
		if (choice === 'theirs') this.change(theirs, formsText.conflict.took);
		if (choice === 'both') {
			const last = theirs.sections.length - 1;
			const joined = positionsOf(form).reduce((sum, { entry }) => addItem(sum, entry, last), theirs);
			this.change(joined, formsText.conflict.joined);
		}
		if (this.form) await this.items.readMissing(this.form);
		this.keep();
		this.show();
	}

	/** Reads again when and to whom the form was given. */
	async refreshGivings(): Promise<void> {
		const { id, saved } = this;
		if (!saved) return;
		try {
			const { givings } = await callApi('GET /api/forms/{id}', { path: { id } });
			if (this.id === id && this.saved) this.saved = { ...this.saved, givings };
			this.show();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
		}
	}

	/** Gives the unsaved work up; the bank's version comes back. The step can be taken back. */
	discard(): void {
		if (this.base) this.change(this.base, formsText.desk.discarded);
	}

	private async send(id: string, form: Form): Promise<void> {
		const record =
			this.baseVersion === 0
				? await callApi('POST /api/forms', { body: { id, form } })
				: await callApi('PUT /api/forms/{id}', { path: { id }, body: { baseVersion: this.baseVersion, form } });
		this.baseVersion = record.version;
		this.saved = { record, items: this.items.all(), givings: this.saved?.givings ?? [] };
	}

	/** Finds out what a refusal means for the work. An answer that was lost on the way is seen by the form it left. */
	private async explain(error: ApiError): Promise<void> {
		this.saving = error.code === 'unreachable' ? 'waiting' : 'idle';
		this.problems = error.problems.map((problem) => ({ ...problem, path: problem.path.replace(/^\/form/, '') }));
		this.failure = error;
		if (error.code !== 'version-conflict' && error.code !== 'id-taken') return;
		try {
			this.meet(await this.read(this.id));
		} catch (other) {
			if (!(other instanceof ApiError)) throw other;
			this.failure = other;
		}
	}

	private meet(details: FormDetails): void {
		this.failure = undefined;
		if (this.form && isSameForm(details.record.form, this.form)) {
			this.saved = details;
			this.baseVersion = details.record.version;
			this.keep();
		} else this.conflict = details;
	}

	private step(from: Step[], to: Step[]): string | undefined {
		const step = from.pop();
		if (!step || !this.form) return undefined;
		to.push({ what: step.what, form: this.form });
		this.lay(step.form);
		return step.what;
	}

	private lay(form: Form): void {
		this.form = form;
		this.problems = this.findNarrow(form);
		this.failure = undefined;
		this.keep();
		this.show();
	}

	/** Gridded keys that the answer grid of the form cannot hold: seen at once, not only when saving. */
	private findNarrow(form: Form): readonly Problem[] {
		return checkForm(form, this.items.find).filter(({ code }) => code === 'grid-too-narrow');
	}

	/** Keeps the work in this browser, or forgets it when the bank has it. */
	private keep(): void {
		if (!this.form) return;
		if (this.isUnsaved) {
			const draft: Draft = { baseVersion: this.baseVersion, form: this.form, changedAt: new Date().toISOString() };
			this.isKept = writeDraft(localStorage, this.id, draft);
		} else dropDraft(localStorage, this.id);
	}

	private async read(id: string): Promise<FormDetails> {
		const details = await callApi('GET /api/forms/{id}', { path: { id } });
		this.items.learn(details.items);
		return details;
	}

	private show(): void {
		this.revision += 1;
		this.host.requestUpdate();
	}
}

/** Puts a new form on this browser's desk and says its id. */
export function startDraft(
	id: string,
	form: Form = startForm('', 'plain-sign-first', formsText.desk.firstSection),
): string {
	writeDraft(localStorage, id, { baseVersion: 0, form, changedAt: new Date().toISOString() });
	return id;
}
