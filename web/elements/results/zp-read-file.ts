import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { listAnswerPlaces } from '../../../item-bank/forms/answer-places.ts';
import type {
	FormSummary,
	GroupEntry,
	ReadingOrder,
	ReadingPreview,
	ReadingReport,
	ResponseMapping,
} from '../../../item-bank/types.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { inText } from '../../messages/results-in.ts';
import {
	type ColumnChoice,
	type ColumnChoices,
	choicesOf,
	chooseColumn,
	listChoices,
	mappingOf,
	missingChoice,
	readCodeLines,
} from '../../results-in/column-choices.ts';
import { encodeFile, mostBytes } from '../../results-in/encode-file.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import { optionLine } from './option-line.ts';
import { renderColumn, renderPreviewRows } from './preview-rows.ts';
import { readFileStyles } from './read-file-styles.ts';
import { renderReadingOptions } from './reading-options.ts';
import './zp-reading-report.ts';

const text = inText.file;
/** Bytes of the beginning of a file that a preview looks at. */
const beginning = 262_144;

/** A file of responses into sittings: what it is, what each column is, how it reads, then trying or reading it. */
export class ZpReadFile extends LitElement {
	static override properties = {
		forms: { attribute: false },
		groups: { attribute: false },
		file: { state: true },
		fileProblem: { state: true },
		form: { state: true },
		places: { state: true },
		answerMap: { state: true },
		preview: { state: true },
		choices: { state: true },
		layout: { state: true },
		options: { state: true },
		report: { state: true },
		failure: { state: true },
		busy: { state: true },
		onto: { state: true },
	};
	declare forms: readonly FormSummary[];
	declare groups: readonly GroupEntry[];
	declare private file: File | undefined;
	declare private fileProblem: string | undefined;
	declare private form: string | undefined;
	/** Labels of the places of the form. */
	declare private places: readonly string[];
	declare private answerMap: string | undefined;
	declare private preview: ReadingPreview | undefined;
	declare private choices: ColumnChoices;
	declare private layout: 'wide' | 'long';
	/** What a mapping says beside its columns. */
	declare private options: Partial<ResponseMapping>;
	declare private report: ReadingReport | undefined;
	declare private failure: ApiError | undefined;
	declare private busy: 'preview' | 'try' | 'read' | undefined;
	declare private onto: 'nothing' | 'add' | 'replace';
	private asked = 0;

	constructor() {
		super();
		this.forms = [];
		this.groups = [];
		this.places = [];
		this.choices = new Map();
		this.layout = 'wide';
		this.options = {};
		this.onto = 'nothing';
	}

	static override styles = [controlStyles, css`:host { display: block; }`, readFileStyles];

	protected override render(): TemplateResult {
		const form = this.form ?? this.forms[0]?.id;
		return html`
			<p class="soft">${text.advice}</p>
			<section class="asked" @dragover=${(event: DragEvent) => event.preventDefault()} @drop=${(event: DragEvent) => this.drop(event)}>
				<label>${text.form}<select @change=${(event: Event) => this.chooseForm(valueIn(event))}>${this.forms.map(({ id, title }) => html`<option value=${id} ?selected=${id === form}>${title}</option>`)}</select></label>
				<label>${text.file}<input type="file" accept=".csv,.tsv,.txt,text/csv" aria-describedby="file-problem" aria-invalid=${this.fileProblem === undefined ? 'false' : 'true'} @change=${(event: Event) => this.chooseFile(fileIn(event))}></label>
				<label>${text.map}<input type="file" accept=".csv" @change=${(event: Event) => void this.chooseMap(fileIn(event))}></label>
				<p id="file-problem" class=${this.fileProblem === undefined ? 'soft' : 'short'}>${this.fileProblem ?? text.drop}</p>
			</section>
			${this.renderFailure()}
			${this.busy === 'preview' && !this.preview ? html`<zp-wait></zp-wait>` : nothing}
			${this.preview ? this.renderPreview(this.preview) : nothing}
			${this.report ? html`<zp-reading-report .report=${this.report} .groups=${this.groups}></zp-reading-report>` : nothing}
		`;
	}

