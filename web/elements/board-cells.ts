import { html, nothing, type TemplateResult } from 'lit';
import type { PlanCell } from '../board/board-plan.ts';
import { words } from '../messages/words.ts';
import { renderLine, renderTally } from './marks.ts';

const lineWidth = 52;

/** Supply: a tally, or a figure from 26 on; totals are figures. */
export function renderSupply(count: number, isTotal: boolean): TemplateResult {
	if (count === 0)
		return html`<span class="none" aria-hidden="true"></span><span class="spoken">${words.board.none}</span>`;
	const mark = isTotal
		? html`<span class="figure" aria-hidden="true">${words.figure(count)}</span>`
		: renderTally(count);
	return html`${mark}<span class="spoken">${words.items(count)}</span>`;
}

/** Plan: the range as a bracket, the form as a dot, and how far off it is as a signed number. */
export function renderPlan({ wanted, delivered, off }: PlanCell, most: number): TemplateResult {
	const isBare = wanted === undefined && (delivered === undefined || delivered === 0);
	if (isBare) {
		return html`<span class="none" aria-hidden="true"></span><span class="spoken">${words.board.noPlan}</span>`;
	}
	const marks = {
		from: 0,
		to: most,
		tick: most <= 12 ? 1 : 5,
		width: lineWidth,
		...(wanted === undefined ? {} : { wanted }),
		...(delivered === undefined ? {} : { at: delivered }),
	};
	const said = [
		wanted === undefined ? words.board.noPlan : words.board.wanted(wanted.min, wanted.max),
		delivered === undefined ? '' : words.board.delivers(delivered),
		off === 0 ? '' : words.board.off(off),
	];
	return html`${renderLine(marks)}${off === 0 ? html`<small aria-hidden="true">${delivered === undefined ? nothing : words.figure(delivered)}</small>` : html`<small class="short" aria-hidden="true">${words.board.offFigure(off)}</small>`}
		<span class="spoken">${said.filter((part) => part !== '').join(', ')}</span>`;
}

/** Evidence of a cell nobody has answered yet: the line without a mark. */
export function renderNoEvidence(): TemplateResult {
	return html`<span class="unmarked">${renderLine({ from: 0, to: 100, tick: 25, width: lineWidth })}</span><span class="spoken">${words.board.noResponses}</span>`;
}
