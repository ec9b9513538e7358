import { css, LitElement, type TemplateResult } from 'lit';
import { words } from '../messages/words.ts';
import { renderSign } from './marks.ts';

/** Plus as a filled disc with a light plus, minus as an outlined disc with a dark minus: told apart without colour. */
export class ZpSign extends LitElement {
	static override properties = { of: { type: String } };
	declare of: 'plus' | 'minus';

	constructor() {
		super();
		this.of = 'plus';
	}

	static override styles = css`
		:host { display: inline-block; vertical-align: -2px; line-height: 0; }
		svg { width: 1em; height: 1em; }
	`;

	protected override render(): TemplateResult {
		this.setAttribute('role', 'img');
		this.setAttribute('aria-label', words.sign[this.of]);
		return renderSign(this.of);
	}
}

customElements.define('zp-sign', ZpSign);
