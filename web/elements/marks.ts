import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { words } from '../messages/words.ts';

/** A quantity with a range, drawn on a short line. All numbers are on the line's own scale. */
export interface LineMarks {
	/** Where the line starts and ends. */
	readonly from: number;
	readonly to: number;
	/** Distance of ticks; none when 0. */
	readonly tick?: number;
	/** The wanted range, a bracket; open to the right without max. */
	readonly wanted?: { readonly min?: number; readonly max?: number };
	/** What is there, a dot. */
	readonly at?: number;
	/** How sure that is, a bar. */
	readonly interval?: { readonly low: number; readonly high: number };
}

/** Most strokes of a tally; more are written as a figure. */
export const mostStrokes = 25;

const lineStart = 7;
const lineEnd = 93;

/** A number line of 100 × 20 units with bracket, bar and dot. Hidden from screen readers: say the same in words beside it. */
export function renderLine(marks: LineMarks): TemplateResult {
	const { from, to, tick = 0, wanted, at, interval } = marks;
	const place = (value: number): number => {
		const share = to === from ? 0.5 : (Math.min(Math.max(value, from), to) - from) / (to - from);
		return Math.round((lineStart + share * (lineEnd - lineStart)) * 10) / 10;
	};
	const ticks =
		tick > 0 ? Array.from({ length: Math.floor((to - from) / tick) + 1 }, (_none, at) => from + at * tick) : [];
	const isOff =
		at !== undefined && wanted !== undefined && (at < (wanted.min ?? from) || at > (wanted.max ?? Infinity));
	return html`<svg class="line" viewBox="0 0 100 20" width="100" height="20" aria-hidden="true">
		<path d="M${lineStart - 4} 10H${lineEnd + 4}${ticks.map((value) => `M${place(value)} 8v4`).join('')}" stroke="var(--rule)" fill="none" />
		${wanted === undefined ? nothing : renderBracket(place(wanted.min ?? from), wanted.max === undefined ? undefined : place(wanted.max))}
		${interval === undefined ? nothing : svg`<path d="M${place(interval.low)} 10H${place(interval.high)}M${place(interval.low)} 7v6M${place(interval.high)} 7v6" stroke="var(--ink)" stroke-width="2" fill="none" />`}
		${at === undefined ? nothing : svg`<circle cx=${place(at)} cy="10" r="4" fill=${isOff ? 'var(--paper)' : 'var(--ink)'} stroke=${isOff ? 'var(--pencil)' : 'var(--ink)'} stroke-width="2" />`}
	</svg>`;
}

function renderBracket(low: number, high: number | undefined): SVGTemplateResult {
	const right = high === undefined ? `M${lineEnd} 6l4 4l-4 4` : `M${high + 3} 3h3v14h-3`;
	return svg`<path d="M${low - 3} 3h-3v14h3${right}" stroke="var(--ink)" stroke-width="1.5" fill="none" />`;
}

/** A count as strokes in fives up to 25, then as a figure; nothing for 0. Hidden from screen readers. */
export function renderTally(count: number): TemplateResult {
	if (count > mostStrokes) return html`<span class="figure" aria-hidden="true">${words.figure(count)}</span>`;
	const group = 17;
	const strokes = Array.from({ length: count }, (_none, index) => {
		const left = Math.floor(index / 5) * group + 3;
		return index % 5 === 4 ? `M${left - 2} 11L${left + 12} 3` : `M${left + (index % 5) * 3.5} 2v10`;
	});
	const width = Math.max(Math.ceil(count / 5) * group, 14);
	return html`<svg class="tally" viewBox="0 0 ${width} 14" width=${width} height="14" aria-hidden="true">
		<path d=${strokes.join('')} stroke="currentColor" stroke-width="1.4" fill="none" />
	</svg>`;
}

/** Plus as a filled disc, minus as an outlined one, as high as the text around. Hidden from screen readers. */
export function renderSign(sign: 'plus' | 'minus'): TemplateResult {
	const isPlus = sign === 'plus';
	return html`<svg class="sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
		<circle cx="8" cy="8" r="6.5" fill=${isPlus ? 'var(--ink)' : 'var(--sheet)'} stroke="var(--ink)" stroke-width="1.5" />
		<path d=${isPlus ? 'M8 4.5v7M4.5 8h7' : 'M4.5 8h7'} stroke=${isPlus ? 'var(--sheet)' : 'var(--ink)'} stroke-width="1.8" />
	</svg>`;
}
