import { html, nothing, type TemplateResult } from 'lit';
import { printAddress } from '../../address.ts';
import type { ApiError } from '../../api-client.ts';
import { deskWords as words } from '../../messages/item-desk.ts';

/** What went wrong, and the way on. */
export interface DeskFailure {
	readonly error: ApiError | undefined;
	/** Said once the bank is back. */
	readonly said: string;
	readonly again: () => void;
	readonly follow: (path: string) => void;
}

/** Why work is not saved: the bank's reasons, each with the way to its field, and a button to try again. */
export function renderFailure({ error, said, again, follow }: DeskFailure): TemplateResult | typeof nothing {
	const button = html`<button type="button" @click=${again}>${words.saveAgain}</button>`;
	if (!error) return said === '' ? nothing : html`<div class="failure"><p>${said}</p>${button}</div>`;
	const { code, message, problems } = error;
	return html`<div class="failure">
		<p><b>${words.notSaved}</b> ${message} ${words.kept}</p>
		${problems.length === 0 ? nothing : html`<ul>${problems.map(({ path, message: why }) => html`<li>${why} <button type="button" class="plain" @click=${() => follow(path.replace(/^\/item/, ''))}>${words.goTo}</button></li>`)}</ul>`}
		${code === 'unreachable' ? button : nothing}
	</div>`;
}

/** An item that cannot be put on the desk. */
export function renderMissing({ code, message }: ApiError, id: string): TemplateResult {
	return html`<div class="plain" role="alert">
		<p>${code === 'not-found' ? words.notFound(id) : message}</p>
		<p><a href=${printAddress('items', {}, 'new')}>${words.startNew}</a></p>
	</div>`;
}
