import { css, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { ExplanationItem, ExplanationResponse } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { renderRichText } from '../rich-text.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';

/** Lines to write on; once the answer is handed in, the rubric to rate it by. */
export class ZpTextAnswer extends AnswerElement<ExplanationResponse> {
	static override properties = { item: { attribute: false } };
	declare item: ExplanationItem;

	static override styles = [
		answerStyles,
		css`
			label { display: block; }
			textarea { display: block; width: 100%; max-width: 40em; font: 400 18px/36px var(--serif); color: var(--ink); border: 1.5px solid var(--ink-soft); border-radius: 0; padding: 0 12px; resize: vertical;
				background: repeating-linear-gradient(var(--sheet) 0 35px, var(--paper-line) 35px 36px) local; }
			legend { font: 600 16px/28px var(--sans); padding: 0; }
			.level { display: flex; gap: 10px; align-items: center; min-height: 44px; cursor: pointer; max-width: 40em; }
			.rubric { margin-top: 14px; }
		`,
	];

	protected override render(): TemplateResult {
		const { item } = this;
		return html`<label><span class="hint">${words.explanation}. ${words.lines(item.lines)}</span>
				<textarea rows=${item.lines} .value=${live(this.response?.text ?? '')} ?readonly=${this.locked} @input=${(event: Event) => this.write(event)}></textarea>
			</label>
			${this.locked ? this.renderRubric(item) : nothing}
			${this.renderSaid()}`;
	}

	private renderRubric(item: ExplanationItem): TemplateResult {
		return html`<fieldset class="rubric">
			<legend>${words.rate}</legend>
			${item.rubric.map(
				({ points, descriptor }) => html`<label class="level">
					<span class="bubble">
						<input type="radio" name="rating" value=${points} .checked=${live(this.response?.rating === points)} @change=${() => this.rate(points)} />
						<span aria-hidden="true">${points}</span>
					</span>
					<span><span class="spoken">${words.points(points)}: </span>${renderRichText(descriptor)}</span>
				</label>`,
			)}
		</fieldset>`;
	}

	private write({ target }: Event): void {
		if (target instanceof HTMLTextAreaElement) this.give({ kind: 'explanation', text: target.value }, '');
	}

	private rate(rating: number): void {
		this.give({ kind: 'explanation', text: this.response?.text ?? '', rating }, '');
	}
}

customElements.define('zp-text-answer', ZpTextAnswer);
