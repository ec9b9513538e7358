import type { FastifyError, FastifyReply } from 'fastify';
import { InvariantError } from '../item-bank/invariant.ts';
import type { ErrorReport, ProblemList } from '../item-bank/types.ts';
import { RequestError } from './request-errors.ts';
import { StoreError } from './store/store-errors.ts';

/** HTTP status of the errors of store and export; the core and the store know nothing of HTTP. */
export const statuses: Readonly<Record<string, number>> = {
	'not-found': 404,
	'id-taken': 409,
	'group-name-taken': 409,
	'already-given': 409,
	'version-conflict': 409,
	'status-refused': 409,
	'content-refused': 400,
	'item-not-approvable': 422,
	'cursor-refused': 400,
	'unknown-standard': 400,
	'store-busy': 503,
	'disk-full': 507,
	'export-invalid': 422,
	'export-empty': 422,
	'export-too-large': 422,
	'export-item-missing': 422,
	'export-item-repeated': 422,
	'export-not-carried': 422,
	'export-cancelled': 503,
	'build-request-refused': 422,
	'build-cancelled': 503,
	'build-broken': 500,
	'item-not-approved': 422,
	'order-contradictory': 400,
	'position-unknown': 422,
	'print-form-empty': 422,
	'print-item-missing': 422,
	'print-student-empty': 400,
	'print-student-repeated': 400,
	'print-student-spelling': 400,
	'print-glyph-missing': 422,
	'print-figure-too-wide': 422,
	'print-item-too-tall': 422,
	'print-cancelled': 503,
	'making-refused': 422,
	'export-figure-too-small': 422,
	'answer-unreadable': 400,
	'option-unknown': 400,
	'item-without-key': 422,
};

/** What fastify itself refuses, in our words. */
const fastifyRefusals: Readonly<
	Record<string, { readonly code: string; readonly status: number; readonly message: string }>
> = {
	FST_ERR_CTP_BODY_TOO_LARGE: { code: 'body-too-large', status: 413, message: 'expected a body of at most 1 MB' },
	FST_ERR_CTP_INVALID_CONTENT_LENGTH: {
		code: 'body-unreadable',
		status: 400,
		message: 'expected as many bytes as the request announced',
	},
	FST_ERR_CTP_INVALID_JSON_BODY: { code: 'json-malformed', status: 400, message: 'expected JSON in the body' },
	FST_ERR_CTP_EMPTY_JSON_BODY: {
		code: 'json-malformed',
		status: 400,
		message: 'expected JSON in the body, found nothing',
	},
	FST_ERR_CTP_INVALID_MEDIA_TYPE: {
		code: 'content-type-refused',
		status: 415,
		message: 'expected the content type application/json',
	},
	FST_ERR_BAD_URL: { code: 'url-malformed', status: 400, message: 'expected an address with valid percent encoding' },
	FST_ERR_MAX_PARAM_LENGTH: { code: 'url-malformed', status: 414, message: 'expected a shorter address' },
};

/** Answers any error in the one shape. What we did not foresee becomes a 500 that tells nothing of the inside. */
export function replyWithError(error: unknown, reply: FastifyReply, report: (error: unknown) => void): FastifyReply {
	const { status, body } = describeError(error);
	if (status === 500) report(error);
	return reply.code(status).type('application/json').send(body);
}

/** Status and body for an error. */
export function describeError(error: unknown): { readonly status: number; readonly body: ErrorReport } {
	if (error instanceof RequestError) return { status: error.status, body: bodyOf(error) };
	if (
		error instanceof Error &&
		!(error instanceof InvariantError) &&
		'code' in error &&
		typeof error.code === 'string'
	) {
		const { code, message } = error;
		const status = statuses[code];
		if (status !== undefined) return { status, body: bodyOf({ code, message, problems: problemsOf(error) }) };
		// A damaged or closed-off store is the department's to know, not a fault of ours.
		if (error instanceof StoreError) return { status: 500, body: bodyOf({ code, message }) };
		const refusal = fastifyRefusals[code];
		if (refusal) return { status: refusal.status, body: bodyOf(refusal) };
		const { statusCode } = error as FastifyError;
		if (statusCode !== undefined && statusCode >= 400 && statusCode < 500) {
			return { status: statusCode, body: bodyOf({ code: 'request-refused', message }) };
		}
	}
	if (error instanceof SyntaxError) {
		return { status: 400, body: bodyOf({ code: 'json-malformed', message: 'expected JSON in the body' }) };
	}
	const message = 'something went wrong in the bank; nothing of it was kept';
	return { status: 500, body: bodyOf({ code: 'internal', message }) };
}

function bodyOf(facts: {
	readonly code: string;
	readonly message: string;
	readonly problems?: ProblemList;
}): ErrorReport {
	const { code, message, problems = [] } = facts;
	return {
		code,
		message,
		problems: problems.map((each) => ({ code: each.code, path: each.path, message: each.message })),
	};
}

function problemsOf(error: Error): ProblemList {
	return 'problems' in error && Array.isArray(error.problems) ? (error.problems as ProblemList) : [];
}
