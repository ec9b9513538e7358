import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { FormSummary, GroupEntry, Report, SittingEntry } from '../../item-bank/types.ts';
import { goTo, printAddress } from '../address.ts';
import { ApiError, bankFoundEvent } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { controlStyles } from '../elements/control-styles.ts';
import '../elements/report/zp-report-section.ts';
import type { ZpReportSection } from '../elements/report/zp-report-section.ts';
import '../elements/zp-wait.ts';
import { reportText } from '../messages/reports.ts';
import { words } from '../messages/words.ts';
import { type AskedReport, readAsked, reportKinds, writeAsked } from '../report/asked-report.ts';
import { reportPageStyles } from './report-page-styles.ts';

/** A report on screen: what it is on, what it says, and the same as PDF, CSV and on paper. */
export class ZpReportPage extends LitElement {
	static override properties = {
		kind: {},
		query: { attribute: false },
		report: { state: true },
		failure: { state: true },
		choices: { state: true },
		isStale: { state: true },
		cutProblem: { state: true },
	};
	declare kind: string;
	declare query: URLSearchParams;
	declare private report: Report | undefined;
	declare private failure: string | undefined;
	declare private choices: Choices | undefined;
	/** Whether what is shown was asked for before the last change. */
	declare private isStale: boolean;
	declare private cutProblem: string | undefined;
	private underWay: AbortController | undefined;
	private readonly again = (): void => void this.load();

	constructor() {
		super();
		this.kind = '';
		this.query = new URLSearchParams();
		this.isStale = false;
	}

	static override styles = [controlStyles, css`:host { display: block; }`, reportPageStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener(bankFoundEvent, this.again);
	}

	override disconnectedCallback(): void {
		window.removeEventListener(bankFoundEvent, this.again);
		this.underWay?.abort();
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: PropertyValues<this>): void {
		if (changed.has('kind') || changed.has('query')) void this.load();
	}

	private get asked(): AskedReport {
		return readAsked(this.kind, this.query);
	}

	private async load(): Promise<void> {
		this.underWay?.abort();
		const controller = new AbortController();
		this.underWay = controller;
		this.isStale = true;
		this.failure = undefined;
		const { signal } = controller;
		try {
			this.choices ??= await loadChoices(signal);
			const { kind, fields } = this.asked;
			const isAnswerable = this.choices.sittings.length > 0 && (kind !== 'item' || fields.item !== undefined);
			this.report = isAnswerable
				? await callApi('GET /api/reports/{kind}', { path: { kind }, query: fields, signal })
				: undefined;
			this.isStale = false;
		} catch (error) {
			if (signal.aborted) return;
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
			this.report = undefined;
			this.isStale = false;
		}
	}

	private ask(change: Partial<AskedReport['fields']>): void {
		const { kind, fields } = this.asked;
		goTo(writeAsked({ kind, fields: { ...fields, ...change } }));
	}

	protected override render(): TemplateResult {
		const { kind, fields } = this.asked;
		return html`
			<nav class="kinds" aria-label=${reportText.kindsLabel}>
				<ul>${reportKinds.map((each) => html`<li><a href=${writeAsked({ kind: each, fields })} aria-current=${each === kind ? 'page' : nothing}>${reportText.kinds[each]}</a></li>`)}</ul>
			</nav>
			<div class="desk">
				<section class="margin" aria-label=${reportText.asked}>${this.choices ? this.renderAsked(this.choices) : nothing}</section>
				<div class="sheet" aria-busy=${this.isStale ? 'true' : 'false'}>
					${this.failure === undefined ? nothing : html`<div class="failure" role="alert"><p>${this.failure}</p><button @click=${this.again}>${words.frame.again}</button></div>`}
					${this.isStale ? html`<zp-wait></zp-wait>` : nothing}
					${this.renderReport()}
				</div>
			</div>
		`;
	}

