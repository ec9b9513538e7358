import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { findFramework, normalizeCode } from '../../item-bank/standards/code.ts';
import type { FormDetails, FormSummary, FrameworkList, ItemPage } from '../../item-bank/types.ts';
import { doks, kinds, modelColumns, statuses } from '../board/board-state.ts';
import { type FindState, type MarkName, markNames, roles } from '../find/find-state.ts';
import { findText } from '../messages/find.ts';
import { words } from '../messages/words.ts';
import { controlStyles } from './control-styles.ts';
import { findMarginStyles } from './find-margin-styles.ts';
import './zp-tally.ts';

type Facets = NonNullable<ItemPage['facets']>;
type Value = string | number;

/** Values a list always offers, so that nothing moves while counts change. */
const fixedValues: Readonly<Partial<Record<MarkName, readonly Value[]>>> = {
	model: modelColumns,
	kind: kinds,
	dok: doks,
	status: statuses,
	role: roles,
};

/**
 * What narrows a search, with the number of items behind each value, and the form to add to. Fires find-changed with the part of
 * the state that was chosen, and section-chosen with the number of a section.
 */
export class ZpFindMargin extends LitElement {
	static override properties = {
		state: { attribute: false },
		facets: { attribute: false },
		frameworks: { attribute: false },
		forms: { attribute: false },
		form: { attribute: false },
		section: { type: Number },
	};
	declare state: FindState;
	declare facets: Facets | undefined;
	declare frameworks: FrameworkList;
	declare forms: readonly FormSummary[];
	declare form: FormDetails | undefined;
	/** Section of the form that gets the items, counted from 0. */
	declare section: number;

	static override styles = [controlStyles, findMarginStyles];

	private change(part: Partial<FindState>): void {
		this.dispatchEvent(new CustomEvent<Partial<FindState>>('find-changed', { detail: part }));
	}

	private mark(name: MarkName, value: Value): void {
		const before: readonly Value[] = this.state[name];
		const after = before.includes(value) ? before.filter((each) => each !== value) : [...before, value];
		this.change({ [name]: after });
	}

	private chooseFramework(event: Event): void {
		const [id = '', edition = ''] = chosenIn(event).split(' ');
		this.change({ framework: { id, edition }, code: undefined, hasBelow: false, hasAny: false });
	}

	private chooseCode(event: Event): void {
		const code = chosenIn(event);
		this.change(code === '' ? { code: undefined, hasBelow: false, hasAny: false } : { code });
	}

	private chooseSection(event: Event): void {
		this.dispatchEvent(new CustomEvent<number>('section-chosen', { detail: Number(chosenIn(event)) }));
	}

	protected override render(): TemplateResult {
		return html`
			${this.renderForm()} ${this.renderStandard()}
			${markNames.map((name) => this.renderPart(name))}
		`;
	}

	private renderForm(): TemplateResult {
		const { form, state } = this;
		const sections = form?.record.form.sections ?? [];
		return html`<section>
			<label class="field">${findText.addTo}
				<select @change=${(event: Event) => this.change({ form: chosenIn(event) || undefined })}>
					<option value="">${findText.noForm}</option>
					${this.forms.map(({ id, title }) => html`<option value=${id} ?selected=${id === state.form}>${title}</option>`)}
				</select>
			</label>
			${
				sections.length < 2
					? nothing
					: html`<label class="field plain">${findText.section}
						<select @change=${(event: Event) => this.chooseSection(event)}>
							${sections.map(({ title }, index) => html`<option value=${index} ?selected=${index === this.section}>${title}</option>`)}
						</select>
					</label>`
			}
			${state.form === undefined ? html`<p class="soft">${findText.addNote}</p>` : nothing}
		</section>`;
	}

	private renderStandard(): TemplateResult {
		const { framework: chosen, hasBelow, hasAny } = this.state;
		const framework = chosen && findFramework(chosen.id, chosen.edition);
		const asked = this.state.code;
		const code = framework && asked !== undefined ? (normalizeCode(framework, asked) ?? asked) : asked;
		const standards = framework?.standards ?? [];
		const standard = standards.find((each) => each.code === code);
		const counts = new Map(this.facets?.code?.map(({ value, count }) => [String(value), count]));
		const isUnknown = code !== undefined && !standard;
		return html`<section>
			<label class="field">${findText.framework}
				<select @change=${(event: Event) => this.chooseFramework(event)}>
					${this.frameworks.map(
						({ framework: id, edition, name }) =>
							html`<option value="${id} ${edition}" ?selected=${id === chosen?.id && edition === chosen.edition}>${findText.frameworkName(name, edition)}</option>`,
					)}
				</select>
			</label>
			<label class="field">${findText.standard}
				<select @change=${(event: Event) => this.chooseCode(event)}>
					<option value="">${findText.everyStandard}</option>
					${isUnknown ? html`<option value=${code} selected>${code}</option>` : nothing}
					${standards.map((each) => html`<option value=${each.code} ?selected=${each === standard}>${findText.standardCount(each.code, counts.get(each.code) ?? 0)}</option>`)}
				</select>
			</label>
			${standard ? html`<p class="soft">${standard.statement}</p>` : nothing}
			${
				code === undefined
					? nothing
					: html`<label class="check"><input type="checkbox" .checked=${hasBelow} @change=${() => this.change({ hasBelow: !hasBelow })} /> ${findText.below}</label>
						<label class="check"><input type="checkbox" .checked=${hasAny} @change=${() => this.change({ hasAny: !hasAny })} /> ${findText.any}</label>`
			}
		</section>`;
	}

	private renderPart(name: MarkName): TemplateResult | typeof nothing {
		const marked: readonly Value[] = this.state[name];
		const counts = new Map<Value, number>(
			this.facets?.[name].filter(({ value }) => value !== '').map(({ value, count }) => [value, count]),
		);
		const values = fixedValues[name] ?? [...new Set([...counts.keys(), ...marked])].sort(compareValues);
		if (values.length === 0) return nothing;
		return html`<fieldset>
			<legend>${findText.parts[name]}</legend>
			${values.map((value) => {
				const count = counts.get(value) ?? 0;
				return html`<label class="check">
					<input type="checkbox" .checked=${marked.includes(value)} @change=${() => this.mark(name, value)} />
					<span class="said">${sayValue(name, value)}</span>
					${!this.facets ? nothing : count === 0 ? html`<span class="none"></span><span class="spoken">${findText.noneOf}</span>` : html`<zp-tally count=${count}></zp-tally>`}
				</label>`;
			})}
		</fieldset>`;
	}
}

function sayValue(name: MarkName, value: Value): string {
	const names: Readonly<Record<string, string>> | undefined = {
		model: words.models,
		kind: words.kinds,
		status: words.statuses,
		role: findText.roles,
		dok: undefined,
		points: undefined,
		setting: undefined,
	}[name];
	return names?.[String(value)] ?? findText.setting(String(value));
}

function compareValues(a: Value, b: Value): number {
	return typeof a === 'number' && typeof b === 'number' ? a - b : String(a).localeCompare(String(b));
}

function chosenIn(event: Event): string {
	return event.target instanceof HTMLSelectElement ? event.target.value : '';
}

customElements.define('zp-find-margin', ZpFindMargin);
