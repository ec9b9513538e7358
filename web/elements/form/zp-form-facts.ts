import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { BlueprintEntry } from '../../../item-bank/types.ts';
import { type FormFacts, findFacts, meanOf, type PlanLine } from '../../forms/form-facts.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-line.ts';
import '../zp-sign.ts';
import '../zp-tally.ts';

const text = formsText.facts;

/**
 * What the bank computes of the form on the desk, while it is put together: the plan, points and time, where keys stand, signs,
 * difficulty, reading, and what to look at. Tells no key. Fires "blueprint-chosen" (detail: id or '').
 */
export class ZpFormFacts extends LitElement {
	static override properties = {
		work: { attribute: false },
		revision: { type: Number },
		blueprints: { attribute: false },
		blueprint: { type: String },
	};
	declare work: FormWork;
	declare revision: number;
	declare blueprints: readonly BlueprintEntry[];
	/** Id of the blueprint the form is held against; empty for none. */
	declare blueprint: string;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; font-size: 14px; line-height: 21px; }
			h2 { font-size: 14px; line-height: 21px; border-bottom: 1px solid var(--rule); margin-top: 14px; }
			section { break-inside: avoid; }
			section:first-child h2 { margin-top: 0; }
			.choice { display: grid; color: var(--ink-soft); margin: 4px 0 7px; }
			.choice select { font-size: 14px; width: 100%; }
			ul { list-style: none; margin: 0; padding: 0; }
			.line { display: grid; grid-template-columns: 100px minmax(0, 1fr); gap: 0 10px; align-items: center; padding: 3px 0; line-height: 18px; }
			.line .label { grid-column: 1 / -1; display: flex; justify-content: space-between; gap: 10px; }
			.line .value { text-align: right; font-weight: 600; }
			.line small { display: block; font-size: 13px; color: var(--ink-soft); }
			.line.off .value, .off small { color: var(--pencil); }
			dl { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 10px; margin: 4px 0 0; }
			dd { margin: 0; text-align: right; display: flex; gap: 6px; justify-content: flex-end; align-items: center; }
			.notes li { border-left: 4px solid var(--pencil); padding: 0 0 0 8px; margin: 7px 0; }
			.ok { color: var(--ink-soft); margin: 4px 0; }
			.strip { display: block; width: 100%; max-width: 320px; height: auto; margin-top: 4px; }
			.strip text { font: 400 10px var(--sans); fill: var(--ink-soft); }
			p { margin: 4px 0; }
			@media (max-width: 1000px) { :host { columns: 300px; column-gap: 28px; } }
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const { form } = this.work;
		if (!form) return nothing;
		const plan = this.blueprints.find(({ id }) => id === this.blueprint)?.blueprint;
		const facts = findFacts(form, this.work.items.find, plan);
		return html`
			<section><h2>${text.plan}</h2>
			<label class="choice">${text.against}
				<select @change=${(event: Event) => this.choose(event)}>
					<option value="" ?selected=${this.blueprint === ''}>${text.noBlueprint}</option>
					${this.blueprints.map(({ id, blueprint }) => html`<option value=${id} ?selected=${id === this.blueprint}>${blueprint.title}</option>`)}
				</select>
			</label>
			${plan ? renderPlan(facts) : html`<p class="ok">${text.choosePlan}</p>`}
			</section><section><h2>${text.size}</h2>
			<dl>
				<dt>${text.items}</dt><dd>${words.figure(facts.items)}</dd>
				<dt>${text.points}</dt><dd>${words.figure(facts.points)}</dd>
				<dt title=${text.timeBasis}>${text.time}<span class="spoken"> (${text.timeBasis})</span></dt><dd>${facts.items === 0 ? '–' : text.minutes(facts.minutes.from, facts.minutes.to)}</dd>
				<dt>${text.words}</dt><dd>${words.figure(facts.words)}</dd>
				${facts.longest && facts.longest.words > 0 ? html`<dt>${text.longest(facts.longest.position)}</dt><dd>${words.figure(facts.longest.words)}</dd>` : nothing}
			</dl>
			</section><section><h2>${text.difficulty}</h2>
			${renderDifficulty(facts.difficulty)}
			</section>
			${renderCounts(facts)}
			<section><h2>${text.look}</h2>
			${renderNotes(facts)}</section>
		`;
	}

	private choose(event: Event): void {
		const id = event.target instanceof HTMLSelectElement ? event.target.value : '';
		this.dispatchEvent(new CustomEvent<string>('blueprint-chosen', { detail: id }));
	}
}

