import { html, nothing, type TemplateResult } from 'lit';
import type { ReadingReport } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { writeCsv } from '../../csv.ts';
import { readingText as text } from '../../messages/reading.ts';
import { words } from '../../messages/words.ts';
import { saveFile } from '../../save-file.ts';

const mostShown = 50;

/** What was read from a file or would be: counts, what was not taken and why, and where to go on. The meeting pack is on all sittings read here. */
export function renderOutcome(
	report: ReadingReport,
	nameOf: (group: string) => string,
	readHere: readonly string[],
): TemplateResult {
	const { dryRun, students, answers, rows, states, absent, unchanged, notes, rejected, sittings } = report;
	const counts = Object.entries(states)
		.filter(([, count]) => count > 0)
		.map(([state, count]) => `${words.figure(count)} ${text.states[state] ?? state}`);
	return html`<div class=${dryRun ? 'outcome' : 'outcome done'}>
		<h4>${dryRun ? text.wouldBe : text.wasRead}</h4>
		<p>${text.counts(students, answers, rows)} ${counts.length > 0 ? text.stateCounts(counts) : nothing}</p>
		${absent.length > 0 ? html`<p>${text.absent(absent)}</p>` : nothing}
		${unchanged > 0 ? html`<p>${text.unchanged(unchanged)}</p>` : nothing}
		${notes.length > 0 ? html`<ul>${notes.map((note) => html`<li>${note}</li>`)}</ul>` : nothing}
		${rejected.length > 0 ? renderRejected(rejected) : nothing}
		${dryRun ? nothing : renderWays(sittings, nameOf, readHere)}
	</div>`;
}

function renderRejected(rejected: ReadingReport['rejected']): TemplateResult {
	const save = (): void =>
		saveFile(
			text.rejectedFile,
			// The mark by which spreadsheets know UTF-8.
			`\uFEFF${writeCsv([[text.line, text.reason], ...rejected.map(({ line, message }) => [line, message])])}`,
			'text/csv',
		);
	return html`<p class="short">${text.rejected(rejected.length)}</p>
		<div class="wide" tabindex="0" role="region" aria-label=${text.rejectedTable}>
			<table>
				<caption class="spoken">${text.rejectedTable}</caption>
				<thead><tr><th scope="col" class="count">${text.line}</th><th scope="col">${text.reason}</th></tr></thead>
				<tbody>${rejected.slice(0, mostShown).map(({ line, message }) => html`<tr><th scope="row" class="count">${line}</th><td>${message}</td></tr>`)}</tbody>
			</table>
		</div>
		${rejected.length > mostShown ? html`<p class="soft">${text.firstOf(mostShown, rejected.length)}</p>` : nothing}
		<button @click=${save}>${text.saveRejected}</button>`;
}

function renderWays(
	sittings: ReadingReport['sittings'],
	nameOf: (group: string) => string,
	readHere: readonly string[],
): TemplateResult {
	return html`<ul>
		${sittings.map(
			({ id = '', group }) => html`<li>${nameOf(group)}:
				<a href=${printAddress('sittings', { view: 'entry' }, id)}>${text.next.entry}</a>,
				<a href=${printAddress('sittings', { view: 'scoring' }, id)}>${text.next.scoring}</a>,
				<a href=${printAddress('reports', { sitting: id }, 'class')}>${text.next.report}</a>,
				<a href=${printAddress('board', { lens: 'evidence', sitting: id })}>${text.next.board}</a>
			</li>`,
		)}
	</ul>
	<p><a href=${printAddress('reports', { sitting: readHere }, 'pack')}>${text.packOf(readHere.length)}</a> <span class="soft">${text.anotherFile}</span></p>`;
}

/** Why nothing was read, with the command that would do it where there is one. */
export function renderFailure(
	failure: { readonly message: string; readonly command?: string } | undefined,
): TemplateResult | typeof nothing {
	if (!failure) return nothing;
	const { message, command } = failure;
	return html`<div class="failure" role="alert"><p>${message}</p>${command === undefined ? nothing : html`<code>${command}</code>`}</div>`;
}
