import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { numberNode } from '../../../item-bank/expression/tree.ts';
import type { PartItem, PartResponse } from '../../../item-bank/types.ts';
import type { WorkedLine } from '../../../item-bank/worked/worked-lines.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { printKey } from '../print-key.ts';
import { type Judgement, judgeAnswer } from './judge-answer.ts';

/** What came of one answer: right or not, the right answer with its worked steps, and what a wrong one is consistent with. */
export class ZpOutcome extends LitElement {
	static override properties = { item: { attribute: false }, response: { attribute: false }, grid: { type: String } };
	declare item: PartItem;
	declare response: PartResponse;
	declare grid: string | undefined;

	static override styles = css`
		:host { display: block; font: 400 18px/28px var(--sans); color: var(--ink); }
		.state { font-weight: 600; margin: 0; }
		h2 { font: 600 16px/28px var(--sans); margin: 14px 0 0; }
		p { margin: 0; max-width: 40em; }
		ol, ul { margin: 0; padding: 0; list-style: none; max-width: 40em; }
		li { padding: 3px 0; }
		.math { font: 400 20px/28px var(--serif); white-space: nowrap; }
		.note { display: block; font-size: 16px; line-height: 24px; color: var(--ink-soft); }
		.hint { font-size: 16px; line-height: 24px; color: var(--ink-soft); }
		.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
	`;

	protected override render(): TemplateResult {
		const judged = judgeAnswer(this.item, this.response, this.grid);
		if (!judged) return html`<p class="state">${words.noKey}</p>`;
		const { score, key, steps, consistent } = judged;
		const reason = score.reason === undefined ? undefined : words.reasons[score.reason];
		return html`
			<p class="state">${words.outcome[score.state]}${reason ? html` (${reason})` : nothing}</p>
			<p>${words.earned(score.points, score.maximum)}</p>
			${this.renderKey(judged)}
			${
				consistent.length === 0
					? nothing
					: html`<h2>${words.consistent}</h2><ul>${consistent.map((line) => html`<li>${line}</li>`)}</ul><p class="hint">${words.hintOnly}</p>`
			}
			${steps.length === 0 || key.kind === 'rubric' ? nothing : html`<h2>${words.steps}</h2><ol>${steps.map(renderStep)}</ol>`}
		`;
	}

	private renderKey({ score, key }: Judgement): TemplateResult | typeof nothing {
		if (score.state === 'correct' || key.kind === 'rubric') return nothing;
		const printed = key.kind === 'value' ? printMathematics(numberNode(key.value)) : printKey(key);
		return html`<h2>${words.rightAnswer}</h2><p class="math">${printed}</p>`;
	}
}

function renderStep({ line, note, spoken }: WorkedLine): TemplateResult {
	return html`<li><span class="math"><span aria-hidden="true">${line}</span><span class="spoken">${spoken}</span></span>${note ? html`<span class="note">${note}</span>` : nothing}</li>`;
}

customElements.define('zp-outcome', ZpOutcome);
