import { css, html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { gapSides, printSigns } from '../../../item-bank/items/kinds/inline-choice.ts';
import type { ChoiceResponse, InlineChoiceItem } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';

/** A statement with a gap and what can stand in it; the choice is written into the gap. */
export class ZpGapAnswer extends AnswerElement<ChoiceResponse> {
	static override properties = { item: { attribute: false } };
	declare item: InlineChoiceItem;

	static override styles = [
		answerStyles,
		css`
			.statement { font-size: 24px; line-height: 44px; margin: 0 0 8px; padding-left: 1em; }
			.gap { display: inline-block; min-width: 3em; min-height: 40px; border-bottom: 2px solid var(--ink); text-align: center; vertical-align: bottom; }
			.options { display: flex; flex-wrap: wrap; gap: 4px 36px; }
			.option { display: flex; gap: 10px; align-items: center; min-height: 44px; cursor: pointer; font-size: 20px; padding-right: 8px; }
		`,
	];

	protected override render(): TemplateResult {
		const { item } = this;
		const [before, after] = gapSides(item);
		const chosen = this.response?.options[0];
		const filled = item.choices.find(({ id }) => id === chosen);
		return html`<p class="statement"><span class="math">${before} <span class="gap">${filled ? printSigns(filled.math) : html`<span class="spoken">${words.gap}</span>`}</span> ${after}</span></p>
			<fieldset>
				<legend class="hint">${words.gapHint}</legend>
				<div class="options">
					${item.choices.map(
						({ id, math }) => html`<label class="option">
							<span class="bubble">
								<input type="radio" name="choice" value=${id} .checked=${live(id === chosen)} ?disabled=${this.locked}
									@click=${(event: MouseEvent) => this.eraseMarked(event, id)} @change=${() => this.give({ kind: 'choice', options: [id] }, '')} />
								<span>${words.letter(id)}</span>
							</span>
							<span class="math">${printSigns(math)}</span>
						</label>`,
					)}
				</div>
			</fieldset>
			${this.renderSaid()}`;
	}

	private eraseMarked(event: MouseEvent, id: string): void {
		if (event.detail === 0 || this.response?.options[0] !== id) return;
		this.give({ kind: 'choice', options: [] }, words.erased(words.letter(id)));
	}
}

customElements.define('zp-gap-answer', ZpGapAnswer);
