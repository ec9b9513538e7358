import type { FastifyInstance } from 'fastify';
import { zipSync } from 'fflate';
import { reviewForm } from '../../item-bank/checks/review-form.ts';
import type {
	ExportOrder,
	FormCreation,
	FormGiving,
	FormRevision,
	PrintOrder,
	ReviewList,
} from '../../item-bank/types.ts';
import { mapAnswers } from '../answer-maps.ts';
import type { AnswerMapQuery } from '../api.ts';
import { tabulateCarrying } from '../carrying-table.ts';
import { exportPackage, exportVersions } from '../export-package.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { finderOf } from '../planning.ts';
import { type PrintedFile, printForm } from '../print/print-form.ts';
import { RequestError } from '../request-errors.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, signalOfClose, underField, versionQuery } from './shared.ts';

const params = pathParameters({ id: idParameter });
const text = { type: 'string' };
const answerMapQuery = {
	...versionQuery,
	properties: {
		...versionQuery.properties,
		as: { enum: exportVersions, description: 'A QTI version when left out.' },
		convert: { type: 'boolean' },
		leaveOut: { type: 'boolean' },
		points: { enum: ['hotspot', 'choice'], description: 'As in the export.' },
		grid: { enum: ['number', 'columns'], description: 'As in the export.' },
	},
};

const schemas = {
	list: {
		summary: 'List the forms',
		response: { 200: answerJson('The newest version of each, by title.', 'form-list') },
	},
	create: {
		summary: 'Keep a new form',
		body: schemaNamed('form-creation'),
		response: { 201: answerJson('The form as kept.', 'form-entry') },
	},
	get: {
		summary: 'Show one version of a form with its items and when it was given',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('The version.', 'form-details') },
	},
	revise: {
		summary: 'Keep a new version of a form',
		description: 'Refused when the version it is based on is no longer the newest.',
		params,
		body: schemaNamed('form-revision'),
		response: { 200: answerJson('The new version.', 'form-entry') },
	},
	give: {
		summary: 'Record that a form was given to a group on a day',
		params,
		body: schemaNamed('form-giving'),
		response: { 201: answerJson('As recorded.', 'form-giving') },
	},
	export: {
		summary: 'Take a form out for a learning platform',
		description:
			'The package is checked before it is handed over. The header zeropair-report holds notes and warnings as percent-encoded JSON. Without images figures are PNG. Common Cartridge 1.1 does not carry every kind: items of other kinds stop the export with the list, unless convert or leaveOut says what to do with them.',
		params,
		body: schemaNamed('export-order'),
		response: {
			200: {
				description: 'The package.',
				content: { 'application/zip': { schema: { type: 'string', contentMediaType: 'application/zip' } } },
			},
		},
	},
	carrying: {
		summary: 'Show what each version would carry of a form',
		description: 'Item by item, before anything is written: carried, converted, refused, and what is lost.',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('The table.', 'carrying-table') },
	},
	print: {
		summary: 'Put a form on paper',
		description:
			'A ZIP archive of PDF files: booklet, answer sheets with their geometry, key, administration sheet, work pages.',
		params,
		body: schemaNamed('print-order'),
		response: {
			200: {
				description: 'The files.',
				content: { 'application/zip': { schema: { type: 'string', contentMediaType: 'application/zip' } } },
			},
		},
	},
	review: {
		summary: 'Say what the rules of item writing find between the items of a form',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('Advice, with paths into the form.', 'review-list') },
	},
	answerMap: {
		summary: 'Show which exported item is which, with keys',
		description:
			'Confidential: it holds the keys. For a Common Cartridge name it with "as", and convert and leaveOut as in the export; QTI packages of every version share one.',
		params,
		querystring: answerMapQuery,
		response: { 200: { description: 'answer-map.csv', content: { 'text/csv': { schema: text } } } },
	},
} satisfies Record<string, RouteSchema>;

interface ById {
	readonly Params: { readonly id: string };
}

