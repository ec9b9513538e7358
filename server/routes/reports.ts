import type { FastifyInstance } from 'fastify';
import type { Report } from '../../item-bank/types.ts';
import type { EvidenceQuery, ReportQuery } from '../api.ts';
import { answerJson, pathParameters, type RouteSchema } from '../open-api.ts';
import { printReport } from '../print/report/report-pages.ts';
import { makeReport, type ReportOrder, readEvidence } from '../reporting.ts';
import { readLevels } from '../results/alignment-sections.ts';
import { writeReportCsv } from '../results/report-csv.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, signalOfClose } from './shared.ts';

const kinds = ['coverage', 'class', 'items', 'item', 'form', 'patterns', 'groups', 'compare', 'pack'];
const params = pathParameters({ kind: { enum: kinds, description: 'What is told.' } });
const lensFields = {
	sitting: {
		type: 'array',
		maxItems: 500,
		items: { type: 'string', pattern: idParameter.pattern },
		description: 'Ids of sittings; repeat for several, all when left out.',
	},
	copy: { enum: ['shared', 'own'], description: 'Shared when left out: groups under 10 students are hidden.' },
	framework: { type: 'string', maxLength: 40, description: 'teks-math when left out.' },
	edition: { type: 'string', maxLength: 20, description: '2012 when left out.' },
};
const askFields = {
	cut: {
		type: 'array',
		maxItems: 8,
		items: { type: 'number', exclusiveMinimum: 0, maximum: 10000 },
		description: 'Points at which a decision is made; repeat for several.',
	},
	blueprint: { ...idParameter, description: 'Id of a blueprint whose score bands are cuts too.' },
	depth: {
		type: 'array',
		maxItems: 200,
		items: { type: 'string', pattern: '^.{1,30}=[1-4]$' },
		description: 'DOK of a standard, such as 6.3(D)=2; repeat for several.',
	},
	item: { ...idParameter, description: 'Id of the item, for a report of the kind "item".' },
	focal: {
		type: 'array',
		maxItems: 100,
		items: { type: 'string', pattern: idParameter.pattern },
		description: 'Class groups whose answers are compared item by item; repeat for several. Nothing of it is kept.',
	},
	reference: {
		type: 'array',
		maxItems: 100,
		items: { type: 'string', pattern: idParameter.pattern },
		description: 'Class groups they are compared with; all others when left out.',
	},
};
const querystring = { type: 'object', additionalProperties: false, properties: lensFields };
const reportQuerystring = { ...querystring, properties: { ...lensFields, ...askFields } };
const paper = { enum: ['letter', 'a4'], description: 'letter when left out.' };

const schemas = {
	evidence: {
		summary: 'Show what students did in each standard and model type',
		querystring,
		response: { 200: answerJson('Cells and totals, never a share without its counts.', 'evidence') },
	},
	report: {
		summary: 'Report on sittings',
		params,
		querystring: reportQuerystring,
		response: { 200: answerJson('Sections of sentences and tables.', 'report') },
	},
	csv: {
		summary: 'Report on sittings as CSV',
		params,
		querystring: reportQuerystring,
		response: { 200: { description: 'The report.', content: { 'text/csv': { schema: { type: 'string' } } } } },
	},
	pdf: {
		summary: 'Report on sittings as PDF',
		params,
		querystring: { ...querystring, properties: { ...lensFields, ...askFields, paper } },
		response: {
			200: {
				description: 'The report.',
				content: { 'application/pdf': { schema: { type: 'string', contentMediaType: 'application/pdf' } } },
			},
		},
	},
} satisfies Record<string, RouteSchema>;

interface Asked {
	readonly Params: { readonly kind: Report['kind'] };
	readonly Querystring: ReportQuery & { readonly paper?: 'letter' | 'a4' };
}

/** Routes below /api/reports, and /api/evidence. */
export function addReportRoutes(app: FastifyInstance, store: Store): void {
	app.get<{ Querystring: EvidenceQuery }>('/api/evidence', { schema: schemas.evidence }, ({ query }) =>
		readEvidence(store, orderOf(query)),
	);
	app.get<Asked>('/api/reports/:kind', { schema: schemas.report }, ({ params: { kind }, query }) =>
		makeReport(store, { kind, ...orderOf(query) }),
	);
	app.get<Asked>('/api/reports/:kind/csv', { schema: schemas.csv }, async ({ params: { kind }, query }, reply) => {
		const report = await makeReport(store, { kind, ...orderOf(query) });
		return reply
			.type('text/csv; charset=utf-8')
			.header('content-disposition', `attachment; filename="${kind}-${report.copy}.csv"`)
			.send(writeReportCsv(report));
	});
	app.get<Asked>('/api/reports/:kind/pdf', { schema: schemas.pdf }, async ({ params: { kind }, query }, reply) => {
		const report = await makeReport(store, { kind, ...orderOf(query) });
		const bytes = await printReport(report, query.paper ?? 'letter', signalOfClose(reply));
		return reply
			.type('application/pdf')
			.header('content-disposition', `attachment; filename="${kind}-${report.copy}.pdf"`)
			.send(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
	});
}

function orderOf(query: ReportQuery): Omit<ReportOrder, 'kind'> {
	const { sitting = [], copy = 'shared', framework = 'teks-math', edition = '2012' } = query;
	const { cut, blueprint, item, depth = [], focal = [], reference = [] } = query;
	return {
		sittings: sitting,
		copy,
		lens: { framework, edition },
		cuts: cut,
		blueprint,
		item,
		levels: readLevels(depth),
		compared: focal.length === 0 ? undefined : { focal: new Set(focal), reference: new Set(reference) },
	};
}
