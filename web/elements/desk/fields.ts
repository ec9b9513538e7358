import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type Path, printPath } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import type { Editor } from './editor.ts';

/** One field of an item. */
export interface Field {
	readonly editor: Editor;
	readonly path: Path;
	readonly label: string;
	/** Said below the field. */
	readonly hint?: string;
}

/** Id of the field of a place, as labels and checks refer to it. */
export function fieldId(path: Path): string {
	return `field${path.map((step) => `-${step}`).join('')}`;
}

/** A text; an optional one is taken away when it is empty. */
export function renderText(
	field: Field & { readonly value: string | undefined; readonly isOptional?: boolean; readonly isMath?: boolean },
): TemplateResult {
	const { editor, path, value = '', isOptional = false, isMath = false } = field;
	const write = ({ target }: Event): void => {
		if (!(target instanceof HTMLInputElement)) return;
		editor.change(path, isOptional && target.value === '' ? undefined : target.value);
	};
	return renderField(
		field,
		(about) =>
			html`<input type="text" id=${fieldId(path)} class=${isMath ? 'math' : ''} autocomplete="off" spellcheck=${isMath ? 'false' : 'true'} .value=${live(value)}
				aria-describedby=${about.describedBy} aria-invalid=${about.isInvalid} @input=${write} />`,
	);
}

/** A text of several lines. */
export function renderProse(
	field: Field & { readonly value: string | undefined; readonly isOptional?: boolean; readonly rows?: number },
): TemplateResult {
	const { editor, path, value = '', isOptional = false, rows = 2 } = field;
	const write = ({ target }: Event): void => {
		if (!(target instanceof HTMLTextAreaElement)) return;
		editor.change(path, isOptional && target.value === '' ? undefined : target.value);
	};
	return renderField(
		field,
		(about) =>
			html`<textarea id=${fieldId(path)} rows=${rows} .value=${live(value)} aria-describedby=${about.describedBy} aria-invalid=${about.isInvalid} @input=${write}></textarea>`,
	);
}

/** A whole number; what is no number changes nothing, an optional one is taken away when it is empty. */
export function renderNumber(
	field: Field & {
		readonly value: number | undefined;
		readonly isOptional?: boolean;
		readonly min?: number;
		readonly max?: number;
	},
): TemplateResult {
	const { editor, path, value, isOptional = false, min, max } = field;
	const write = ({ target }: Event): void => {
		if (!(target instanceof HTMLInputElement)) return;
		if (target.value === '' && isOptional) editor.change(path, undefined);
		else if (Number.isInteger(target.valueAsNumber) && target.checkValidity())
			editor.change(path, target.valueAsNumber);
	};
	return renderField(
		field,
		(about) =>
			html`<input type="number" class="number" id=${fieldId(path)} step="1" min=${min ?? nothing} max=${max ?? nothing} .value=${value === undefined ? '' : String(value)}
				aria-describedby=${about.describedBy} aria-invalid=${about.isInvalid} @input=${write} />`,
	);
}

/** One of a few words; the names are what is shown. */
export function renderSelect(
	field: Field & {
		readonly value: string;
		readonly names: Readonly<Record<string, string>>;
		/** What the choice does, instead of putting the word at the place. */
		readonly choose?: (value: string) => void;
	},
): TemplateResult {
	const { editor, path, value, names, choose = (chosen: string) => editor.change(path, chosen) } = field;
	const take = ({ target }: Event): void => {
		if (target instanceof HTMLSelectElement) choose(target.value);
	};
	return renderField(
		field,
		(about) =>
			html`<select id=${fieldId(path)} .value=${live(value)} aria-describedby=${about.describedBy} aria-invalid=${about.isInvalid} @change=${take}>
				${Object.entries(names).map(([name, shown]) => html`<option value=${name} ?selected=${name === value}>${shown}</option>`)}
			</select>`,
	);
}

/** Yes or no; no takes the field away. */
export function renderSwitch(field: Field & { readonly value: boolean }): TemplateResult {
	const { editor, path, label, value } = field;
	return html`<label class="switch"><input type="checkbox" id=${fieldId(path)} data-path=${printPath(path)} .checked=${live(value)}
		@change=${({ target }: Event) => target instanceof HTMLInputElement && editor.change(path, target.checked || undefined)} /> ${label}</label>`;
}

/** Buttons that move or take out one entry of a list. Focus goes to the list's next entry. */
export function renderListButtons(
	editor: Editor,
	list: Path,
	index: number,
	count: number,
	what: string,
	least = 0,
): TemplateResult {
	const press = (act: () => void, to: number, action: string) => (event: Event) => {
		const { currentTarget } = event;
		const root = currentTarget instanceof HTMLElement ? currentTarget.getRootNode() : undefined;
		act();
		if (root instanceof ShadowRoot) void keepFocus(root, list, to, action);
	};
	const button = (
		action: string,
		name: string,
		face: string,
		isOff: boolean,
		act: () => void,
		to: number,
	): TemplateResult =>
		html`<button type="button" class="small" data-list="${printPath(list)}/${index}" data-action=${action} aria-label=${name} title=${name} ?disabled=${isOff} @click=${press(act, to, action)}>${face}</button>`;
	return html`<span class="buttons">
		${button('up', words.up(what), '↑', index === 0, () => editor.move(list, index, index - 1), index - 1)}
		${button('down', words.down(what), '↓', index === count - 1, () => editor.move(list, index, index + 1), index + 1)}
		${button('out', words.remove(what), '×', count <= least, () => editor.remove(list, index), Math.min(index, count - 2))}
	</span>`;
}

/** The keyboard stays with what was moved, or goes to the neighbour of what was taken out. */
async function keepFocus(root: ShadowRoot, list: Path, index: number, action: string): Promise<void> {
	await new Promise(requestAnimationFrame);
	const own = [...root.querySelectorAll<HTMLButtonElement>(`[data-list="${printPath(list)}/${Math.max(0, index)}"]`)];
	const usable = own.filter(({ disabled }) => !disabled);
	const target = usable.find(({ dataset }) => dataset.action === action) ?? usable[0];
	(target ?? root.querySelector<HTMLElement>(`[data-add="${printPath(list)}"]`))?.focus();
}

interface About {
	readonly describedBy: string | typeof nothing;
	readonly isInvalid: 'true' | 'false';
}

/** A control with its label, its hint, and what stops the item at this very place. */
function renderField({ editor, path, label, hint }: Field, control: (about: About) => TemplateResult): TemplateResult {
	const id = fieldId(path);
	const pointer = printPath(path);
	const stops = editor.notes.filter((note) => note.path === pointer && note.severity === 'stop');
	const described = [hint === undefined ? '' : `${id}-hint`, stops.length === 0 ? '' : `${id}-stops`].filter(
		(part) => part !== '',
	);
	const about: About = { describedBy: described.join(' ') || nothing, isInvalid: stops.length > 0 ? 'true' : 'false' };
	return html`<div class="field" data-path=${pointer}>
		<label for=${id}>${label}</label>
		${control(about)}
		${hint === undefined ? nothing : html`<p class="hint" id="${id}-hint">${hint}</p>`}
		${stops.length === 0 ? nothing : html`<div class="stops" id="${id}-stops">${stops.map(({ message }) => html`<p>${message}</p>`)}</div>`}
	</div>`;
}
