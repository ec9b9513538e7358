import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { labelPlace } from '../../../item-bank/forms/answer-places.ts';
import type { StudentRecord } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { readingText } from '../../messages/reading.ts';
import { studentText as text } from '../../messages/student.ts';
import { words } from '../../messages/words.ts';
import { writeStudentCsv } from '../../results/student-csv.ts';
import { saveFile } from '../../save-file.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import { resultsStyles } from './results-styles.ts';
import './zp-purge-panel.ts';

type Sat = StudentRecord['sittings'][number];

/** Everything the bank holds about one student code: shown, exported, deleted. */
export class ZpStudentRecord extends LitElement {
	static override properties = {
		code: {},
		record: { state: true },
		forms: { state: true },
		fault: { state: true },
		failure: { state: true },
		isBusy: { state: true },
		isGone: { state: true },
	};
	/** The code looked at; empty while none is. */
	declare code: string;
	declare private record: StudentRecord | undefined;
	declare private forms: ReadonlyMap<string, string>;
	declare private fault: string | undefined;
	declare private failure: string | undefined;
	declare private isBusy: boolean;
	/** Deleted a moment ago; only what was reached is told. */
	declare private isGone: boolean;

	constructor() {
		super();
		this.code = '';
		this.forms = new Map();
	}

	static override styles = [
		controlStyles,
		resultsStyles,
		css`
			form { display: flex; flex-wrap: wrap; gap: 10px 14px; align-items: end; }
			label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
			td.raw { font-family: var(--serif); white-space: pre-wrap; overflow-wrap: anywhere; max-width: 42ch; }
		`,
	];

	protected override willUpdate(changed: PropertyValues): void {
		if (changed.has('code')) void this.load();
	}

	private async load(): Promise<void> {
		const { code } = this;
		this.record = undefined;
		this.isGone = false;
		this.fault = undefined;
		this.failure = undefined;
		if (code === '') return;
		this.isBusy = true;
		try {
			const [record, forms] = await Promise.all([
				callApi('GET /api/students/{code}', { path: { code } }),
				callApi('GET /api/forms'),
			]);
			this.forms = new Map(forms.map(({ id, title }) => [id, title]));
			if (code === this.code) this.record = record;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			if (error.code === 'not-found') this.fault = text.nothing(code);
			else this.failure = error.message;
		} finally {
			this.isBusy = false;
		}
	}

	private submit(event: SubmitEvent): void {
		event.preventDefault();
		const typed = String(new FormData(event.target as HTMLFormElement).get('code') ?? '').trim();
		const code = typed.toUpperCase();
		if (/^[A-Z0-9][A-Z0-9-]{1,23}$/.test(code)) goTo(printAddress('sittings', { view: 'student', code }, 'new'));
		else this.fault = text.needCode(typed);
	}

	protected override render(): TemplateResult {
		const { record, fault, failure } = this;
		return html`<a class="back" href=${printAddress('sittings')}>${text.all}</a>
			<h2 tabindex="-1">${text.title}</h2>
			<p>${text.lead}</p>
			<form novalidate @submit=${(event: SubmitEvent) => this.submit(event)}>
				<label>${text.code}
					<input type="text" name="code" size="14" autocomplete="off" autocapitalize="characters" .value=${this.code} aria-invalid=${fault !== undefined} aria-describedby="code-fault" />
				</label>
				<button class="primary">${text.show}</button>
			</form>
			<p class="fault" id="code-fault" aria-live="polite">${fault ?? ''}</p>
			${failure === undefined ? nothing : html`<div class="failure" role="alert"><p>${failure}</p><button @click=${() => void this.load()}>${words.frame.again}</button></div>`}
			${this.isBusy ? html`<zp-wait></zp-wait>` : nothing}
			${record ? this.renderRecord(record) : nothing}`;
	}

	private renderRecord(record: StudentRecord): TemplateResult {
		const { code, groups, sittings } = record;
		const answers = sittings.reduce((count, { answers: own }) => count + own.length, 0);
		const shown = html`<p>${text.groups(groups.map(({ name }) => name))} ${sittings.length === 0 ? text.noSittings : text.caution}</p>
			${sittings.map((sat) => this.renderSitting(sat))}
			<h3>${text.export}</h3>
			<p>${text.exportNote}</p>
			<div class="acts">
				<button @click=${() => saveFile(`${code}.json`, `${JSON.stringify(record, undefined, '\t')}\n`, 'application/json')}>${text.asJson}</button>
				<button @click=${() => saveFile(`${code}.csv`, writeStudentCsv(record), 'text/csv')}>${text.asCsv}</button>
			</div>`;
		return html`${this.isGone ? nothing : shown}
			<zp-purge-panel .what=${code} .lead=${text.purgeLead(code, sittings.length, answers)}
				.purge=${(order: { confirm: string }) => callApi('POST /api/students/{code}/purge', { path: { code }, body: order })}
				@purged=${() => Object.assign(this, { isGone: true })}></zp-purge-panel>`;
	}

	private renderSitting({ id, sitting, answers }: Sat): TemplateResult {
		const form = text.sitting(this.forms.get(sitting.form) ?? sitting.form, sitting.date);
		const scores = answers.map((answer) => answer.scores.at(-1)?.score);
		const sum = (field: 'points' | 'maximum'): number => scores.reduce((all, score) => all + (score?.[field] ?? 0), 0);
		const times = Math.max(0, ...answers.map((answer) => answer.scores.length));
		const { columns } = text;
		return html`<h3>${form}</h3>
			<p>${text.earned(sum('points'), sum('maximum'), answers.length)} ${times > 1 ? text.rescored(times) : nothing}
				<a href=${printAddress('sittings', { view: 'entry' }, id)}>${readingText.next.entry}</a></p>
			<div class="wide" tabindex="0" role="region" aria-label=${text.table(form)}>
				<table>
					<caption class="spoken">${text.table(form)}</caption>
					<thead><tr><th scope="col" class="count">${columns.place}</th><th scope="col">${columns.raw}</th><th scope="col">${columns.state}</th><th scope="col">${columns.points}</th><th scope="col">${columns.ratings}</th></tr></thead>
					<tbody>${answers.map(({ position, part, raw, ratings }, index) => {
						const score = scores[index];
						return html`<tr>
							<th scope="row" class="count">${labelPlace(position, part)}</th>
							<td class="raw">${raw}</td>
							<td>${readingText.states[score?.state ?? ''] ?? ''}</td>
							<td>${score ? text.of(score.points, score.maximum) : ''}</td>
							<td>${ratings.map(({ reader, points }) => text.readerGave(text.reader[reader] ?? reader, points)).join(', ')}</td>
						</tr>`;
					})}</tbody>
				</table>
			</div>`;
	}
}

customElements.define('zp-student-record', ZpStudentRecord);
