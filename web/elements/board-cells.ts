import { html, nothing, type TemplateResult } from 'lit';
import type { EvidenceEntry } from '../../item-bank/types.ts';
import type { PlanCell } from '../board/board-plan.ts';
import { words } from '../messages/words.ts';
import { type LineMarks, renderLine, renderTally } from './marks.ts';

const lineWidth = 46;

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

/** The share of points earned as a dot on a line from 0 to 100 %, its 95 % interval as a bar; undefined without figures. */
export function evidenceMarks({ share, low, high }: EvidenceEntry): LineMarks | undefined {
	if (share === undefined) return undefined;
	const bounds = low === undefined || high === undefined ? {} : { interval: { low: low * 100, high: high * 100 } };
	return { from: 0, to: 100, tick: 25, at: share * 100, ...bounds };
}

/**
 * Evidence: dot, bar and the number of responses in small figures. Hidden cells say so, cells nobody answered are a line without
 * a mark, and rows that stand above others are left to those.
 */
export function renderEvidence(entry: EvidenceEntry | undefined, hasRowsBelow: boolean): TemplateResult {
	if (entry === undefined && hasRowsBelow) {
		return html`<span class="none" aria-hidden="true"></span><span class="spoken">${words.board.seeBelow}</span>`;
	}
	const marks = entry && evidenceMarks(entry);
	if (!entry || !marks) {
		const hidden = entry?.hidden;
		return html`<span class="unmarked">${renderLine({ from: 0, to: 100, tick: 25, width: lineWidth })}</span>
			${hidden === undefined ? nothing : html`<small aria-hidden="true">${words.board.hiddenShort}</small>`}
			<span class="spoken">${hidden === undefined ? words.board.noResponses : words.board.hidden[hidden]}</span>`;
	}
	return html`${renderLine({ ...marks, width: lineWidth })}<small aria-hidden="true">${words.figure(entry.responses ?? 0)}</small>
		<span class="spoken">${words.board.evidence(entry)}</span>`;
}