	private renderFailure(): TemplateResult | typeof nothing {
		const { failure } = this;
		if (!failure) return nothing;
		return html`<div class="failure" role="alert"><p>${failure.message}</p>${failure.problems.length > 1 ? html`<ul>${failure.problems.slice(0, 10).map(({ message }) => html`<li>${message}</li>`)}</ul>` : nothing}</div>`;
	}

	private renderPreview(preview: ReadingPreview): TemplateResult {
		const missing = missingChoice(this.choices, this.layout);
		const { delimiters } = text;
		return html`
			<section>
				<h3>${text.columns}</h3>
				<p>${text.understood(preview.encoding, delimiters[preview.delimiter] ?? preview.delimiter)}</p>
				${optionLine(text.layout, text.layouts, this.layout, (layout) => this.chooseLayout(layout))}
				${optionLine(text.holds, text.holdings, this.options.holds ?? 'responses', (holds) => this.option({ holds }))}
				<div class="wide" tabindex="0" role="region" aria-label=${text.columns}><table>
					<thead><tr><th scope="col">${text.column}</th><th scope="col">${text.takenAs}</th></tr></thead>
					<tbody>${preview.columns.map((column) => renderColumn(column, this.choices.get(column.number) ?? 'discarded', listChoices(this.layout, this.places), (choice) => this.chooseColumn(column.number, choice)))}</tbody>
				</table></div>
				${renderReadingOptions(this.options, (change) => this.option(change))}
				${missing === undefined ? nothing : html`<p class="short" role="status">${text.missing[missing]}</p>`}
				${missing === undefined && preview.problems.length > 0 ? html`<ul class="failure">${preview.problems.map(({ message }) => html`<li>${message}</li>`)}</ul>` : nothing}
			</section>
			${preview.rows.length > 0 ? renderPreviewRows(preview) : nothing}
			${missing === undefined ? this.renderSitting() : nothing}
		`;
	}

	private renderSitting(): TemplateResult {
		const isGroupInFile = [...this.choices.values()].includes('group');
		const modes = Object.entries(text.modes);
		return html`<section><h3>${text.sitting}</h3>
			<form class="asked" @submit=${(event: SubmitEvent) => this.submit(event)}>
				<label>${text.group}${isGroupInFile ? html`<input type="text" disabled value=${text.groupInFile}>` : html`<select name="group">${this.groups.map(({ id, group }) => html`<option value=${id}>${group.name}</option>`)}</select>`}</label>
				<label>${text.date}<input type="date" name="date" required></label>
				<label>${text.mode}<select name="mode">${modes.map(([mode, name]) => html`<option value=${mode}>${name}</option>`)}</select></label>
				<div class="whole">${optionLine(text.onto, text.ontos, this.onto, (onto) => {
					this.onto = onto;
				})}</div>
				<p class="whole ways"><button name="try" ?disabled=${this.busy !== undefined}>${text.try}</button>
				<button class="primary" name="read" ?disabled=${this.busy !== undefined}>${text.read}</button>
				${this.busy === 'try' || this.busy === 'read' ? html`<zp-wait></zp-wait>` : nothing}</p>
			</form></section>`;
	}

	private drop(event: DragEvent): void {
		event.preventDefault();
		this.chooseFile(event.dataTransfer?.files[0]);
	}

	private chooseFile(file: File | undefined): void {
		if (!file) return;
		const megabytes = (file.size / 2 ** 20).toFixed(0);
		this.fileProblem = file.size > mostBytes ? text.tooLarge(megabytes) : file.size === 0 ? text.empty : undefined;
		Object.assign(this, {
			file: this.fileProblem === undefined ? file : undefined,
			preview: undefined,
			report: undefined,
			options: {},
		});
		if (this.fileProblem === undefined) void this.look();
	}

	private chooseForm(form: string): void {
		Object.assign(this, { form, preview: undefined, report: undefined });
		void this.look();
	}

