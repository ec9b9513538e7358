import { html, nothing, type TemplateResult } from 'lit';
import type { PlaceAgreement } from '../../../item-bank/types.ts';
import { scoringText as text } from '../../messages/scoring.ts';
import { words } from '../../messages/words.ts';

/** How far two readers agree at a place: the table of both, what it comes to, and what that means. */
export function renderAgreement(place: PlaceAgreement): TemplateResult {
	const { both, table, exact, kappa, weightedKappa, caution } = place;
	return html`<h3>${text.agreement}</h3>
		${
			both === 0
				? html`<p class="soft">${text.noPairs}</p>`
				: html`<div class="wide" tabindex="0" role="region" aria-label=${text.table}>
					<table>
						<caption class="spoken">${text.table}</caption>
						<thead><tr><th scope="col">${text.firstHead}</th>${table.map((_row, points) => html`<th scope="col" class="count">${text.secondHead(points)}</th>`)}</tr></thead>
						<tbody>${table.map(
							(row, first) => html`<tr>
								<th scope="row">${words.figure(first)}</th>
								${row.map((count, second) => html`<td class=${first === second ? 'count same' : 'count'}>${count === 0 ? html`<span class="soft">0</span>` : words.figure(count)}</td>`)}
							</tr>`,
						)}</tbody>
					</table>
				</div>
				<p>${exact === undefined ? nothing : text.exact(exact, both)}</p>
				<p>${kappa === undefined ? text.noKappa : text.kappa(kappa)}</p>
				${weightedKappa === undefined ? nothing : html`<p>${text.weighted(weightedKappa)}</p>`}
				${caution === undefined ? nothing : html`<p class="short">${caution}</p>`}
				<p class="soft">${text.advice}</p>`
		}`;
}
