import { css, html, LitElement, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findText } from '../messages/find.ts';
import { controlStyles } from './control-styles.ts';

/** How long typing rests before the words count, in milliseconds. */
const typingRest = 150;

/** Words as they were typed. */
export interface TypedWords {
	readonly text: string;
	/** Whether words of before begin a new step of the back button; words typed in one go are one step. */
	readonly isNoted: boolean;
}

/** The field for words. Fires words-typed with {@link TypedWords} once typing rests, and field-left on the arrow key down. */
export class ZpWordField extends LitElement {
	static override properties = { text: { type: String }, typed: { state: true } };
	/** The words that are looked for. */
	declare text: string;
	/** The words in the field, which may be ahead. */
	declare typed: string;
	private timer = 0;
	private isTyping = false;

	constructor() {
		super();
		this.text = '';
		this.typed = '';
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			label { display: grid; gap: 2px; font-weight: 600; }
			input { width: 100%; }
			input[type='search'] { font-size: 18px; line-height: 28px; }
			p { margin: 2px 0 0; font-size: 14px; line-height: 21px; color: var(--ink-soft); }
			@media print { p { display: none; } }
		`,
	];

	/** Puts the focus on the field. */
	override focus(): void {
		this.renderRoot.querySelector('input')?.focus();
	}

	/** Forgets words whose time has not come, because they are taken along with something else. */
	settle(): void {
		clearTimeout(this.timer);
		this.isTyping = false;
	}

	override disconnectedCallback(): void {
		clearTimeout(this.timer);
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('text') || this.typed.trim() === this.text) return;
		this.settle();
		this.typed = this.text;
	}

	private type(event: Event): void {
		this.typed = event.target instanceof HTMLInputElement ? event.target.value : '';
		clearTimeout(this.timer);
		this.timer = window.setTimeout(() => this.take(), typingRest);
	}

	private take(): void {
		clearTimeout(this.timer);
		const detail = { text: this.typed.trim(), isNoted: !this.isTyping };
		this.isTyping = true;
		if (detail.text !== this.text) this.dispatchEvent(new CustomEvent<TypedWords>('words-typed', { detail }));
	}

	private submit(event: Event): void {
		event.preventDefault();
		this.take();
		this.isTyping = false;
	}

	private press(event: KeyboardEvent): void {
		if (event.key !== 'ArrowDown') return;
		event.preventDefault();
		this.dispatchEvent(new Event('field-left'));
	}

	protected override render(): TemplateResult {
		return html`<form role="search" @submit=${(event: Event) => this.submit(event)}>
			<label>${findText.search}
				<input
					type="search" maxlength="200" autocomplete="off" spellcheck="false" aria-describedby="hint" .value=${live(this.typed)}
					@input=${(event: Event) => this.type(event)} @keydown=${(event: KeyboardEvent) => this.press(event)}
					@blur=${() => {
						this.isTyping = false;
					}}
				/>
			</label>
			<p id="hint">${findText.searchNote}</p>
		</form>`;
	}
}

customElements.define('zp-word-field', ZpWordField);