	private async chooseMap(file: File | undefined): Promise<void> {
		this.answerMap = await file?.text();
		this.preview = undefined;
		await this.look();
	}

	private chooseColumn(number: number, choice: ColumnChoice): void {
		this.choices = chooseColumn(this.choices, number, choice);
		void this.look(true);
	}

	private chooseLayout(layout: 'wide' | 'long'): void {
		this.layout = layout;
		this.choices = new Map(
			[...this.choices].map(([number, choice]) => [
				number,
				choice === 'student' || choice === 'group' ? choice : 'discarded',
			]),
		);
		void this.look(true);
	}

	private option(change: Partial<ResponseMapping>): void {
		this.options = { ...this.options, ...change };
		void this.look(true);
	}

	private get mapping(): ResponseMapping {
		return mappingOf(this.choices, this.layout, this.options);
	}

	/** Has the bank look at the beginning of the file: by itself at first, then by the mapping that was chosen. */
	private async look(isMapped = false): Promise<void> {
		const form = this.form ?? this.forms[0]?.id;
		if (!this.file || form === undefined) return;
		this.asked += 1;
		const turn = this.asked;
		this.report = undefined;
		if (isMapped && missingChoice(this.choices, this.layout) !== undefined) return;
		this.busy = 'preview';
		this.failure = undefined;
		try {
			const content = await encodeFile(this.file.slice(0, beginning));
			const [details, preview] = await Promise.all([
				callApi('GET /api/forms/{id}', { path: { id: form } }),
				callApi('POST /api/responses/preview', {
					body: {
						form,
						content,
						...(isMapped ? { mapping: this.mapping } : {}),
						...(this.answerMap === undefined ? {} : { answerMap: this.answerMap }),
					},
				}),
			]);
			if (turn !== this.asked) return;
			this.places = listAnswerPlaces(details.record.form, details.items).map(({ label }) => label);
			this.preview = preview;
			if (!isMapped) {
				this.choices = choicesOf(preview);
				this.layout = preview.mapping.layout ?? 'wide';
			}
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			if (turn === this.asked) this.failure = error;
		} finally {
			if (turn === this.asked) this.busy = undefined;
		}
	}

	private submit(event: SubmitEvent): void {
		event.preventDefault();
		const fields = new FormData(event.target as HTMLFormElement);
		const isTrial = (event.submitter as HTMLButtonElement | null)?.name !== 'read';
		void this.read(String(fields.get('group') ?? ''), String(fields.get('date')), String(fields.get('mode')), isTrial);
	}

	private async read(group: string, date: string, mode: string, dryRun: boolean): Promise<void> {
		const form = this.form ?? this.forms[0]?.id;
		if (!this.file || form === undefined) return;
		this.busy = dryRun ? 'try' : 'read';
		this.failure = undefined;
		this.report = undefined;
		try {
			const codes = readCodeLines(this.renderRoot.querySelector<HTMLTextAreaElement>('#codes')?.value ?? '');
			const body: ReadingOrder = {
				form,
				date,
				mode: mode as ReadingOrder['mode'],
				content: await encodeFile(this.file),
				mapping: this.mapping,
				onto: this.onto,
				dryRun,
				...(group === '' ? {} : { group }),
				...(this.answerMap === undefined ? {} : { answerMap: this.answerMap }),
				...(codes.length === 0 ? {} : { codes }),
			};
			this.report = await callApi('POST /api/responses/read', { body });
			await this.updateComplete;
			this.renderRoot.querySelector<HTMLElement>('zp-reading-report')?.focus();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error;
		} finally {
			this.busy = undefined;
		}
	}
}

function valueIn(event: Event): string {
	const { target } = event;
	return target instanceof HTMLSelectElement || target instanceof HTMLInputElement ? target.value : '';
}

function fileIn(event: Event): File | undefined {
	return event.target instanceof HTMLInputElement ? event.target.files?.[0] : undefined;
}

customElements.define('zp-read-file', ZpReadFile);
