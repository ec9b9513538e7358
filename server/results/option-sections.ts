import { type DistractorTable, type OptionFlag, tabulateDistractors } from '../../item-bank/analysis/distractors.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { plotResponseGroups, type ResponseGroupPlot } from '../../item-bank/analysis/response-groups.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import type { OptionCurvesPlot, Report, ReportSection } from '../../item-bank/types.ts';
import { figureOf, leastShared, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** Items to a section at most, so that its plot fits a page. */
const mostPanels = 8;
/** Score groups of a plot, and how many students each needs. */
const groupsWanted = 4;
const leastInGroup = 10;

/** How the options of choice items worked, with a plot over score groups where these are large enough: a section for every eight items, or for the item at one column. */
export function optionSections(
	{ table, places }: ResultTable,
	title: string,
	copy: Report['copy'],
	only?: number,
): readonly ReportSection[] {
	const { table: complete } = keepComplete(table);
	const told = tabulateDistractors(complete).flatMap((finding, index) => {
		if (finding.kind === 'refused' || (only !== undefined && index !== only)) return [];
		const hidden: ReadonlySet<string> = copy === 'own' ? new Set() : listHidden(finding.value.options);
		return [{ index, label: places[index]?.label ?? '', value: finding.value, hidden }];
	});
	const groups = Math.min(groupsWanted, Math.floor(complete.students.length / leastInGroup));
	const sections: ReportSection[] = [];
	for (let from = 0; from < told.length; from += mostPanels) {
		const some = told.slice(from, from + mostPanels);
		const panels = some.flatMap(({ index, label, hidden }) => {
			const curves = groups < 2 ? undefined : foundValue(plotResponseGroups(complete, index, groups));
			return curves === undefined ? [] : [panelOf(curves, label, hidden)];
		});
		const heading = told.length > mostPanels ? `, places ${some[0]?.label} to ${some.at(-1)?.label}` : '';
		sections.push(
			makeSection(
				`Options${heading}: ${title}`,
				['Place', 'Option', 'Students', 'Share', 'Upper 27 %', 'Lower 27 %', 'r with rest', 'Look at'],
				some.flatMap(optionRows),
				[
					`${complete.students.length} students. A distractor works when at least 5 % mark it and those who do score lower on the rest.`,
				],
				panels.length === 0 ? undefined : { kind: 'option-curves', panels },
			),
		);
	}
	return sections;
}

function optionRows({
	label,
	value,
	hidden,
}: {
	readonly label: string;
	readonly value: DistractorTable;
	readonly hidden: ReadonlySet<string>;
}): readonly (readonly ReportCell[])[] {
	return value.options.map(({ option, isKey, count, shareOfAll, upper, lower, correlation, flags }) => {
		const name = `${option.toUpperCase()}${isKey ? ' (key)' : ''}`;
		if (hidden.has(option)) return [label, name, 'hidden', null, null, null, null, ''];
		return [
			label,
			name,
			count,
			percent(shareOfAll),
			figureOf(upper),
			figureOf(lower),
			figureOf(correlation),
			flags.map((flag) => flagWords[flag]).join(', '),
		];
	});
}

/** Lines of the options shown; everything else is one line: "none" where it is no option, "rest" with hidden options in it. */
function panelOf(
	{ sizes, lines }: ResponseGroupPlot,
	label: string,
	hidden: ReadonlySet<string>,
): OptionCurvesPlot['panels'][number] {
	const isShown = (answer: string): boolean => !hidden.has(answer) && !besideOptions.has(answer);
	const shown = lines
		.filter(({ answer }) => isShown(answer))
		.map(({ answer, isKey, shares }) => ({ label: answer.toUpperCase(), key: isKey, shares: shares.map(roundShare) }));
	const rest = lines.filter(({ answer }) => !isShown(answer));
	const other = sizes.map((_unused, group) =>
		roundShare(rest.reduce((sum, { shares }) => sum + (shares[group] ?? 0), 0)),
	);
	return {
		label,
		groups: sizes.map((size) => roundTo(size, 1)),
		lines:
			rest.length === 0 ? shown : [...shown, { label: hidden.size > 0 ? 'rest' : 'none', key: false, shares: other }],
	};
}

const besideOptions: ReadonlySet<string> = new Set(['other', 'omitted', 'invalid', 'right']);

function roundShare(share: number): number {
	return Math.min(1, Math.max(0, roundTo(share, 4)));
}

/** What to look at, in words. */
const flagWords: Readonly<Record<OptionFlag, string>> = {
	'rarely-chosen': 'marked by few',
	'draws-strong': 'not with lower scores',
	'key-draws-weak': 'key goes with lower scores',
	'above-key-in-upper': 'more than the key in the upper group',
};

/**
 * Options fewer students marked than may be told, and one more where these could be computed back: one alone, or several that
 * everybody can see to be equal from what is left of the total. The one more is no key where that can be helped: its share
 * stands elsewhere.
 */
export function listHidden(
	options: readonly { readonly option: string; readonly isKey: boolean; readonly count: number }[],
): ReadonlySet<string> {
	const marked = options.filter(({ count }) => count > 0).sort((a, b) => a.count - b.count);
	const small = marked.filter(({ count }) => count < leastShared);
	const rest = marked.filter(({ count }) => count >= leastShared);
	const isTelling = small.length > 0 && small.every(({ count }) => count === small[0]?.count);
	const more = isTelling ? (rest.find(({ isKey }) => !isKey) ?? rest[0]) : undefined;
	return new Set([...small, ...(more === undefined ? [] : [more])].map(({ option }) => option));
}
