import { ExpressionSyntaxError } from '../../item-bank/expression/syntax-error.ts';
import type { FormRecord } from '../../item-bank/items/record.ts';
import { RichTextError } from '../../item-bank/markup/rich-text.ts';
import type { Alignment } from '../../item-bank/types.ts';
import type { DocumentProblem } from '../qti/export-errors.ts';
import { packFiles, type ZipFile, type ZipSegment } from '../qti/package/write-zip.ts';
import type { ImageFormat } from '../qti/write/images.ts';
import { startsManifestLine } from '../qti/write/lines.ts';
import { writeShapedXml } from '../qti/write/shaped-xml.ts';
import { XmlError } from '../xml.ts';
import type { Question } from './question.ts';
import { validateAssessment, validateManifest } from './validate/validate-cartridge.ts';
import { type Weighing, weightOf } from './weights.ts';
import { writeAssessment, writeItemText } from './write/assessment.ts';
import { writeQuestion } from './write/item.ts';
import { writeCartridgeManifest } from './write/manifest.ts';
import { assessmentPath, cartridgeManifestPath } from './write/paths.ts';

/** A run of questions to write. Plain data for a worker. */
export interface QuestionBatch {
	readonly questions: readonly Question[];
	readonly weighing: Weighing;
	readonly images: ImageFormat;
}

/** What became of a batch. With any problem, nothing else counts. */
export interface WrittenQuestions {
	readonly problems: readonly DocumentProblem[];
	readonly texts: readonly string[];
	/** Paths of the figures, in document order. */
	readonly images: readonly string[];
	/** The figures themselves when those are SVG. */
	readonly segment: ZipSegment;
	/** Figures still to be turned into PNG: path and SVG text. */
	readonly pictures: readonly { readonly path: string; readonly svg: string }[];
}

/** The written questions to put together, check and compress. Plain data for a worker. */
export interface CartridgeFrame {
	readonly form: FormRecord;
	readonly identifiers: readonly string[];
	/** Bank ids of the questions, to name in problems. */
	readonly items: readonly string[];
	readonly texts: readonly string[];
	readonly images: readonly string[];
	readonly alignments: readonly Alignment[];
}

/** Manifest and assessment, or why there are none. */
export interface WrittenFrame {
	readonly problems: readonly DocumentProblem[];
	/** The manifest first. */
	readonly segment: ZipSegment;
}

/** Writes a batch of questions: tree, then text. */
export function writeQuestions({ questions, weighing, images }: QuestionBatch): WrittenQuestions {
	const problems: DocumentProblem[] = [];
	const texts: string[] = [];
	const pictures: { readonly path: string; readonly svg: string }[] = [];
	for (const question of questions) {
		try {
			const written = writeQuestion(question, weightOf(question, weighing), images);
			texts.push(writeItemText(written.root));
			for (const { path, root } of written.images)
				pictures.push({ path, svg: writeShapedXml(root, { declaration: true }) });
		} catch (error) {
			problems.push(writingProblem(error, assessmentPath, question.record.id));
		}
	}
	if (problems.length > 0) return { problems, texts: [], images: [], segment: packFiles([]), pictures: [] };
	const paths = pictures.map(({ path }) => path);
	if (images === 'png') return { problems, texts, images: paths, segment: packFiles([]), pictures };
	const segment = packFiles(pictures.map(({ path, svg }) => ({ path, bytes: Buffer.from(svg) })));
	return { problems, texts, images: paths, segment, pictures: [] };
}

/** Puts manifest and assessment together, checks both and what they say of each other, and compresses them. */
export function writeFrame(frame: CartridgeFrame): WrittenFrame {
	try {
		const assessment = writeAssessment(frame.form, frame.texts);
		const { problems, read } = validateAssessment(assessment);
		if (!read) return refuse(nameItems(problems, assessment, frame.items));
		const manifest = writeShapedXml(writeCartridgeManifest(frame), {
			declaration: true,
			startsLine: startsManifestLine,
		});
		const found = validateManifest(manifest, read);
		if (found.length > 0) return refuse(found);
		const files: readonly ZipFile[] = [
			{ path: cartridgeManifestPath, bytes: Buffer.from(manifest) },
			{ path: assessmentPath, bytes: Buffer.from(assessment) },
		];
		return { problems: [], segment: packFiles(files) };
	} catch (error) {
		return refuse([writingProblem(error, assessmentPath)]);
	}
}

/** What a check of a cartridge found. */
export interface CheckedCartridge {
	readonly problems: readonly DocumentProblem[];
	/** Paths of the figures that a valid assessment shows. */
	readonly images: readonly string[];
}

/** Checks an assessment and its manifest as they stand. */
export function checkCartridge(manifest: string, assessment: string): CheckedCartridge {
	const { problems, read } = validateAssessment(assessment);
	return read ? { problems: validateManifest(manifest, read), images: read.images } : { problems, images: [] };
}

function refuse(problems: readonly DocumentProblem[]): WrittenFrame {
	return { problems, segment: packFiles([]) };
}

/** By the lines on which items start. */
function nameItems(
	problems: readonly DocumentProblem[],
	assessment: string,
	items: readonly string[],
): readonly DocumentProblem[] {
	const starts = assessment.split('\n').flatMap((line, index) => (line.startsWith('<item ') ? [index + 1] : []));
	return problems.map((problem) => {
		const at = starts.findLastIndex((start) => problem.line !== undefined && start <= problem.line);
		const item = items[at];
		return item === undefined ? problem : { ...problem, item };
	});
}

/** Texts that cannot be written are the item's problems; anything else is our own fault and goes on. */
function writingProblem(error: unknown, file: string, item?: string): DocumentProblem {
	const at = { path: file, file, line: undefined, ...(item === undefined ? {} : { item }) };
	if (error instanceof RichTextError || error instanceof ExpressionSyntaxError) {
		return { ...at, code: error.code, element: undefined, message: error.message };
	}
	if (!(error instanceof XmlError)) throw error;
	const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
	return { ...at, code: error.code, element, message: error.message };
}
