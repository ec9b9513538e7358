import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { RegroupingProposal, ReportSection, ReportTable } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { reportText } from '../../messages/reports.ts';
import { isFigureColumn, type RowOrder, sortRows } from '../../report/sort-rows.ts';
import { controlStyles } from '../control-styles.ts';
import './zp-plot.ts';

/** Rows from which on putting a table in another order is worth a button in every heading. */
const longTable = 6;

/** One section of a report: sentences, a plot with its figures behind it, a table, groups with what to use next. */
export class ZpReportSection extends LitElement {
	static override properties = { section: { attribute: false }, order: { state: true } };
	declare section: ReportSection | undefined;
	declare private order: RowOrder | undefined;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			h3 { font-size: 17px; line-height: 28px; border-bottom: 1px solid var(--rule); margin-bottom: 7px; }
			p, li { max-width: 74ch; }
			p { margin: 0 0 7px; }
			.wide { overflow-x: auto; position: relative; margin-bottom: 7px; }
			svg { display: block; height: auto; max-width: none; }
			table { border-collapse: collapse; font-variant-numeric: tabular-nums; font-size: 15px; line-height: 21px; }
			th, td { text-align: left; font-weight: 400; padding: 2px 14px 2px 0; border-bottom: 1px solid var(--paper-line); vertical-align: top; max-width: 44ch; }
			thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); vertical-align: bottom; }
			th button { border: 0; padding: 0; min-height: 24px; font: inherit; text-align: inherit; }
			th button:hover { background: none; text-decoration: underline; text-underline-offset: 3px; }
			th .way { width: 1ch; }
			.figure { text-align: right; white-space: nowrap; }
			.figure button { flex-direction: row-reverse; }
			.groups { list-style: none; margin: 0; padding: 0; display: grid; gap: 14px; }
			.groups > li { border-left: 3px solid var(--rule); padding-left: 12px; }
			h4 { font-size: 16px; line-height: 24px; }
			.next { margin: 0; padding-left: 20px; }
			details { margin-bottom: 7px; }
			@media (max-width: 720px) { th, td { padding-right: 10px; } }
			@media print { th button { display: inline-flex; } .wide { overflow: visible; } details::details-content { content-visibility: visible; } tr { break-inside: avoid; } h3 { break-after: avoid; } }
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const { section } = this;
		if (!section) return nothing;
		const { title, notes, plot, table, proposals = [] } = section;
		return html`
			<h3 id="title" tabindex="-1">${title}</h3>
			${notes.map((note) => html`<p>${note}</p>`)}
			${plot ? html`<div class="wide" tabindex="0" role="region" aria-label=${reportText.scrollPlot(title)}><zp-plot .plot=${plot}></zp-plot></div>` : nothing}
			${proposals.length > 0 ? html`<ul class="groups">${proposals.map(renderProposal)}</ul>` : nothing}
			${table ? (plot || proposals.length > 0 ? html`<details><summary>${reportText.showTable(table.rows.length)}</summary>${this.renderTable(table, title)}</details>` : this.renderTable(table, title)) : nothing}
		`;
	}

	/** Brings the section into view and gives it the focus. */
	show(): void {
		const heading = this.renderRoot.querySelector<HTMLElement>('#title');
		heading?.focus();
		heading?.scrollIntoView({ block: 'start' });
	}

	private renderTable({ headings, rows }: ReportTable, title: string): TemplateResult {
		const figures = headings.map((_, column) => isFigureColumn(rows, column));
		const shown = this.order ? sortRows(rows, this.order) : rows;
		return html`<div class="wide" tabindex="0" role="region" aria-label=${reportText.scroll(title)}>
			<table>
				<caption class="spoken">${title}</caption>
				<thead><tr>${headings.map((heading, column) => this.renderHeading(heading, column, figures[column] === true, rows.length))}</tr></thead>
				<tbody>${shown.map((row) => html`<tr>${row.map((cell, column) => renderCell(cell, column, figures[column] === true))}</tr>`)}</tbody>
			</table>
		</div>`;
	}

	private renderHeading(heading: string, column: number, isFigure: boolean, rows: number): TemplateResult {
		const { order } = this;
		const isOrdered = order?.column === column;
		const sort = isOrdered ? (order.isFalling ? 'descending' : 'ascending') : nothing;
		const sign = isOrdered ? (order.isFalling ? '↓' : '↑') : '';
		return html`<th scope="col" class=${isFigure ? 'figure' : ''} aria-sort=${sort}>${
			rows < longTable
				? heading
				: html`<button title=${reportText.sortBy(heading)} @click=${() => this.sortBy(column, isFigure)}>${heading}<span class="way" aria-hidden="true">${sign}</span></button>`
		}</th>`;
	}

	/** Figures fall first, names rise first; the third press gives the order of the report back. */
	private sortBy(column: number, isFigure: boolean): void {
		const { order } = this;
		if (order?.column !== column) this.order = { column, isFalling: isFigure };
		else this.order = order.isFalling === isFigure ? { column, isFalling: !isFigure } : undefined;
	}
}

function renderCell(cell: string | number | null, column: number, isFigure: boolean): TemplateResult {
	const text =
		cell === null ? html`<span class="soft">${reportText.notGiven}</span>` : String(cell).replace(/^-(?=\d)/, '−');
	if (column === 0) return html`<th scope="row" class=${isFigure ? 'figure' : ''}>${text}</th>`;
	return html`<td class=${isFigure ? 'figure' : ''}>${text}</td>`;
}

function renderProposal({ name, notToldApart, strength, students, ask, next }: RegroupingProposal): TemplateResult {
	return html`<li>
		<h4>${name} <span class="soft">(${reportText.students(students.length)}, ${reportText.strength[strength]})</span></h4>
		<p>${students.join(', ')}</p>
		${notToldApart.length > 0 ? html`<p class="soft">${reportText.notApart(notToldApart)}</p>` : nothing}
		${next.length > 0 ? html`<p>${reportText.next}:</p><ul class="next">${next.map(({ id, name: item, why }) => html`<li><a href=${printAddress('items', {}, id)}>${item}</a> <span class="soft">(${reportText.why[why]})</span></li>`)}</ul>` : nothing}
		${ask.length > 0 ? html`<p>${reportText.ask}: ${ask.join('; ')}</p>` : nothing}
		${next.length === 0 && ask.length === 0 ? html`<p class="soft">${reportText.noNext}</p>` : nothing}
	</li>`;
}

customElements.define('zp-report-section', ZpReportSection);
