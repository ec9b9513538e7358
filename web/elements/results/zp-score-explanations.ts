import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { listAnswerPlaces } from '../../../item-bank/forms/answer-places.ts';
import type { FormDetails, ItemEntry, PlaceAgreement, RatedResponse, RatingOrder } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { scoringText as text } from '../../messages/scoring.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import { itemStyles, renderBlock } from '../item-blocks.ts';
import { renderRichText } from '../rich-text.ts';
import '../zp-wait.ts';
import { renderAgreement } from './agreement-view.ts';
import { resultsStyles } from './results-styles.ts';

type Reader = RatingOrder['reader'];
const readers: readonly Reader[] = ['first', 'second', 'agreed'];

/** Explanations of a sitting, scored one at a time by the rubric, by one reader or two. */
export class ZpScoreExplanations extends LitElement {
	static override properties = {
		sitting: {},
		heading: { state: true },
		details: { state: true },
		places: { state: true },
		label: { state: true },
		reader: { state: true },
		at: { state: true },
		failure: { state: true },
	};
	/** Id of the sitting. */
	declare sitting: string;
	declare private heading: string | undefined;
	declare private details: FormDetails | undefined;
	declare private places: readonly PlaceAgreement[] | undefined;
	/** Which place is scored. */
	declare private label: string;
	declare private reader: Reader;
	/** Which of its responses is shown, 0 for the first. */
	declare private at: number;
	declare private failure: string | undefined;
	private isSending = false;
	/** Points of the rubric at this place. */
	private levels: readonly number[] = [];
	private readonly hear = (event: KeyboardEvent): void => this.press(event);

	constructor() {
		super();
		this.label = '';
		this.reader = 'first';
		this.at = 0;
	}

