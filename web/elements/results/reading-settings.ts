import { html, nothing, type TemplateResult } from 'lit';
import { listAnswerPlaces } from '../../../item-bank/forms/answer-places.ts';
import type { FormDetails, ReadingPreview } from '../../../item-bank/types.ts';
import { readingText as text } from '../../messages/reading.ts';
import { words } from '../../messages/words.ts';
import {
	type ColumnUse,
	listMissing,
	listStray,
	type ReadingChoices,
	useColumn,
	useLayout,
} from '../../results/reading-choices.ts';

/** A place of the form that a column may answer. */
export interface PlaceName {
	readonly label: string;
	readonly kind: keyof typeof words.kinds;
}

/** Faults of cells told below the first rows. */
const mostFaults = 5;

type Change = (choices: ReadingChoices) => void;

/** The places of a form that columns may answer, in form order. */
export function listPlaceNames({ record, items }: FormDetails): readonly PlaceName[] {
	return listAnswerPlaces(record.form, items).map(({ label, item: { kind } }) => ({ label, kind }));
}

/** What was understood of a file, what each column is used for, and what is still missing or does not fit. */
export function renderMapping(
	{ encoding, delimiter, columns, problems, rows }: ReadingPreview,
	shown: {
		readonly choices: ReadingChoices;
		readonly places: readonly PlaceName[];
		readonly isStudentKnown: boolean;
	},
	change: Change,
): TemplateResult {
	const { choices, places, isStudentKnown } = shown;
	const missing = listMissing(choices);
	const stray = choices.layout === 'wide' ? listStray(columns, choices.uses) : [];
	return html`<h3>${text.steps.columns}</h3>
		<p>${text.understood(encoding, text.delimiters[delimiter] ?? delimiter, columns.length)}</p>
		${isStudentKnown || choices.uses.includes('student') ? nothing : html`<p class="failure">${text.noStudent}</p>`}
		${renderColumns(columns, choices, places, change)}
		${stray.length > 0 ? html`<p class="short">${text.strayPlaces(stray)}</p>` : nothing}
		${problems.length === 0 && rows.length === 0 ? html`<p class="fault">${text.noRows}</p>` : nothing}
		${missing.map((each) => html`<p class="fault">${text.missing[each]}</p>`)}
		${missing.length > 0 ? nothing : problems.map(({ message }) => html`<p class="fault">${message}</p>`)}
		${renderSettings(choices, change)}`;
}

function renderColumns(
	columns: ReadingPreview['columns'],
	choices: ReadingChoices,
	places: readonly PlaceName[],
	change: Change,
): TemplateResult {
	const uses: readonly (readonly [ColumnUse, string])[] = [
		['discarded', text.uses.discarded],
		['student', text.uses.student],
		['group', text.uses.group],
		...(choices.layout === 'long'
			? ([
					['place', text.uses.place],
					['answer', text.uses.answer],
				] as const)
			: places.map(({ label, kind }) => [`item:${label}`, text.place(label, words.kinds[kind])] as const)),
	];
	const discarded = choices.uses.filter((use) => use === 'discarded').length;
	return html`
		<fieldset class="fields">
			<legend class="spoken">${text.layout}</legend>
			${(['wide', 'long'] as const).map(
				(layout) =>
					html`<label class="mark"><input type="radio" name="layout" .checked=${choices.layout === layout} @change=${() => change(useLayout(choices, layout))} /> ${text.layouts[layout]}</label>`,
			)}
		</fieldset>
		<div class="wide" tabindex="0" role="region" aria-label=${text.columnTable}>
			<table>
				<caption class="spoken">${text.columnTable}</caption>
				<thead><tr><th scope="col" class="count">${text.number}</th><th scope="col">${text.heading}</th><th scope="col">${text.use}</th></tr></thead>
				<tbody>
					${columns.map(({ number, heading }, index) => {
						const used = choices.uses[index] ?? 'discarded';
						return html`<tr class=${used === 'discarded' ? 'soft' : ''}>
							<td class="count">${number}</td>
							<th scope="row">${heading}</th>
							<td>
								<select aria-label=${text.useOf(number, heading)} @change=${(event: Event) => change(useColumn(choices, index, (event.target as HTMLSelectElement).value as ColumnUse))}>
									${uses.map(([use, name]) => html`<option value=${use} .selected=${use === used}>${name}</option>`)}
								</select>
							</td>
						</tr>`;
					})}
				</tbody>
			</table>
		</div>
		<p class="soft">${text.discardedCount(discarded)}</p>
	`;
}

