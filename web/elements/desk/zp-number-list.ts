import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';

/** Whole numbers in one field, written with commas. Fires numbers-changed with the numbers each time they can be read. */
export class ZpNumberList extends LitElement {
	static override properties = {
		label: { type: String },
		numbers: { attribute: false },
		typed: { state: true },
		isWrong: { state: true },
	};
	declare label: string;
	declare numbers: readonly number[];
	/** What stands in the field while it is being written in. */
	declare private typed: string | undefined;
	declare private isWrong: boolean;

	constructor() {
		super();
		this.numbers = [];
		this.isWrong = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			label { display: block; font-size: 14px; line-height: 20px; color: var(--ink-soft); }
			input { width: 100%; font-variant-numeric: tabular-nums; }
			p { font-size: 14px; line-height: 20px; margin: 2px 0 0; color: var(--ink-soft); }
			p.wrong { color: var(--pencil); }
		`,
	];

	protected override render(): TemplateResult {
		const shown = this.typed ?? this.numbers.map((number) => String(number).replace('-', '−')).join(', ');
		return html`<label for="list">${this.label}</label>
			<input id="list" type="text" inputmode="text" autocomplete="off" .value=${shown} aria-describedby="about" aria-invalid=${this.isWrong}
				@input=${(event: Event) => this.write(event)} @change=${() => this.settle()} />
			<p id="about" class=${this.isWrong ? 'wrong' : nothing}>${this.isWrong ? words.numbersWrong(this.typed ?? '') : words.numbersHint}</p>`;
	}

	private write({ target }: Event): void {
		if (!(target instanceof HTMLInputElement)) return;
		this.typed = target.value;
		const numbers = readNumbers(target.value);
		this.isWrong = numbers === undefined;
		if (numbers)
			this.dispatchEvent(new CustomEvent('numbers-changed', { detail: numbers, bubbles: true, composed: true }));
	}

	/** Once the field is left it shows the numbers as they are kept, unless they cannot be read. */
	private settle(): void {
		if (!this.isWrong) this.typed = undefined;
	}
}

/** The numbers of a list as typed, with any minus; a comma at the end is one being written. Undefined for anything else. */
export function readNumbers(typed: string): readonly number[] | undefined {
	const pieces = typed.split(/[,;\s]+/).filter((piece) => piece !== '' && !/^[-−–+]$/.test(piece));
	const numbers = pieces.map((piece) => Number(piece.replace(/^[−–]/, '-')));
	return numbers.every((number) => Number.isInteger(number)) ? numbers : undefined;
}

customElements.define('zp-number-list', ZpNumberList);
