import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { BalanceReport, BalanceRow } from '../../../item-bank/types.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import { renderFormMark } from './form-marks.ts';

const text = formsText.compare;

/** How forms compare, measure by measure: one line each with a mark for every form, and the figures. */
export class ZpBalanceTable extends LitElement {
	static override properties = {
		report: { attribute: false },
		onlyDifferent: { type: Boolean, attribute: 'only-different' },
	};
	declare report: BalanceReport | undefined;
	/** Whether measures that are the same on all forms are left out. */
	declare onlyDifferent: boolean;

	constructor() {
		super();
		this.onlyDifferent = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			.scroll { overflow-x: auto; }
			table { border-collapse: collapse; width: 100%; font-size: 15px; line-height: 24px; }
			th { text-align: left; font-weight: 600; font-size: 14px; line-height: 21px; border-bottom: 2px solid var(--ink); padding: 2px 8px; vertical-align: bottom; }
			td { border-bottom: 1px solid var(--paper-line); padding: 2px 8px; }
			th:first-child, td:first-child { padding-left: 0; }
			.value { text-align: right; min-width: 5em; white-space: nowrap; }
			th.value { min-width: 7em; max-width: 10em; white-space: normal; }
			th svg { flex: none; }
			tr.apart td { font-weight: 600; }
			tr.beyond td { color: var(--pencil); }
			svg { display: block; }
			label { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; }
			.key { display: inline-flex; gap: 6px; align-items: flex-end; text-wrap: balance; }
			.key svg { margin-bottom: 4px; }
			p { margin: 7px 0; }
			@media (max-width: 720px) {
				table { font-size: 14px; line-height: 20px; }
				td, th { padding: 2px 4px; }
				td svg { width: 84px; height: 12px; }
				.value, th.value { min-width: 0; }
				th.value { font-size: 13px; line-height: 17px; }
				.key { flex-direction: column; gap: 0; }
			}
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const { report } = this;
		if (!report) return nothing;
		const hasBands = report.rows.some(({ allowed }) => allowed !== undefined);
		const rows = report.rows.filter(({ difference }) => !this.onlyDifferent || difference !== 0);
		return html`
			<label><input type="checkbox" .checked=${this.onlyDifferent} @change=${() => Object.assign(this, { onlyDifferent: !this.onlyDifferent })} /> ${text.onlyDifferent}</label>
			<div class="scroll" tabindex="0" role="group" aria-label=${text.title}>
			<table>
				<thead><tr>
					<th scope="col">${text.measure}</th><th scope="col"><span class="spoken">${text.line}</span></th>
					${report.forms.map((title, index) => html`<th scope="col" class="value"><span class="key"><svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">${renderFormMark(index, 6, 6)}</svg>${title}</span></th>`)}
					<th scope="col" class="value">${text.apart}</th>${hasBands ? html`<th scope="col" class="value">${text.allowed}</th>` : nothing}
				</tr></thead>
				<tbody>
					${rows.map((row) => renderRow(row, scaleOf(row, report), hasBands))}
					<tr><td>${text.representation}</td><td>${renderMarks(report.representation, 1)}</td>${report.representation.map((value) => html`<td class="value">${value.toFixed(2)}</td>`)}<td></td>${hasBands ? html`<td></td>` : nothing}</tr>
				</tbody>
			</table>
			</div>
			<p>${text.shared(report.shared)} ${text.caution}</p>
		`;
	}
}

function renderRow({ label, values, difference, allowed }: BalanceRow, to: number, hasBands: boolean): TemplateResult {
	const isBeyond = allowed !== undefined && difference > allowed;
	return html`<tr class="${difference === 0 ? '' : 'apart'} ${isBeyond ? 'beyond' : ''}">
		<td>${label.replace(/(?<=[a-z])-(?=[a-z])/g, ' ')}</td>
		<td>${renderMarks(values, to)}</td>
		${values.map((value) => html`<td class="value">${words.figure(value)}</td>`)}
		<td class="value">${difference === 0 ? text.same : words.figure(difference)}</td>
		${hasBands ? html`<td class="value soft">${allowed === undefined ? nothing : words.figure(allowed)}</td>` : nothing}
	</tr>`;
}

/** Where the line of a row ends: counts of one group share a scale, so that their lines can be compared. */
function scaleOf({ group, values }: BalanceRow, { rows }: BalanceReport): number {
	if (group === 'difficulty' || group === 'spread') return Math.max(10, ...values);
	return Math.max(...rows.filter((row) => row.group === group).flatMap((row) => row.values));
}

/** A line from 0 with one mark a form; marks at one place stay apart by their shapes. */
function renderMarks(values: readonly number[], most: number): TemplateResult {
	const to = Math.max(most, 1);
	const place = (value: number): number => Math.round((8 + (value / to) * 124) * 10) / 10;
	const ends = values.map(place);
	return html`<svg viewBox="0 0 140 20" width="140" height="20" aria-hidden="true">
		<path d="M4 10H136M8 7v6M132 7v6" stroke="var(--rule)" fill="none" />
		<path d="M${Math.min(...ends)} 10H${Math.max(...ends)}" stroke="var(--ink)" stroke-width="3" />
		${values.map((value, index) => renderFormMark(index, place(value), 10))}
	</svg>`;
}

customElements.define('zp-balance-table', ZpBalanceTable);
