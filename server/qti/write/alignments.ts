import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { findFramework, findStandard } from '../../../item-bank/standards/code.ts';
import type { Alignment } from '../../../item-bank/types.ts';
import { writeLanguageString } from './language-string.ts';

/** What the metadata of one item says about its standards. */
export interface WrittenAlignments {
	/** Curriculum-standards metadata: the standards that have an official address or identifier. */
	readonly sets: readonly MarkupElement[];
	/** LOM classification: the standards that have neither, by their printed codes. */
	readonly classification: readonly MarkupElement[];
}

interface StandardSet {
	readonly attributes: Readonly<Record<string, string>>;
	readonly labels: MarkupElement[];
}

/** Writes each alignment once, sets by framework and edition in the order they first appear. */
export function writeAlignments(alignments: readonly Alignment[]): WrittenAlignments {
	const sets = new Map<string, StandardSet>();
	const paths: MarkupElement[] = [];
	for (const { framework: id, edition, code } of alignments) {
		const framework = findFramework(id, edition);
		const standard = findStandard(id, edition, code);
		const name = `${id} ${edition}`;
		const identifier = standard?.guid ?? standard?.uri;
		const label = standard ? `${name} ${code}: ${standard.statement} (paraphrase)` : `${name} ${code}`;
		if (!framework || identifier === undefined) {
			paths.push(writeTaxonPath(framework?.name ?? name, code, label));
			continue;
		}
		const attributes = { region: framework.place, version: edition };
		const set: StandardSet = sets.get(name) ?? { attributes, labels: [] };
		sets.set(name, set);
		set.labels.push(
			element('csm:labelledGUID', {}, [
				element('csm:label', {}, [label]),
				...(standard?.guid !== undefined && standard.uri !== undefined
					? [element('csm:caseItemURI', {}, [standard.uri])]
					: []),
				element('csm:GUID', {}, [identifier]),
			]),
		);
	}
	const written = [...sets.values()].map(({ attributes, labels }) => element('csm:setOfGUIDs', attributes, labels));
	return {
		sets:
			written.length === 0
				? []
				: [
						element('csm:curriculumStandardsMetadataSet', {}, [
							element('csm:curriculumStandardsMetadata', {}, written),
						]),
					],
		classification: paths.length === 0 ? [] : [writeClassification(paths)],
	};
}

function writeClassification(paths: readonly MarkupElement[]): MarkupElement {
	return element('lom:classification', {}, [
		element('lom:purpose', {}, [
			element('lom:source', {}, ['LOMv1.0']),
			element('lom:value', {}, ['educational objective']),
		]),
		...paths,
	]);
}

function writeTaxonPath(framework: string, code: string, label: string): MarkupElement {
	return element('lom:taxonPath', {}, [
		element('lom:source', {}, [writeLanguageString(framework)]),
		element('lom:taxon', {}, [element('lom:id', {}, [code]), element('lom:entry', {}, [writeLanguageString(label)])]),
	]);
}
