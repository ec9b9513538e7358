import type { MarkupElement } from '../../item-bank/markup/tree.ts';
import { writeXml } from '../xml.ts';

/** Writes the `svg` element of a drawing as a standalone SVG document. Throws XmlError. */
export function writeSvg(root: MarkupElement): string {
	return writeXml(root, { declaration: true });
}
