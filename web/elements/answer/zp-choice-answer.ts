import { css, html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { ChoiceItem, ChoiceResponse, MultipleChoiceItem } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { areLong, renderContent } from '../item-blocks.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';

/** Options to mark, one or several, with the bubbles of an answer sheet. */
export class ZpChoiceAnswer extends AnswerElement<ChoiceResponse> {
	static override properties = { item: { attribute: false } };
	declare item: ChoiceItem | MultipleChoiceItem;

	static override styles = [
		answerStyles,
		css`
			.options { display: flex; flex-wrap: wrap; gap: 4px 36px; }
			.options.long { flex-direction: column; }
			.option { display: flex; gap: 10px; align-items: center; min-height: 44px; cursor: pointer; padding-right: 8px; }
			.several .bubble span { border-radius: 6px; }
		`,
	];

	protected override render(): TemplateResult {
		const { item } = this;
		const isSeveral = item.kind === 'multiple-choice';
		const chosen = this.response?.options ?? [];
		return html`<fieldset class=${isSeveral ? 'several' : ''}>
				<legend class="hint">${isSeveral ? words.severalHint : words.oneHint}</legend>
				<div class="options ${areLong(item.options) ? 'long' : ''}">
					${item.options.map(
						(option) => html`<label class="option">
							<span class="bubble">
								<input type=${isSeveral ? 'checkbox' : 'radio'} name="option" value=${option.id} .checked=${live(chosen.includes(option.id))} ?disabled=${this.locked}
									@click=${(event: MouseEvent) => this.eraseMarked(event, option.id)} @change=${(event: Event) => this.mark(event, option.id)} />
								<span>${words.letter(option.id)}</span>
							</span>
							<span>${renderContent(option)}</span>
						</label>`,
					)}
				</div>
			</fieldset>
			${this.renderSaid()}`;
	}

	private mark({ target }: Event, id: string): void {
		const isMarked = target instanceof HTMLInputElement && target.checked;
		const chosen = this.response?.options ?? [];
		if (this.item.kind === 'choice') {
			this.choose([id]);
			return;
		}
		const wanted = isMarked ? [...chosen, id] : chosen.filter((other) => other !== id);
		this.choose(this.item.options.map((option) => option.id).filter((option) => wanted.includes(option)));
	}

	private choose(options: readonly string[]): void {
		// Native marks are read aloud by themselves.
		this.give({ kind: 'choice', options }, '');
	}

	/** A marked bubble is erased by pressing it again. */
	private eraseMarked(event: MouseEvent, id: string): void {
		if (this.item.kind !== 'choice' || event.detail === 0 || !this.response?.options.includes(id)) return;
		this.give({ kind: 'choice', options: [] }, words.erased(words.letter(id)));
	}
}

customElements.define('zp-choice-answer', ZpChoiceAnswer);
