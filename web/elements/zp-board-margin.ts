import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { BlueprintEntry, FormSummary, FrameworkList, GroupEntry, SittingEntry } from '../../item-bank/types.ts';
import { type BoardFilter, type BoardState, doks, kinds, pointValues, statuses } from '../board/board-state.ts';
import { words } from '../messages/words.ts';
import { controlStyles } from './control-styles.ts';

/**
 * Where you are: the framework the board is seen through, the blueprint and form of the plan, the items that count. Fires
 * board-changed with the part of the state that was chosen.
 */
export class ZpBoardMargin extends LitElement {
	static override properties = {
		state: { attribute: false },
		frameworks: { attribute: false },
		blueprints: { attribute: false },
		forms: { attribute: false },
		sittings: { attribute: false },
		groups: { attribute: false },
	};
	declare state: BoardState;
	declare frameworks: FrameworkList;
	declare blueprints: readonly BlueprintEntry[];
	declare forms: readonly FormSummary[];
	declare sittings: readonly SittingEntry[];
	declare groups: readonly GroupEntry[];

	static override styles = [
		controlStyles,
		css`
			:host { display: block; font-size: 15px; line-height: 21px; }
			section { padding: 14px 0; border-bottom: 1px solid var(--paper-line); display: grid; gap: 7px; }
			section:first-child { padding-top: 0; }
			.field { display: grid; gap: 2px; font-weight: 600; }
			select { width: 100%; font-size: 15px; }
			.edition { display: flex; gap: 8px; align-items: center; }
			p { margin: 0; font-size: 14px; }
			summary, legend { font-weight: 600; min-height: 28px; line-height: 28px; }
			.check { display: flex; gap: 8px; align-items: center; min-height: 28px; }
			.across { display: flex; flex-wrap: wrap; gap: 0 14px; }
			@media (pointer: coarse) { .check { min-height: 44px; } }
		`,
	];

	private change(part: Partial<BoardState>): void {
		this.dispatchEvent(new CustomEvent<Partial<BoardState>>('board-changed', { detail: part }));
	}

	private chooseFramework(id: string, edition?: string): void {
		const found = this.frameworks.find((each) => each.framework === id && (edition ?? each.edition) === each.edition);
		if (found) this.change({ framework: { id, edition: found.edition }, cell: undefined, closed: [] });
	}

	private mark<Name extends keyof BoardFilter>(name: Name, value: BoardFilter[Name][number]): void {
		const before: readonly (string | number)[] = this.state.filter[name];
		const after = before.includes(value) ? before.filter((each) => each !== value) : [...before, value];
		this.change({ filter: { ...this.state.filter, [name]: after } });
	}

	protected override render(): TemplateResult {
		const { framework, blueprint, form, filter } = this.state;
		const names = new Map(this.frameworks.map((each) => [each.framework, each.name]));
		const editions = this.frameworks.filter((each) => each.framework === framework?.id);
		const marked = Object.values(filter).reduce((sum, values) => sum + values.length, 0);
		return html`
			<section>
				<label class="field">${words.board.framework}
					<select @change=${(event: Event) => this.chooseFramework(chosenIn(event))}>
						${[...names].map(([id, name]) => html`<option value=${id} ?selected=${id === framework?.id}>${name}</option>`)}
					</select>
				</label>
				<label class="edition">${words.board.edition}
					<select @change=${(event: Event) => this.chooseFramework(framework?.id ?? '', chosenIn(event))}>
						${editions.map(({ edition }) => html`<option value=${edition} ?selected=${edition === framework?.edition}>${edition}</option>`)}
					</select>
				</label>
				<p class="soft">${words.board.frameworkNote}</p>
			</section>
			<section>
				<label class="field">${words.board.blueprint}
					<select @change=${(event: Event) => this.change({ blueprint: chosenIn(event) || undefined })}>
						<option value="">${words.board.noChoice}</option>
						${this.blueprints.map((each) => html`<option value=${each.id} ?selected=${each.id === blueprint}>${each.blueprint.title}</option>`)}
					</select>
				</label>
				<label class="field">${words.board.form}
					<select @change=${(event: Event) => this.change({ form: chosenIn(event) || undefined })}>
						<option value="">${words.board.noChoice}</option>
						${this.forms.map((each) => html`<option value=${each.id} ?selected=${each.id === form}>${each.title}</option>`)}
					</select>
				</label>
				<p class="soft">${words.board.planNote}</p>
			</section>
			${this.renderSittings()}
			<section>
				<strong>${words.board.filters}</strong>
				${this.renderChecks('status', words.board.status, statuses, (value) => words.statuses[value])}
				${this.renderChecks('dok', words.board.dok, doks, String)}
				${this.renderChecks('points', words.board.points, pointValues, String)}
				<details ?open=${filter.kind.length > 0}>
					<summary>${words.board.kind}</summary>
					<fieldset>
						<legend class="spoken">${words.board.kind}</legend>
						${kinds.map((kind) => this.renderCheck('kind', kind, words.kinds[kind]))}
					</fieldset>
				</details>
				<p class="soft">${words.board.filterNote}</p>
				${marked === 0 ? '' : html`<div><button @click=${() => this.change({ filter: { kind: [], dok: [], status: [], points: [] } })}>${words.board.clear}</button></div>`}
			</section>
		`;
	}

	private renderSittings(): TemplateResult | typeof nothing {
		if (this.sittings.length === 0) return nothing;
		const titleOf = (form: string): string => this.forms.find(({ id }) => id === form)?.title ?? form;
		return html`<section>
			<label class="field">${words.board.sitting}
				<select @change=${(event: Event) => this.change({ sitting: chosenIn(event) || undefined })}>
					<option value="">${words.board.allSittings}</option>
					${this.sittings.map(({ id, sitting }) => html`<option value=${id} ?selected=${id === this.state.sitting}>${words.board.sittingName(titleOf(sitting.form), this.groups.find((each) => each.id === sitting.group)?.group.name ?? sitting.group, sitting.date)}</option>`)}
				</select>
			</label>
			<p class="soft">${words.board.sittingNote}</p>
		</section>`;
	}

	private renderChecks<Name extends keyof BoardFilter>(
		name: Name,
		legend: string,
		values: readonly BoardFilter[Name][number][],
		say: (value: BoardFilter[Name][number]) => string,
	): TemplateResult {
		return html`<fieldset>
			<legend>${legend}</legend>
			<div class="across">${values.map((value) => this.renderCheck(name, value, say(value)))}</div>
		</fieldset>`;
	}

	private renderCheck<Name extends keyof BoardFilter>(
		name: Name,
		value: BoardFilter[Name][number],
		said: string,
	): TemplateResult {
		const marked: readonly (string | number)[] = this.state.filter[name];
		return html`<label class="check">
			<input type="checkbox" .checked=${marked.includes(value)} @change=${() => this.mark(name, value)} /> ${said}
		</label>`;
	}
}

function chosenIn(event: Event): string {
	return event.target instanceof HTMLSelectElement ? event.target.value : '';
}

customElements.define('zp-board-margin', ZpBoardMargin);
