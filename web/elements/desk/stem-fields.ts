import { html, nothing, type TemplateResult } from 'lit';
import type { StemBlock, TableBlock } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import type { Editor } from './editor.ts';
import { renderListButtons, renderProse, renderText } from './fields.ts';
import { firstFigures, renderFigureFields } from './figure-fields.ts';

const firstBlocks: Readonly<Record<StemBlock['kind'], StemBlock>> = {
	paragraph: { kind: 'paragraph', text: 'What is `-3 + 8`?' },
	mathematics: { kind: 'mathematics', math: '-3 + 8' },
	figure: { kind: 'figure', figure: firstFigures['number-line'] },
	table: {
		kind: 'table',
		header: ['Day', 'Change'],
		rows: [
			['Monday', '`-3`'],
			['Tuesday', '`8`'],
		],
	},
};

/** The blocks of a question, each with what it is made of, and what can be added. */
export function renderStemFields(editor: Editor, path: Path, stem: readonly StemBlock[]): TemplateResult {
	const add = (kind: StemBlock['kind']): void => editor.insert(path, stem.length, firstBlocks[kind]);
	return html`
		<ol class="list">
			${stem.map((block, index) => {
				const what = words.block[block.kind];
				return html`<li class="entry">
					<div class="entry-head"><h4>${what}</h4>${renderListButtons(editor, path, index, stem.length, what.toLowerCase(), 1)}</div>
					${renderBlockFields(editor, [...path, index], block)}
				</li>`;
			})}
		</ol>
		<div class="add" role="group" aria-label=${words.addBlock}>
			<span class="soft">${words.addBlock}</span>
			${(Object.keys(firstBlocks) as StemBlock['kind'][]).map(
				(kind, index) =>
					html`<button type="button" data-add=${index === 0 ? `/${path.join('/')}` : nothing} @click=${() => add(kind)}>${words.block[kind]}</button>`,
			)}
		</div>`;
}

function renderBlockFields(editor: Editor, path: Path, block: StemBlock): TemplateResult {
	switch (block.kind) {
		case 'paragraph':
			return renderProse({
				editor,
				path: [...path, 'text'],
				label: words.text,
				value: block.text,
				hint: words.mathHint,
			});
		case 'mathematics':
			return renderText({ editor, path: [...path, 'math'], label: words.math, value: block.math, isMath: true });
		case 'figure':
			return renderFigureFields(editor, [...path, 'figure'], block.figure);
		case 'table':
			return renderTableFields(editor, path, block);
	}
}

function renderTableFields(editor: Editor, path: Path, table: TableBlock): TemplateResult {
	const { header, rows } = table;
	const cell = (at: Path, label: string, value: string): TemplateResult =>
		html`<td><input type="text" aria-label=${label} data-path=${`/${at.join('/')}`} .value=${value} @input=${({ target }: Event) => target instanceof HTMLInputElement && editor.change(at, target.value)} /></td>`;
	const resize = (by: 1 | -1): void => {
		const resized = (cells: readonly string[]): readonly string[] =>
			by === 1 ? [...cells, '`0`'] : cells.slice(0, -1);
		editor.change(path, { ...table, header: resized(header), rows: rows.map(resized) });
	};
	return html`
		${renderText({ editor, path: [...path, 'caption'], label: words.caption, value: table.caption, isOptional: true })}
		<div class="scroll" tabindex="0" role="group" aria-label=${words.block.table}><table>
			<tr>${header.map((value, column) => cell([...path, 'header', column], words.headerCell(column + 1), value))}<td></td></tr>
			${rows.map(
				(row, index) => html`<tr>
					${row.map((value, column) => cell([...path, 'rows', index, column], words.cell(index + 1, column + 1), value))}
					<td>${renderListButtons(editor, [...path, 'rows'], index, rows.length, words.row(index + 1), 1)}</td>
				</tr>`,
			)}
		</table></div>
		<div class="add">
			<button type="button" data-add="/${[...path, 'rows'].join('/')}" @click=${() =>
				editor.insert(
					[...path, 'rows'],
					rows.length,
					header.map(() => '`0`'),
				)}>${words.addRow}</button>
			<button type="button" ?disabled=${header.length >= 6} @click=${() => resize(1)}>${words.addColumn}</button>
			<button type="button" ?disabled=${header.length <= 2} @click=${() => resize(-1)}>${words.removeColumn}</button>
		</div>`;
}