	private renderReport(): TemplateResult | typeof nothing {
		const { report, choices } = this;
		if (choices?.sittings.length === 0) {
			return html`<h2>${reportText.empty}</h2><p>${reportText.emptyAdvice} <a href=${printAddress('sittings')}>${reportText.toSittings}</a></p>`;
		}
		const { kind, fields } = this.asked;
		if (!report) {
			const isOpen = kind === 'item' && fields.item === undefined;
			return isOpen ? html`<h2>${reportText.kinds.item}</h2><p>${reportText.chooseItemAdvice}</p>` : nothing;
		}
		return html`
			<h2>${report.title}</h2>
			<ul class="cautions" aria-label=${reportText.cautions}>${report.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
			${report.sections.map((section) => html`<zp-report-section .section=${section}></zp-report-section>`)}
		`;
	}

	private renderAsked(choices: Choices): TemplateResult {
		const { kind, fields } = this.asked;
		const search = new URL(writeAsked({ kind, fields }).replace('#', ''), 'http://x').search;
		return html`
			${this.renderSittings(choices, fields.sitting ?? [])}
			<fieldset><legend>${reportText.copy}</legend>
				${(['shared', 'own'] as const).map((copy) => html`<label class="line"><input type="radio" name="copy" .checked=${(fields.copy ?? 'shared') === copy} @change=${() => this.ask({ copy })}>${reportText.copies[copy]}</label>`)}
			</fieldset>
			${kind === 'item' ? this.renderItems(choices) : nothing}
			${kind === 'items' ? this.renderFocal(choices) : nothing}
			${kind === 'form' || kind === 'compare' || kind === 'pack' ? this.renderCut() : nothing}
			<p class="ways">
				<a class="button" download href="/api/reports/${kind}/pdf${search}">${reportText.pdf}</a>
				<a class="button" download href="/api/reports/${kind}/csv${search}">${reportText.csv}</a>
				<button @click=${() => window.print()}>${reportText.print}</button>
			</p>
			${this.report && this.report.sections.length > 2 ? this.renderContents(this.report) : nothing}
		`;
	}

	private renderSittings({ sittings, groups, forms }: Choices, chosen: readonly string[]): TemplateResult {
		const summary =
			chosen.length === 0
				? reportText.allSittings(sittings.length)
				: reportText.someSittings(chosen.length, sittings.length);
		return html`<details><summary>${reportText.sittings}: ${summary}</summary>
			${sittings.map(({ id, sitting }) => {
				const name = groups.find((each) => each.id === sitting.group)?.group.name ?? sitting.group;
				const form = forms.find((each) => each.id === sitting.form)?.title ?? sitting.form;
				return html`<label class="line"><input type="checkbox" .checked=${chosen.includes(id)} @change=${(event: Event) => this.choose(id, event)}><span>${name}, ${sitting.date}<br><span class="soft">${form}</span></span></label>`;
			})}
			${chosen.length > 0 ? html`<button @click=${() => this.ask({ sitting: [] })}>${reportText.everySitting}</button>` : nothing}
		</details>`;
	}

	private choose(id: string, event: Event): void {
		const { sitting = [] } = this.asked.fields;
		const isOn = event.target instanceof HTMLInputElement && event.target.checked;
		this.ask({ sitting: isOn ? [...sitting, id] : sitting.filter((each) => each !== id) });
	}

	private renderItems({ items, sittings }: Choices): TemplateResult {
		const { item, sitting: chosen = [] } = this.asked.fields;
		const sat = new Set(
			sittings.flatMap(({ id, sitting }) => (chosen.length === 0 || chosen.includes(id) ? sitting.form : [])),
		);
		const shown = items.filter(({ id, forms }) => id === item || forms.some((form) => sat.has(form)));
		return html`<label class="field">${reportText.item}
			<select @change=${(event: Event) => this.ask({ item: chosenValue(event) ?? '' })}>
				<option value="" ?selected=${item === undefined}>${reportText.chooseItem}</option>
				${shown.map(({ id, name }) => html`<option value=${id} ?selected=${id === item}>${name}</option>`)}
			</select>
		</label>`;
	}

