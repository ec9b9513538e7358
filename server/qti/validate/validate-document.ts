import {
	type ErrorDetail,
	type NamespaceMap,
	XmlDocument,
	XmlElement,
	XmlLibError,
	type XmlNode,
	XmlXPath,
} from 'libxml2-wasm';
import type { DocumentProblem } from '../export-errors.ts';
import { getVersionFacts, instanceNamespace, type QtiVersion, qtiVersions } from '../versions.ts';
import { renamePath } from '../vocabulary.ts';
import { anyFaultOf } from './any-fault.ts';
import { checkOwnProcessing } from './own-processing.ts';
import type { PublishedSchema } from './published.ts';
import type { Rule } from './rule.ts';
import { faultsOf, manifestRulesOf, rulesOf } from './rules.ts';
import { getProfileValidator, getPublishedValidator, type ProfileSchema, safeParsing } from './schema-set.ts';

/** A document to check against the export profile. */
export interface CheckedDocument {
	/** Path within the package. */
	readonly path: string;
	readonly xml: string | Uint8Array;
	readonly schema: ProfileSchema;
}

/** One place where a document points at another file: an image of an item, an item of a test, a resource of a manifest. */
export interface DocumentReference {
	/** The address as written. */
	readonly href: string;
	/** The identifier beside it; '' for images. */
	readonly identifier: string;
}

/** What other documents of a package need to know of a valid one. */
export interface DocumentFacts {
	readonly identifier: string;
	/** In document order. */
	readonly references: readonly DocumentReference[];
	/** Dependencies of a manifest, as pairs of the resource's identifier and the one it needs. */
	readonly dependencies: readonly (readonly [from: string, to: string])[];
}

/** What a check of one document found. Facts are there only when nothing is wrong. */
export interface DocumentFinding {
	readonly problems: readonly DocumentProblem[];
	readonly facts: DocumentFacts | undefined;
}

interface RuleSet {
	readonly rules: readonly { readonly rule: Rule; readonly xpath: XmlXPath }[];
	/** Every rule at once: finds nothing in a document that breaks none. */
	readonly all: XmlXPath;
	readonly references: XmlXPath;
	readonly dependencies: XmlXPath | undefined;
}

/** The attribute by which an element shows a picture. */
const addressOf: Readonly<Record<string, string>> = { img: 'src', object: 'data' };

const ruleSets = new Map<ProfileSchema, RuleSet>();

/**
 * Checks one document: well-formed, valid by the export profile, valid by the published schema where one is given, and by
 * the rules no schema can state. Must run where libxml2 is at hand; it reads nothing but the text given.
 */
export function validateDocument(document: CheckedDocument, published?: PublishedSchema): DocumentFinding {
	return inspectDocument(document, published, true);
}

/** The problems of {@link validateDocument}, for whoever knows the facts: reading them is a third of the work on a manifest. */
export function findDocumentProblems(
	document: CheckedDocument,
	published?: PublishedSchema,
): readonly DocumentProblem[] {
	return inspectDocument(document, published, false).problems;
}

function inspectDocument(
	document: CheckedDocument,
	published: PublishedSchema | undefined,
	isForFacts: boolean,
): DocumentFinding {
	const { path } = document;
	let parsed: XmlDocument;
	try {
		if (hasDoctype(document.xml)) return refuse(doctypeProblem(path));
		parsed =
			typeof document.xml === 'string'
				? XmlDocument.fromString(document.xml, { option: safeParsing })
				: XmlDocument.fromBuffer(document.xml, { option: safeParsing });
	} catch (error) {
		if (!(error instanceof XmlLibError)) throw error;
		return {
			problems: error.details.map((detail) => problemOf('qti-not-well-formed', path, detail)),
			facts: undefined,
		};
	}
	try {
		const problems = [
			...checkSchema('qti-not-in-profile', path, () => getProfileValidator(document.schema).validate(parsed)),
			...(published && document.schema === published.version
				? checkSchema('qti-not-in-published', path, () => getPublishedValidator(published).validate(parsed))
				: []),
		];
		const set = getRuleSet(document.schema);
		if (parsed.find(set.all).length > 0) problems.push(...findFaults(path, parsed, set));
		if (problems.length === 0 && hasOwnProcessing(document)) problems.push(...checkOwnProcessing(document));
		return problems.length > 0 || !isForFacts
			? { problems, facts: undefined }
			: { problems, facts: readFacts(parsed, set, mayRefer(document)) };
	} finally {
		parsed.dispose();
	}
}

/** Most items show no image, and looking through their nodes costs more than looking through their text. */
function mayRefer({ xml, schema }: CheckedDocument): boolean {
	return (
		schema.startsWith('manifest-') ||
		includes(xml, '<img') ||
		includes(xml, '<object') ||
		includes(xml, '<qti-assessment-item-ref') ||
		includes(xml, '<assessmentItemRef') ||
		includes(xml, '<qti-assessment-stimulus-ref')
	);
}

function hasOwnProcessing({ xml }: CheckedDocument): boolean {
	return includes(xml, '<responseCondition') || includes(xml, '<qti-response-condition');
}

