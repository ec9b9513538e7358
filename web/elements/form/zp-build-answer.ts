import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import type {
	BuildResult,
	ConflictEntry,
	Form,
	FormsBuilt,
	FormsImpossible,
	MissingItems,
} from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { newFormId, writePlan } from '../../forms/draft-storage.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import { layDown } from './zp-another-panel.ts';
import './zp-balance-table.ts';

const text = formsText.build;

/** What came of a build: the forms and what is proved of them, or what stands in the way, in the words of the blueprint. */
export class ZpBuildAnswer extends LitElement {
	static override properties = {
		result: { attribute: false },
		plan: { type: String },
		kept: { state: true },
		isKeeping: { state: true },
		failure: { state: true },
	};
	declare result: BuildResult | undefined;
	/** Id of the blueprint that was asked for. */
	declare plan: string;
	/** Ids of the forms now in the bank, in the order of the answer. */
	declare private kept: readonly string[];
	declare private isKeeping: boolean;
	declare private failure: string | undefined;
	/** Chosen once an answer, so that keeping again after a lost reply cannot make a form twice. */
	private ids: readonly string[] = [];

	constructor() {
		super();
		Object.assign(this, { kept: [], isKeeping: false, plan: '' });
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			:host(:focus) { outline: 0; }
			h2 { font-size: 20px; line-height: 28px; border-bottom: 2px solid var(--ink); margin-top: 14px; }
			h3 { font-size: 16px; line-height: 24px; margin-top: 14px; }
			p { margin: 7px 0; max-width: 44em; }
			ul.forms { list-style: none; padding: 0; margin: 0; }
			ul.forms li { display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; border-bottom: 1px solid var(--paper-line); padding: 4px 0; }
			ul.forms strong { font-weight: 600; flex: 1 1 240px; }
			.conflict { border-left: 4px solid var(--pencil); padding: 0 0 0 14px; margin: 7px 0; list-style: none; }
			.conflict li { padding: 4px 0; }
			summary { min-height: 28px; }
		`,
	];

	protected override willUpdate(changed: PropertyValues): void {
		if (!changed.has('result')) return;
		const { answer, kept = [] } = this.result ?? {};
		this.ids = answer?.kind === 'built' ? answer.forms.map((_form, index) => kept[index] ?? newFormId()) : [];
		for (const id of kept) writePlan(localStorage, id, this.plan);
		Object.assign(this, { kept, failure: undefined });
	}

	protected override render(): TemplateResult | typeof nothing {
		const { answer } = this.result ?? {};
		if (!answer) return nothing;
		switch (answer.kind) {
			case 'built':
				return this.renderBuilt(answer);
			case 'impossible':
				return renderImpossible(answer, this.plan, () => this.askForMissing());
			case 'undecided':
				return html`<h2>${text.undecided}</h2><p>${answer.message}</p>`;
			default:
				return answer satisfies never;
		}
	}

	/** Asks whoever built to make the missing items, build again and keep what comes of it. */
	private askForMissing(): void {
		this.dispatchEvent(new CustomEvent('missing-asked', { bubbles: true, composed: true }));
	}

	private renderBuilt({ forms, proof, balance, departures }: FormsBuilt): TemplateResult {
		const isKept = this.kept.length === forms.length;
		const { made = [] } = this.result ?? {};
		return html`
			<h2>${text.built(forms.length)}</h2>
			<p>${text.proof(proof.status, proof.unevenness, proof.bound, balance.forms.length)}</p>
			<ul class="forms">${forms.map((form, index) => this.renderForm(form, this.kept[index]))}</ul>
			<p role="status">${isKept ? text.kept(forms.length) : nothing}</p>
			${made.length > 0 ? html`<h3>${text.made(made.length)}</h3><ul>${made.map(({ id, name }) => html`<li><a href=${printAddress('items', {}, id)}>${name}</a></li>`)}</ul>` : nothing}
			<div role="alert">${this.failure === undefined ? nothing : html`<p class="failure">${text.notKept(this.failure)}</p>`}</div>
			${isKept ? nothing : html`<p><button class="primary" aria-disabled=${this.isKeeping} @click=${() => void this.keep(forms)}>${text.keep(forms.length)}</button></p>`}
			${departures.length > 0 ? html`<h3>${text.departures}</h3><ul>${departures.map(({ requirement, found }) => html`<li>${text.shortfall(requirement, found)}</li>`)}</ul>` : nothing}
			${balance.forms.length > 1 ? html`<h3>${formsText.compare.howTheyCompare}</h3><zp-balance-table only-different .report=${balance}></zp-balance-table>` : nothing}
		`;
	}

	private renderForm(form: Form, id: string | undefined): TemplateResult {
		const items = positionsOf(form).length;
		if (id !== undefined)
			return html`<li><strong><a href=${printAddress('forms', {}, id)}>${form.title}</a></strong> ${words.items(items)}</li>`;
		return html`<li><strong>${form.title}</strong> ${words.items(items)} <button aria-label="${text.desk}: ${form.title}" @click=${() => layDown(form, '', this.plan)}>${text.desk}</button></li>`;
	}

	private async keep(forms: readonly Form[]): Promise<void> {
		if (this.isKeeping) return;
		Object.assign(this, { isKeeping: true, failure: undefined });
		try {
			for (const [index, form] of forms.entries()) await keepForm(this.ids[index] ?? newFormId(), form);
			this.kept = this.ids;
			for (const id of this.ids) writePlan(localStorage, id, this.plan);
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isKeeping = false;
		}
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>('a')?.focus();
	}
}

/** Keeps a form under an id of ours; one that is there already was kept by an answer that got lost. */
async function keepForm(id: string, form: Form): Promise<void> {
	try {
		await callApi('POST /api/forms', { body: { id, form } });
	} catch (error) {
		if (!(error instanceof ApiError && error.code === 'id-taken')) throw error;
	}
}

function renderImpossible(
	{ conflict, isIrreducible, nearest, missing }: FormsImpossible,
	plan: string,
	makeMissing: () => void,
): TemplateResult {
	const [form] = nearest?.forms ?? [];
	const head = conflict.length === 1 ? text.alone : isIrreducible ? text.together : text.reducible;
	return html`
		<h2>${text.impossible}</h2>
		<p>${head}</p>
		<ul class="conflict">${conflict.map(renderConflict)}</ul>
		${missing.length > 0 ? html`<h3>${text.missing}</h3><ul>${missing.map((one) => html`<li>${missingWords(one)}</li>`)}</ul><p><button class="primary" @click=${makeMissing}>${text.makeMissing}</button> <span class="soft">${text.makeMissingMeaning}</span></p>` : nothing}
		${nearest ? html`<h3>${text.nearest}</h3><ul>${nearest.shortfalls.map(({ form: number, requirement, found }) => html`<li>${nearest.forms.length > 1 && number !== undefined ? text.onForm(number) : nothing}${text.shortfall(requirement, found)}</li>`)}</ul>` : nothing}
		${form ? html`<p><button @click=${() => layDown(form, '', plan)}>${text.openNearest}</button></p>` : nothing}
	`;
}

function renderConflict({ requirement, inBank, usable, excluded }: ConflictEntry): TemplateResult {
	return html`<li><strong>${requirement}</strong> <span class="soft">(${text.supply(inBank, usable)})</span>
		${excluded.length > 0 ? html`<details><summary>${text.excludedCount(excluded.length)}</summary><ul>${excluded.map(({ item, reason }) => html`<li>${text.excluded(item, reason)}</li>`)}</ul></details>` : nothing}
	</li>`;
}

function missingWords({ count, standard, model, kind, dok, points, role, shape }: MissingItems): string {
	const parts = [standard, words.models[model], words.kinds[kind], `DOK ${dok}`, words.points(points), role, shape];
	return text.missingItem(
		count,
		parts.filter((part) => part !== undefined),
	);
}

customElements.define('zp-build-answer', ZpBuildAnswer);
