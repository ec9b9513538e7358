import { css, html, nothing, type TemplateResult } from 'lit';
import type { Option, StemBlock } from '../../item-bank/types.ts';
import { renderMathematics, renderRichText } from './rich-text.ts';
import './zp-figure.ts';

/** A block of a stem as students read it. */
export function renderBlock(block: StemBlock): TemplateResult {
	switch (block.kind) {
		case 'paragraph':
			return html`<p>${renderRichText(block.text)}</p>`;
		case 'mathematics':
			return html`<p class="display">${renderMathematics(block.math)}</p>`;
		case 'figure':
			return html`<zp-figure .figure=${block.figure}></zp-figure>`;
		case 'table':
			return html`<table>
				${block.caption === undefined ? nothing : html`<caption>${renderRichText(block.caption)}</caption>`}
				<thead><tr>${block.header.map((cell) => html`<th scope="col">${renderRichText(cell)}</th>`)}</tr></thead>
				<tbody>${block.rows.map((row) => html`<tr>${row.map((cell) => html`<td>${renderRichText(cell)}</td>`)}</tr>`)}</tbody>
			</table>`;
	}
}

/** What an option or entry shows. */
export function renderContent({ content }: Pick<Option, 'content'>): TemplateResult | readonly TemplateResult[] {
	switch (content.kind) {
		case 'mathematics':
			return renderMathematics(content.math);
		case 'text':
			return renderRichText(content.text);
		case 'figure':
			return html`<zp-figure .figure=${content.figure}></zp-figure>`;
	}
}

/** Whether options need a line each. */
export function areLong(options: readonly Option[]): boolean {
	return options.some(
		({ content }) => content.kind === 'figure' || (content.kind === 'text' && content.text.length > 16),
	);
}

/** How items speak: a serif of generous size, figures on white as on paper. */
export const itemStyles = css`
	:host { display: block; font: 400 18px/28px var(--serif); color: var(--ink); }
	p { margin: 0 0 14px; max-width: 38em; overflow-wrap: anywhere; }
	.math { white-space: nowrap; }
	.display { padding-left: 2em; font-size: 20px; }
	.unread { text-decoration: underline wavy var(--pencil); }
	.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
	zp-figure { display: block; margin: 0 0 14px; overflow-x: auto; }
	zp-figure svg { background: #fff; max-width: 100%; height: auto; display: block; }
	table { border-collapse: collapse; margin: 0 0 14px; }
	caption { text-align: left; font-size: 16px; }
	th, td { border: 1px solid var(--ink-soft); padding: 2px 14px; text-align: left; font-weight: 400; }
	th { border-bottom-width: 2px; }
	:focus-visible { outline: 3px solid var(--pencil); outline-offset: 2px; }
`;
