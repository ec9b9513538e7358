import type { CoveredItem } from '../../item-bank/analysis/coverage/coverage.ts';
import { invariant } from '../../item-bank/invariant.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { findFramework } from '../../item-bank/standards/code.ts';
import type { Group, Report, ReportSection } from '../../item-bank/types.ts';
import { alignmentSection, type DokLevels } from './alignment-sections.ts';
import { changeSections } from './change-section.ts';
import { classBoardSections, classPatternSections, countByClass } from './class-board.ts';
import { classSections } from './class-sections.ts';
import { type ComparedForm, comparisonSections } from './comparison-sections.ts';
import { type ComparedGroups, differenceSection } from './difference-section.ts';
import { coverageSections, type Lens, reportEvidence } from './evidence-report.ts';
import { formSections } from './form-sections.ts';
import { gatherSupply, groupSections, type NextSupply } from './group-sections.ts';
import { itemSections } from './item-sections.ts';
import { itemViewSections } from './item-view.ts';
import { patternSections } from './pattern-sections.ts';
import { poolBoardSections } from './pool-board.ts';
import { buildResultTable, groupByForm, type ResultSet, type ResultTable, tableByCode } from './result-set.ts';
import { scaleSections } from './scale-sections.ts';
import type { ScoreCuts } from './score-sections.ts';
import { summarySection } from './summary-section.ts';
import { type SatForm, yearSection } from './year-section.ts';

/** What a report is written from. */
export interface ReportMaterial {
	/** Sittings with responses. */
	readonly sets: readonly ResultSet[];
	/** Every sitting that was asked for, with responses or without. */
	readonly sat: readonly SatForm[];
	/** Titles of forms by id. */
	readonly titles: ReadonlyMap<string, string>;
	/** Names of class groups by id. */
	readonly groupNames: ReadonlyMap<string, string>;
	/** Grades and labels of teachers by id of the group. */
	readonly groups: ReadonlyMap<string, Pick<Group, 'grade' | 'teacher'>>;
	readonly copy: Report['copy'];
	readonly lens: Lens;
	readonly cuts: ScoreCuts;
	readonly levels: DokLevels;
	readonly compared: ComparedGroups | undefined;
	/** Id of the item that is viewed. */
	readonly item: string | undefined;
	/** Items that may be proposed; empty where the report proposes none. */
	readonly bank: readonly ItemRecord[];
}

/** A form with everything that sittings of it showed. */
interface SatGroup {
	readonly sets: readonly ResultSet[];
	readonly result: ResultTable;
	readonly title: string;
	readonly items: readonly CoveredItem[];
}

/** The sections of a report. */
export function composeReport(kind: Report['kind'], material: ReportMaterial): readonly ReportSection[] {
	const { sets, copy, lens, cuts, compared } = material;
	const forms = groupByForm(sets).map((group): SatGroup => gatherGroup(group, material));
	const evidence =
		kind === 'coverage' || kind === 'pack'
			? reportEvidence(
					sets.map((set) => buildResultTable([set])),
					lens,
					copy,
				)
			: { cells: [], students: 0 };
	const parts = {
		asked: () => askedSections(forms, material),
		form: () => forms.flatMap(({ result, title }) => formSections(result, title, copy, cuts)),
		patterns: () =>
			forms.flatMap(({ sets: own, result, title }) => [
				...patternSections(result, title, copy),
				...classPatternSections(countByClass(own, material.groupNames, copy), title, copy),
			]),
		items: () => forms.flatMap(({ result, title }) => itemSections(result, title, copy)),
		differences: () =>
			compared === undefined
				? []
				: forms.map((form) => differenceSection(form.sets, form.result, form.title, compared)),
		compare: () =>
			comparisonSections(
				forms.map((form) => toCompared(form, material)),
				copy,
			),
	};
	switch (kind) {
		case 'coverage':
			return [
				...coverageSections(evidence, lens),
				...classBoardSections(sets, material.groupNames, evidence, lens, copy, (classes, rows) =>
					(['grade', 'teacher'] as const).flatMap((by) =>
						poolBoardSections(by, classes, rows, material.groups, lens, copy),
					),
				),
				...changeSections(sets, lens, copy),
				...parts.asked(),
			];
		case 'items':
			return [
				...parts.items(),
				...forms.flatMap(({ result, title }) => scaleSections(result, title, copy, cuts)),
				...parts.differences(),
			];
		case 'item':
			return itemViewSections(
				material.item ?? '',
				forms.map((form) => ({ title: titleOfForm(form, material), sittings: form.sets.length, result: form.result })),
				copy,
			);
		case 'form':
			return parts.form();
		case 'patterns':
			return parts.patterns();
		case 'compare':
			return forms.length < 2
				? [{ title: 'Two forms side by side', notes: ['Expected sittings of two forms or more, found one form.'] }]
				: parts.compare();
		case 'groups':
		case 'class': {
			const supply = gatherSupply(material.bank);
			return sets.flatMap((set) =>
				kind === 'class'
					? composeClass(set, material, supply)
					: groupSections(buildResultTable([set]), titleOf(set, material), copy, supply),
			);
		}
		case 'pack':
			return [
				summarySection(
					forms.map((form) => ({
						form: titleOfForm(form, material),
						sets: form.sets,
						byClass: countByClass(form.sets, material.groupNames, copy),
						result: form.result,
					})),
					evidence,
					copy,
				),
				...coverageSections(evidence, lens).slice(0, 1),
				...classBoardSections(sets, material.groupNames, evidence, lens, copy),
				...changeSections(sets, lens, copy),
				...parts.patterns(),
				...forms.flatMap(({ result, title }) => itemSections(result, title, copy, 'meeting')),
				...forms.flatMap(({ result, title }) => formSections(result, title, copy, cuts, 'meeting')),
				...parts.compare(),
				...parts.differences(),
				...parts.asked(),
			];
		default:
			return kind satisfies never;
	}
}

