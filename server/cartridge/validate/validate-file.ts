import { type NamespaceMap, XmlDocument, XmlElement, XmlLibError, XmlXPath } from 'libxml2-wasm';
import type { DocumentProblem } from '../../qti/export-errors.ts';
import { anyFaultOf } from '../../qti/validate/any-fault.ts';
import type { Rule } from '../../qti/validate/rule.ts';
import { faultsOf } from '../../qti/validate/rules.ts';
import { type CartridgeSchema, getProfileValidator, safeParsing } from '../../qti/validate/schema-set.ts';
import { checkSchema, describeElement, problemOf } from '../../qti/validate/validate-document.ts';
import { instanceNamespace } from '../../qti/versions.ts';
import { assessmentNamespace, cartridgeNamespace } from '../write/names.ts';
import { assessmentRules, cartridgeManifestRules, textRules } from './rules.ts';

/** What a check of one file found. What is read of it is there only when nothing is wrong. */
export interface FileFinding<T> {
	readonly problems: readonly DocumentProblem[];
	readonly read: T | undefined;
}

interface RuleSet {
	readonly rules: readonly { readonly rule: Rule; readonly xpath: XmlXPath }[];
	readonly all: XmlXPath;
}

const rulesOf: Readonly<Record<CartridgeSchema, readonly Rule[]>> = {
	'cc-1.1': assessmentRules,
	'cc-manifest-1.1': cartridgeManifestRules,
	'cc-html': textRules,
};
const namespaces: NamespaceMap = { q: assessmentNamespace, cp: cartridgeNamespace, xsi: instanceNamespace };
const ruleSets = new Map<CartridgeSchema, RuleSet>();

/**
 * Checks one file of a cartridge: well-formed, no document type, valid by the export profile, and by the rules no schema can
 * state; then reads of it what others need. Must run where libxml2 is at hand; it reads nothing but the text given.
 */
export function validateFile<T>(
	path: string,
	xml: string,
	schema: CartridgeSchema,
	read: (document: XmlDocument) => FileFinding<T>,
): FileFinding<T> {
	if (xml.includes('<!DOCTYPE')) {
		const message = 'expected a document without a document type, found <!DOCTYPE';
		return {
			problems: [{ code: 'qti-doctype', path, file: path, line: undefined, element: undefined, message }],
			read: undefined,
		};
	}
	let parsed: XmlDocument;
	try {
		parsed = XmlDocument.fromBuffer(Buffer.from(xml), { option: safeParsing });
	} catch (error) {
		if (!(error instanceof XmlLibError)) throw error;
		return { problems: error.details.map((detail) => problemOf('qti-not-well-formed', path, detail)), read: undefined };
	}
	try {
		const problems = [
			...checkSchema('qti-not-in-profile', path, () => getProfileValidator(schema).validate(parsed)),
			...findFaults(path, parsed, getRuleSet(schema)),
		];
		return problems.length > 0 ? { problems, read: undefined } : read(parsed);
	} finally {
		parsed.dispose();
	}
}

function findFaults(path: string, parsed: XmlDocument, set: RuleSet): readonly DocumentProblem[] {
	if (parsed.find(set.all).length === 0) return [];
	return set.rules.flatMap(({ rule, xpath }) =>
		parsed.find(xpath).flatMap((node) => {
			if (!(node instanceof XmlElement)) return [];
			const message = `expected ${rule.expected}, found ${describeElement(node)}`;
			return [{ code: rule.code, path, file: path, line: node.line, element: node.name, message }];
		}),
	);
}

function getRuleSet(schema: CartridgeSchema): RuleSet {
	const known = ruleSets.get(schema);
	if (known) return known;
	const rules = rulesOf[schema];
	const set = {
		rules: rules.map((rule) => ({ rule, xpath: XmlXPath.compile(faultsOf(rule), namespaces) })),
		all: XmlXPath.compile(anyFaultOf(rules), namespaces),
	};
	ruleSets.set(schema, set);
	return set;
}
