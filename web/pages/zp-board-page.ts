import { html, LitElement, type TemplateResult } from 'lit';
import { controlStyles } from '../elements/control-styles.ts';
import { words } from '../messages/words.ts';

/** The board. */
export class ZpBoardPage extends LitElement {
	static override properties = { query: { attribute: false } };
	declare query: URLSearchParams;
	static override styles = controlStyles;
	protected override render(): TemplateResult {
		return html`<h2>${words.frame.page.board}</h2>`;
	}
}

customElements.define('zp-board-page', ZpBoardPage);
