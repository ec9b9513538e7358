import type { DocumentProblem } from './export-errors.ts';
import { manifestSchema } from './package/frame.ts';
import { checkLinks } from './package/links.ts';
import { readZip, ZipError } from './package/read-zip.ts';
import { runJob } from './validate/pool.ts';
import { findPublishedSchema, publishedFolder } from './validate/published.ts';
import type { CheckedDocument, DocumentFacts } from './validate/validate-document.ts';
import { getVersionFacts, type QtiVersion, qtiVersions } from './versions.ts';
import { manifestPath } from './write/manifest.ts';
import { testPath } from './write/test.ts';

/**
 * Checks a QTI package of this bank from its bytes: a sound archive, every document valid by the export profile (and by the
 * published schema where it is installed), every reference resolved. Packages of other makers are refused by the profile,
 * which admits only what this bank writes. Never throws for bad bytes.
 */
export async function validatePackage(
	bytes: Uint8Array,
	options: { readonly schemasFolder?: string } = {},
): Promise<readonly DocumentProblem[]> {
	let files: ReadonlyMap<string, Buffer>;
	try {
		files = await readZip(bytes);
	} catch (error) {
		if (!(error instanceof ZipError)) throw error;
		return [problemOf(error.code, error.file, error.message)];
	}
	const manifest = files.get(manifestPath);
	if (!manifest) {
		return [problemOf('package-manifest-missing', manifestPath, `expected ${manifestPath} at the root, found none`)];
	}
	const version = detectVersion(manifest);
	if (!version) {
		const known = qtiVersions.map((each) => getVersionFacts(each).schemaName).join(' or ');
		return [problemOf('package-version-unknown', manifestPath, `expected <schema> to name ${known}, found another`)];
	}
	const { documents, strays } = sortFiles(files, version);
	const published = findPublishedSchema(publishedFolder(options.schemasFolder), version);
	const findings = await runJob({ kind: 'documents', documents, published });
	const problems = [...strays, ...findings.flatMap((finding) => finding.problems)];
	const facts = new Map<string, DocumentFacts>();
	documents.forEach(({ path }, index) => {
		const known = findings[index]?.facts;
		if (known) facts.set(path, known);
	});
	return [...problems, ...checkLinks({ paths: [...files.keys()], facts })];
}

/** By the name the manifest gives itself; the schemas say later whether that is true. */
function detectVersion(manifest: Buffer): QtiVersion | undefined {
	const named = /<schema>([^<]*)<\/schema>/.exec(manifest.toString('utf8'))?.[1];
	return qtiVersions.find((version) => getVersionFacts(version).schemaName === named);
}

function sortFiles(
	files: ReadonlyMap<string, Buffer>,
	version: QtiVersion,
): { readonly documents: readonly CheckedDocument[]; readonly strays: readonly DocumentProblem[] } {
	const documents: CheckedDocument[] = [];
	const strays: DocumentProblem[] = [];
	for (const [path, xml] of files) {
		if (path === manifestPath) {
			documents.push({ path, xml, schema: manifestSchema(version) });
		} else if (path === testPath || /^items\/item-\d{3,6}(?:-part-[1-6]|-stimulus)?\.xml$/.test(path)) {
			documents.push({ path, xml, schema: version });
		} else if (!isImage(path, xml)) {
			strays.push(problemOf('package-stray-file', path, `expected a manifest, test, item or image, found ${path}`));
		}
	}
	return { documents, strays };
}

/** Whether name and first bytes agree that this is a figure of an item. */
function isImage(path: string, bytes: Buffer): boolean {
	if (
		!/^items\/images\/item-\d{3,6}(?:-part-[1-6]|-stimulus)?-(?:figure-\d{1,2}|option-[a-h]|line|(?:left|right)-[1-8])\.(?:png|svg)$/.test(
			path,
		)
	)
		return false;
	return path.endsWith('.png')
		? bytes.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))
		: bytes.includes('<svg ');
}

function problemOf(code: string, file: string, message: string): DocumentProblem {
	return { code, path: file, file, line: undefined, element: undefined, message };
}
