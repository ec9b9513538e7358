import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { FormSummary, GroupEntry, PurgeOrder, SittingEntry } from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';
import { ApiError, bankFoundEvent } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { controlStyles } from '../elements/control-styles.ts';
import '../elements/results/zp-read-file.ts';
import '../elements/zp-wait.ts';
import { inText } from '../messages/results-in.ts';
import { sittingText } from '../messages/sittings.ts';
import { studentText } from '../messages/student.ts';
import { words } from '../messages/words.ts';

const reports = ['pack', 'coverage', 'items', 'form', 'patterns'] as const;

/** Which class sat which form when, with the ways to what the responses show; below it, the pages where responses come in. */
export class ZpSittingsPage extends LitElement {
	static override properties = {
		sittingId: { attribute: 'sitting-id' },
		query: { attribute: false },
		sittings: { state: true },
		failure: { state: true },
		gone: { state: true },
	};
	/** Id of a sitting; "new" where responses come in; empty for the list. */
	declare sittingId: string;
	declare query: URLSearchParams;
	declare private sittings: readonly SittingEntry[] | undefined;
	declare private failure: string | undefined;
	/** Id of a sitting deleted a moment ago; only what was reached is told. */
	declare private gone: string | undefined;
	private forms: readonly FormSummary[] = [];
	private groups: readonly GroupEntry[] = [];
	private shown = '';
	private readonly read = (): void => void this.load();

