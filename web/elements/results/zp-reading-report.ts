import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { GroupEntry, ReadingReport, RejectedRow } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { inText } from '../../messages/results-in.ts';
import { words } from '../../messages/words.ts';
import { writeRejected } from '../../results-in/write-rejected.ts';
import { saveFile } from '../../save-file.ts';
import { controlStyles } from '../control-styles.ts';
import { readFileStyles } from './read-file-styles.ts';

const text = inText.file;
/** Rows listed; all of them are in the file. */
const mostListed = 50;

/** What reading a file came to, or would come to. */
export class ZpReadingReport extends LitElement {
	static override properties = { report: { attribute: false }, groups: { attribute: false } };
	declare report: ReadingReport | undefined;
	declare groups: readonly GroupEntry[];

	constructor() {
		super();
		this.groups = [];
		this.tabIndex = -1;
	}

	static override styles = [controlStyles, readFileStyles, css`:host { display: block; }`];

	protected override render(): TemplateResult | typeof nothing {
		const { report } = this;
		if (!report) return nothing;
		const states = Object.entries(report.states).filter(([, count]) => count > 0);
		return html`<section aria-live="polite">
			<h3>${report.dryRun ? text.tried : text.done}</h3>
			<p>${text.counts(report.rows, report.students, report.answers)}</p>
			${states.length > 0 ? html`<p>${states.map(([state, count]) => `${words.figure(count)} ${text.states[state] ?? state}`).join(', ')}.</p>` : nothing}
			${report.unchanged > 0 ? html`<p>${text.unchanged(report.unchanged)}</p>` : nothing}
			${report.absent.length > 0 ? html`<p>${text.absent(report.absent)}</p>` : nothing}
			${report.notes.map((note) => html`<p>${note}</p>`)}
			${report.rejected.length > 0 ? renderRejected(report.rejected) : nothing}
			${report.dryRun ? nothing : html`<ul>${report.sittings.map(({ id, group }) => (id === undefined ? nothing : html`<li><a href=${printAddress('sittings', {}, id)}>${text.open(this.groups.find((each) => each.id === group)?.group.name ?? group)}</a> <a href=${printAddress('reports', { sitting: id }, 'class')}>${inText.toReports}</a></li>`))}</ul><p class="soft">${text.takeBack}</p>`}
		</section>`;
	}
}

function renderRejected(rejected: readonly RejectedRow[]): TemplateResult {
	const save = (): void => saveFile(text.rejectedFile, writeRejected(rejected), 'text/csv');
	return html`<div class="failure"><p><strong>${text.rejected(rejected.length)}</strong> <button @click=${save}>${text.save}</button></p>
		<div class="wide" tabindex="0" role="region" aria-label=${text.rejected(rejected.length)}><table>
			<thead><tr><th scope="col">${text.line}</th><th scope="col">${text.reason}</th></tr></thead>
			<tbody>${rejected.slice(0, mostListed).map(({ line, message }) => html`<tr><th scope="row">${line}</th><td>${message}</td></tr>`)}</tbody>
		</table></div></div>`;
}

customElements.define('zp-reading-report', ZpReadingReport);
