import type { Place } from './form-edits.ts';

/** A section as it stands on the page: its lower edge, and the middles of its rows in order. */
export interface SectionBox {
	readonly section: number;
	readonly bottom: number;
	readonly middles: readonly number[];
}

/** How a drag reads the page and tells what happens. */
export interface DragParts {
	readonly boxes: () => readonly SectionBox[];
	/** Draws where the row would land, counted with the row still in its old place. */
	readonly show: (over: Place | undefined) => void;
	/** Called once: with the place, or without when nothing is to move. */
	readonly drop: (over: Place | undefined) => void;
}

/** Follows a pointer that took hold of a row until it lets go, is lost, or Escape is pressed. */
export function followRow(start: PointerEvent, { boxes, show, drop }: DragParts): void {
	const held = start.currentTarget;
	if (!(held instanceof HTMLElement) || start.button !== 0) return;
	const over = new AbortController();
	const options = { signal: over.signal };
	let place: Place | undefined;
	const end = (isKept: boolean): void => {
		if (over.signal.aborted) return;
		over.abort();
		drop(isKept ? place : undefined);
	};
	const move = (event: PointerEvent): void => {
		if (place === undefined && Math.abs(event.clientY - start.clientY) < 5) return;
		place = placeAt(event.clientY, boxes());
		if (event.clientY < 60) window.scrollBy(0, -14);
		if (event.clientY > window.innerHeight - 60) window.scrollBy(0, 14);
		show(place);
	};
	held.setPointerCapture(start.pointerId);
	held.addEventListener('pointermove', move, options);
	held.addEventListener('pointerup', () => end(true), options);
	held.addEventListener('lostpointercapture', () => end(false), options);
	window.addEventListener('keydown', (event) => event.key === 'Escape' && end(false), options);
}

/** Where the sections of a page and the rows in them stand now. */
export function readBoxes(page: ParentNode): readonly SectionBox[] {
	return [...page.querySelectorAll('section')].map((section, index) => ({
		section: index,
		bottom: section.getBoundingClientRect().bottom,
		middles: [...section.querySelectorAll('li')].map((row) => {
			const { top, height } = row.getBoundingClientRect();
			return top + height / 2;
		}),
	}));
}

function placeAt(y: number, boxes: readonly SectionBox[]): Place | undefined {
	const box = boxes.find(({ bottom }) => y < bottom) ?? boxes.at(-1);
	return box && { section: box.section, index: box.middles.filter((middle) => middle < y).length };
}
