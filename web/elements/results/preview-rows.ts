import { html, type TemplateResult } from 'lit';
import type { ReadingPreview, TakenColumn } from '../../../item-bank/types.ts';
import { inText } from '../../messages/results-in.ts';
import type { ColumnChoice } from '../../results-in/column-choices.ts';

const text = inText.file;

/** A column of a file with what it is taken for. */
export function renderColumn(
	{ number, heading }: Pick<TakenColumn, 'number' | 'heading'>,
	now: ColumnChoice,
	choices: readonly ColumnChoice[],
	choose: (choice: ColumnChoice) => void,
): TemplateResult {
	const shown = choices.includes(now) ? choices : [...choices, now];
	const hear = (event: Event): void => {
		const chosen = event.target instanceof HTMLSelectElement ? event.target.value : '';
		const choice = shown.find((each) => each === chosen);
		if (choice !== undefined) choose(choice);
	};
	return html`<tr class=${now === 'discarded' ? 'discarded' : ''}><th scope="row">${heading === '' ? `${number}` : heading}</th><td>
		<select aria-label=${text.columnOf(heading)} @change=${hear}>
			${shown.map((choice) => html`<option value=${choice} ?selected=${choice === now}>${choiceName(choice)}</option>`)}
		</select></td></tr>`;
}

/** The first rows of a file, every cell with how it reads. */
export function renderPreviewRows({ rows }: Pick<ReadingPreview, 'rows'>): TemplateResult {
	const labels = [...new Set(rows.flatMap(({ answers }) => answers.map(({ place }) => place)))];
	return html`<section><h3>${text.preview}</h3>
		<div class="wide" tabindex="0" role="region" aria-label=${text.preview}><table class="rows">
			<thead><tr><th scope="col">${text.line}</th><th scope="col">${text.student}</th>${labels.map((label) => html`<th scope="col">${label}</th>`)}</tr></thead>
			<tbody>${rows.map(
				({ line, student, answers }) =>
					html`<tr><td>${line}</td><th scope="row">${student}</th>${labels.map((label) => renderCell(answers.find(({ place }) => place === label)))}</tr>`,
			)}</tbody>
		</table></div></section>`;
}

function renderCell(answer: ReadingPreview['rows'][number]['answers'][number] | undefined): TemplateResult {
	if (!answer) return html`<td></td>`;
	const state = text.states[answer.reads];
	const isFault = state === undefined;
	return html`<td class=${isFault ? 'fault' : ''}>${answer.raw}<br><span class=${isFault ? 'short' : 'soft'}>${state ?? answer.reads}</span></td>`;
}

function choiceName(choice: ColumnChoice): string {
	if (choice.startsWith('item ')) return text.placeChoice(choice.slice(5));
	return text.choices[choice as keyof typeof text.choices];
}
