import type { FastifyInstance } from 'fastify';
import type { PreviewOrder, ReadingOrder } from '../../item-bank/types.ts';
import { answerJson, type RouteSchema, schemaNamed } from '../open-api.ts';
import { previewResponses, readResponses } from '../response-reading.ts';
import type { ByteSource } from '../results/byte-encoding.ts';
import { pairCodes } from '../results/code-list.ts';
import type { Store } from '../store/open-store.ts';

/** Largest body of a request with a file of responses, in bytes: 32 MB as base64, and what goes with it. */
const fileBodyLimit = 54_525_952;

const schemas = {
	read: {
		summary: 'Read a file of responses into sittings',
		description:
			'Only the columns the mapping takes are looked at; all others are discarded before anything is kept. Rows that do not fit are left out and listed. With dryRun nothing is kept. Larger files: the command line reads any size.',
		body: schemaNamed('reading-order'),
		response: { 200: answerJson('What was read.', 'reading-report') },
	},
	preview: {
		summary: 'Look at the first rows of a file of responses',
		body: schemaNamed('preview-order'),
		response: { 200: answerJson('As they would be read, with a mapping to begin with.', 'reading-preview') },
	},
} satisfies Record<string, RouteSchema>;

/** Routes below /api/responses. */
export function addResponseRoutes(app: FastifyInstance, store: Store): void {
	app.post<{ Body: ReadingOrder }>(
		'/api/responses/read',
		{ schema: schemas.read, bodyLimit: fileBodyLimit },
		({ body: { content, codes, ...order } }) => {
			const pairs = codes?.map((cells, index) => ({ line: index + 1, cells }));
			return readResponses(store, sourceOf(content), { ...order, ...(pairs ? { codes: pairCodes(pairs) } : {}) });
		},
	);
	app.post<{ Body: PreviewOrder }>(
		'/api/responses/preview',
		{ schema: schemas.preview, bodyLimit: fileBodyLimit },
		({ body: { content, ...order } }) => previewResponses(store, sourceOf(content), order),
	);
}

/** The file in pieces, so that it is never held a second time as one text. */
function sourceOf(content: string): ByteSource {
	const bytes = Buffer.from(content, 'base64');
	const size = 262_144;
	return function* () {
		for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
	};
}
