import { LitElement } from 'lit';
import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../item-bank/figures/draw-figure.ts';
import type { MarkupNode } from '../../item-bank/markup/tree.ts';
import type { Figure } from '../../item-bank/types.ts';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

/** A figure drawn from its model, with the description computed from the same model as its text alternative. */
export class ZpFigure extends LitElement {
	static override properties = { figure: { attribute: false } };
	declare figure: Figure | undefined;

	/** Outside a shadow root, so that page and print styles reach the drawing. */
	protected override createRenderRoot(): HTMLElement {
		return this;
	}

	protected override render(): Node | null {
		if (!this.figure) return null;
		const svg = buildNode(drawFigure(this.figure).root);
		if (svg instanceof Element) {
			svg.setAttribute('role', 'img');
			svg.setAttribute('aria-label', describeFigure(this.figure));
		}
		return svg;
	}
}

function buildNode(node: MarkupNode): Node {
	if (typeof node === 'string') return document.createTextNode(node);
	const built = document.createElementNS(SVG_NAMESPACE, node.name);
	for (const [name, value] of Object.entries(node.attributes)) if (name !== 'xmlns') built.setAttribute(name, value);
	built.append(...node.children.map(buildNode));
	return built;
}

customElements.define('zp-figure', ZpFigure);
