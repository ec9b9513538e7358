import { LitElement } from 'lit';
import { describePlot } from '../../../item-bank/plots/describe-plot.ts';
import { drawPlot } from '../../../item-bank/plots/draw-plot.ts';
import type { Plot } from '../../../item-bank/types.ts';
import { buildNode } from '../build-node.ts';

/** A plot drawn from its figures, with what is seen as its text alternative. */
export class ZpPlot extends LitElement {
	static override properties = { plot: { attribute: false } };
	declare plot: Plot | undefined;

	/** Outside a shadow root, so that the section's styles reach the drawing. */
	protected override createRenderRoot(): HTMLElement {
		return this;
	}

	protected override render(): Node | null {
		if (!this.plot) return null;
		const svg = buildNode(drawPlot(this.plot).root);
		if (svg instanceof Element) {
			svg.setAttribute('role', 'img');
			svg.setAttribute('aria-label', describePlot(this.plot));
		}
		return svg;
	}
}

customElements.define('zp-plot', ZpPlot);
