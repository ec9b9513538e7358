import type { MarkupNode } from '../../item-bank/markup/tree.ts';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

/** A drawing of the core as nodes of the page. */
export function buildNode(node: MarkupNode): Node {
	if (typeof node === 'string') return document.createTextNode(node);
	const built = document.createElementNS(SVG_NAMESPACE, node.name);
	for (const [name, value] of Object.entries(node.attributes)) if (name !== 'xmlns') built.setAttribute(name, value);
	built.append(...node.children.map(buildNode));
	return built;
}