function renderPlan({ plan, breaches }: FormFacts): TemplateResult {
	const short = plan.filter(({ isMet }) => !isMet).length + breaches.length;
	return html`
		<p class=${short === 0 ? 'ok' : 'short'} role="status">${short === 0 ? text.planMet : text.planShort(short)}</p>
		<ul>${plan.map(renderPlanLine)}</ul>
		<ul class="notes">${breaches.map(({ requirement, found }) => html`<li>${text.breach(requirement, found)}</li>`)}</ul>
	`;
}

function renderPlanLine({ words: label, unit, min, max, found, isMet }: PlanLine): TemplateResult {
	const scale = unit === 'mean' ? { from: 1, to: 10, tick: 1 } : scaleFor(found, min, max);
	const wanted = { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
	return html`<li class="line ${isMet ? '' : 'off'}">
		<span class="label"><span>${label}${unit === 'words' ? text.inFives : ''}</span><span class="value">${words.figure(found)}</span></span>
		<zp-line .marks=${{ ...scale, wanted, at: found }} label=${label}></zp-line>
		<small>${text.wanted(min, max)}${isMet ? '' : text.gap(found, min, max, unit)}</small>
	</li>`;
}

/** A scale that holds the range and what was found, with ticks where they can be told apart. */
function scaleFor(found: number, min: number | undefined, max: number | undefined) {
	const to = Math.max(4, Math.ceil(Math.max(found, max ?? 0, min ?? 0) * 1.25));
	return { from: 0, to, tick: to <= 16 ? 1 : to <= 80 ? 10 : 100 };
}

/** One stroke an item above a line from 1 to 10, and the mean below it. */
function renderDifficulty(scores: readonly number[]): TemplateResult {
	const mean = meanOf(scores);
	if (mean === undefined) return html`<p class="ok">${text.noDifficulty}</p>`;
	const place = (score: number): number => 12 + (score - 1) * 26;
	const piled = scores.map((score, index) => ({
		score,
		shift:
			scores.slice(0, index).filter((other) => other === score).length -
			(scores.filter((other) => other === score).length - 1) / 2,
	}));
	return html`<svg class="strip" viewBox="0 0 258 44" role="img" aria-label=${text.difficultyWords(mean, scores)}>
		<path d="M4 24H254${Array.from({ length: 10 }, (_none, index) => `M${place(index + 1)} 21v6`).join('')}" stroke="var(--rule)" fill="none" />
		<path d=${piled.map(({ score, shift }) => `M${place(score) + shift * 3.5} 18V6`).join('')} stroke="var(--ink)" stroke-width="1.8" fill="none" />
		<circle cx=${place(mean)} cy="24" r="5" fill="var(--ink)" />
		<text x=${place(1)} y="41" text-anchor="middle">1</text><text x=${place(5)} y="41" text-anchor="middle">5</text><text x=${place(10)} y="41" text-anchor="middle">10</text>
	</svg>
	<p class="ok">${text.difficultyMean(mean)}</p>`;
}

function renderCounts({ keyPlaces, signs }: FormFacts): TemplateResult {
	return html`
		<section><h2>${text.keyPlaces}</h2>
		${
			keyPlaces.length === 0
				? html`<p class="ok">${text.noKeyPlaces}</p>`
				: html`<dl>${keyPlaces.map(({ letter, count }) => html`<dt>${text.option(letter)}</dt><dd><zp-tally .count=${count}></zp-tally>${words.figure(count)}</dd>`)}</dl>`
		}
		</section><section><h2>${text.signs}</h2>
		<dl>
			<dt><zp-sign of="minus"></zp-sign> ${text.negative}</dt><dd>${words.figure(signs.negative)}</dd>
			<dt>${text.zero}</dt><dd>${words.figure(signs.zero)}</dd>
			<dt><zp-sign of="plus"></zp-sign> ${text.positive}</dt><dd>${words.figure(signs.positive)}</dd>
			<dt>${text.noNumber}</dt><dd>${words.figure(signs.other)}</dd>
		</dl></section>
	`;
}

function renderNotes({ notes, items }: FormFacts): TemplateResult {
	if (notes.length === 0) return html`<p class="ok">${items === 0 ? text.nothingYet : text.nothingFound}</p>`;
	return html`<ul class="notes">${notes.map((note) => html`<li>${text.note(note.code, note.message, note.position)}</li>`)}</ul>`;
}

customElements.define('zp-form-facts', ZpFormFacts);
