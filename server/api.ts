import type {
	AnswerExplanation,
	BalanceReport,
	Blueprint,
	BlueprintCreation,
	BlueprintEntry,
	BlueprintRevision,
	BuildOrder,
	BuildResult,
	CarryingTable,
	Evidence,
	ExportOrder,
	FamilyList,
	Figure,
	FigureDrawing,
	FormCreation,
	FormDetails,
	FormEntry,
	FormGiving,
	FormList,
	FormRevision,
	FrameworkList,
	GridProfile,
	GroupCreation,
	GroupEntry,
	Health,
	ItemCreation,
	ItemEntry,
	ItemFindings,
	ItemHistory,
	ItemPage,
	ItemQuery,
	ItemRevision,
	ItemSaved,
	MadeItems,
	MakeOrder,
	PatternList,
	PreviewOrder,
	PrintOrder,
	ProblemList,
	PurgeOrder,
	PurgeReport,
	RatingAgreement,
	RatingOrder,
	ReadingOrder,
	ReadingPreview,
	ReadingReport,
	Report,
	RescoringOrder,
	RescoringReport,
	ReviewList,
	SittingAnswers,
	SittingCreation,
	SittingEntry,
	StudentEntry,
	StudentRecord,
	Supply,
	SupplyQuery,
	SwapOffers,
	SwapOrder,
	VariantOrder,
	VersionChoice,
} from '../item-bank/types.ts';

/** The body of every answer outside 2xx. */
export type { ErrorReport } from '../item-bank/types.ts';

/** Asks for one version; the newest when left out. */
export interface VersionQuery {
	readonly version?: number;
}

/** Which sittings evidence is from, for whom, and whose standards are its rows. */
export interface EvidenceQuery {
	/** All when left out. */
	readonly sitting?: readonly string[];
	/** Shared when left out: groups under 10 students are hidden. */
	readonly copy?: 'shared' | 'own';
	/** teks-math when left out. */
	readonly framework?: string;
	/** 2012 when left out. */
	readonly edition?: string;
}

/** What a report is asked for beside the sittings it is on. */
export interface ReportQuery extends EvidenceQuery {
	/** Points at which a decision is made. */
	readonly cut?: readonly number[];
	/** A blueprint whose score bands are cuts too. */
	readonly blueprint?: string;
	/** DOK of standards, such as 6.3(D)=2. */
	readonly depth?: readonly string[];
	/** Item that a report of the kind "item" is on. */
	readonly item?: string;
	/** Class groups whose answers are compared item by item. */
	readonly focal?: readonly string[];
	/** Class groups they are compared with; all others when left out. */
	readonly reference?: readonly string[];
}

/** Which package an answer map belongs to: a QTI package when "as" is left out. */
export interface AnswerMapQuery extends VersionQuery, Pick<ExportOrder, 'points' | 'grid'> {
	readonly as?: ExportOrder['as'];
	readonly convert?: boolean;
	readonly leaveOut?: boolean;
}

/** What the header zeropair-report of an export holds, percent-encoded. */
export interface ExportNotes {
	/** What a teacher must know before using the package. */
	readonly notes: readonly string[];
	/** The first 20. */
	readonly warnings: readonly string[];
	readonly warningCount: number;
	readonly validated: readonly { readonly schema: string; readonly checked: boolean }[];
}

/**
 * Every route by method and address: what is sent and what comes back. Addresses are relative to the service; {id} stands
 * for an id. Changes need the content type application/json. A zip or csv answer is bytes or text, not JSON.
 */
