import { html, type TemplateResult } from 'lit';
import type { PartItem } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import type { ItemReading } from '../../item-draft/read-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { renderAboutFields, renderAlignmentFields } from './about-fields.ts';
import { renderAnswerFields } from './answer-fields.ts';
import type { Editor } from './editor.ts';
import { renderStemFields } from './stem-fields.ts';

/** Everything an author decides about an item. */
export function renderItemFields(editor: Editor, reading: ItemReading): TemplateResult {
	const { item } = editor;
	const keysOf = (index: number): readonly string[] => {
		const key = reading.parts[index]?.key;
		return key?.kind === 'options' ? key.options : [];
	};
	const answer = (part: PartItem, path: Path, index: number): TemplateResult =>
		html`<section class="group"><h3>${words.parts.answer}</h3>${renderAnswerFields({ editor, part, path, keys: keysOf(index) })}</section>`;
	return html`
		<section class="group"><h3>${words.parts.question}</h3>${renderStemFields(editor, ['stem'], item.stem)}</section>
		${item.kind === 'set' ? item.parts.map((part, index) => renderPart(editor, part, index, answer)) : answer(item, [], 0)}
		<section class="group"><h3>${words.parts.standards}</h3>${renderAlignmentFields(editor, item.alignments)}</section>
		<section class="group"><h3>${words.parts.about}</h3>${renderAboutFields(editor, item, [])}</section>
	`;
}

function renderPart(
	editor: Editor,
	part: PartItem,
	index: number,
	answer: (part: PartItem, path: Path, index: number) => TemplateResult,
): TemplateResult {
	const path: Path = ['parts', index];
	return html`<section class="part">
		<h3>${words.part(index + 1)}</h3>
		<section class="group"><h3>${words.parts.question}</h3>${renderStemFields(editor, [...path, 'stem'], part.stem)}</section>
		${answer(part, path, index)}
		<section class="group"><h3>${words.parts.about}</h3>${renderAboutFields(editor, part, path)}</section>
	</section>`;
}