/** How cells are read: what they hold, what stands for no response, what happens to codes that repeat or are new. */
function renderSettings(choices: ReadingChoices, change: Change): TemplateResult {
	const pick = <Name extends keyof ReadingChoices>(
		name: Name,
		label: string,
		options: readonly (readonly [string, string])[],
	): TemplateResult => html`<label class="field">${label}
		<select @change=${(event: Event) => change({ ...choices, [name]: (event.target as HTMLSelectElement).value })}>
			${options.map(([value, shown]) => html`<option value=${value} .selected=${choices[name] === value}>${shown}</option>`)}
		</select>
	</label>`;
	const note = (
		name: 'omitted' | 'notReached' | 'invalid',
		label: string,
	): TemplateResult => html`<label class="field">${label}
		<input type="text" size="14" placeholder=${text.codesHint} .value=${choices[name]} @change=${(event: Event) => change({ ...choices, [name]: (event.target as HTMLInputElement).value })} />
	</label>`;
	const states = ['omitted', 'not-reached'].map((state) => [state, text.states[state] ?? state] as const);
	return html`<details>
		<summary>${text.more}</summary>
		<div class="fields">
			${pick('holds', text.holds, Object.entries(text.holdsWhat))}
			${pick('numbers', text.numbers, Object.entries(text.numbersAre))}
			${pick('blanks', text.blanks, states)}
			${choices.layout === 'wide' ? pick('blanksAtEnd', text.blanksAtEnd, states) : nothing}
			${note('omitted', text.omitted)} ${note('notReached', text.notReached)} ${note('invalid', text.invalid)}
			${pick('repeats', text.repeats, Object.entries(text.repeatsDo))}
			${pick('newStudents', text.newStudents, Object.entries(text.newStudentsDo))}
			${pick('delimiter', text.delimiter, [['', text.delimiterFound], ...Object.entries(text.delimiters)])}
			<label class="field">${text.headingRows}
				<input type="number" min="0" max="20" .value=${String(choices.headingRows)} @change=${(event: Event) => change({ ...choices, headingRows: boundRows((event.target as HTMLInputElement).valueAsNumber) })} />
			</label>
		</div>
	</details>`;
}

function boundRows(rows: number): number {
	return Number.isFinite(rows) ? Math.min(20, Math.max(0, Math.round(rows))) : 1;
}

/** The first rows as they would be read, what cannot be read marked with why. */
export function renderPreview(rows: ReadingPreview['rows']): TemplateResult {
	const places = [...new Set(rows.flatMap(({ answers }) => answers.map(({ place }) => place)))];
	const faults = rows.flatMap(({ line, answers }) =>
		answers.flatMap(({ reads }) => (text.states[reads] === undefined ? [text.faultAt(line, reads)] : [])),
	);
	return html`<h4>${text.preview}</h4>
		<div class="wide" tabindex="0" role="region" aria-label=${text.preview}>
			<table>
				<caption class="spoken">${text.preview}</caption>
				<thead><tr>
					<th scope="col" class="count">${text.line}</th><th scope="col">${text.student}</th>
					${places.map((place) => html`<th scope="col">${place}</th>`)}
				</tr></thead>
				<tbody>
					${rows.map(
						({ line, student, answers }) => html`<tr>
							<td class="count">${line}</td><th scope="row">${student}</th>
							${places.map((place) => {
								const answer = answers.find((each) => each.place === place);
								if (!answer) return html`<td></td>`;
								const state = text.states[answer.reads];
								return html`<td>${answer.raw} <span class=${state === undefined ? 'fault' : 'reads'}>${state ?? text.unreadable}</span></td>`;
							})}
						</tr>`,
					)}
				</tbody>
			</table>
		</div>
		${faults.slice(0, mostFaults).map((fault) => html`<p class="fault">${fault}</p>`)}
		${faults.length > mostFaults ? html`<p class="fault">${text.moreFaults(faults.length - mostFaults)} ${text.pointsHint}</p>` : nothing}`;
}
