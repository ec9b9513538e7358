import { html, type TemplateResult } from 'lit';
import type { PartItem, PartResponse } from '../../../item-bank/types.ts';
import './zp-choice-answer.ts';
import './zp-gap-answer.ts';
import './zp-grid-answer.ts';
import './zp-match-answer.ts';
import './zp-order-answer.ts';
import './zp-point-answer.ts';
import './zp-text-answer.ts';

/** What an answer place of any kind needs. */
export interface AnswerState {
	readonly response: PartResponse | undefined;
	readonly locked: boolean;
	/** Grid profile of the form, instead of the item's own. */
	readonly grid: string | undefined;
	/** Told what a person answered. */
	readonly take: (response: PartResponse) => void;
}

/** The place to answer an item, by its kind. */
export function renderAnswerPlace(item: PartItem, { response, locked, grid, take }: AnswerState): TemplateResult {
	const changed = ({ detail }: CustomEvent<PartResponse>): void => take(detail);
	switch (item.kind) {
		case 'gridded':
			return html`<zp-grid-answer profile=${grid ?? item.grid} unit=${item.unit ?? ''} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-grid-answer>`;
		case 'choice':
		case 'multiple-choice':
			return html`<zp-choice-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-choice-answer>`;
		case 'point':
			return html`<zp-point-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-point-answer>`;
		case 'order':
			return html`<zp-order-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-order-answer>`;
		case 'match':
			return html`<zp-match-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-match-answer>`;
		case 'inline-choice':
			return html`<zp-gap-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-gap-answer>`;
		case 'explanation':
			return html`<zp-text-answer .item=${item} .response=${response} ?locked=${locked} @answer-changed=${changed}></zp-text-answer>`;
	}
}

/** The response to an item before anything is answered. */
export function emptyResponse(item: PartItem): PartResponse {
	switch (item.kind) {
		case 'gridded':
			return { kind: 'entry', text: '' };
		case 'choice':
		case 'multiple-choice':
		case 'inline-choice':
			return { kind: 'choice', options: [] };
		case 'point':
			return { kind: 'point' };
		case 'order':
			return { kind: 'order', order: [] };
		case 'match':
			return { kind: 'match', pairs: [] };
		case 'explanation':
			return { kind: 'explanation', text: '' };
	}
}
