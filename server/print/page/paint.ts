import { createHash } from 'node:crypto';
import PDFDocument from 'pdfkit';
import { PrintCancelledError } from '../print-errors.ts';
import { fontFile, fontNames } from './fonts.ts';
import { type Block, black, isMark, type Mark, type Page, type Paint, type PrintDocument } from './marks.ts';

/** Same pages, same bytes: the day is fixed, it says nothing. */
const fixedDate = new Date('2000-01-01T00:00:00Z');

/** How a document is painted. */
export interface PaintOptions {
	/** Told of every finished page. */
	readonly onPage?: () => void;
	/** Gives up; the painting then throws PrintCancelledError. */
	readonly signal?: AbortSignal | undefined;
	/** What the document is made of: its identifier is derived from it. */
	readonly source: string;
}

/**
 * Paints pages as one tagged PDF 1.7 with embedded fonts, marked as PDF/UA-1 (ISO 14289-1). Same pages and source, same
 * bytes. Throws PrintCancelledError.
 */
export async function paintDocument(document: PrintDocument, options: PaintOptions): Promise<Uint8Array> {
	const info = {
		Title: document.title,
		Subject: document.subject,
		Author: 'Zeropair',
		Creator: 'Zeropair',
		Keywords: createHash('sha256').update(options.source).digest('hex').slice(0, 16),
		CreationDate: fixedDate,
		ModDate: fixedDate,
	};
	const pdf = openPdf(info);
	const parts: Buffer[] = [];
	let chunks: Buffer[] = [];
	pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
	// Chunks are slices of shared pools that each keep a whole pool alive; copied together they keep only themselves.
	const gather = () => {
		parts.push(Buffer.concat(chunks));
		chunks = [];
	};
	const ended = new Promise<void>((resolve, reject) => pdf.once('end', resolve).once('error', reject));
	const root = pdf.struct('Document');
	pdf.addStructure(root);
	let painted = 0;
	for (const page of document.pages) {
		paintPage(pdf, root, page);
		painted += 1;
		options.onPage?.();
		if (painted % 8 === 0) {
			// Lets a cancellation in, and what is finished out.
			await new Promise(setImmediate);
			gather();
		}
		if (options.signal?.aborted) throw new PrintCancelledError(options.signal.reason);
	}
	root.end();
	pdf.end();
	await ended;
	gather();
	return Buffer.concat(parts);
}

/** A tagged document without pages that knows the fonts by their names. */
export function openPdf(info: PDFKit.DocumentInfo): PDFKit.PDFDocument {
	const pdf = new PDFDocument({
		pdfVersion: '1.7',
		tagged: true,
		lang: 'en',
		displayTitle: true,
		// The type declarations know the archive subsets only.
		subset: 'PDF/UA' as never,
		autoFirstPage: false,
		// None to begin with: a font that is opened under two names is read twice.
		font: null as never,
		info,
	});
	for (const font of fontNames) pdf.registerFont(font, fontFile(font));
	return pdf;
}

/** Paints one page after those that a document already has, below the root of its structure. */
export function paintPage(pdf: PDFKit.PDFDocument, root: PDFKit.PDFStructureElement, page: Page): void {
	pdf.addPage({ size: [page.width, page.height], margin: 0 });
	const rules: Mark[] = [];
	for (const block of page.blocks) {
		if (block.tag === 'Artifact') rules.push(...block.children.filter(isMark));
		else root.add(buildElement(pdf, block, rules));
	}
	paintArtifacts(pdf, rules, 'Layout');
	paintArtifacts(pdf, page.artifacts, 'Pagination');
}

function paintArtifacts(pdf: PDFKit.PDFDocument, marks: readonly Mark[], type: 'Layout' | 'Pagination'): void {
	if (marks.length === 0) return;
	pdf.markContent('Artifact', { type });
	for (const mark of marks) paintMark(pdf, mark);
	pdf.endMarkedContent();
}

/** Marks of artifacts inside the block are put aside into `rules`: they may not stand inside content. */
function buildElement(pdf: PDFKit.PDFDocument, block: Block, rules: Mark[]): PDFKit.PDFStructureElement {
	// The type declarations do not know scope, bbox and placement yet.
	const options: { alt?: string; scope?: string; bbox?: readonly number[]; placement?: string } = {};
	if (block.alt !== undefined) options.alt = block.alt;
	if (block.scope !== undefined) options.scope = block.scope;
	if (block.bounds !== undefined) {
		options.bbox = block.bounds;
		options.placement = 'Block';
	}
	const element = pdf.struct(block.tag, options);
	let marks: Mark[] = [];
	const flush = () => {
		if (marks.length === 0) return;
		const run = marks;
		marks = [];
		element.add(() => {
			for (const mark of run) paintMark(pdf, mark);
		});
	};
	for (const child of block.children) {
		if (isMark(child)) marks.push(child);
		else if (child.tag === 'Artifact') rules.push(...child.children.filter(isMark));
		else {
			flush();
			element.add(buildElement(pdf, child, rules));
		}
	}
	flush();
	element.end();
	return element;
}

const plainText = { lineBreak: false, baseline: 'alphabetic' } as const;

/** Makes one drawing call. */
export function paintMark(pdf: PDFKit.PDFDocument, mark: Mark): void {
	switch (mark.kind) {
		case 'text':
			pdf.font(mark.font, mark.size).fillColor(mark.tone ?? black);
			pdf.text(mark.text, mark.x, mark.y, plainText);
			return;
		case 'rect':
			if (mark.rounding === undefined) pdf.rect(mark.x, mark.y, mark.width, mark.height);
			else pdf.roundedRect(mark.x, mark.y, mark.width, mark.height, mark.rounding);
			paintPath(pdf, mark.paint);
			return;
		case 'circle':
			pdf.circle(mark.x, mark.y, mark.radius);
			paintPath(pdf, mark.paint);
			return;
		case 'line':
			pdf.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2);
			paintPath(pdf, mark.paint);
			return;
		case 'polygon':
			pdf.polygon(...mark.points.map(([x, y]) => [x, y]));
			paintPath(pdf, mark.paint);
			return;
		case 'rects':
			// One path, painted once: neighbours leave no seams between them.
			for (const { x, y, width, height } of mark.rects) pdf.rect(x, y, width, height);
			paintPath(pdf, mark.paint);
			return;
		default:
			mark satisfies never;
	}
}

function paintPath(pdf: PDFKit.PDFDocument, paint: Paint): void {
	if (paint.stroke !== undefined) {
		pdf.lineWidth(paint.width ?? 1);
		if (paint.dash) pdf.dash(paint.dash[0] ?? 1, { space: paint.dash[1] ?? 1 });
		else pdf.undash();
	}
	if (paint.fill !== undefined && paint.stroke !== undefined) pdf.fillAndStroke(paint.fill, paint.stroke);
	else if (paint.fill !== undefined) pdf.fill(paint.fill);
	else pdf.stroke(paint.stroke ?? black);
}
