import { html, LitElement, type PropertyDeclarations, type TemplateResult } from 'lit';
import type { PartResponse } from '../../../item-bank/types.ts';

/**
 * A place to answer one item. It keeps the response, says every change to screen readers, and fires answer-changed for
 * what a person did.
 */
export abstract class AnswerElement<Response extends PartResponse> extends LitElement {
	static override properties: PropertyDeclarations = {
		response: { attribute: false },
		locked: { type: Boolean },
		said: { state: true },
	};
	/** What is answered so far; undefined before anything was. */
	declare response: Response | undefined;
	/** Whether the answer is handed in and can no longer be changed. */
	declare locked: boolean;
	declare protected said: string;

	constructor() {
		super();
		this.locked = false;
		this.said = '';
	}

	/** Takes what a person answered. */
	protected give(response: Response, said: string): void {
		this.response = response;
		this.say(said);
		this.dispatchEvent(new CustomEvent('answer-changed', { detail: response, bubbles: true, composed: true }));
	}

	/** Tells screen readers. */
	protected say(said: string): void {
		this.said = said;
	}

	protected renderSaid(): TemplateResult {
		return html`<div class="spoken" aria-live="polite">${this.said}</div>`;
	}

	/** Moves the keyboard to a part of the element once it is drawn. */
	protected async focusOn(selector: string): Promise<void> {
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>(selector)?.focus();
	}
}
