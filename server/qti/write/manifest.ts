import type { FormRecord, ItemStatus } from '../../../item-bank/items/record.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { packageIdentifier, testIdentifier } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import {
	getVersionFacts,
	instanceNamespace,
	lomNamespace,
	manifestNamespace,
	type QtiVersion,
	standardsNamespace,
} from '../versions.ts';
import { writeAlignments } from './alignments.ts';
import type { WrittenInteraction } from './interaction.ts';
import { writeLanguageString } from './language-string.ts';
import { testPath } from './test.ts';

/** Path of the manifest within the package. */
export const manifestPath = 'imsmanifest.xml';

/** What the manifest needs to know of a written item. */
export interface ListedItem {
	readonly path: string;
	/** Paths of its figures. */
	readonly images: readonly string[];
	readonly interaction: WrittenInteraction['interaction'];
}

const itemStates: Readonly<Record<ItemStatus, string>> = { draft: 'draft', approved: 'final', retired: 'unavailable' };

/** The manifest around the resources of items given; see {@link writeItemResources}. */
export function writeManifest(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	itemResources: readonly MarkupElement[],
	version: QtiVersion,
): MarkupElement {
	const facts = getVersionFacts(version);
	const items = placements.map(({ identifier }) => identifier);
	const held = form ? [testIdentifier(form.id, form.version), ...items] : items;
	const attributes = {
		xmlns: manifestNamespace,
		'xmlns:lom': lomNamespace,
		'xmlns:csm': standardsNamespace,
		'xmlns:qtimd': facts.metadataNamespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${manifestNamespace} ${facts.manifestLocation}`,
		identifier: packageIdentifier(held),
	};
	const title = form ? form.form.title : `${placements.length} items`;
	const entry = form ? form.id : packageIdentifier(held);
	return element('manifest', attributes, [
		element('metadata', {}, [
			element('schema', {}, [facts.schemaName]),
			element('schemaversion', {}, [facts.schemaVersion]),
			writeLom(entry, title, form?.version ?? 1),
		]),
		element('organizations'),
		element('resources', {}, [...(form ? [writeTestResource(form, items, version)] : []), ...itemResources]),
	]);
}

/** The resource of an item with its metadata, followed by those of its figures. */
export function writeItemResources(
	placement: Placement,
	item: ListedItem,
	version: QtiVersion,
): readonly MarkupElement[] {
	const { record, identifier, title } = placement;
	const { sets, classification } = writeAlignments(record.item.alignments);
	const metadata = [
		element('qtimd:qtiMetadata', {}, [
			element('qtimd:itemTemplate', {}, ['false']),
			element('qtimd:timeDependent', {}, ['false']),
			element('qtimd:composite', {}, ['false']),
			element('qtimd:interactionType', {}, [item.interaction]),
			element('qtimd:feedbackType', {}, ['none']),
			element('qtimd:solutionAvailable', {}, ['false']),
		]),
		...sets,
		writeLom(record.id, title, record.version, itemStates[record.status], classification),
	];
	const type = getVersionFacts(version).itemType;
	const images = item.images.map((path) => ({ path, identifier: imageIdentifier(path) }));
	return [
		element('resource', { identifier, type, href: item.path }, [
			element('metadata', {}, metadata),
			element('file', { href: item.path }),
			...images.map((image) => element('dependency', { identifierref: image.identifier })),
		]),
		...images.map((image) =>
			element('resource', { identifier: image.identifier, type: 'webcontent', href: image.path }, [
				element('file', { href: image.path }),
			]),
		),
	];
}

function writeTestResource(form: FormRecord, items: readonly string[], version: QtiVersion): MarkupElement {
	const attributes = {
		identifier: testIdentifier(form.id, form.version),
		type: getVersionFacts(version).testType,
		href: testPath,
	};
	return element('resource', attributes, [
		element('metadata', {}, [writeLom(form.id, form.form.title, form.version)]),
		element('file', { href: testPath }),
		...items.map((identifier) => element('dependency', { identifierref: identifier })),
	]);
}

function writeLom(
	entry: string,
	title: string,
	version: number,
	status?: string,
	classification: readonly MarkupElement[] = [],
): MarkupElement {
	const state =
		status === undefined ? [] : [element('lom:source', {}, ['LOMv1.0']), element('lom:value', {}, [status])];
	return element('lom:lom', {}, [
		element('lom:general', {}, [
			element('lom:identifier', {}, [element('lom:catalog', {}, ['Zeropair']), element('lom:entry', {}, [entry])]),
			element('lom:title', {}, [writeLanguageString(title)]),
			element('lom:language', {}, ['en']),
		]),
		element('lom:lifeCycle', {}, [
			element('lom:version', {}, [writeLanguageString(String(version))]),
			...(state.length === 0 ? [] : [element('lom:status', {}, state)]),
		]),
		...classification,
	]);
}

function imageIdentifier(path: string): string {
	const name = path.slice(path.lastIndexOf('/') + 1);
	return `image-${name.slice(0, name.lastIndexOf('.'))}`;
}
