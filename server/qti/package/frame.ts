import type { FormRecord } from '../../../item-bank/items/record.ts';
import { XmlError } from '../../xml.ts';
import type { DocumentProblem } from '../export-errors.ts';
import type { PublishedSchema } from '../validate/published.ts';
import type { ProfileSchema } from '../validate/schema-set.ts';
import { type DocumentFacts, findDocumentProblems } from '../validate/validate-document.ts';
import type { QtiVersion } from '../versions.ts';
import { startsItemLine, startsManifestLine } from '../write/lines.ts';
import { type ListedItem, manifestPath, writeItemResources, writeManifest } from '../write/manifest.ts';
import { writeShapedPart, writeShapedXml } from '../write/shaped-xml.ts';
import { testPath, writeTest } from '../write/test.ts';
import { addFacts, collectFacts } from './tree-facts.ts';
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

const manifestSchemas: Readonly<Record<QtiVersion, ProfileSchema>> = {
	'qti-2.1': 'manifest-2.1',
	'qti-2.2': 'manifest-2.2',
	'qti-3.0': 'manifest-3.0',
};

/** The schema of the manifest of a version. */
export function manifestSchema(version: QtiVersion): ProfileSchema {
	return manifestSchemas[version];
}

/** Writes, checks and compresses manifest and test. */
export function writeFrame(frame: Frame): WrittenFrame {
	const { form, items, version } = frame;
	const problems: DocumentProblem[] = [];
	const files: ZipFile[] = [];
	const facts: (readonly [string, DocumentFacts])[] = [];
	const write = (path: string, schema: ProfileSchema, text: () => WrittenText): void => {
		try {
			const { bytes, facts: told } = text();
			problems.push(...findDocumentProblems({ path, xml: bytes, schema }, frame.published));
			facts.push([path, told]);
			files.push({ path, bytes });
		} catch (error) {
			if (!(error instanceof XmlError)) throw error;
			const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
			problems.push({ code: error.code, path, file: path, line: undefined, element, message: error.message });
		}
	};
	write(manifestPath, manifestSchema(version), () => writeManifestText(frame));
	if (form) write(testPath, version, () => writeTestText(form, items, version));
	if (problems.length > 0) return { problems, segment: packFiles([]), facts: [] };
	return { problems, segment: packFiles(files), facts };
}

interface WrittenText {
	readonly bytes: Uint8Array;
	readonly facts: DocumentFacts;
}

function writeTestText(form: FormRecord, items: readonly ListedItem[], version: QtiVersion): WrittenText {
	const root = writeTest(form, items, version);
	const text = writeShapedXml(root, { declaration: true, startsLine: startsItemLine });
	return { bytes: Buffer.from(text), facts: collectFacts(root) };
}

// A manifest of ten thousand items has half a million elements: one item at a time, they never stand in memory together, and
// neither does their text.
function writeManifestText({ form, items, version }: Frame): WrittenText {
	const [first, ...rest] = items;
	const root = writeManifest(form, items, version, first ? writeItemResources(first, version) : []);
	const facts = collectFacts(root);
	const text = writeShapedXml(root, { declaration: true, startsLine: startsManifestLine });
	const end = text.lastIndexOf('</resources>');
	const parts = [Buffer.from(text.slice(0, end))];
	for (const item of rest) {
		let resources = '';
		for (const resource of writeItemResources(item, version)) {
			resources += `\n${writeShapedPart(resource, root, startsManifestLine)}`;
			addFacts(facts, resource);
		}
		parts.push(Buffer.from(resources));
	}
	parts.push(Buffer.from(text.slice(end)));
	return { bytes: Buffer.concat(parts), facts };
}