/** Routes below /api/forms. */
export function addFormRoutes(app: FastifyInstance, store: Store, schemasFolder?: string): void {
	const { forms } = store;
	app.get('/api/forms', { schema: schemas.list }, () => forms.list());
	app.post<{ Body: FormCreation }>('/api/forms', { schema: schemas.create }, async ({ body }, reply) => {
		const record = await underField('form', forms.create(body));
		return reply.code(201).header('location', `/api/forms/${record.id}`).send(record);
	});
	app.get<ById & { Querystring: { version?: number } }>(
		'/api/forms/:id',
		{ schema: schemas.get },
		({ params, query }) => forms.get(params.id, query.version),
	);
	app.put<ById & { Body: FormRevision }>('/api/forms/:id', { schema: schemas.revise }, ({ params, body }) =>
		underField('form', forms.revise(params.id, body.baseVersion, body.form)),
	);
	app.get<ById & { Querystring: { version?: number } }>(
		'/api/forms/:id/review',
		{ schema: schemas.review },
		async ({ params, query }): Promise<ReviewList> => {
			const { record, items } = await forms.get(params.id, query.version);
			return reviewForm(record.form, finderOf(items));
		},
	);
	app.post<ById & { Body: FormGiving }>(
		'/api/forms/:id/give',
		{ schema: schemas.give },
		async ({ params, body }, reply) => reply.code(201).send(await forms.give(params.id, body)),
	);
	app.post<ById & { Body: ExportOrder }>(
		'/api/forms/:id/export',
		{ schema: schemas.export },
		async (request, reply) => {
			const { version, images = 'png', feedback = false, ...order } = request.body;
			const { record, items } = await forms.get(request.params.id, version);
			const signal = signalOfClose(reply);
			const { fileName, bytes, report } = await exportPackage(
				{ form: record, items },
				{ ...order, images, hasFeedback: feedback, signal, ...(schemasFolder === undefined ? {} : { schemasFolder }) },
			);
			const { notes, warnings, validated } = report;
			const told = { notes, warnings: warnings.slice(0, 20), warningCount: warnings.length, validated };
			return reply
				.type('application/zip')
				.header('content-disposition', `attachment; filename="${fileName}"`)
				.header('zeropair-report', encodeURIComponent(JSON.stringify(told)))
				.send(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
		},
	);
	app.post<ById & { Body: PrintOrder }>('/api/forms/:id/print', { schema: schemas.print }, async (request, reply) => {
		const { version, group, students = [], ...order } = request.body;
		if (group !== undefined && students.length > 0) {
			throw new RequestError({
				code: 'order-contradictory',
				status: 400,
				message: 'expected group or students, found both',
			});
		}
		const { record, items } = await forms.get(request.params.id, version);
		const codes = group === undefined ? students : (await store.groups.get(group)).group.studentCodes;
		const signal = signalOfClose(reply);
		const files = await printForm({ form: record, items, students: codes }, { ...order, signal });
		return reply
			.type('application/zip')
			.header('content-disposition', `attachment; filename="${record.id}-v${record.version}-paper.zip"`)
			.send(packFiles(files));
	});
	app.get<ById & { Querystring: { version?: number } }>(
		'/api/forms/:id/carrying',
		{ schema: schemas.carrying },
		async ({ params, query }) => {
			const { record, items } = await forms.get(params.id, query.version);
			return tabulateCarrying(record, items);
		},
	);
	app.get<ById & { Querystring: AnswerMapQuery }>(
		'/api/forms/:id/answer-map',
		{ schema: schemas.answerMap },
		async ({ params, query }, reply) => {
			const { version, ...order } = query;
			const { record, items } = await forms.get(params.id, version);
			const map = await mapAnswers({ form: record, items }, order);
			return reply
				.type('text/csv; charset=utf-8')
				.header('content-disposition', `attachment; filename="${record.id}-v${record.version}-answer-map.csv"`)
				.send(map);
		},
	);
}

/** One archive of the files with a fixed date; PDF is compressed already. */
function packFiles(files: readonly PrintedFile[]): Buffer {
	const bytes = zipSync(Object.fromEntries(files.map(({ name, bytes: content }) => [name, content])), {
		level: 0,
		mtime: new Date(2000, 0, 1),
	});
	return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
