import { findFramework } from '../item-bank/standards/code.ts';
import type { Evidence, Report, ReportSection } from '../item-bank/types.ts';
import { classSections } from './results/class-sections.ts';
import { coverageSections, type Lens, reportEvidence } from './results/evidence-report.ts';
import { formSections } from './results/form-sections.ts';
import { itemSections } from './results/item-sections.ts';
import { groupSections, patternSections } from './results/pattern-sections.ts';
import { listCautions } from './results/report-text.ts';
import { buildResultTable, groupByForm, type ResultSet } from './results/result-set.ts';
import type { Store } from './store/open-store.ts';

/** What a report is made of. */
export interface ReportOrder {
	readonly kind: Report['kind'];
	/** Ids of sittings; all when empty. */
	readonly sittings: readonly string[];
	readonly copy: Report['copy'];
	readonly lens: Lens;
}

/** A report that cannot be made. */
export class ReportRefusedError extends Error {
	readonly code = 'report-refused';
}

/** Reads sittings and makes a report. Throws NotFoundError, {@link ReportRefusedError}. */
export async function makeReport(store: Store, { kind, sittings, copy, lens }: ReportOrder): Promise<Report> {
	const sets = await readSets(store, sittings);
	checkLens(lens);
	const titles = new Map((await store.forms.list()).map(({ id, title }) => [id, title]));
	const isSimulated = sets.some(({ entry }) => entry.sitting.simulated === true);
	const forms = groupByForm(sets);
	const shared = forms.map((group) => ({
		result: buildResultTable(group),
		title: `${titles.get(group[0]?.entry.sitting.form ?? '') ?? ''}, ${describeSittings(group)}`,
	}));
	const coverage = (): readonly ReportSection[] =>
		coverageSections(
			reportEvidence(
				sets.map((set) => buildResultTable([set])),
				lens,
				copy,
			),
			lens,
		);
	const perForm = (
		make: (result: (typeof shared)[number]['result'], title: string, copy: Report['copy']) => readonly ReportSection[],
	) => shared.flatMap(({ result, title }) => make(result, title, copy));
	const perSitting = (make: (set: ResultSet, title: string) => readonly ReportSection[]) =>
		sets.flatMap((set) =>
			make(set, `${set.entry.sitting.group}, ${set.entry.sitting.date}: ${titles.get(set.entry.sitting.form) ?? ''}`),
		);
	const sections: Readonly<Record<Report['kind'], () => readonly ReportSection[]>> = {
		coverage,
		items: () => perForm(itemSections),
		form: () => perForm(formSections),
		patterns: () => perForm(patternSections),
		groups: () => perSitting((set, title) => groupSections(buildResultTable([set]), title, copy)),
		class: () =>
			perSitting((set, title) => {
				const result = buildResultTable([set]);
				return [
					...classSections(set, result, title, copy),
					...patternSections(result, title, copy),
					...(copy === 'own' ? groupSections(result, title, copy) : []),
				];
			}),
		pack: () => [...coverage(), ...perForm(formSections), ...perForm(patternSections), ...perForm(itemSections)],
	};
	return {
		kind,
		title: reportTitles[kind],
		copy,
		simulated: isSimulated,
		sittings: sets.map(({ entry }) => entry.id),
		cautions: listCautions(copy, isSimulated, forms.length > 1),
		sections: sections[kind](),
	};
}

/** The evidence lens of the board over sittings. Throws NotFoundError, {@link ReportRefusedError}. */
export async function readEvidence(
	store: Store,
	{ sittings, copy, lens }: Omit<ReportOrder, 'kind'>,
): Promise<Evidence> {
	const sets = await readSets(store, sittings);
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
	form: 'Scores and reliability',
	patterns: 'Wrong ideas that answers are consistent with',
	groups: 'Who could work on the same thing',
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
	const filled = sets.filter(({ answers }) => answers.length > 0);
	if (filled.length === 0) throw new ReportRefusedError('expected sittings with responses, found none');
	return filled;
}

function describeSittings(sets: readonly ResultSet[]): string {
	const dates = [...new Set(sets.map(({ entry }) => entry.sitting.date))].sort();
	const when = dates.length > 1 ? `${dates[0]} to ${dates.at(-1)}` : dates[0];
	return `${sets.length} ${sets.length === 1 ? 'sitting' : 'sittings'}, ${when}`;
}