	private renderFocal({ groups }: Choices): TemplateResult {
		const [focal] = this.asked.fields.focal ?? [];
		return html`<label class="field">${reportText.focal}
			<select @change=${(event: Event) => this.ask({ focal: chosenValue(event) === undefined ? [] : [chosenValue(event) ?? ''] })}>
				<option value="" ?selected=${focal === undefined}>${reportText.noFocal}</option>
				${groups.map(({ id, group }) => html`<option value=${id} ?selected=${id === focal}>${group.name}</option>`)}
			</select>
		</label>`;
	}

	private renderCut(): TemplateResult {
		const { cut = [] } = this.asked.fields;
		return html`<label class="field">${reportText.cut}
			<input type="text" inputmode="decimal" .value=${cut.join(', ')} aria-describedby="cut-help" aria-invalid=${this.cutProblem === undefined ? 'false' : 'true'} @change=${(event: Event) => this.readCut(event)}>
		</label>
		<p id="cut-help" class=${this.cutProblem === undefined ? 'soft' : 'short'}>${this.cutProblem ?? reportText.cutHelp}</p>`;
	}

	private readCut(event: Event): void {
		const text = (chosenValue(event) ?? '').trim();
		const cut = text === '' ? [] : text.split(/[,;\s]+/).map(Number);
		const isRead = cut.every((each) => each > 0 && each <= 10_000) && cut.length <= 8;
		this.cutProblem = isRead ? undefined : reportText.cutProblem(text);
		if (isRead) this.ask({ cut });
	}

	private renderContents({ sections }: Report): TemplateResult {
		const isWide = window.matchMedia('(width > 900px)').matches;
		return html`<nav class="contents" aria-label=${reportText.contents}><details ?open=${isWide}>
			<summary>${reportText.contents}</summary>
			<ol>${sections.map(({ title }, index) => html`<li><button class="plain" @click=${() => this.showSection(index)}>${title}</button></li>`)}</ol>
		</details></nav>`;
	}

	private showSection(index: number): void {
		this.renderRoot.querySelectorAll<ZpReportSection>('zp-report-section')[index]?.show();
	}
}

interface Choices {
	readonly sittings: readonly SittingEntry[];
	readonly groups: readonly GroupEntry[];
	readonly forms: readonly FormSummary[];
	/** Items on the forms that were sat, by name. */
	readonly items: readonly ReportedItem[];
}

interface ReportedItem {
	readonly id: string;
	readonly name: string;
	/** Ids of the forms it stands on. */
	readonly forms: readonly string[];
}

async function loadChoices(signal: AbortSignal): Promise<Choices> {
	const [sittings, groups, forms] = await Promise.all([
		callApi('GET /api/sittings', { signal }),
		callApi('GET /api/groups', { signal }),
		callApi('GET /api/forms', { signal }),
	]);
	const sat = [...new Set(sittings.map(({ sitting }) => sitting.form))];
	const records = await Promise.all(sat.map((id) => callApi('GET /api/forms/{id}', { path: { id }, signal })));
	const items = new Map<string, ReportedItem>();
	for (const { record, items: placed } of records) {
		for (const { id, item } of placed) {
			const stands = items.get(id)?.forms ?? [];
			items.set(id, { id, name: printItemName(item.name), forms: [...stands, record.id] });
		}
	}
	const sorted = [...items.values()].sort((one, other) => one.name.localeCompare(other.name, 'en', { numeric: true }));
	return { sittings, groups, forms, items: sorted };
}

function chosenValue(event: Event): string | undefined {
	const { target } = event;
	if (!(target instanceof HTMLSelectElement || target instanceof HTMLInputElement)) return undefined;
	return target.value === '' ? undefined : target.value;
}

customElements.define('zp-report-page', ZpReportPage);
