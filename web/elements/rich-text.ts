import { html, type TemplateResult } from 'lit';
import { parseMathematics } from '../../item-bank/expression/parse.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import { speakMathematics } from '../../item-bank/expression/speak.ts';
import { parseRichText } from '../../item-bank/markup/rich-text.ts';

/** Rich text as students read it: mathematics with a true minus, and its spoken form for screen readers. */
export function renderRichText(text: string): readonly TemplateResult[] {
	return parseRichText(text).map((run) =>
		run.kind === 'text'
			? html`${run.text}`
			: renderPrinted(printMathematics(run.mathematics), speakMathematics(run.mathematics)),
	);
}

/** Mathematics from its typed form. */
export function renderMathematics(math: string): TemplateResult {
	const mathematics = parseMathematics(math);
	return renderPrinted(printMathematics(mathematics), speakMathematics(mathematics));
}

function renderPrinted(printed: string, spoken: string): TemplateResult {
	return html`<span class="math"><span aria-hidden="true">${printed}</span><span class="spoken">${spoken}</span></span>`;
}
