import type { FastifyReply } from 'fastify';
import { ContentRefusedError, type Subject } from '../store/store-errors.ts';

/** Schema of an id in an address. */
export const idParameter = { type: 'string', pattern: '^[a-z0-9][a-z0-9-]{2,62}$', description: 'Id in the bank.' };

/** Schema of a version number. */
export const versionParameter = { type: 'integer', minimum: 1, description: 'The newest version when left out.' };

/** Query string of a route that shows one version. */
export const versionQuery = { type: 'object', additionalProperties: false, properties: { version: versionParameter } };

/** Makes the paths of refused content point into the body that was sent, where the content stands in one field. */
export async function underField<T>(field: Subject, work: Promise<T>): Promise<T> {
	try {
		return await work;
	} catch (error) {
		if (!(error instanceof ContentRefusedError)) throw error;
		throw new ContentRefusedError(
			field,
			error.problems.map((problem) => ({ ...problem, path: `/${field}${problem.path}` })),
		);
	}
}

/** Given when whoever asked goes away before the answer is written. */
export function signalOfClose(reply: FastifyReply): AbortSignal {
	const abandoned = new AbortController();
	// The request closes as soon as its body is read; only the answer tells whether anybody is still there.
	reply.raw.once('close', () => {
		if (!reply.raw.writableFinished) abandoned.abort();
	});
	return abandoned.signal;
}
