import type { Report, ReportSection } from '../../../item-bank/types.ts';
import { guideType } from '../guide/key.ts';
import { pad, wrap } from '../page/box.ts';
import { layPlot } from '../page/figure.ts';
import type { Page } from '../page/marks.ts';
import { dealBoxes, drawFoot, type FlowBox, makePage, placeBoxes } from '../page/page-boxes.ts';
import { paintDocument } from '../page/paint.ts';
import { type PaperName, pageFrame } from '../page/paper.ts';
import { layHeading, layTitle, linesOf, type ProseRoom } from '../page/prose.ts';
import { layText, type Span } from '../page/text.ts';
import { layReportTable } from './report-table.ts';

/** Between boxes, points. */
const gap = 4;

/** A report as a tagged PDF in landscape: the cautions on the first page, which copy it is on every page. Throws PrintCancelledError. */
export function printReport(report: Report, paper: PaperName, signal?: AbortSignal): Promise<Uint8Array> {
	const document = { title: report.title, subject: 'Results of sittings', pages: layReport(report, paper) };
	return paintDocument(document, { source: JSON.stringify(report), signal });
}

/** The pages of a report. */
export function layReport(report: Report, paper: PaperName): readonly Page[] {
	const frame = pageFrame(paper, true);
	const room: ProseRoom = { width: frame.right - frame.left, type: guideType };
	const boxes: readonly FlowBox[] = [
		layTitle(report.title, room),
		...report.cautions.map((text, index) => layPlain(text, room, index === 0 && report.simulated)),
		...report.sections.flatMap((section) => laySection(section, room, frame.bottom - frame.top)),
	];
	const pages = dealBoxes(boxes, frame.bottom - frame.top, gap);
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

/** Heading, notes, plot and table of a section; notes stay with what they are about, a plot with its heading. */
function laySection({ title, notes, plot, table }: ReportSection, room: ProseRoom, height: number): readonly FlowBox[] {
	const hasMore = plot !== undefined || table !== undefined;
	const before: readonly FlowBox[] = [
		layHeading(title, room),
		...notes.map((note) => ({ ...layPlain(note, room), isHeading: hasMore })),
	];
	const used = before.reduce((sum, { box }) => sum + box.height + gap, 0);
	return [
		...before,
		...(plot === undefined
			? []
			: [{ box: pad(layPlot(plot, { width: room.width, height: height - used - 8 }), { top: 4, bottom: 4 }) }]),
		...(table === undefined ? [] : layReportTable(table, room).map((box) => ({ box }))),
	];
}

/** Text as it stands: titles and codes in it are no mathematics. */
function layPlain(text: string, { width, type }: ProseRoom, isStrong = false): FlowBox {
	const spans: readonly Span[] = [{ text, font: isStrong ? 'sans-bold' : 'sans' }];
	return { box: pad(wrap(layText(spans, width, linesOf(type, type.small * 1.1)), { tag: 'P' }), { bottom: 1 }) };
}
