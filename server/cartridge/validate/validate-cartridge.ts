import { type XmlDocument, XmlElement, XmlXPath } from 'libxml2-wasm';
import type { DocumentProblem } from '../../qti/export-errors.ts';
import { assessmentNamespace, cartridgeNamespace } from '../write/names.ts';
import { assessmentPath, cartridgeManifestPath } from '../write/paths.ts';
import { type FileFinding, validateFile } from './validate-file.ts';

/** What an assessment says that its manifest must agree with. */
export interface AssessmentFacts {
	readonly identifier: string;
	/** Paths of the figures, in document order. */
	readonly images: readonly string[];
}

const html = XmlXPath.compile("//q:mattext[@texttype = 'text/html']", { q: assessmentNamespace });
const shown = XmlXPath.compile('//img/@src');
const files = XmlXPath.compile('//cp:file/@href', { cp: cartridgeNamespace });
const entry = XmlXPath.compile('//cp:item/@identifierref', { cp: cartridgeNamespace });

/** Checks an assessment and the HTML of its texts. */
export function validateAssessment(xml: string): FileFinding<AssessmentFacts> {
	return validateFile(assessmentPath, xml, 'cc-1.1', (document) => {
		const texts = document.find(html);
		const { problems, read } = validateTexts(texts.map((text) => text.content));
		const first = document.get('/*/*/@ident');
		return {
			// A line of the collected texts is the number of its text: each stands on its own.
			problems: problems.map((problem) => ({ ...problem, line: texts[(problem.line ?? 1) - 1]?.line })),
			read: read && { identifier: first?.content ?? '', images: read },
		};
	});
}

/** Checks the HTML of texts, and reads the paths of the figures they show. Problems name the number of a text as their line. */
export function validateTexts(texts: readonly string[]): FileFinding<readonly string[]> {
	const lines = texts.map((text) => `<text>${text.replaceAll('\n', ' ')}</text>`);
	return validateFile(assessmentPath, `<texts>${lines.join('\n')}</texts>`, 'cc-html', (document) => {
		// A text that closes its element and opens another would pass for two.
		const count = document.find('/texts/text').length;
		if (count !== texts.length) {
			return {
				problems: [problemIn('qti-not-well-formed', 'mattext', `${texts.length} texts`, String(count), assessmentPath)],
				read: undefined,
			};
		}
		return { problems: [], read: valuesOf(document, shown).map((address) => address.slice(address.indexOf('/') + 1)) };
	});
}

/** Checks a manifest, and that it lists the files that are there and what the assessment shows. */
export function validateManifest(xml: string, facts: AssessmentFacts): readonly DocumentProblem[] {
	const { problems, read } = validateFile(cartridgeManifestPath, xml, 'cc-manifest-1.1', (document) => ({
		problems: [],
		read: { listed: valuesOf(document, files), opens: valuesOf(document, entry)[0] },
	}));
	if (!read) return problems;
	const listed = new Set(read.listed);
	const needed = [assessmentPath, ...facts.images];
	const held = new Set(needed);
	return [
		...needed
			.filter((path) => !listed.has(path))
			.map((path) => problemIn('package-file-unlisted', 'resource', `${path} among the files listed`, 'none')),
		...read.listed
			.filter((path) => !held.has(path))
			.map((path) => problemIn('package-stray-file', 'file', 'only files that the assessment shows', path)),
		...(read.opens === facts.identifier
			? []
			: [problemIn('package-identifier-mismatch', 'item', `the identifier ${facts.identifier}`, String(read.opens))]),
	];
}

function valuesOf(document: XmlDocument, xpath: XmlXPath): readonly string[] {
	return document.find(xpath).map((node) => (node instanceof XmlElement ? node.name : node.content));
}

function problemIn(
	code: string,
	element: string,
	expected: string,
	found: string,
	file = cartridgeManifestPath,
): DocumentProblem {
	return { code, path: file, file, line: undefined, element, message: `expected ${expected}, found ${found}` };
}
