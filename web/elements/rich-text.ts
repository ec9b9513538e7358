import { html, type TemplateResult } from 'lit';
import { ExpressionSyntaxError, parseMathematics } from '../../item-bank/expression/parse.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import { speakMathematics } from '../../item-bank/expression/speak.ts';
import { parseRichText, RichTextError } from '../../item-bank/markup/rich-text.ts';

/**
 * Rich text as students read it: mathematics with a true minus, and its spoken form for screen readers. A text that cannot
 * be read, as while it is being written, stands as typed and underlined.
 */
export function renderRichText(text: string): readonly TemplateResult[] {
	return readOr(text, () =>
		parseRichText(text).map((run) =>
			run.kind === 'text'
				? html`${run.text}`
				: renderPrinted(printMathematics(run.mathematics), speakMathematics(run.mathematics)),
		),
	);
}

/** Mathematics from its typed form; as typed and underlined where it cannot be read. */
export function renderMathematics(math: string): TemplateResult {
	const [printed] = readOr(math, () => {
		const mathematics = parseMathematics(math);
		return [renderPrinted(printMathematics(mathematics), speakMathematics(mathematics))];
	});
	return html`${printed}`;
}

function readOr(text: string, read: () => readonly TemplateResult[]): readonly TemplateResult[] {
	try {
		return read();
	} catch (error) {
		if (error instanceof RichTextError || error instanceof ExpressionSyntaxError)
			return [html`<span class="unread">${text}</span>`];
		throw error;
	}
}

function renderPrinted(printed: string, spoken: string): TemplateResult {
	return html`<span class="math"><span aria-hidden="true">${printed}</span><span class="spoken">${spoken}</span></span>`;
}
