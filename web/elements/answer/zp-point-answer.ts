import { css, html, type TemplateResult } from 'lit';
import type { PointItem, PointResponse } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { buildNode } from '../build-node.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';
import { layPlaces, type MarkableLine } from './line-places.ts';

/** Figures print at 16 px; on the answer page they are read at 18. */
const enlargement = 18 / 16;

/**
 * A place to mark on a number line: a press or a drag marks the nearest tick, buttons and arrow keys move the mark by one
 * tick. What is said names a place as it can be read off the line, never by a number that is not printed there.
 */
export class ZpPointAnswer extends AnswerElement<PointResponse> {
	static override properties = { item: { attribute: false }, line: { state: true } };
	declare item: PointItem;
	declare private line: MarkableLine | undefined;
	private picture: Node | undefined;

	static override styles = [
		answerStyles,
		css`
			.scroll { overflow-x: auto; padding: 6px; margin: 0 -6px 8px; }
			.line { position: relative; display: block; min-height: 44px; background: #fff; cursor: crosshair; touch-action: pan-x pan-y; }
			.line svg { display: block; width: 100%; height: auto; }
			.line[aria-disabled='true'] { cursor: default; }
			.mark { position: absolute; width: 20px; height: 20px; margin: -10px 0 0 -10px; border-radius: 50%; background: #1b2a41; border: 3px solid #fff; box-shadow: 0 0 0 2px #1b2a41; pointer-events: none; }
			.buttons { display: flex; flex-wrap: wrap; gap: 8px; }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('item')) return;
		this.line = layPlaces(this.item);
		this.picture = this.line && buildNode(this.line.drawing.root);
	}

	/** On a narrow screen the line scrolls: the mark, or where it starts out, stays in sight. */
	protected override updated(changed: Map<PropertyKey, unknown>): void {
		const { line } = this;
		const scroller = this.renderRoot.querySelector('.scroll');
		if (!line || !scroller || !(changed.has('item') || changed.has('response'))) return;
		const place = line.places.find(({ value }) => value === this.response?.at) ?? line.places[line.home];
		const x = (place?.x ?? 0) * enlargement - scroller.scrollLeft;
		if (x < 40 || x > scroller.clientWidth - 40) scroller.scrollLeft += x - scroller.clientWidth / 2;
	}

	protected override render(): TemplateResult {
		const { line } = this;
		if (!line) return html`<p class="hint">${words.lineBroken}</p>`;
		const isFlat = this.item.line.orientation === 'horizontal';
		const at = line.places.findIndex(({ value }) => value === this.response?.at);
		const place = line.places[at];
		const { width, height } = line.drawing;
		return html`
			<p class="hint" id="hint">${words.lineHint}</p>
			<p class="spoken" id="description">${line.description}</p>
			<div class="scroll">
				<div class="line" role="slider" tabindex="0" .style=${`width: ${width * enlargement}px`} aria-label=${words.lineName} aria-describedby="description hint"
					aria-orientation=${isFlat ? 'horizontal' : 'vertical'} aria-valuemin="1" aria-valuemax=${line.places.length}
					aria-valuenow=${(place === undefined ? line.home : at) + 1} aria-valuetext=${place?.name ?? words.lineEmpty} aria-disabled=${this.locked}
					@click=${(event: MouseEvent) => this.markNearest(event)} @pointermove=${(event: PointerEvent) => this.drag(event)} @keydown=${(event: KeyboardEvent) => this.press(event, at)}>
					${this.picture}
					${place ? html`<span class="mark" .style=${`left: ${(100 * place.x) / width}%; top: ${(100 * place.y) / height}%`}></span>` : ''}
				</div>
			</div>
			<div class="buttons">
				<button type="button" ?disabled=${this.locked} @click=${() => this.step(at, -1)}>${isFlat ? words.oneLeft : words.oneDown}</button>
				<button type="button" ?disabled=${this.locked} @click=${() => this.step(at, 1)}>${isFlat ? words.oneRight : words.oneUp}</button>
				<button type="button" ?disabled=${this.locked} @click=${() => this.erase()}>${words.erase}</button>
			</div>
			${this.renderSaid()}
		`;
	}

	private mark(index: number): void {
		const place = this.line?.places[index];
		if (this.locked || !place || place.value === this.response?.at) return;
		this.give({ kind: 'point', at: place.value }, words.lineMarked(place.name));
	}

	private erase(): void {
		this.give({ kind: 'point' }, words.lineErased);
	}

	/** The first step puts the mark on the line. */
	private step(at: number, by: number): void {
		const { line } = this;
		if (!line) return;
		this.mark(at < 0 ? line.home : Math.max(0, Math.min(line.places.length - 1, at + by)));
	}

	private markNearest({ clientX, clientY, currentTarget, detail }: MouseEvent): void {
		const { line } = this;
		// Screen readers press without a place; then the mark starts out where it would by keyboard.
		if (!line || !(currentTarget instanceof HTMLElement)) return;
		if (detail === 0 && clientX === 0) {
			this.step(-1, 0);
			return;
		}
		const box = currentTarget.getBoundingClientRect();
		const scale = line.drawing.width / box.width;
		const [x, y] = [(clientX - box.left) * scale, (clientY - box.top) * scale];
		const isFlat = this.item.line.orientation === 'horizontal';
		const distances = line.places.map((place) => Math.abs(isFlat ? place.x - x : place.y - y));
		this.mark(distances.indexOf(Math.min(...distances)));
	}

	/** Fingers that move are scrolling. */
	private drag(event: PointerEvent): void {
		if (event.buttons === 1 && event.pointerType !== 'touch') this.markNearest(event);
	}

	private press(event: KeyboardEvent, at: number): void {
		const last = (this.line?.places.length ?? 1) - 1;
		const act = {
			ArrowLeft: () => this.step(at, -1),
			ArrowDown: () => this.step(at, -1),
			ArrowRight: () => this.step(at, 1),
			ArrowUp: () => this.step(at, 1),
			PageDown: () => this.step(at, -5),
			PageUp: () => this.step(at, 5),
			Home: () => this.mark(0),
			End: () => this.mark(last),
			Enter: () => this.step(at, 0),
			' ': () => this.step(at, 0),
			Delete: () => this.erase(),
			Backspace: () => this.erase(),
		}[event.key];
		if (act === undefined || this.locked) return;
		event.preventDefault();
		act();
	}
}

customElements.define('zp-point-answer', ZpPointAnswer);
