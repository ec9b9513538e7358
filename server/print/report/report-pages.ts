import type { Report, ReportSection } from '../../../item-bank/types.ts';
import { guideType } from '../guide/key.ts';
import { type Box, beside, pad, wrap } from '../page/box.ts';
import { layPlot } from '../page/figure.ts';
import type { Page } from '../page/marks.ts';
import { drawFoot, makePage, placeBoxes } from '../page/page-boxes.ts';
import { paintDocument } from '../page/paint.ts';
import { type PaperName, pageFrame } from '../page/paper.ts';
import { layHeading, layTitle, linesOf, type ProseRoom } from '../page/prose.ts';
import { layText, type Span } from '../page/text.ts';
import { dealPieces, type ReportPiece } from './report-flow.ts';
import { layReportTable } from './report-table.ts';

/** Between boxes, points. */
const gap = 4;

/** A report as a tagged PDF in landscape: the cautions on the first page and which copy it is on every page. Throws PrintCancelledError. */
export function printReport(report: Report, paper: PaperName, signal?: AbortSignal): Promise<Uint8Array> {
	const document = { title: report.title, subject: 'Results of sittings', pages: layReport(report, paper) };
	return paintDocument(document, { source: JSON.stringify(report), signal });
}

/** The pages of a report: a pack turns the page after its summary, with the cautions below it; other reports begin with them. */
export function layReport(report: Report, paper: PaperName): readonly Page[] {
	const frame = pageFrame(paper, true);
	const room: ProseRoom = { width: frame.right - frame.left, type: guideType };
	const height = frame.bottom - frame.top;
	const [first, ...others] = report.sections.map((section) => laySection(section, room, height));
	const [simulated, cautions] = [
		report.cautions.slice(0, report.simulated ? 1 : 0),
		report.cautions.slice(report.simulated ? 1 : 0),
	];
	const careful = cautions.map((text) => layPlain(text, room));
	const together = layPlain(cautions.join(' '), room);
	const pieces: readonly ReportPiece[] = [
		layTitle(report.title, room),
		...simulated.map((text) => layPlain(text, room, true)),
		...(report.kind === 'pack'
			? [...(first ?? []), layHeading('Read with care', room), together, turn]
			: [...careful, ...(first ?? [])]),
		...others.flat(),
	];
	const pages = dealPieces(pieces, height, gap);
	const left = [
		report.copy === 'own' ? 'Class teacher’s own copy: not to be passed on' : 'Shared copy: small groups hidden',
		...(report.simulated ? ['SIMULATED'] : []),
		'one score decides nothing weighty',
	].join(' · ');
	return pages.map((page, index) =>
		makePage(
			frame,
			placeBoxes(page, frame, gap),
			drawFoot(frame, left, `${index + 1} of ${pages.length}`, guideType.small),
		),
	);
}

const turn: ReportPiece = { turn: true };
/** A plot stands beside its table where it keeps this much of its size. */
const leastScale = 0.85;
const besideGap = 18;

/** Heading, notes, plot and table of a section; notes stay with what they are about, a plot with its heading. */
function laySection(
	{ title, notes, plot, table }: ReportSection,
	room: ProseRoom,
	height: number,
): readonly ReportPiece[] {
	const hasMore = plot !== undefined || table !== undefined;
	const before = [layHeading(title, room), ...notes.map((note) => ({ ...layPlain(note, room), isHeading: hasMore }))];
	const left = height - before.reduce((sum, { box }) => sum + box.height + gap, 0);
	const laid = table === undefined ? undefined : layReportTable(table, room);
	if (plot === undefined) return [...before, ...(laid === undefined ? [] : [{ table: laid }])];
	const drawn = layPlot(plot, { width: room.width, height: left - 8 });
	const padded = (box: Box): Box => pad(box, { top: 4, bottom: 4 });
	if (laid === undefined) return [...before, { box: padded(drawn) }];
	const aside = room.width - laid.width - besideGap;
	if (aside >= drawn.width * leastScale && laid.heightOf(0, laid.rows) <= left - 8) {
		const narrow = layPlot(plot, { width: aside, height: left - 8 });
		return [...before, { box: padded(beside([narrow, laid.piece(0, laid.rows)], besideGap)) }];
	}
	return [...before, { box: padded(drawn) }, { table: laid }];
}

/** Text as it stands: titles and codes in it are no mathematics. */
function layPlain(text: string, { width, type }: ProseRoom, isStrong = false): { readonly box: Box } {
	const spans: readonly Span[] = [{ text, font: isStrong ? 'sans-bold' : 'sans' }];
	return { box: pad(wrap(layText(spans, width, linesOf(type, type.small * 1.1)), { tag: 'P' }), { bottom: 1 }) };
}
