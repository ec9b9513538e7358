import { type SVGTemplateResult, svg } from 'lit';

/** The mark of one of up to four forms: disc, ring, square, cross. They stay apart where they fall together, and in grey. */
export function renderFormMark(index: number, x: number, y: number): SVGTemplateResult {
	switch (index) {
		case 0:
			return svg`<circle cx=${x} cy=${y} r="3" fill="var(--ink)" />`;
		case 1:
			return svg`<circle cx=${x} cy=${y} r="5" fill="none" stroke="var(--ink)" stroke-width="1.5" />`;
		case 2:
			return svg`<path d="M${x - 6} ${y - 6}h12v12h-12z" fill="none" stroke="var(--ink)" stroke-width="1.2" />`;
		default:
			return svg`<path d="M${x - 6} ${y - 6}l12 12m0 -12l-12 12" stroke="var(--ink)" stroke-width="1.2" />`;
	}
}
