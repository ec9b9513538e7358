import { html, type TemplateResult } from 'lit';
import { printAddress } from '../address.ts';
import { findText } from '../messages/find.ts';
import { clearFindState, countMarked, type FindState, printFindState } from './find-state.ts';
import type { Loosened } from './loosened.ts';

/** What to do where nothing is found: let one thing go, or write the first item of the bank. */
export function renderNothingFound(state: FindState, loosened: readonly Loosened[]): TemplateResult {
	if (state.text === '' && countMarked(state) === 0) {
		return html`<div class="empty">
			<h2>${findText.bankEmpty}</h2>
			<p>${findText.bankEmptyAdvice}</p>
			<a class="button primary" href=${printAddress('items', {}, 'new')}>${findText.write}</a>
		</div>`;
	}
	return html`<div class="empty">
		<h2>${findText.nothing}</h2>
		<p>${loosened.length > 0 ? findText.nothingAdvice : findText.nothingLeft}</p>
		<ul>${loosened.map(({ name, total, state: looser }) => html`<li><a href=${printFindState(looser)}>${findText.loosen(name, total)}</a></li>`)}</ul>
		<a class="button" href=${printFindState(clearFindState(state))}>${findText.all}</a>
	</div>`;
}