function gatherGroup(sets: readonly ResultSet[], { titles }: ReportMaterial): SatGroup {
	const [first] = sets;
	invariant(first, 'a form without sittings');
	const dates = [...new Set(sets.map(({ entry }) => entry.sitting.date))].sort();
	const when = dates.length > 1 ? `${dates[0]} to ${dates.at(-1)}` : dates[0];
	const count = `${sets.length} ${sets.length === 1 ? 'sitting' : 'sittings'}`;
	return {
		sets,
		result: buildResultTable(sets),
		title: `${titles.get(first.entry.sitting.form) ?? ''}, ${count}, ${when}`,
		items: coveredItems(first),
	};
}

/** Whole items of a form as it was sat, sets of parts as one. */
export function coveredItems({ places }: Pick<ResultSet, 'places'>): readonly CoveredItem[] {
	const items = new Map<number, CoveredItem>();
	for (const { position, record, points } of places) {
		const known = items.get(position);
		items.set(position, { id: record.id, item: record.item, points: (known?.points ?? 0) + points });
	}
	return [...items.values()];
}

function askedSections(forms: readonly SatGroup[], material: ReportMaterial): readonly ReportSection[] {
	const { lens, levels, sat } = material;
	const framework = findFramework(lens.framework, lens.edition);
	if (framework === undefined) return [];
	return [
		yearSection(sat, framework),
		alignmentSection(
			forms.map((form) => ({ form: titleOfForm(form, material), items: form.items })),
			framework,
			levels,
		),
	];
}

function composeClass(set: ResultSet, material: ReportMaterial, supply: NextSupply): readonly ReportSection[] {
	const result = buildResultTable([set]);
	const title = titleOf(set, material);
	const { copy } = material;
	return [
		...classSections(set, result, title, copy),
		...patternSections(result, title, copy),
		...(copy === 'own' ? groupSections(result, title, copy, supply) : []),
	];
}

function titleOf({ entry }: ResultSet, { titles, groupNames }: ReportMaterial): string {
	const { group, date, form } = entry.sitting;
	return `${groupNames.get(group) ?? group}, ${date}: ${titles.get(form) ?? ''}`;
}

function titleOfForm({ sets, title }: SatGroup, { titles }: ReportMaterial): string {
	return titles.get(sets[0]?.entry.sitting.form ?? '') ?? title;
}

function toCompared(group: SatGroup, material: ReportMaterial): ComparedForm {
	const { sets, result } = group;
	const names = new Map(
		result.places.map(({ record }, index) => [result.table.columns[index]?.item.id ?? '', record.item.name]),
	);
	return {
		title: titleOfForm(group, material),
		table: tableByCode(sets),
		nameOf: (id) => printItemName(names.get(id) ?? id),
	};
}
