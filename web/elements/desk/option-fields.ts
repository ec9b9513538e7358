import { html, nothing, type TemplateResult } from 'lit';
import { findPattern } from '../../../item-bank/patterns/index.ts';
import type { Option, OptionContent } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import type { Editor } from './editor.ts';
import { renderListButtons, renderProse, renderSelect, renderText } from './fields.ts';
import { firstFigures, renderFigureFields } from './figure-fields.ts';

/** A list of options or entries. */
export interface OptionList {
	readonly path: Path;
	readonly options: readonly Option[];
	/** Letters of the right ones. */
	readonly keys: readonly string[];
	readonly name: (letter: string) => string;
	readonly addName: string;
	readonly least: number;
	readonly most: number;
}

/** Options or entries, each with what it shows and the wrong ideas that lead to it. */
export function renderOptionFields(editor: Editor, list: OptionList): TemplateResult {
	const { path, options, least, most } = list;
	const letter = (index: number): string => 'abcdefgh'.charAt(index);
	const add = (): void =>
		editor.insert(path, options.length, { id: letter(options.length), content: { kind: 'mathematics', math: '0' } });
	return html`<ol class="list">
			${options.map((option, index) => {
				const name = list.name(option.id.toUpperCase());
				return html`<li class="entry" data-path=${`/${[...path, index].join('/')}`}>
					<div class="entry-head">
						<h4>${name}${list.keys.includes(option.id) ? html` <span class="key">${words.isKey}</span>` : nothing}</h4>
						${renderListButtons(editor, path, index, options.length, name, least)}
					</div>
					${renderContentFields(editor, [...path, index, 'content'], option.content)}
					${renderPatterns(option)}
				</li>`;
			})}
		</ol>
		<div class="add"><button type="button" data-add=${`/${path.join('/')}`} ?disabled=${options.length >= most} @click=${add}>${list.addName}</button></div>`;
}

function renderContentFields(editor: Editor, path: Path, content: OptionContent): TemplateResult {
	return html`<div class="grid">
			${renderSelect({
				editor,
				path: [...path, 'kind'],
				label: words.contentKind,
				value: content.kind,
				names: words.contentKinds,
				choose: (kind) => editor.change(path, turnContent(content, kind as OptionContent['kind'])),
			})}
			${content.kind === 'mathematics' ? renderText({ editor, path: [...path, 'math'], label: words.math, value: content.math, isMath: true }) : nothing}
			${content.kind === 'text' ? renderText({ editor, path: [...path, 'worth'], label: words.worth, value: content.worth, isOptional: true, isMath: true }) : nothing}
		</div>
		${content.kind === 'text' ? renderProse({ editor, path: [...path, 'text'], label: words.text, value: content.text, rows: 1 }) : nothing}
		${content.kind === 'figure' ? renderFigureFields(editor, [...path, 'figure'], content.figure) : nothing}`;
}

/** What was written goes along where it can. */
function turnContent(content: OptionContent, kind: OptionContent['kind']): OptionContent {
	switch (kind) {
		case 'mathematics':
			return { kind, math: content.kind === 'text' ? (content.worth ?? '0') : '0' };
		case 'text':
			return content.kind === 'mathematics'
				? { kind, text: `\`${content.math}\``, worth: content.math }
				: { kind, text: 'Text' };
		case 'figure':
			return { kind, figure: firstFigures.counters };
	}
}

function renderPatterns({ patterns = [] }: Option): TemplateResult | typeof nothing {
	if (patterns.length === 0) return nothing;
	return html`<ul class="patterns">${patterns.map((id) => html`<li>${findPattern(id)?.name ?? id}</li>`)}</ul>`;
}
