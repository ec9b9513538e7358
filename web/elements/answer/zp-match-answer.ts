import { css, html, svg, type TemplateResult } from 'lit';
import type { MatchItem, MatchResponse, Option } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { renderContent } from '../item-blocks.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';

interface JoiningLine {
	readonly y1: number;
	readonly y2: number;
}

/**
 * Pairs to join: press an entry on the left, then its partner on the right. The partner's letter is written in the box of
 * the left entry and a line joins the two. Joining the same two again frees them.
 */
export class ZpMatchAnswer extends AnswerElement<MatchResponse> {
	static override properties = { item: { attribute: false }, chosen: { state: true }, lines: { state: true } };
	declare item: MatchItem;
	declare private chosen: string | undefined;
	declare private lines: readonly JoiningLine[];
	private readonly watch = new ResizeObserver(() => this.measure());

	constructor() {
		super();
		this.lines = [];
	}

	static override styles = [
		answerStyles,
		css`
			.sides { position: relative; display: grid; grid-template-columns: minmax(0, max-content) minmax(28px, 88px) minmax(0, max-content); }
			h2 { font: 600 16px/24px var(--sans); margin: 0 0 4px; }
			ul { list-style: none; margin: 0; padding: 0; display: flex; flex-direction: column; gap: 8px; }
			button { display: flex; gap: 10px; align-items: center; text-align: left; width: 100%; font: inherit; }
			button[aria-pressed='true'] { border-color: var(--pencil); box-shadow: inset 0 0 0 1.5px var(--pencil); }
			.letterbox { width: 30px; height: 30px; border: 1.5px solid var(--ink); display: grid; place-items: center; flex: none; font: 600 18px/1 var(--sans); }
			svg.joins { width: 100%; height: 100%; overflow: visible; position: absolute; inset: 0; }
			.gap { position: relative; }
			line { stroke: var(--ink); stroke-width: 2; }
			zp-figure { display: block; }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		this.watch.observe(this);
	}

	override disconnectedCallback(): void {
		this.watch.disconnect();
		super.disconnectedCallback();
	}

	protected override updated(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('response') || changed.has('item')) this.measure();
	}

	/** Where the joining lines run, from the middle of one entry to the middle of the other. */
	private measure(): void {
		const gap = this.renderRoot.querySelector('.gap')?.getBoundingClientRect();
		const middle = (side: string, id: string): number => {
			const box = this.renderRoot.querySelector(`[data-side=${side}][data-id="${id}"]`)?.getBoundingClientRect();
			return box && gap ? box.top + box.height / 2 - gap.top : 0;
		};
		const pairs = this.response?.pairs ?? [];
		this.lines = pairs.map(({ left, right }) => ({ y1: middle('left', left), y2: middle('right', right) }));
	}

	protected override render(): TemplateResult {
		const { item } = this;
		return html`<p class="hint">${words.matchHint}</p>
			<div class="sides">
				<section><h2>${words.matchLeft}</h2><ul>${item.left.map((entry) => html`<li>${this.renderLeft(entry)}</li>`)}</ul></section>
				<div class="gap" aria-hidden="true">
					<svg class="joins">${this.lines.map(({ y1, y2 }) => svg`<line x1="0" x2="100%" y1=${y1} y2=${y2}></line>`)}</svg>
				</div>
				<section><h2>${words.matchRight}</h2><ul>${item.right.map((entry) => html`<li>${this.renderRight(entry)}</li>`)}</ul></section>
			</div>
			${this.renderSaid()}`;
	}

	private renderLeft(entry: Option): TemplateResult {
		const { id } = entry;
		const partner = this.response?.pairs.find(({ left }) => left === id)?.right;
		return html`<button type="button" data-side="left" data-id=${id} aria-pressed=${this.chosen === id} ?disabled=${this.locked} @click=${() => this.choose(id)}>
			<span class="letterbox" aria-hidden="true">${partner === undefined ? '' : words.letter(partner)}</span>
			<span class="letter">${words.letter(id)}</span><span>${renderContent(entry)}</span><span class="spoken">, ${words.partner(partner)}</span>
		</button>`;
	}

	private renderRight(entry: Option): TemplateResult {
		const { id } = entry;
		const partner = this.response?.pairs.find(({ right }) => right === id)?.left;
		return html`<button type="button" data-side="right" data-id=${id} ?disabled=${this.locked} @click=${() => this.join(id)}>
			<span class="letter">${words.letter(id)}</span><span>${renderContent(entry)}</span><span class="spoken">, ${words.partner(partner)}</span>
		</button>`;
	}

	private choose(id: string): void {
		this.chosen = this.chosen === id ? undefined : id;
		this.say(this.chosen === undefined ? words.unchosen(id) : words.chosen(id));
	}

	private join(right: string): void {
		const left = this.chosen;
		if (left === undefined) {
			this.say(words.chooseLeftFirst);
			return;
		}
		const pairs = this.response?.pairs ?? [];
		const isJoined = pairs.some((pair) => pair.left === left && pair.right === right);
		const others = pairs.filter((pair) => pair.left !== left && pair.right !== right);
		this.chosen = undefined;
		if (isJoined) {
			this.give({ kind: 'match', pairs: others }, words.freed(left, right));
			return;
		}
		const joined = [...others, { left, right }];
		const inOrder = this.item.left.flatMap(({ id }) => joined.filter((pair) => pair.left === id));
		this.give({ kind: 'match', pairs: inOrder }, words.joined(left, right));
	}
}

customElements.define('zp-match-answer', ZpMatchAnswer);
