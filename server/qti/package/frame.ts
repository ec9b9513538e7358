import type { FormRecord } from '../../../item-bank/items/record.ts';
import { XmlError } from '../../xml.ts';
import type { DocumentProblem } from '../export-errors.ts';
import type { PublishedSchema } from '../validate/published.ts';
import type { ProfileSchema } from '../validate/schema-set.ts';
import { type DocumentFacts, validateDocument } from '../validate/validate-document.ts';
import type { QtiVersion } from '../versions.ts';
import { breakLines, breakManifestLines } from '../write/lines.ts';
import { type ListedItem, manifestPath, writeItemResources, writeManifest } from '../write/manifest.ts';
import { writeShapedPart, writeShapedXml } from '../write/shaped-xml.ts';
import { testPath, writeTest } from '../write/test.ts';
import { packFiles, type ZipFile, type ZipSegment } from './write-zip.ts';

/** What stands around the items: the manifest, and the test of a form. Plain data for a worker. */
export interface Frame {
	readonly form: FormRecord | undefined;
	readonly items: readonly ListedItem[];
	readonly version: QtiVersion;
	readonly published: PublishedSchema | undefined;
}

/** What became of a frame. With any problem, nothing else counts. */
export interface WrittenFrame {
	readonly problems: readonly DocumentProblem[];
	/** The manifest first. */
	readonly segment: ZipSegment;
	readonly facts: readonly (readonly [path: string, facts: DocumentFacts])[];
}

/** The schema of the manifest of a version. */
export function manifestSchema(version: QtiVersion): ProfileSchema {
	return version === 'qti-2.1' ? 'manifest-2.1' : 'manifest-2.2';
}

/** Writes, checks and compresses manifest and test. */
export function writeFrame(frame: Frame): WrittenFrame {
	const { form, items, version } = frame;
	const problems: DocumentProblem[] = [];
	const files: ZipFile[] = [];
	const facts: (readonly [string, DocumentFacts])[] = [];
	const write = (path: string, schema: ProfileSchema, text: () => string): void => {
		try {
			const bytes = Buffer.from(text());
			const finding = validateDocument({ path, xml: bytes, schema }, frame.published);
			problems.push(...finding.problems);
			if (finding.facts) facts.push([path, finding.facts]);
			files.push({ path, bytes });
		} catch (error) {
			if (!(error instanceof XmlError)) throw error;
			const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
			problems.push({ code: error.code, path, file: path, line: undefined, element, message: error.message });
		}
	};
	const declaration = { declaration: true };
	write(manifestPath, manifestSchema(version), () => writeManifestText(frame));
	if (form) write(testPath, version, () => breakLines(writeShapedXml(writeTest(form, items, version), declaration)));
	if (problems.length > 0) return { problems, segment: packFiles([]), facts: [] };
	return { problems, segment: packFiles(files), facts };
}

// A manifest of ten thousand items has half a million elements: one item at a time, they never stand in memory together.
function writeManifestText({ form, items, version }: Frame): string {
	const [first, ...rest] = items;
	const root = writeManifest(form, items, version, first ? writeItemResources(first, version) : []);
	const text = breakManifestLines(writeShapedXml(root, { declaration: true }));
	const end = text.lastIndexOf('</resources>');
	const parts = rest.flatMap((item) =>
		writeItemResources(item, version).map((resource) => `\n${breakManifestLines(writeShapedPart(resource, root))}`),
	);
	return text.slice(0, end) + parts.join('') + text.slice(end);
}
