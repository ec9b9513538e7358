import { css, html, LitElement, type TemplateResult } from 'lit';
import { words } from '../messages/words.ts';
import { type LineMarks, renderLine } from './marks.ts';

/** A short number line: a bracket for what is wanted, a dot for what is there, a bar for how sure that is. It carries its words. */
export class ZpLine extends LitElement {
	static override properties = { marks: { attribute: false }, label: { type: String }, count: { type: Number } };
	declare marks: LineMarks | undefined;
	/** What the line is about; the marks are said after it. */
	declare label: string;
	/** How many responses or items stand behind it, in small figures beside the line. */
	declare count: number | undefined;

	constructor() {
		super();
		this.label = '';
	}

	static override styles = css`
		:host { display: inline-flex; gap: 6px; align-items: center; vertical-align: middle; }
		small { font: 400 13px/20px var(--sans); color: var(--ink-soft); }
	`;

	protected override render(): TemplateResult {
		const { marks } = this;
		this.setAttribute('role', 'img');
		const said = [this.label, marks ? words.line.say(marks) : words.line.empty];
		if (this.count !== undefined) said.push(words.line.count(this.count));
		this.setAttribute('aria-label', said.filter((part) => part !== '').join(', '));
		return html`${renderLine(marks ?? { from: 0, to: 1 })}${this.count === undefined ? '' : html`<small aria-hidden="true">${words.figure(this.count)}</small>`}`;
	}
}

customElements.define('zp-line', ZpLine);
