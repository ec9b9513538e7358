import type {
	CarryingTable,
	ErrorReport,
	ExportOrder,
	FormSummary,
	GroupEntry,
	PrintOrder,
} from '../item-bank/types.ts';
import type { ExportNotes } from '../server/api.ts';

/** Thrown when the bank refuses or cannot be reached; the message can be shown as it is. */
export class ApiError extends Error {
	readonly code: string;
	readonly problems: ErrorReport['problems'];

	constructor(code: string, message: string, problems: ErrorReport['problems'] = []) {
		super(message);
		this.code = code;
		this.problems = problems;
	}
}

/** A file handed over by the bank. */
export interface HandedFile {
	readonly name: string;
	readonly content: Blob;
}

/** The newest version of every form, by title. */
export async function fetchForms(): Promise<readonly FormSummary[]> {
	return (await request('/api/forms')).json();
}

/** What each version would carry of a form. */
export async function fetchCarrying(id: string, version: number): Promise<CarryingTable> {
	return (await request(`/api/forms/${encodeURIComponent(id)}/carrying?version=${version}`)).json();
}

/** Writes the package of a form; it comes back only when it is valid. */
export async function exportForm(
	id: string,
	order: ExportOrder,
): Promise<{ readonly file: HandedFile; readonly told: ExportNotes }> {
	const response = await request(`/api/forms/${encodeURIComponent(id)}/export`, { body: order });
	const told = JSON.parse(decodeURIComponent(response.headers.get('zeropair-report') ?? '{}')) as ExportNotes;
	return { file: await handOver(response), told };
}

/** The table that says which exported item and option is which, with the keys, for an export of an order. */
export async function fetchAnswerMap(
	id: string,
	version: number,
	order: Pick<ExportOrder, 'as' | 'convert' | 'leaveOut' | 'grid'>,
): Promise<HandedFile> {
	const { as, convert = false, leaveOut = false, grid = 'number' } = order;
	const query = new URLSearchParams({
		version: String(version),
		as,
		convert: String(convert),
		leaveOut: String(leaveOut),
		grid,
	});
	return handOver(await request(`/api/forms/${encodeURIComponent(id)}/answer-map?${query}`));
}

/** The class groups of the bank. */
export async function fetchGroups(): Promise<readonly GroupEntry[]> {
	return (await request('/api/groups')).json();
}

/** An archive of PDF files of a form. */
export async function printForm(id: string, order: PrintOrder): Promise<HandedFile> {
	return handOver(await request(`/api/forms/${encodeURIComponent(id)}/print`, { body: order }));
}

async function handOver(response: Response): Promise<HandedFile> {
	const name = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '')?.[1] ?? 'download';
	return { name, content: await response.blob() };
}

/** What a request carries. */
export interface RequestParts {
	/** GET without a body and POST with one when left out. */
	readonly method?: string;
	/** Sent as JSON. */
	readonly body?: unknown;
	readonly signal?: AbortSignal | undefined;
}

/** Names of the events on the window that say that the bank stopped answering, that it answers again, and that what it holds was changed. */
export const bankLostEvent = 'zp-bank-lost';
export const bankFoundEvent = 'zp-bank-found';
export const bankChangedEvent = 'zp-bank-changed';

/** Asks the bank; comes back only with an answer in 2xx. Throws ApiError, and AbortError when given up. */
export async function request(path: string, parts: RequestParts = {}): Promise<Response> {
	const { body, signal } = parts;
	const { method = body === undefined ? 'GET' : 'POST' } = parts;
	const content =
		body === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
	const response = await fetch(path, { method, ...content, signal: signal ?? null }).catch((error: unknown) => {
		if (signal?.aborted) throw error;
		window.dispatchEvent(new Event(bankLostEvent));
		throw new ApiError(
			'unreachable',
			'The bank does not answer. Is it still running? Nothing was changed; try again when it is.',
		);
	});
	if (response.ok) return response;
	const report = (await response.json().catch(() => undefined)) as ErrorReport | undefined;
	if (!report) throw new ApiError('unreadable-answer', `The bank answered ${response.status} without saying why.`);
	throw new ApiError(report.code, report.message, report.problems);
}
