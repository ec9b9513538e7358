import type { Box } from './box.ts';
import { textWidth } from './fonts.ts';
import type { Block, Mark, Page } from './marks.ts';
import type { PageFrame } from './paper.ts';

/** A box that flows over pages; a heading stays with what follows it. */
export interface FlowBox {
	readonly box: Box;
	readonly isHeading?: boolean;
}

/** Deals boxes out to pages in order, none broken; a heading stays with the box after it. */
export function dealBoxes(boxes: readonly FlowBox[], height: number, gap: number): readonly (readonly Box[])[] {
	const pages: Box[][] = [];
	let page: Box[] = [];
	let used = 0;
	let held: Box[] = [];
	const heightOf = (list: readonly Box[]) => list.reduce((sum, box) => sum + box.height + gap, 0);
	for (const { box, isHeading = false } of boxes) {
		held.push(box);
		if (isHeading) continue;
		if (page.length > 0 && used + heightOf(held) - gap > height) {
			pages.push(page);
			[page, used] = [[], 0];
		}
		page.push(...held);
		used += heightOf(held);
		held = [];
	}
	page.push(...held);
	if (page.length > 0) pages.push(page);
	return pages;
}

/** Boxes placed under each other from the top of a frame. */
export function placeBoxes(boxes: readonly Box[], frame: PageFrame, gap: number): readonly Block[] {
	let y = frame.top;
	return boxes.flatMap((box) => {
		const placed = box.place(frame.left, y);
		y += box.height + gap;
		return placed as readonly Block[];
	});
}

/** A line at the foot of a page: what it belongs to at the left, its number at the right. */
export function drawFoot(frame: PageFrame, left: string, right: string, size: number): readonly Mark[] {
	const y = frame.bottom + 28;
	return [
		{ kind: 'text', x: frame.left, y, text: left, font: 'sans', size },
		{ kind: 'text', x: frame.right - textWidth(right, 'sans', size), y, text: right, font: 'sans', size },
	];
}

/** A page with blocks and its foot. */
export function makePage(frame: PageFrame, blocks: readonly Block[], artifacts: readonly Mark[]): Page {
	return { width: frame.width, height: frame.height, blocks, artifacts };
}