	constructor() {
		super();
		this.sittingId = '';
		this.query = new URLSearchParams();
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			.list { padding: 21px 28px; max-width: 1100px; }
			.sheet { max-width: 1310px; }
			.begin { display: flex; flex-wrap: wrap; gap: 7px 14px; margin: 0 0 14px; }
			h2 { font-size: 20px; line-height: 28px; margin-bottom: 7px; }
			.wide { overflow-x: auto; position: relative; }
			table { border-collapse: collapse; width: 100%; }
			th, td { text-align: left; font-weight: 400; padding: 3px 14px 3px 0; border-bottom: 1px solid var(--paper-line); vertical-align: baseline; }
			thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); }
			.count { text-align: right; }
			tbody th { white-space: nowrap; }
			.ways { white-space: nowrap; }
			.ways a + a { margin-left: 14px; }
			ul { list-style: none; display: flex; flex-wrap: wrap; gap: 0 14px; margin: 0; padding: 0; }
			p { margin: 14px 0 0; }
			code { font-size: 15px; }
			@media (max-width: 720px) {
				.list { padding: 14px; }
				thead { display: none; }
				tbody tr { display: flex; flex-wrap: wrap; gap: 0 14px; padding: 7px 0; border-bottom: 1px solid var(--paper-line); }
				th, td { border: 0; padding: 0; }
				.count::after { content: ' ' attr(data-unit); }
				.ways { width: 100%; }
			}
			@media (pointer: coarse) { .ways a, li a { display: inline-block; padding: 8px 0; } }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener(bankFoundEvent, this.read);
		void this.load();
	}

	override disconnectedCallback(): void {
		window.removeEventListener(bankFoundEvent, this.read);
		super.disconnectedCallback();
	}

	private async load(): Promise<void> {
		try {
			const [sittings, forms, groups] = await Promise.all([
				callApi('GET /api/sittings'),
				callApi('GET /api/forms'),
				callApi('GET /api/groups'),
			]);
			Object.assign(this, { sittings, forms, groups, failure: undefined });
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override updated(changed: PropertyValues): void {
		const isStep = (changed.has('query') || changed.has('sittingId')) && changed.get('query') !== undefined;
		const { sittingId, query } = this;
		const view = `${sittingId} ${query.get('view') ?? ''}`;
		if (isStep && view !== this.shown && sittingId !== 'new') void this.load();
		this.shown = view;
	}

	protected override render(): TemplateResult {
		return html`${this.sittingId === '' ? this.renderList() : this.renderView()}`;
	}

	private renderView(): TemplateResult {
		const { sittingId, query } = this;
		const view = query.get('view');
		if (sittingId === 'new' && view === 'student') {
			void import('../elements/results/zp-student-record.ts');
			return html`<zp-student-record .code=${query.get('code') ?? ''}></zp-student-record>`;
		}
		if (sittingId === 'new') return html`<zp-read-file .query=${query}></zp-read-file>`;
		if (view === 'scoring') {
			void import('../elements/results/zp-score-explanations.ts');
			return html`<zp-score-explanations .sitting=${sittingId}></zp-score-explanations>`;
		}
		const entry = this.sittings?.find((each) => each.id === sittingId);
		if (entry) return this.renderEntry(entry);
		if (!this.sittings && this.failure === undefined) return html`<zp-wait></zp-wait>`;
		return html`<div class="list"><h2>${sittingText.none}</h2><p>${this.failure ?? ''} <a href=${printAddress('sittings')}>${inText.toSittings}</a></p></div>`;
	}

	private renderEntry(entry: SittingEntry): TemplateResult {
		void import('../elements/results/zp-entry-grid.ts');
		void import('../elements/results/zp-purge-panel.ts');
		void import('../elements/results/zp-rescore-panel.ts');
		const path = { id: entry.id };
		const { form, group } = this.namesOf(entry);
		return html`<div class="list sheet"><h2>${inText.entry.title(group, form, entry.sitting.date)}</h2>
			<p class="ways"><a href=${printAddress('sittings')}>${inText.toSittings}</a> <a href=${printAddress('reports', { sitting: entry.id }, 'class')}>${inText.toReports}</a>
				<a href=${printAddress('sittings', { view: 'scoring' }, entry.id)}>${inText.toScoring}</a></p>
			${this.gone === entry.id ? nothing : html`<zp-entry-grid sitting=${entry.id}></zp-entry-grid>`}
			<zp-rescore-panel .entry=${entry} newest=${this.forms.find(({ id }) => id === entry.sitting.form)?.version ?? 1} @rescored=${this.read}></zp-rescore-panel>
			<zp-purge-panel .what=${entry.id} .lead=${studentText.purgeSittingLead(entry.students, entry.answers)}
				.purge=${(order: PurgeOrder) => callApi('POST /api/sittings/{id}/purge', { path, body: order })}
				@purged=${() => Object.assign(this, { gone: entry.id })}></zp-purge-panel></div>`;
	}

	private namesOf({ sitting }: SittingEntry): { readonly form: string; readonly group: string } {
		return {
			form: this.forms.find((each) => each.id === sitting.form)?.title ?? sitting.form,
			group: this.groups.find((each) => each.id === sitting.group)?.group.name ?? sitting.group,
		};
	}

	private renderList(): TemplateResult {
		return html`<div class="list"><h2>${sittingText.title}</h2>
			<p class="begin"><a class="button" href=${printAddress('sittings', {}, 'new')}>${sittingText.readFile}</a>
				<a class="button" href=${printAddress('sittings', { view: 'student' }, 'new')}>${sittingText.student}</a></p>
			${this.failure === undefined ? nothing : html`<div class="failure" role="alert"><p>${this.failure}</p><button @click=${this.read}>${words.frame.again}</button></div>`}
			${this.sittings ? this.renderSittings(this.sittings) : this.failure === undefined ? html`<zp-wait></zp-wait>` : nothing}</div>`;
	}

	private renderSittings(sittings: readonly SittingEntry[]): TemplateResult {
		void import('../elements/results/zp-hand-sitting.ts');
		const byHand = html`<zp-hand-sitting .forms=${this.forms} .groups=${this.groups}></zp-hand-sitting>`;
		if (sittings.length === 0)
			return html`<p><strong>${sittingText.empty}.</strong> ${sittingText.emptyAdvice}</p>${byHand}`;
		const { columns } = sittingText;
		return html`
			<div class="wide">
				<table>
					<caption class="spoken">${sittingText.table}</caption>
					<thead>
						<tr>
							<th scope="col">${columns.day}</th>
							<th scope="col">${columns.group}</th>
							<th scope="col">${columns.form}</th>
							<th scope="col" class="count">${columns.students}</th>
							<th scope="col" class="count">${columns.answers}</th>
							<th scope="col">${columns.more}</th>
						</tr>
					</thead>
					<tbody>${sittings.map((entry) => this.renderRow(entry))}</tbody>
				</table>
			</div>
			<p><strong>${sittingText.all}</strong></p>
			<ul>${reports.map((kind) => html`<li><a href=${printAddress('reports', {}, kind)}>${sittingText.allKinds[kind]}</a></li>`)}</ul>
			<p class="soft">${sittingText.shared} ${words.board.weighty}</p>
			${byHand}
		`;
	}

	private renderRow(entry: SittingEntry): TemplateResult {
		const { id, sitting, students, answers, unrated } = entry;
		const { form, group } = this.namesOf(entry);
		return html`<tr>
			<th scope="row">${sitting.date}</th>
			<td>${group}${sitting.simulated === true ? html` <span class="soft">(${sittingText.simulated})</span>` : nothing}</td>
			<td><a href=${printAddress('forms', {}, sitting.form)}>${form}</a></td>
			<td class="count" data-unit=${sittingText.columns.students.toLowerCase()}>${words.figure(students)}</td>
			<td class="count" data-unit=${sittingText.columns.answers.toLowerCase()}>${words.figure(answers)}${unrated > 0 ? html` <a class="short" href=${printAddress('sittings', { view: 'scoring' }, id)}>${sittingText.unrated(unrated)}</a>` : nothing}</td>
			<td class="ways">
				<a href=${printAddress('board', { lens: 'evidence', sitting: id })} aria-label=${sittingText.onBoardOf(group, sitting.date)}>${sittingText.onBoard}</a>
				<a href=${printAddress('reports', { sitting: id }, 'class')} aria-label=${sittingText.classReportOf(group, sitting.date)}>${sittingText.classReport}</a>
				<a href=${printAddress('sittings', { view: 'entry' }, id)} aria-label=${sittingText.responsesOf(group, sitting.date)}>${sittingText.responses}</a>
			</td>
		</tr>`;
	}
}

customElements.define('zp-sittings-page', ZpSittingsPage);
