import type { ItemRecord } from '../item-bank/items/record.ts';
import { findFramework } from '../item-bank/standards/code.ts';
import type { Evidence, Report } from '../item-bank/types.ts';
import type { DokLevels } from './results/alignment-sections.ts';
import { composeReport, coveredItems } from './results/compose-report.ts';
import type { ComparedGroups } from './results/difference-section.ts';
import { type Lens, reportEvidence } from './results/evidence-report.ts';
import { listCautions } from './results/report-text.ts';
import { buildResultTable, groupByForm, type ResultSet } from './results/result-set.ts';
import type { ScoreCuts } from './results/score-sections.ts';
import type { SatForm } from './results/year-section.ts';
import type { Store } from './store/open-store.ts';

/** What a report is made of. */
export interface ReportOrder {
	readonly kind: Report['kind'];
	/** Ids of sittings; all when empty. */
	readonly sittings: readonly string[];
	readonly copy: Report['copy'];
	readonly lens: Lens;
	/** Points at which decisions are made. */
	readonly cuts?: readonly number[] | undefined;
	/** Id of the blueprint whose score bands are cuts too. */
	readonly blueprint?: string | undefined;
	/** Depth that the department gives its standards. */
	readonly levels?: DokLevels | undefined;
	/** Id of the item that a report of the kind "item" is on. */
	readonly item?: string | undefined;
	/** Groups to compare item by item. */
	readonly compared?: ComparedGroups | undefined;
}

/** A report that cannot be made. */
export class ReportRefusedError extends Error {
	readonly code = 'report-refused';
}

/** Reads sittings and makes a report. Throws NotFoundError, {@link ReportRefusedError}. */
export async function makeReport(store: Store, order: ReportOrder): Promise<Report> {
	const { kind, sittings, copy, lens } = order;
	const sets = await readSets(store, sittings);
	checkLens(lens);
	const groups = await store.groups.list();
	const titles = new Map((await store.forms.list()).map(({ id, title }) => [id, title]));
	const filled = keepFilled(sets);
	const isSimulated = filled.some(({ entry }) => entry.sitting.simulated === true);
	const sections = composeReport(kind, {
		sets: filled,
		sat: sets.map((set) => describeSat(set, titles)),
		titles,
		groupNames: new Map(groups.map(({ id, group }) => [id, group.name])),
		groups: new Map(groups.map(({ id, group }) => [id, group])),
		copy,
		lens,
		cuts: await readCuts(store, order),
		levels: order.levels ?? new Map(),
		compared: order.compared,
		item: order.item,
		bank: copy === 'own' && (kind === 'class' || kind === 'groups') ? await readUngiven(store) : [],
	});
	if (sections.length === 0) {
		throw new ReportRefusedError(
			`expected an item that stood on a form of these sittings, found "${order.item ?? ''}"`,
		);
	}
	return {
		kind,
		title: reportTitles[kind],
		copy,
		simulated: isSimulated,
		sittings: filled.map(({ entry }) => entry.id),
		cautions: listCautions(copy, isSimulated, groupByForm(filled).length > 1),
		sections,
	};
}

/** The evidence lens of the board over sittings. Throws NotFoundError, {@link ReportRefusedError}. */
export async function readEvidence(
	store: Store,
	{ sittings, copy, lens }: Omit<ReportOrder, 'kind'>,
): Promise<Evidence> {
	const sets = keepFilled(await readSets(store, sittings));
	checkLens(lens);
	const isSimulated = sets.some(({ entry }) => entry.sitting.simulated === true);
	const { cells, students } = reportEvidence(
		sets.map((set) => buildResultTable([set])),
		lens,
		copy,
	);
	return {
		...lens,
		copy,
		simulated: isSimulated,
		sittings: sets.map(({ entry }) => entry.id),
		students,
		cautions: listCautions(copy, isSimulated, groupByForm(sets).length > 1),
		cells,
	};
}

const reportTitles: Readonly<Record<Report['kind'], string>> = {
	coverage: 'What students did, standard by standard',
	class: 'Class report',
	items: 'Item analysis',
	item: 'One item over its sittings',
	form: 'Scores and reliability',
	patterns: 'Wrong ideas that answers are consistent with',
	groups: 'Who could work on the same thing',
	compare: 'Two forms side by side',
	pack: 'Meeting pack',
};

function checkLens({ framework, edition }: Lens): void {
	if (findFramework(framework, edition)) return;
	throw new ReportRefusedError(`expected a framework and edition of the bank, found "${framework}" "${edition}"`);
}

async function readSets(store: Store, ids: readonly string[]): Promise<readonly ResultSet[]> {
	const wanted = ids.length > 0 ? [...new Set(ids)] : (await store.sittings.list()).map(({ id }) => id);
	const sets: ResultSet[] = [];
	for (const id of wanted) sets.push(await store.responses.scores(id));
	return sets;
}

/** Approved items on no form that anybody sat or was given: those stay fresh for their forms. */
async function readUngiven(store: Store): Promise<readonly ItemRecord[]> {
	const given = new Set((await store.forms.uses()).map(({ item }) => item));
	const sat = new Map(
		(await store.sittings.list()).map(({ sitting }) => [`${sitting.form} ${sitting.version}`, sitting] as const),
	);
	for (const { form, version } of sat.values()) {
		for (const { id } of (await store.forms.get(form, version)).items) given.add(id);
	}
	return (await store.items.approved()).filter(({ id }) => !given.has(id));
}

function keepFilled(sets: readonly ResultSet[]): readonly ResultSet[] {
	const filled = sets.filter(({ answers }) => answers.length > 0);
	if (filled.length === 0) throw new ReportRefusedError('expected sittings with responses, found none');
	return filled;
}

/** Cuts of the order, lowest first: bands of the blueprint but the lowest, and plain numbers of points. Throws NotFoundError, ReportRefusedError. */
async function readCuts(store: Store, { cuts = [], blueprint }: ReportOrder): Promise<ScoreCuts> {
	const plain = cuts.map((from) => ({ label: `cut at ${from}`, from }));
	if (blueprint === undefined) return plain;
	const bands = (await store.blueprints.get(blueprint)).blueprint.scoreBands?.bands ?? [];
	if (bands.length === 0) throw new ReportRefusedError(`expected a blueprint with score bands, found "${blueprint}"`);
	const named = bands.slice(1).map(({ name, from }) => ({ label: name, from }));
	return [...named, ...plain].sort((a, b) => a.from - b.from);
}

function describeSat(set: ResultSet, titles: ReadonlyMap<string, string>): SatForm {
	const { form, date } = set.entry.sitting;
	return {
		form: `${form} ${set.entry.scoredAs}`,
		title: titles.get(form) ?? form,
		date,
		items: coveredItems(set),
	};
}
