import type { Block, Mark } from './marks.ts';

/** Something laid out and not yet placed: its size in points, and its drawing once the top left corner is known. */
export interface Box {
	readonly width: number;
	readonly height: number;
	place(x: number, y: number): readonly (Block | Mark)[];
}

/** Boxes under each other. */
export function stack(boxes: readonly Box[], gap: number): Box {
	const height = boxes.reduce((sum, box) => sum + box.height, 0) + Math.max(0, boxes.length - 1) * gap;
	return {
		width: Math.max(0, ...boxes.map((box) => box.width)),
		height,
		place(x, y) {
			let top = y;
			return boxes.flatMap((box) => {
				const placed = box.place(x, top);
				top += box.height + gap;
				return placed;
			});
		},
	};
}

/** Boxes beside each other, tops aligned. */
export function beside(boxes: readonly Box[], gap: number): Box {
	const width = boxes.reduce((sum, box) => sum + box.width, 0) + Math.max(0, boxes.length - 1) * gap;
	return {
		width,
		height: Math.max(0, ...boxes.map((box) => box.height)),
		place(x, y) {
			let left = x;
			return boxes.flatMap((box) => {
				const placed = box.place(left, y);
				left += box.width + gap;
				return placed;
			});
		},
	};
}

/** A box with room around it. */
export function pad(box: Box, room: { readonly left?: number; readonly top?: number; readonly bottom?: number }): Box {
	const { left = 0, top = 0, bottom = 0 } = room;
	return {
		width: box.width + left,
		height: box.height + top + bottom,
		place: (x, y) => box.place(x + left, y + top),
	};
}

/** A box as one block of a page: what stands in it becomes the children. */
export function wrap(box: Box, block: Omit<Block, 'children'>): Box {
	return { ...box, place: (x, y) => [{ ...block, children: box.place(x, y) }] };
}

/** A box as a Figure with its text alternative. */
export function wrapFigure(box: Box, alt: string): Box {
	return {
		...box,
		place: (x, y) => [{ tag: 'Figure', alt, bounds: [x, y, x + box.width, y + box.height], children: box.place(x, y) }],
	};
}
