import { html, nothing, type TemplateResult } from 'lit';
import type { FormSummary, GroupEntry, ReadingOrder } from '../../../item-bank/types.ts';
import { readingText as text } from '../../messages/reading.ts';
import { readCodePairs } from '../../results/code-pairs.ts';

/** Which class sat which form when, as it is chosen. */
export interface SittingChoice {
	readonly form: string;
	readonly group: string;
	readonly date: string;
	readonly mode: ReadingOrder['mode'];
}

/** What may be in the sitting already. */
export type Onto = NonNullable<ReadingOrder['onto']>;

/** The value of the field an event comes from. */
export function fieldValue(event: Event): string {
	return (event.target as HTMLSelectElement | HTMLInputElement | HTMLTextAreaElement).value;
}

function fileOf(event: Event): File | undefined {
	return (event.target as HTMLInputElement).files?.[0];
}

/** Form, class, day, and where responses come from. Where a column names the class, no class is asked for. */
export function renderSittingFields(
	known: { readonly forms: readonly FormSummary[]; readonly groups: readonly GroupEntry[] },
	shown: {
		readonly sitting: SittingChoice;
		readonly groupColumn: number;
		readonly fault: 'group' | 'date' | undefined;
	},
	set: (part: Partial<SittingChoice>) => void,
): TemplateResult {
	const { sitting, groupColumn, fault } = shown;
	const group = html`<div class="field"><label>${text.group}
		<select aria-invalid=${fault === 'group'} aria-describedby="group-fault" @change=${(event: Event) => set({ group: fieldValue(event) })}>
			<option value="">${text.choose}</option>
			${known.groups.map(({ id, group: { name } }) => html`<option value=${id} .selected=${id === sitting.group}>${name}</option>`)}
		</select></label>
		<span class="fault" id="group-fault">${fault === 'group' ? text.needGroup : ''}</span>
	</div>`;
	return html`<div class="fields">
		<label class="field">${text.form}
			<select @change=${(event: Event) => set({ form: fieldValue(event) })}>
				<option value="">${text.choose}</option>
				${known.forms.map(({ id, title }) => html`<option value=${id} .selected=${id === sitting.form}>${title}</option>`)}
			</select>
		</label>
		${groupColumn > 0 ? html`<p class="soft">${text.groupFound(groupColumn)}</p>` : group}
		<div class="field"><label>${text.date}
			<input type="date" .value=${sitting.date} aria-invalid=${fault === 'date'} aria-describedby="date-fault" @change=${(event: Event) => set({ date: fieldValue(event) })} /></label>
			<span class="fault" id="date-fault">${fault === 'date' ? text.needDate : ''}</span>
		</div>
		<label class="field">${text.mode}
			<select @change=${(event: Event) => set({ mode: fieldValue(event) as SittingChoice['mode'] })}>
				${(['paper', 'platform', 'hand'] as const).map((mode) => html`<option value=${mode} .selected=${mode === sitting.mode}>${text.modes[mode]}</option>`)}
			</select>
		</label>
	</div>`;
}

/** Where a file is dropped or chosen, and the answer map where results come from a platform. */
export function renderFileFields(
	shown: { readonly needsForm: boolean; readonly isOver: boolean },
	act: {
		readonly take: (file: File | undefined) => void;
		readonly takeMap: (file: File | undefined) => void;
		readonly hover: (isOver: boolean) => void;
	},
): TemplateResult {
	const over = (event: DragEvent): void => {
		event.preventDefault();
		act.hover(true);
	};
	const drop = (event: DragEvent): void => {
		event.preventDefault();
		act.hover(false);
		const field = (event.currentTarget as HTMLElement).querySelector('input');
		if (field && event.dataTransfer) field.files = event.dataTransfer.files;
		act.take(event.dataTransfer?.files[0]);
	};
	return html`
		<div class=${shown.isOver ? 'drop over' : 'drop'} @dragover=${over} @dragleave=${() => act.hover(false)} @drop=${drop}>
			<label class="field">${text.drop}
				<input type="file" accept=".csv,.tsv,.txt,text/csv" aria-label=${text.file} @change=${(event: Event) => act.take(fileOf(event))} />
			</label>
		</div>
		${shown.needsForm ? html`<p class="fault">${text.needForm}</p>` : nothing}
		<details>
			<summary>${text.map}</summary>
			<p class="soft">${text.mapNote}</p>
			<input type="file" accept=".csv,text/csv" aria-label=${text.map} @change=${(event: Event) => act.takeMap(fileOf(event))} />
		</details>`;
}

/** The list that translates names to codes; open where no column holds codes. */
export function renderCodeFields(codes: string, isOpen: boolean, set: (codes: string) => void): TemplateResult {
	const { pairs, bad } = readCodePairs(codes);
	return html`<details ?open=${isOpen}>
		<summary>${text.codes}${pairs.length > 0 ? html` <span class="soft">${text.codesCount(pairs.length)}</span>` : nothing}</summary>
		<p class="soft">${text.codesNote}</p>
		<textarea rows="5" cols="40" aria-label=${text.codes} aria-invalid=${bad.length > 0} aria-describedby="codes-fault" .value=${codes} @change=${(event: Event) => set(fieldValue(event))}></textarea>
		<p class="fault" id="codes-fault">${bad.length > 0 ? text.codesBad(bad) : ''}</p>
		<label class="field">${text.codesFile}
			<input type="file" accept=".csv,.txt,text/csv" @change=${async (event: Event) => set((await fileOf(event)?.text()) ?? '')} />
		</label>
	</details>`;
}

/** What to do with responses that are there, then try or read. Once tried, reading is the button to press. */
export function renderReadingFields(
	shown: { readonly onto: Onto; readonly isBusy: boolean; readonly came: 'nothing' | 'tried' | 'read' },
	act: { readonly setOnto: (onto: Onto) => void; readonly read: (dryRun: boolean) => void },
): TemplateResult {
	const { onto, isBusy, came } = shown;
	return html`<h3>${text.steps.try}</h3>
		<label class="field">${text.onto}
			<select @change=${(event: Event) => act.setOnto(fieldValue(event) as Onto)}>
				${(['nothing', 'add', 'replace'] as const).map((each) => html`<option value=${each} .selected=${each === onto}>${text.ontos[each]}</option>`)}
			</select>
		</label>
		<div class="acts">
			<button class=${came === 'nothing' ? 'primary' : ''} ?disabled=${isBusy} @click=${() => act.read(true)}>${text.tryIt}</button>
			<button class=${came === 'tried' ? 'primary' : ''} ?disabled=${isBusy || came === 'read'} @click=${() => act.read(false)}>${text.read}</button>
		</div>`;
}
