import { html, LitElement, type TemplateResult } from 'lit';
import { checkFigure } from '../../item-bank/figures/check-figure.ts';
import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../item-bank/figures/draw-figure.ts';
import type { Figure } from '../../item-bank/types.ts';
import { buildNode } from './build-node.ts';

/**
 * A figure drawn from its model, with the description computed from the same model as its text alternative. A model that
 * cannot be drawn, as while it is being changed, says why.
 */
export class ZpFigure extends LitElement {
	static override properties = { figure: { attribute: false } };
	declare figure: Figure | undefined;

	/** Outside a shadow root, so that page and print styles reach the drawing. */
	protected override createRenderRoot(): HTMLElement {
		return this;
	}

	protected override render(): Node | TemplateResult | null {
		if (!this.figure) return null;
		const [problem] = checkFigure(this.figure);
		if (problem) return html`<p class="unread">The figure cannot be drawn: ${problem.message}.</p>`;
		const svg = buildNode(drawFigure(this.figure).root);
		if (svg instanceof Element) {
			svg.setAttribute('role', 'img');
			svg.setAttribute('aria-label', describeFigure(this.figure));
		}
		return svg;
	}
}

customElements.define('zp-figure', ZpFigure);
