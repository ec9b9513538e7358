import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { writeFeedback } from '../../item-bank/distractors/feedback.ts';
import { parseMathematics } from '../../item-bank/expression/parse.ts';
import { stepRows } from '../../item-bank/expression/steps.ts';
import { optionsOf, workOf } from '../../item-bank/items/asked.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { findPattern } from '../../item-bank/patterns/index.ts';
import { findStandard } from '../../item-bank/standards/code.ts';
import type { Alignment, Item } from '../../item-bank/types.ts';
import { printKey } from './print-key.ts';

/** What the bank says about an item, in the right margin. The key and the worked steps show only when asked for. */
export class ZpItemFacts extends LitElement {
	static override properties = { record: { attribute: false }, points: { type: Number }, keys: { type: Boolean } };
	declare record: ItemRecord | undefined;
	/** Points on this form. */
	declare points: number | undefined;
	declare keys: boolean;

	constructor() {
		super();
		this.keys = false;
	}

	static override styles = css`
		:host { display: block; font: 400 14px/21px var(--sans); color: var(--ink-soft); }
		dl { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: 0 10px; }
		dt { color: var(--ink-soft); }
		dd { margin: 0; color: var(--ink); }
		.math { white-space: nowrap; font: 400 15px/22px var(--serif); color: var(--ink); }
		.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
		.key { border-top: 1px solid var(--paper-line); margin-top: 7px; padding-top: 6px; }
		.key strong { color: var(--ink); font-weight: 600; }
		ol { margin: 4px 0 0; padding: 0; list-style: none; }
		.wrong { margin-top: 7px; font-size: 13px; line-height: 18px; }
		ol small { font-size: 13px; line-height: 18px; display: block; }
	`;

	protected override render(): TemplateResult | typeof nothing {
		const { record } = this;
		if (!record) return nothing;
		const { item } = record;
		const primary = item.alignments.find((alignment) => alignment.primary === true);
		const others = item.alignments.filter((alignment) => alignment !== primary);
		return html`
			<dl>
				<dt>item</dt>
				<dd>${record.id}, version ${record.version}${record.status === 'approved' ? nothing : html` (${record.status})`}</dd>
				<dt>gives</dt>
				<dd>${item.given.replace('-', ' ')}; answer in ${item.answerIn.replace('-', ' ')}</dd>
				<dt>kind</dt>
				<dd>${item.kind.replace('-', ' ')}, DOK ${item.dok}, ${this.points ?? item.points} ${(this.points ?? item.points) === 1 ? 'point' : 'points'}</dd>
				${primary ? html`<dt>standard</dt><dd title=${statementOf(primary)}>${primary.code}</dd>` : nothing}
				${others.length > 0 ? html`<dt>also</dt><dd>${others.map(({ code }) => code).join(', ')}</dd>` : nothing}
			</dl>
			${this.keys ? html`<div class="key">${renderKey(item)}</div>` : nothing}
		`;
	}
}

function statementOf({ framework, edition, code }: Alignment): string {
	return findStandard(framework, edition, code)?.statement ?? '';
}

function renderKey(item: Item): TemplateResult {
	if (item.kind === 'set')
		return html`${item.parts.map((part, index) => html`<div>Part ${index + 1}: ${renderKey(part)}</div>`)}`;
	const work = workOf(item);
	return html`Key <strong>${printKey(computeKey(item))}</strong>${work === undefined ? nothing : renderSteps(work)}${renderWrong(item)}`;
}

/** What each wrong option is consistent with. */
function renderWrong(item: Item): TemplateResult | typeof nothing {
	const wrong = optionsOf(item).filter(({ patterns = [] }) => patterns.length > 0);
	if (wrong.length === 0) return nothing;
	return html`<dl class="wrong">
		${wrong.map(
			({ id, patterns = [] }) =>
				html`<dt>${id.toUpperCase()}</dt><dd>${writeFeedback(patterns.flatMap((pattern) => findPattern(pattern)?.id ?? []))}</dd>`,
		)}
	</dl>`;
}

function renderSteps(text: string): TemplateResult | typeof nothing {
	const mathematics = parseMathematics(text);
	if (mathematics.kind === 'statement' || mathematics.kind === 'number') return nothing;
	return html`<ol>
		${stepRows(mathematics).map(({ line, note }) => html`<li><span class="math">${line}</span>${note ? html`<small>${note}</small>` : nothing}</li>`)}
	</ol>`;
}

customElements.define('zp-item-facts', ZpItemFacts);