	static override styles = [
		controlStyles,
		itemStyles,
		resultsStyles,
		css`
			:host { font: 400 16px/28px var(--sans); }
			.two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 0 42px; }
			.stem { font: 400 18px/28px var(--serif); }
			.written { font: 400 20px/30px var(--serif); background: var(--sheet); border-left: 2px solid var(--ink); padding: 14px; margin: 0 0 14px; white-space: pre-wrap; overflow-wrap: anywhere; min-height: 100px; max-width: none; }
			.levels { display: grid; gap: 7px; }
			.levels button { text-align: left; justify-content: start; font-weight: 400; min-height: 36px; height: auto; }
			.levels button[aria-pressed='true'] { border: 2px solid var(--ink); font-weight: 600; padding: 2px 11px; }
			.acts button[aria-disabled='true'] { color: var(--ink-soft); border-color: var(--paper-line); cursor: not-allowed; }
			kbd { font: 600 15px/22px var(--sans); border: 1px solid var(--rule); padding: 0 7px; }
			label { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; }
			.wide th, .wide td { border: 0; border-bottom: 1px solid var(--paper-line); padding: 2px 14px 2px 0; }
			.count.same { font-weight: 600; text-decoration: underline; text-underline-offset: 4px; }
			.who { align-items: center; }
			@media (max-width: 820px) { .two { grid-template-columns: minmax(0, 1fr); } }
			@media (pointer: coarse) { .levels button { min-height: 44px; } }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener('keydown', this.hear);
	}

	override disconnectedCallback(): void {
		window.removeEventListener('keydown', this.hear);
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: PropertyValues): void {
		if (changed.has('sitting')) void this.load();
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		try {
			this.failure = undefined;
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	private load(): Promise<void> {
		return this.attempt(async () => {
			const { sitting } = await callApi('GET /api/sittings/{id}', { path: { id: this.sitting } });
			const [details, groups] = await Promise.all([
				callApi('GET /api/forms/{id}', { path: { id: sitting.form }, query: { version: sitting.version } }),
				callApi('GET /api/groups'),
			]);
			this.details = details;
			const group = groups.find(({ id }) => id === sitting.group)?.group.name ?? sitting.group;
			this.heading = text.title(group, details.record.form.title);
			await this.loadResponses();
		});
	}

	private async loadResponses(): Promise<void> {
		const { places } = await callApi('GET /api/sittings/{id}/ratings', {
			path: { id: this.sitting },
			query: { reader: this.reader },
		});
		this.places = places;
		if (!places.some(({ label }) => label === this.label)) this.label = places[0]?.label ?? '';
		this.at = Math.max(0, this.nextOpen(-1));
	}

	/** What is to be scored here: all, or where two readers differ. */
	private get responses(): readonly RatedResponse[] {
		const all = this.places?.find(({ label }) => label === this.label)?.responses ?? [];
		if (this.reader !== 'agreed') return all;
		return all.filter(({ first, second }) => first !== undefined && second !== undefined && first !== second);
	}

	/** A reader sees no agreement while responses are open: from one response to the next it would tell what the other gave. */
	private get isBlind(): boolean {
		return this.reader !== 'agreed' && this.responses.some(({ points }) => points === undefined);
	}

	/** The next response without points, from a place on and round; −1 when all have some. */
	private nextOpen(from: number): number {
		const { responses } = this;
		const order = responses.map((_unused, index) => (from + 1 + index) % responses.length);
		return order.find((index) => responses[index]?.points === undefined) ?? -1;
	}

	private choose(part: { readonly label?: string; readonly reader?: Reader }): void {
		Object.assign(this, part);
		void this.attempt(() => this.loadResponses());
	}

	private async give(points: number): Promise<void> {
		const place = this.places?.find(({ label }) => label === this.label);
		const response = this.responses[this.at];
		if (!place || !response || this.isSending) return;
		this.isSending = true;
		const { position, part } = place;
		const rating = { code: response.code, position, points, ...(part === undefined ? {} : { part }) };
		await this.attempt(async () => {
			const { at } = this;
			const path = { id: this.sitting };
			await callApi('POST /api/sittings/{id}/ratings', { path, body: { reader: this.reader, ratings: [rating] } });
			await this.loadResponses();
			const next = this.nextOpen(at);
			this.at = next < 0 ? at : next;
		});
		this.isSending = false;
	}

	private go(step: number): void {
		this.at = Math.min(Math.max(this.at + step, 0), Math.max(this.responses.length - 1, 0));
	}

	/** Keys count wherever the focus is, but in fields. */
	private press(event: KeyboardEvent): void {
		const from = event.composedPath()[0];
		if (event.ctrlKey || event.altKey || event.metaKey || !this.places) return;
		if (from instanceof HTMLInputElement || from instanceof HTMLSelectElement) return;
		const points = /^\d$/.test(event.key) ? Number(event.key) : -1;
		if (this.levels.includes(points)) void this.give(points);
		else if (event.key === 'ArrowRight') this.go(1);
		else if (event.key === 'ArrowLeft') this.go(-1);
		else return;
		event.preventDefault();
	}

	protected override render(): TemplateResult {
		const { places, heading, failure } = this;
		return html`<a class="back" href=${printAddress('sittings')}>${text.allSittings}</a>
			<h2 tabindex="-1">${heading ?? ''}</h2>
			${failure === undefined ? nothing : html`<div class="failure" role="alert"><p>${failure}</p><button @click=${() => void this.load()}>${words.frame.again}</button></div>`}
			${places ? this.renderPlaces(places) : failure === undefined ? html`<zp-wait></zp-wait>` : nothing}`;
	}

	private renderPlaces(places: readonly PlaceAgreement[]): TemplateResult {
		const place = places.find(({ label }) => label === this.label);
		if (!place || !this.details) return html`<p>${text.noExplanations}</p>`;
		const { record, items } = this.details;
		const answered = listAnswerPlaces(record.form, items).find(({ label }) => label === place.label);
		const rubric = answered?.item.kind === 'explanation' ? answered.item.rubric : [];
		this.levels = rubric.map(({ points }) => points);
		return html`<p>${text.lead}</p>
			<div class="fields who">
				${
					places.length < 2
						? nothing
						: html`<label>${text.place}
							<select @change=${(event: Event) => this.choose({ label: (event.target as HTMLSelectElement).value })}>
								${places.map(({ label, waiting }) => html`<option value=${label} .selected=${label === this.label}>${text.placeName(label, waiting)}</option>`)}
							</select></label>`
				}
				<fieldset class="fields"><legend class="spoken">${text.reader}</legend>
					${readers.map((reader) => html`<label><input type="radio" name="reader" .checked=${reader === this.reader} @change=${() => this.choose({ reader })} /> ${text.readers[reader]}</label>`)}
				</fieldset>
			</div>
			<p class="soft">${text.readerNote[this.reader]}</p>
			<div class="two">
				<section aria-label=${text.rubric}>${this.renderResponse(place)}
					<div class="levels">${this.responses.length === 0 ? nothing : rubric.map(({ points, descriptor }) => this.renderLevel(points, descriptor))}</div>
				</section>
				<section aria-label=${text.asked}>${this.renderAsked(items.find(({ id }) => id === place.item))}</section>
			</div>
			${this.isBlind ? html`<p class="soft">${text.later}</p>` : renderAgreement(place)}
			<p class="acts">
				<a href=${printAddress('sittings', { view: 'entry' }, this.sitting)}>${text.entry}</a>
				<a href=${printAddress('reports', { sitting: this.sitting }, 'class')}>${text.report}</a>
			</p>`;
	}

	private renderAsked(item: ItemEntry | undefined): TemplateResult {
		return html`<h3>${text.asked}</h3><div class="stem">${item?.item.stem.map(renderBlock)}</div>`;
	}

	private renderResponse(place: PlaceAgreement): TemplateResult {
		const { responses, at } = this;
		const response = responses[at];
		if (!response) {
			const isNone = this.reader === 'agreed' && (place.responses?.length ?? 0) > 0;
			return html`<p>${isNone ? text.noDifferences : text.nobody}</p>`;
		}
		const { code, text: written, points, first, second } = response;
		const left = responses.filter((each) => each.points === undefined).length;
		return html`
			<h3>${text.response(at + 1, responses.length, code)}</h3>
			<p class="written">${written.trim() === '' ? html`<em>${text.empty}</em>` : written}</p>
			<p aria-live="polite">
				${first === undefined || second === undefined ? nothing : text.differ(first, second)}
				${points === undefined ? text.notGiven : text.given(points)}
				<span class=${left > 0 ? 'soft' : ''}>${left > 0 ? text.left(left) : text.done(responses.length)}</span>
			</p>
			<div class="acts">
				<button aria-disabled=${at === 0} @click=${() => this.go(-1)}>${text.back}</button>
				<button aria-disabled=${at >= responses.length - 1} @click=${() => this.go(1)}>${text.on}</button>
			</div>`;
	}

	private renderLevel(points: number, says: string): TemplateResult {
		const isGiven = this.responses[this.at]?.points === points;
		return html`<button aria-pressed=${isGiven} @click=${() => void this.give(points)}><kbd>${words.figure(points)}</kbd> <span>${renderRichText(says)}</span></button>`;
	}
}

customElements.define('zp-score-explanations', ZpScoreExplanations);