export interface Api {
	readonly 'GET /api/health': { readonly answer: Health };
	readonly 'GET /api/items': { readonly query: ItemQuery; readonly answer: ItemPage };
	readonly 'POST /api/items': { readonly body: ItemCreation; readonly answer: ItemSaved };
	readonly 'POST /api/items/check': { readonly body: object; readonly answer: ItemFindings };
	readonly 'GET /api/items/{id}': { readonly query: VersionQuery; readonly answer: ItemEntry };
	readonly 'PUT /api/items/{id}': { readonly body: ItemRevision; readonly answer: ItemSaved };
	readonly 'GET /api/items/{id}/history': { readonly answer: ItemHistory };
	readonly 'POST /api/items/{id}/approve': { readonly body: VersionChoice; readonly answer: ItemEntry };
	readonly 'POST /api/items/{id}/retire': { readonly body: VersionChoice; readonly answer: ItemEntry };
	readonly 'GET /api/items/{id}/explanation': {
		readonly query: VersionQuery & { readonly answer: string };
		readonly answer: AnswerExplanation;
	};
	readonly 'POST /api/items/{id}/variants': { readonly body: VariantOrder; readonly answer: MadeItems };
	readonly 'POST /api/items/make': { readonly body: MakeOrder; readonly answer: MadeItems };
	readonly 'GET /api/families': { readonly answer: FamilyList };
	readonly 'GET /api/patterns': { readonly answer: PatternList };
	readonly 'GET /api/standards': { readonly answer: FrameworkList };
	readonly 'GET /api/standards/{framework}/{edition}': { readonly query: SupplyQuery; readonly answer: Supply };
	readonly 'GET /api/forms': { readonly answer: FormList };
	readonly 'POST /api/forms': { readonly body: FormCreation; readonly answer: FormEntry };
	readonly 'GET /api/forms/{id}': { readonly query: VersionQuery; readonly answer: FormDetails };
	readonly 'PUT /api/forms/{id}': { readonly body: FormRevision; readonly answer: FormEntry };
	readonly 'POST /api/forms/{id}/give': { readonly body: FormGiving; readonly answer: FormGiving };
	/** application/zip, with the header zeropair-report: see {@link ExportNotes}. */
	readonly 'POST /api/forms/{id}/export': { readonly body: ExportOrder; readonly answer: ArrayBuffer };
	/** application/zip. */
	readonly 'POST /api/forms/{id}/print': { readonly body: PrintOrder; readonly answer: ArrayBuffer };
	/** text/csv; holds keys. */
	readonly 'GET /api/forms/{id}/carrying': { readonly query: VersionQuery; readonly answer: CarryingTable };
	readonly 'GET /api/forms/{id}/answer-map': { readonly query: AnswerMapQuery; readonly answer: string };
	readonly 'GET /api/forms/{id}/blueprint': { readonly query: VersionQuery; readonly answer: Blueprint };
	readonly 'GET /api/forms/{id}/review': { readonly query: VersionQuery; readonly answer: ReviewList };
	readonly 'POST /api/forms/{id}/swap': { readonly body: SwapOrder; readonly answer: SwapOffers };
	readonly 'POST /api/forms/build': { readonly body: BuildOrder; readonly answer: BuildResult };
	readonly 'GET /api/forms/compare': {
		readonly query: { readonly first: string; readonly second: string };
		readonly answer: BalanceReport;
	};
	readonly 'GET /api/blueprints': { readonly answer: readonly BlueprintEntry[] };
	readonly 'POST /api/blueprints': { readonly body: BlueprintCreation; readonly answer: BlueprintEntry };
	readonly 'POST /api/blueprints/check': { readonly body: object; readonly answer: ProblemList };
	readonly 'GET /api/blueprints/{id}': { readonly query: VersionQuery; readonly answer: BlueprintEntry };
	readonly 'PUT /api/blueprints/{id}': { readonly body: BlueprintRevision; readonly answer: BlueprintEntry };
	readonly 'GET /api/groups': { readonly answer: readonly GroupEntry[] };
	readonly 'POST /api/groups': { readonly body: GroupCreation; readonly answer: GroupEntry };
	readonly 'GET /api/groups/{id}': { readonly answer: GroupEntry };
	readonly 'GET /api/sittings': { readonly answer: readonly SittingEntry[] };
	readonly 'POST /api/sittings': { readonly body: SittingCreation; readonly answer: SittingEntry };
	readonly 'GET /api/sittings/{id}': { readonly answer: SittingEntry };
	readonly 'GET /api/sittings/{id}/answers': { readonly answer: SittingAnswers };
	readonly 'PUT /api/sittings/{id}/students/{code}': { readonly body: StudentEntry; readonly answer: SittingAnswers };
	readonly 'POST /api/sittings/{id}/rescore': { readonly body: RescoringOrder; readonly answer: RescoringReport };
	readonly 'GET /api/sittings/{id}/ratings': {
		readonly query: { readonly reader?: RatingOrder['reader'] };
		readonly answer: RatingAgreement;
	};
	readonly 'POST /api/sittings/{id}/ratings': { readonly body: RatingOrder; readonly answer: RatingAgreement };
	readonly 'POST /api/sittings/{id}/purge': { readonly body: PurgeOrder; readonly answer: PurgeReport };
	readonly 'GET /api/students/{code}': { readonly answer: StudentRecord };
	readonly 'POST /api/students/{code}/purge': { readonly body: PurgeOrder; readonly answer: PurgeReport };
	readonly 'POST /api/responses/read': { readonly body: ReadingOrder; readonly answer: ReadingReport };
	readonly 'POST /api/responses/preview': { readonly body: PreviewOrder; readonly answer: ReadingPreview };
	readonly 'GET /api/evidence': { readonly query: EvidenceQuery; readonly answer: Evidence };
	readonly 'GET /api/reports/{kind}': { readonly query: ReportQuery; readonly answer: Report };
	/** text/csv. */
	readonly 'GET /api/reports/{kind}/csv': { readonly query: ReportQuery; readonly answer: string };
	/** application/pdf. */
	readonly 'GET /api/reports/{kind}/pdf': {
		readonly query: ReportQuery & { readonly paper?: 'letter' | 'a4' };
		readonly answer: ArrayBuffer;
	};
	readonly 'POST /api/figures/drawing': { readonly body: Figure; readonly answer: FigureDrawing };
	readonly 'GET /api/grid-profiles': { readonly answer: readonly GridProfile[] };
	/** OpenAPI 3.1. */
	readonly 'GET /api/openapi.json': { readonly answer: object };
}
