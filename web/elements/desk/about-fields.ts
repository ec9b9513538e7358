import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findFramework, findStandard } from '../../../item-bank/standards/code.ts';
import type { Standard } from '../../../item-bank/standards/framework.ts';
import { frameworks } from '../../../item-bank/standards/frameworks.ts';
import type { Alignment, Item } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { words as shared } from '../../messages/words.ts';
import type { Editor } from './editor.ts';
import { renderListButtons, renderNumber, renderSelect, renderText } from './fields.ts';

/** Name, model, worth, context and tags of an item, or of a part of a set. */
export function renderAboutFields(editor: Editor, item: Item, path: Path): TemplateResult {
	const { context } = item;
	const setRole = (role: string): void =>
		editor.change(
			[...path, 'context'],
			role === 'none' ? undefined : { setting: context?.setting ?? 'mine-lift', role },
		);
	const setTags = (typed: string): void => {
		const tags = typed
			.split(',')
			.map((tag) => tag.trim())
			.filter((tag) => tag !== '');
		editor.change([...path, 'tags'], tags.length === 0 ? undefined : tags);
	};
	const tagsId = `tags${path.join('-')}`;
	return html`
		${renderText({ editor, path: [...path, 'name'], label: words.name, value: item.name })}
		<div class="grid">
			${renderSelect({ editor, path: [...path, 'given'], label: words.given, value: item.given, names: shared.models })}
			${item.kind === 'gridded' || item.kind === 'point' || item.kind === 'explanation' ? nothing : renderSelect({ editor, path: [...path, 'answerIn'], label: words.answerIn, value: item.answerIn, names: words.answerForms })}
			${renderNumber({ editor, path: [...path, 'points'], label: words.pointsField, value: item.points, min: 1, max: 10 })}
			${renderNumber({ editor, path: [...path, 'dok'], label: words.dok, value: item.dok, min: 1, max: 4 })}
			${renderSelect({ editor, path: [...path, 'context', 'role'], label: words.role, value: context?.role ?? 'none', names: words.roles, choose: setRole })}
			${context ? renderText({ editor, path: [...path, 'context', 'setting'], label: words.setting, value: context.setting }) : nothing}
		</div>
		<div class="field" data-path=${`${path.map((step) => `/${step}`).join('')}/tags`}>
			<label for=${tagsId}>${words.tags}</label>
			<input type="text" id=${tagsId} aria-describedby="${tagsId}-hint" .value=${(item.tags ?? []).join(', ')} @change=${({ target }: Event) => target instanceof HTMLInputElement && setTags(target.value)} />
			<p class="hint" id="${tagsId}-hint">${words.tagsHint}</p>
		</div>`;
}

/** The standards an item is aligned to, in any framework; one of them is the one it counts under. */
export function renderAlignmentFields(editor: Editor, alignments: readonly Alignment[]): TemplateResult {
	const list: Path = ['alignments'];
	const add = (): void => {
		const taken = alignments.map(({ framework, edition }) => `${framework} ${edition}`);
		const free = frameworks.find(({ id, edition }) => !taken.includes(`${id} ${edition}`)) ?? frameworks[0];
		if (free) editor.insert(list, alignments.length, alignTo(`${free.id} ${free.edition}`, undefined));
	};
	return html`<ol class="list">
			${alignments.map(
				(alignment, index) => html`<li class="entry" data-path="/alignments/${index}">
					<div class="entry-head">
						<label class="switch"><input type="radio" name="primary" .checked=${live(alignment.primary === true)} @change=${() => makePrimary(editor, alignments, index)} /> ${words.primary}</label>
						${renderListButtons(editor, list, index, alignments.length, words.alignment(alignment.code), 1)}
					</div>
					${renderAlignment(editor, index, alignment)}
				</li>`,
			)}
		</ol>
		<div class="add"><button type="button" data-add="/alignments" ?disabled=${alignments.length >= 20} @click=${add}>${words.addAlignment}</button></div>`;
}

function renderAlignment(editor: Editor, index: number, alignment: Alignment): TemplateResult {
	const { framework, edition, code } = alignment;
	const path: Path = ['alignments', index];
	const primary = alignment.primary === undefined ? {} : { primary: alignment.primary };
	const choose = (chosen: string, wanted: string | undefined): void =>
		editor.change(path, { ...alignTo(chosen, wanted), ...primary });
	const standards = findFramework(framework, edition)?.standards ?? [];
	const codes = Object.fromEntries(standards.map(({ code: each }) => [each, each]));
	return html`<div class="grid">
			${renderSelect({ editor, path: [...path, 'framework'], label: words.framework, value: `${framework} ${edition}`, names: frameworkNames, choose: (chosen) => choose(chosen, undefined) })}
			${renderSelect({ editor, path: [...path, 'code'], label: words.code, value: code, names: code in codes ? codes : { [code]: code, ...codes }, choose: (chosen) => choose(`${framework} ${edition}`, chosen) })}
			${renderText({ editor, path: [...path, 'grade'], label: words.grade, value: alignment.grade })}
			${renderSelect({ editor, path: [...path, 'extent'], label: words.extent, value: alignment.extent, names: words.extents })}
		</div>
		<p class="statement">${findStandard(framework, edition, code)?.statement ?? nothing}</p>`;
}

/** Frameworks by id and edition. */
export const frameworkNames: Readonly<Record<string, string>> = Object.fromEntries(
	frameworks.map(({ id, edition, name }) => [
		`${id} ${edition}`,
		name.includes(edition) ? name : `${name}, ${edition}`,
	]),
);

/** An alignment to a standard of a framework, the first where none is named; grade as the framework gives it. */
export function alignTo(chosen: string, code: string | undefined): Alignment {
	const [framework = '', edition = ''] = chosen.split(' ');
	const known = findFramework(framework, edition);
	const signed = known?.standards.filter(({ isPositiveOnly }) => isPositiveOnly !== true) ?? [];
	const isLeaf = (each: Standard): boolean => !signed.some(({ parent }) => parent === each.code);
	const standard = signed.find((each) => each.code === code) ?? signed.find(isLeaf);
	return { framework, edition, code: code ?? standard?.code ?? '', grade: standard?.grade ?? '6', extent: 'partial' };
}

function makePrimary(editor: Editor, alignments: readonly Alignment[], wanted: number): void {
	const changed = alignments.map(({ primary: _before, ...bare }, index) =>
		index === wanted ? { ...bare, primary: true } : bare,
	);
	editor.change(['alignments'], changed);
}
