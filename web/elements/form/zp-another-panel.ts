import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { BuildResult, Form } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { newFormId, writePlan } from '../../forms/draft-storage.ts';
import { type FormWork, startDraft } from '../../forms/form-work.ts';
import { makeRetake } from '../../forms/retake.ts';
import { formsText } from '../../messages/forms.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';

const text = formsText.another;

/** Makes another form from one: a copy, one with like items, or a retake. The new form is laid on the desk, unsaved. */
export class ZpAnotherPanel extends LitElement {
	static override properties = {
		work: { attribute: false },
		busy: { state: true },
		failure: { state: true },
		lines: { state: true },
		progress: { state: true },
	};
	declare work: FormWork;
	/** The way that is being worked on. */
	declare private busy: string | undefined;
	declare private failure: string | undefined;
	declare private lines: readonly string[];
	declare private progress: string;

	constructor() {
		super();
		Object.assign(this, { lines: [], progress: '' });
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			ul { list-style: none; margin: 0; padding: 0; }
			li.way { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 14px; align-items: center; border-bottom: 1px solid var(--paper-line); padding: 10px 0; }
			li.way p { margin: 0; grid-column: 1; }
			strong { font-weight: 600; }
		`,
	];

	protected override render(): TemplateResult {
		const isSaved = this.work.saved !== undefined;
		return html`
			<ul>
				${this.renderWay('copy', text.copy, text.copyMeaning, true, () => this.copy())}
				${this.renderWay('like', text.like, text.likeMeaning, isSaved, () => this.build())}
				${this.renderWay('retake', text.retake, text.retakeMeaning, isSaved, () => this.retake())}
			</ul>
			<div role="status">${this.progress}</div>
			<div role="alert">
				${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}
				${this.lines.length === 0 ? nothing : html`<p>${text.impossible}</p><ul>${this.lines.map((line) => html`<li>${line}</li>`)}</ul>`}
			</div>
		`;
	}

	private renderWay(
		way: string,
		title: string,
		meaning: string,
		isPossible: boolean,
		act: () => Promise<void> | void,
	): TemplateResult {
		return html`<li class="way">
			<div><strong id=${way}>${title}</strong><p class="soft">${isPossible ? meaning : formsText.desk.saveFirstNew}</p></div>
			<button aria-label="${text.make}: ${title}" ?disabled=${!isPossible || this.busy !== undefined} @click=${() => void this.attempt(way, act)}>${this.busy === way ? text.making : text.make}</button>
		</li>`;
	}

	private async attempt(way: string, act: () => Promise<void> | void): Promise<void> {
		Object.assign(this, { busy: way, failure: undefined, lines: [], progress: '' });
		try {
			await act();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			Object.assign(this, { busy: undefined, progress: '' });
		}
	}

	private copy(): void {
		const { form } = this.work;
		if (form) layDown({ ...form, title: text.titleOf(form.title) });
	}

	/** New numbers for every item of the saved form that a family can vary. */
	private async retake(): Promise<void> {
		const { saved } = this.work;
		if (!saved) return;
		const { form } = saved.record;
		const { form: retake, stayed } = await makeRetake(form, newFormId(), (done, all) => {
			this.progress = text.progress(done + 1, all);
		});
		if (stayed.length === positionsOf(form).length) this.failure = text.noFamily;
		else layDown({ ...retake, title: text.retakeTitle(form.title) }, text.kept(stayed.length));
	}

	private async build(): Promise<void> {
		const { id, saved } = this.work;
		if (!saved) return;
		const document = await callApi('GET /api/forms/{id}/blueprint', { path: { id } });
		const result: BuildResult = await callApi('POST /api/forms/build', {
			body: { document, count: 1, like: id, titles: [text.titleOf(saved.record.form.title)] },
		});
		const { answer } = result;
		if (answer.kind === 'built' && answer.forms[0]) layDown(answer.forms[0]);
		else if (answer.kind === 'impossible') this.lines = answer.conflict.map(({ requirement }) => requirement);
		else if (answer.kind === 'undecided') this.failure = answer.message;
	}
}

/** Lays a new form on the desk, held against a blueprint where one is named, and goes there. */
export function layDown(form: Form, note = '', plan = ''): void {
	const id = startDraft(newFormId(), form);
	writePlan(localStorage, id, plan);
	goTo(printAddress('forms', {}, id));
	tell(`${text.made(form.title)} ${note}`.trim());
}

customElements.define('zp-another-panel', ZpAnotherPanel);
