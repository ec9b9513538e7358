import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { XmlDocument, XmlElement, XmlXPath, type XsdValidator } from 'libxml2-wasm';
import { compileReference } from '../qti/reference-schemas.ts';

// libxml2 takes only so many sources of schemas: each is compiled once.
const compiled = new Map<string, XsdValidator>();

function compileOnce(name: string, compile: () => XsdValidator): XsdValidator {
	const known = compiled.get(name) ?? compile();
	compiled.set(name, known);
	return known;
}

/** The published schema of QTI 1.2.1 in Common Cartridge 1.1 (31 October 2010), with xml.xsd at the address it is imported from. */
export function publishedAssessment(schemas: string): XsdValidator {
	const name = 'ccv1p1_qtiasiv1p2p1_v1p0.xsd';
	const imports = { 'http://www.w3.org/2001/xml.xsd': join(schemas, 'w3c/xml.xsd') };
	return compileOnce(name, () => compileReference(join(schemas, 'qti1.2'), name, imports));
}

/** The published schema of Common Cartridge 1.1 manifests (31 January 2011), with what it imports at the addresses it names. */
export function publishedManifest(schemas: string): XsdValidator {
	const folder = join(schemas, 'cc1.1');
	const base = 'http://www.imsglobal.org/profile/cc/ccv1p1';
	const name = 'ccv1p1_imscp_v1p2_v1p0.xsd';
	const imports = {
		'http://www.w3.org/2001/xml.xsd': join(schemas, 'w3c/xml.xsd'),
		[`${base}/ccv1p1_imsccauth_v1p1.xsd`]: join(folder, 'ccv1p1_imsccauth_v1p1.xsd'),
		[`${base}/LOM/ccv1p1_lommanifest_v1p0.xsd`]: join(folder, 'ccv1p1_lommanifest_v1p0.xsd'),
		[`${base}/LOM/ccv1p1_lomresource_v1p0.xsd`]: join(folder, 'ccv1p1_lomresource_v1p0.xsd'),
	};
	return compileOnce(name, () => compileReference(folder, name, imports));
}

const schematron = { sch: 'http://purl.oclc.org/dsdl/schematron' };

/** A rule that a published schema states in Schematron beside its types. */
export interface PublishedRule {
	/** As it is numbered there, such as 4d. */
	readonly number: string;
	/** Finds the elements that break it. */
	readonly faults: XmlXPath;
}

/**
 * The Schematron rules within a published schema, each as one XPath. The manifest's rules name the resource types of version 1.0
 * where those of 1.1 are meant, and so could never bite: they are read as meant.
 */
export function publishedRules(file: string): readonly PublishedRule[] {
	const document = XmlDocument.fromBuffer(readFileSync(file));
	try {
		const namespaces = Object.fromEntries(
			elements(document.find('//sch:ns', schematron)).map((node) => [
				node.attr('prefix')?.value ?? '',
				node.attr('uri')?.value ?? '',
			]),
		);
		return elements(document.find('//sch:rule', schematron)).flatMap((rule) => {
			const context = asMeant(rule.attr('context')?.value ?? '');
			return elements(rule.find('sch:assert', schematron)).map((assert) => {
				const test = asMeant(assert.attr('test')?.value ?? '');
				const number = /\[RULE (\w+)\]/.exec(assert.content)?.[1] ?? '';
				return { number, faults: XmlXPath.compile(`//${context}[not(${test})]`, namespaces) };
			});
		});
	} finally {
		document.dispose();
	}
}

/** The numbers of the rules that a document breaks. */
export function brokenRules(xml: string, rules: readonly PublishedRule[]): readonly string[] {
	const document = XmlDocument.fromString(xml);
	try {
		return rules.filter(({ faults }) => document.find(faults).length > 0).map(({ number }) => number);
	} finally {
		document.dispose();
	}
}

function asMeant(expression: string): string {
	return expression.replaceAll('xmlv1p0', 'xmlv1p1').replaceAll('imsbasiclti_xmlv1p1', 'imsbasiclti_xmlv1p0');
}

function elements(nodes: readonly unknown[]): readonly XmlElement[] {
	return nodes.filter((node) => node instanceof XmlElement);
}