function hasDoctype(xml: string | Uint8Array): boolean {
	return includes(xml, '<!DOCTYPE');
}

function includes(xml: string | Uint8Array, part: string): boolean {
	return typeof xml === 'string'
		? xml.includes(part)
		: Buffer.from(xml.buffer, xml.byteOffset, xml.length).includes(part);
}

function doctypeProblem(path: string): DocumentProblem {
	const message = 'expected a document without a document type, found <!DOCTYPE';
	return { code: 'qti-doctype', path, file: path, line: undefined, element: undefined, message };
}

function refuse(problem: DocumentProblem): DocumentFinding {
	return { problems: [problem], facts: undefined };
}

/** The problems a schema finds with a document that is already parsed, each under the code. */
export function checkSchema(code: string, path: string, validate: () => void): DocumentProblem[] {
	try {
		validate();
		return [];
	} catch (error) {
		if (!(error instanceof XmlLibError)) throw error;
		return error.details.map((detail) => problemOf(code, path, detail));
	}
}

/** One finding of libxml2 as a problem of a file. */
export function problemOf(code: string, path: string, detail: ErrorDetail): DocumentProblem {
	const message = detail.message.trim().replaceAll(/\{http[^}]*\}/g, '');
	const element = /^Element '(?:\{[^}]*\})?([^']+)'/.exec(detail.message.trim())?.[1];
	return {
		code,
		path: `${path}${detail.xpath ?? ''}`,
		file: path,
		line: detail.line > 0 ? detail.line : undefined,
		element,
		message,
	};
}

function findFaults(path: string, parsed: XmlDocument, set: RuleSet): DocumentProblem[] {
	return set.rules.flatMap(({ rule, xpath }) =>
		elementsOf(parsed.find(xpath)).map((node) => {
			const message = `expected ${rule.expected}, found ${describeElement(node)}`;
			return { code: rule.code, path, file: path, line: node.line, element: node.name, message };
		}),
	);
}

/** The opening tag, and the start of the text if there is any. */
export function describeElement(node: XmlElement): string {
	const attributes = node.attrs.map(({ name, value }) => ` ${name}="${value}"`).join('');
	const text = node.content.trim().replaceAll(/\s+/g, ' ');
	return `<${node.name}${attributes}>${text.length > 40 ? `${text.slice(0, 40)}…` : text}`;
}

function readFacts(parsed: XmlDocument, set: RuleSet, hasReferences: boolean): DocumentFacts {
	return {
		identifier: attributeOf(parsed.root, 'identifier'),
		references: (hasReferences ? elementsOf(parsed.find(set.references)) : []).map((node) => ({
			href: attributeOf(node, addressOf[node.name] ?? 'href'),
			identifier: addressOf[node.name] === undefined ? attributeOf(node, 'identifier') : '',
		})),
		dependencies: set.dependencies
			? elementsOf(parsed.find(set.dependencies)).map(
					(node) =>
						[node.parent ? attributeOf(node.parent, 'identifier') : '', attributeOf(node, 'identifierref')] as const,
				)
			: [],
	};
}

function elementsOf(nodes: readonly XmlNode[]): readonly XmlElement[] {
	return nodes.filter((node) => node instanceof XmlElement);
}

function attributeOf(node: XmlElement, attribute: string): string {
	return node.attr(attribute)?.value ?? '';
}

function versionOf(schema: ProfileSchema): QtiVersion {
	return qtiVersions.find((version) => version.endsWith(schema.slice(-3))) ?? 'qti-2.2';
}

/** The stimulus of an item first, then its figures as they stand. */
function referencesOf(hasNewerNames: boolean): string {
	const places =
		'/q:assessmentItem/q:itemBody//q:img | /q:assessmentItem/q:itemBody/q:hotspotInteraction/q:object | /q:assessmentTest//q:assessmentItemRef';
	return hasNewerNames
		? renamePath(`/q:assessmentItem/q:assessmentStimulusRef | /q:assessmentStimulus/q:stimulusBody//q:img | ${places}`)
		: places;
}

function getRuleSet(schema: ProfileSchema): RuleSet {
	const known = ruleSets.get(schema);
	if (known) return known;
	const isManifest = schema.startsWith('manifest-');
	const version = versionOf(schema);
	const { namespace, manifestNamespace, hasNewerNames } = getVersionFacts(version);
	const namespaces: NamespaceMap = {
		q: namespace,
		cp: manifestNamespace,
		xsi: instanceNamespace,
	};
	const rules = isManifest ? manifestRulesOf(version) : rulesOf(version);
	const references = isManifest ? '/cp:manifest/cp:resources/cp:resource' : referencesOf(hasNewerNames);
	const set = {
		rules: rules.map((rule) => ({ rule, xpath: XmlXPath.compile(faultsOf(rule), namespaces) })),
		all: XmlXPath.compile(anyFaultOf(rules), namespaces),
		references: XmlXPath.compile(references, namespaces),
		dependencies: isManifest
			? XmlXPath.compile('/cp:manifest/cp:resources/cp:resource/cp:dependency', namespaces)
			: undefined,
	};
	ruleSets.set(schema, set);
	return set;
}
