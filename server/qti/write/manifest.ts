import type { FormRecord, ItemRecord, ItemStatus } from '../../../item-bank/items/record.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Alignment } from '../../../item-bank/types.ts';
import { packageIdentifier, testIdentifier } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import { getVersionFacts, instanceNamespace, lomNamespace, type QtiVersion } from '../versions.ts';
import { writeAlignments } from './alignments.ts';
import { type ImageFormat, listImages, listStimulusImages } from './images.ts';
import { itemPath } from './item.ts';
import { writeLanguageString } from './language-string.ts';
import { testPath } from './test.ts';

/** Path of the manifest within the package. */
export const manifestPath = 'imsmanifest.xml';

/** What the manifest says of an item: no stem, no key. */
export interface ListedItem
	extends Pick<Placement, 'identifier' | 'title' | 'points' | 'section' | 'position' | 'part'> {
	readonly record: Pick<ItemRecord, 'id' | 'version' | 'status'>;
	/** Name of the interaction that answers it. */
	readonly interaction: string;
	/** Whether more than one interaction answers it. */
	readonly isComposite: boolean;
	/** Whether it says, once answered, what is right. */
	readonly hasFeedback: boolean;
	/** The document that the parts of its set share. */
	readonly stimulus: ListedStimulus | undefined;
	readonly alignments: readonly Alignment[];
	/** Path within the package. */
	readonly path: string;
	/** Paths of its figures. */
	readonly images: readonly string[];
}

/** What the manifest says of what the parts of a set share. */
export interface ListedStimulus {
	readonly identifier: string;
	readonly title: string;
	/** Path within the package. */
	readonly path: string;
	/** Paths of its figures; listed with the first part of the set alone, which writes it. */
	readonly images: readonly string[];
}

/** What the manifest needs of an item at its place. */
export function listItem(placement: Placement, format: ImageFormat): ListedItem {
	const { identifier, title, points, section, position, part, shared, hasFeedback } = placement;
	const { id, version, status, item } = placement.record;
	return {
		identifier,
		title,
		points,
		section,
		position,
		part,
		record: { id, version, status },
		interaction: nameInteraction(placement),
		isComposite: item.kind === 'gridded' && placement.gridStyle === 'columns',
		hasFeedback: hasFeedback && item.kind !== 'explanation',
		stimulus: shared && {
			identifier: shared.identifier,
			title: shared.title,
			path: itemPath(shared),
			images: listStimulusImages(placement, format),
		},
		alignments: item.alignments,
		path: itemPath(placement),
		images: listImages(placement, format),
	};
}

function nameInteraction({ record: { item }, pointStyle, gridStyle }: Placement): string {
	if (item.kind === 'point' && pointStyle === 'choice') return 'choiceInteraction';
	return item.kind === 'gridded' && gridStyle === 'columns' ? 'inlineChoiceInteraction' : interactions[item.kind];
}

const itemStates: Readonly<Record<ItemStatus, string>> = { draft: 'draft', approved: 'final', retired: 'unavailable' };
const interactions: Readonly<Record<Placement['record']['item']['kind'], string>> = {
	choice: 'choiceInteraction',
	'multiple-choice': 'choiceInteraction',
	gridded: 'textEntryInteraction',
	point: 'hotspotInteraction',
	order: 'orderInteraction',
	match: 'matchInteraction',
	'inline-choice': 'inlineChoiceInteraction',
	explanation: 'extendedTextInteraction',
};

/**
 * The manifest of a package: the test if there is one, then each item followed by its figures; or other resources in their
 * place.
 */
export function writeManifest(
	form: FormRecord | undefined,
	items: readonly ListedItem[],
	version: QtiVersion,
	resources: readonly MarkupElement[] = items.flatMap((item) => writeItemResources(item, version)),
): MarkupElement {
	const facts = getVersionFacts(version);
	const identifiers = items.map(({ identifier }) => identifier);
	const held = form ? [testIdentifier(form.id, form.version), ...identifiers] : identifiers;
	const attributes = {
		xmlns: facts.manifestNamespace,
		'xmlns:lom': lomNamespace,
		'xmlns:csm': facts.standardsNamespace,
		'xmlns:qtimd': facts.metadataNamespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${facts.manifestNamespace} ${facts.manifestLocation}`,
		identifier: packageIdentifier(held),
	};
	const title = form ? form.form.title : `${items.length} items`;
	const entry = form ? form.id : packageIdentifier(held);
	const test = form ? [writeTestResource(form, identifiers, version)] : [];
	return element('manifest', attributes, [
		element('metadata', {}, [
			element('schema', {}, [facts.schemaName]),
			element('schemaversion', {}, [facts.schemaVersion]),
			writeLom(entry, title, form?.version ?? 1),
		]),
		element('organizations'),
		element('resources', {}, [...test, ...resources]),
	]);
}

/** The resource of an item with its metadata, then those of its figures; before the first part of a set, what its parts share. */
export function writeItemResources(item: ListedItem, version: QtiVersion): readonly MarkupElement[] {
	const { sets, classification } = writeAlignments(item.alignments);
	const { id, version: itemVersion, status } = item.record;
	const metadata = [
		element('qtimd:qtiMetadata', {}, [
			element('qtimd:itemTemplate', {}, ['false']),
			element('qtimd:timeDependent', {}, ['false']),
			element('qtimd:composite', {}, [String(item.isComposite)]),
			element('qtimd:interactionType', {}, [item.interaction]),
			element('qtimd:feedbackType', {}, [item.hasFeedback ? 'nonadaptive' : 'none']),
			element('qtimd:solutionAvailable', {}, ['false']),
		]),
		...sets,
		writeLom(id, item.title, itemVersion, itemStates[status], classification),
	];
	const attributes = { identifier: item.identifier, type: getVersionFacts(version).itemType, href: item.path };
	const needed = item.stimulus ? [element('dependency', { identifierref: item.stimulus.identifier })] : [];
	return [
		...(item.stimulus && item.part === 1 ? writeStimulusResources(item.stimulus, item, version) : []),
		element('resource', attributes, [
			element('metadata', {}, metadata),
			element('file', { href: item.path }),
			...needed,
			...item.images.map(writeDependency),
		]),
		...item.images.map(writeImageResource),
	];
}

function writeStimulusResources(
	{ identifier, title, path, images }: ListedStimulus,
	{ record: { id, version: setVersion, status } }: ListedItem,
	version: QtiVersion,
): readonly MarkupElement[] {
	return [
		element('resource', { identifier, type: getVersionFacts(version).stimulusType, href: path }, [
			element('metadata', {}, [writeLom(id, title, setVersion, itemStates[status])]),
			element('file', { href: path }),
			...images.map(writeDependency),
		]),
		...images.map(writeImageResource),
	];
}

function writeDependency(path: string): MarkupElement {
	return element('dependency', { identifierref: imageIdentifier(path) });
}

function writeImageResource(path: string): MarkupElement {
	return element('resource', { identifier: imageIdentifier(path), type: 'webcontent', href: path }, [
		element('file', { href: path }),
	]);
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
