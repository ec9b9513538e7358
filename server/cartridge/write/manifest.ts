import type { FormRecord } from '../../../item-bank/items/record.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { findFramework } from '../../../item-bank/standards/code.ts';
import type { Alignment } from '../../../item-bank/types.ts';
import { packageIdentifier, testIdentifier } from '../../qti/identifiers.ts';
import { instanceNamespace } from '../../qti/versions.ts';
import { assessmentType, cartridgeLocation, cartridgeLomNamespace, cartridgeNamespace } from './names.ts';
import { assessmentPath, imageIdentifier } from './paths.ts';

/** What the manifest says of a form: no stem, no key. */
export interface ListedForm {
	readonly form: FormRecord;
	/** Identifiers of the questions, in order. */
	readonly identifiers: readonly string[];
	/** Paths of the figures, in order. */
	readonly images: readonly string[];
	/** Standards of the items that are there, each once. */
	readonly alignments: readonly Alignment[];
}

/** The manifest of a cartridge: the assessment, then its figures, and one entry in the organization that opens it. */
export function writeCartridgeManifest({ form, identifiers, images, alignments }: ListedForm): MarkupElement {
	const test = testIdentifier(form.id, form.version);
	const attributes = {
		xmlns: cartridgeNamespace,
		'xmlns:lomm': cartridgeLomNamespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${cartridgeNamespace} ${cartridgeLocation}`,
		identifier: packageIdentifier([test, ...identifiers]),
	};
	return element('manifest', attributes, [
		element('metadata', {}, [
			element('schema', {}, ['IMS Common Cartridge']),
			element('schemaversion', {}, ['1.1.0']),
			element('lomm:lom', {}, [
				element('lomm:general', {}, [
					element('lomm:identifier', {}, [
						element('lomm:catalog', {}, ['Zeropair']),
						element('lomm:entry', {}, [`${form.id} version ${form.version}`]),
					]),
					element('lomm:title', {}, [writeString(form.form.title)]),
					element('lomm:language', {}, ['en']),
				]),
				...writeStandards(alignments),
			]),
		]),
		element('organizations', {}, [
			element('organization', { identifier: 'organization-1', structure: 'rooted-hierarchy' }, [
				element('item', { identifier: 'root' }, [
					element('item', { identifier: 'entry-1', identifierref: test }, [element('title', {}, [form.form.title])]),
				]),
			]),
		]),
		element('resources', {}, [
			// Rules 3a to 3c of the published schema: one file, and no href on the resource itself.
			element('resource', { identifier: test, type: assessmentType }, [
				element('file', { href: assessmentPath }),
				...images.map((path) => element('dependency', { identifierref: imageIdentifier(path) })),
			]),
			...images.map((path) =>
				element('resource', { identifier: imageIdentifier(path), type: 'webcontent', href: path }, [
					element('file', { href: path }),
				]),
			),
		]),
	]);
}

/** Every standard of the form as an educational objective by its printed code. */
function writeStandards(alignments: readonly Alignment[]): readonly MarkupElement[] {
	if (alignments.length === 0) return [];
	const paths = alignments.map(({ framework, edition, code }) => {
		const name = findFramework(framework, edition)?.name ?? `${framework} ${edition}`;
		return element('lomm:taxonPath', {}, [
			element('lomm:taxon', {}, [
				element('lomm:id', {}, [code]),
				element('lomm:entry', {}, [writeString(`${name}: ${code}`)]),
			]),
		]);
	});
	return [
		element('lomm:classification', {}, [
			element('lomm:purpose', {}, [element('lomm:value', {}, ['educational objective'])]),
			...paths,
		]),
	];
}

function writeString(text: string): MarkupElement {
	return element('lomm:string', { language: 'en' }, [text]);
}
