import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ParseOption, XmlBufferInputProvider, XmlDocument, XsdValidator, xmlRegisterInputProvider } from 'libxml2-wasm';
import { projectRoot } from '../../project-root.ts';
import type { QtiVersion } from '../versions.ts';
import type { PublishedSchema } from './published.ts';

/** A schema of the export profile: items and tests, or manifests, of one version. */
export type ProfileSchema = QtiVersion | 'manifest-2.1' | 'manifest-2.2' | 'manifest-3.0';

/** A schema of the export profile for cartridges: assessments, manifests, the HTML within texts. */
export type CartridgeSchema = 'cc-1.1' | 'cc-manifest-1.1' | 'cc-html';

/** Parsing that reads nothing but the bytes given: no external entities, no network. Short texts stand in their nodes, since nothing is changed. */
export const safeParsing: ParseOption =
	ParseOption.XML_PARSE_NO_XXE |
	ParseOption.XML_PARSE_NONET |
	ParseOption.XML_PARSE_BIG_LINES |
	ParseOption.XML_PARSE_COMPACT;

const profileBase = 'http://zeropair.invalid/profile/';
const compiled = new Map<string, XsdValidator>();
const provider = new XmlBufferInputProvider({});
let isRegistered = false;

/** The compiled schema of the export profile; compiled once in each thread. */
export function getProfileValidator(schema: ProfileSchema | CartridgeSchema): XsdValidator {
	const known = compiled.get(schema);
	if (known) return known;
	const folder = join(projectRoot, 'schemas/qti');
	for (const file of readdirSync(folder)) provider.addBuffer(profileBase + file, readFileSync(join(folder, file)));
	return compile(schema, `${profileBase}${schema}.xsd`, readFileSync(join(folder, `${schema}.xsd`)));
}

/** The compiled published schema; what it imports comes from the files named beside it, and nothing is fetched. */
export function getPublishedValidator(schema: PublishedSchema): XsdValidator {
	const name = `published ${schema.file}`;
	const known = compiled.get(name);
	if (known) return known;
	for (const [address, file] of Object.entries(schema.imports)) provider.addBuffer(address, readFileSync(file));
	return compile(name, schema.address, readFileSync(schema.file));
}

function compile(name: string, url: string, bytes: Uint8Array): XsdValidator {
	// Only registered buffers can be read: a schema that names anything else finds nothing.
	if (!isRegistered) isRegistered = xmlRegisterInputProvider(provider);
	const document = XmlDocument.fromBuffer(bytes, { url, option: safeParsing });
	try {
		const validator = XsdValidator.fromDoc(document);
		compiled.set(name, validator);
		return validator;
	} finally {
		document.dispose();
	}
}
