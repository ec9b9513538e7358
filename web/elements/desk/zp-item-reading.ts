import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { ReviewNote } from '../../../item-bank/checks/review-item.ts';
import type { PartKey } from '../../../item-bank/items/key.ts';
import type { Alignment, Item } from '../../../item-bank/types.ts';
import type { WorkedLine } from '../../../item-bank/worked/worked-lines.ts';
import type { WrongAnswerNote } from '../../../item-bank/worked/wrong-notes.ts';
import type { ItemReading, PartReading } from '../../item-draft/read-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';
import { printKey } from '../print-key.ts';
import { renderRichText } from '../rich-text.ts';
import { frameworkNames } from './about-fields.ts';
import '../zp-line.ts';

/**
 * What the bank computes of an item: checks, key with worked steps, wrong answers with the ideas behind them, difficulty, and
 * the standards in every framework. Fires note-followed with the place a check speaks of.
 */
export class ZpItemReading extends LitElement {
	static override properties = { item: { attribute: false }, reading: { attribute: false } };
	declare item: Item;
	declare reading: ItemReading;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; font: 400 15px/21px var(--sans); }
			section { border-top: 1px solid var(--paper-line); padding: 8px 0 12px; }
			section:first-child { border-top: 0; padding-top: 0; }
			h3 { font-size: 15px; line-height: 24px; }
			h4 { font-size: 14px; line-height: 21px; color: var(--ink-soft); }
			ol, ul { list-style: none; margin: 0; padding: 0; }
			li { padding: 2px 0; }
			p { margin: 0; }
			.math { font: 400 17px/24px var(--serif); }
			.key { font: 600 20px/28px var(--serif); }
			.note { display: block; font-size: 14px; line-height: 19px; color: var(--ink-soft); }
			.check { border-left: 3px solid var(--rule); padding: 2px 0 2px 10px; margin: 6px 0; }
			.check.stop { border-color: var(--pencil); }
			.check b { font-weight: 600; }
			.check.stop b { color: var(--pencil); }
			.check button { font-size: 14px; min-height: 24px; padding: 0 4px; margin-left: -4px; }
			dl { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: 2px 10px; }
			dt { font: 400 16px/21px var(--serif); white-space: nowrap; }
			dd { margin: 0; }
			table { border-collapse: collapse; width: 100%; }
			th { text-align: left; font-weight: 400; color: var(--ink-soft); padding: 1px 10px 1px 0; vertical-align: top; }
			td { padding: 1px 0; vertical-align: top; }
			zp-line { margin-right: 8px; }
		`,
	];

	protected override render(): TemplateResult {
		const { reading, item } = this;
		return html`
			<section aria-labelledby="checks">${this.renderChecks(reading.notes)}</section>
			${reading.parts.map((part, index) => html`<section>${item.kind === 'set' ? html`<h3>${words.part(index + 1)}</h3>` : nothing}${renderPart(part)}</section>`)}
			${this.renderDifficulty()}
			<section>
				<h3>${words.allFrameworks}</h3>
				${renderFrameworks(item)}
			</section>
			${item.origin ? html`<section><p class="soft">${words.origin(item.origin.family, item.origin.seed)}</p></section>` : nothing}
		`;
	}

	private renderChecks(notes: readonly ReviewNote[]): TemplateResult {
		const stops = notes.filter(({ severity }) => severity === 'stop').length;
		const counts = [
			stops > 0 ? words.stops(stops) : '',
			notes.length > stops ? words.advice(notes.length - stops) : '',
		];
		return html`<h3 id="checks">${words.checks}</h3>
			<p role="status" class=${stops > 0 ? 'short' : 'soft'}>${notes.length === 0 ? words.noChecks : counts.filter((part) => part !== '').join(', ')}</p>
			<ul>
				${notes.map(
					(note) => html`<li class="check ${note.severity}">
						<b>${note.severity === 'stop' ? words.stop : words.advise}</b> ${note.message}
						<span class="note">${words.guideline(note.guideline.source, note.guideline.number)}${note.guideline.isFromMemory ? html` (${words.memory})` : nothing}</span>
						<button type="button" class="plain" aria-label="${words.goTo}: ${note.message}" @click=${() => this.follow(note)}>${words.goTo}</button>
					</li>`,
				)}
			</ul>`;
	}

	private follow({ path }: ReviewNote): void {
		this.dispatchEvent(new CustomEvent('note-followed', { detail: path, bubbles: true, composed: true }));
	}

	private renderDifficulty(): TemplateResult | typeof nothing {
		const { difficulty } = this.reading;
		if (!difficulty) return nothing;
		return html`<section>
			<h3>${words.difficulty}</h3>
			<p><zp-line label=${words.difficulty} .marks=${{ from: 1, to: 10, tick: 1, at: difficulty.score }}></zp-line><span>${words.difficultySay(difficulty.score)}</span></p>
			<span class="note">${difficulty.features.map(({ name, worth }) => `${name} +${worth}`).join(', ')}</span>
		</section>`;
	}
}

function renderPart({ key, problems, steps, wrong }: PartReading): TemplateResult {
	return html`
		<h3>${words.key}</h3>
		${key ? renderKey(key) : html`<p class="short">${words.noKey}</p><ul>${problems.map(({ message }) => html`<li>${message}</li>`)}</ul>`}
		${steps.length === 0 ? nothing : html`<h4>${words.steps}</h4><ol>${steps.map(renderStep)}</ol>`}
		${wrong.length === 0 ? nothing : html`<h4>${words.wrong}</h4><dl>${wrong.map(renderWrong)}</dl>`}`;
}

function renderKey(key: PartKey): TemplateResult {
	if (key.kind === 'rubric') return html`<p>${words.noSteps}</p>`;
	return html`<p class="key">${printKey(key)}</p>`;
}

function renderStep({ line, note, spoken }: WorkedLine): TemplateResult {
	return html`<li><span class="math"><span aria-hidden="true">${line}</span><span class="spoken">${spoken}</span></span>${note ? html`<span class="note">${note}</span>` : nothing}</li>`;
}

function renderWrong({ answer, says, sentence }: WrongAnswerNote): TemplateResult {
	return html`<dt>${answer}${says === undefined ? nothing : html` ${renderRichText(says)}`}</dt><dd class="note">${sentence}</dd>`;
}

/** Frameworks the item is aligned to with its codes there, then those it is not aligned to. */
function renderFrameworks({ alignments }: Item): TemplateResult {
	const isIn = (key: string) => (alignment: Alignment) => `${alignment.framework} ${alignment.edition}` === key;
	const keys = Object.keys(frameworkNames);
	const aligned = keys.filter((key) => alignments.some(isIn(key)));
	const others = keys.filter((key) => !aligned.includes(key)).map((key) => frameworkNames[key]);
	return html`<table><tbody>
			${aligned.map((key) => html`<tr><th scope="row">${frameworkNames[key]}</th><td>${alignments.filter(isIn(key)).map(({ code, extent, primary }) => html`<div>${code}, ${words.extents[extent]}${primary ? `, ${words.primary}` : ''}</div>`)}</td></tr>`)}
		</tbody></table>
		${others.length === 0 ? nothing : html`<p class="note">${words.notAligned} ${others.join('; ')}.</p>`}`;
}

customElements.define('zp-item-reading', ZpItemReading);
