import { foundValue } from '../../item-bank/analysis/finding.ts';
import { type GroupDifference, measureGroupDifferences } from '../../item-bank/analysis/mantel-haenszel.ts';
import { readGroupDifference } from '../../item-bank/analysis/readings/item-readings.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { ReportSection } from '../../item-bank/types.ts';
import { makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import { type ResultSet, type ResultTable, studentName } from './result-set.ts';

/** Two groups whose answers are compared item by item, named at the call and never kept. */
export interface ComparedGroups {
	/** Class groups, or student codes. */
	readonly focal: ReadonlySet<string>;
	/** Class groups; everybody else when empty. */
	readonly reference: ReadonlySet<string>;
}

/** Whether items behave differently for two groups of students with the same total; groups too small get no figures in any copy. */
export function differenceSection(
	sets: readonly ResultSet[],
	{ table, places }: ResultTable,
	title: string,
	{ focal, reference }: ComparedGroups,
): ReportSection {
	const sides = new Map<string, 'focal' | 'reference'>();
	for (const set of sets) {
		const { group } = set.entry.sitting;
		for (const { code } of set.answers) {
			const isFocal = focal.has(group) || focal.has(code);
			const isReference = reference.size === 0 || reference.has(group);
			if (isFocal) sides.set(studentName(sets, set, code), 'focal');
			else if (isReference) sides.set(studentName(sets, set, code), 'reference');
		}
	}
	const findings = measureGroupDifferences(table, (student) => sides.get(student));
	const heading = `Differences between groups: ${title}`;
	const values = findings.map(foundValue);
	const notes = [
		'Students with the same total are compared, the item itself in it. A difference is a reason for people of both groups to look at the item; it does not say that the item is unfair, and no difference does not say that it is fair.',
	];
	if (values.every((value) => value === undefined)) {
		const why = findings.find(({ kind }) => kind === 'refused');
		return {
			title: heading,
			notes: [...notes, `No figures: ${why?.kind === 'refused' ? why.message : 'there are no items'}.`],
		};
	}
	const rows = findings.map((finding, index): readonly ReportCell[] => [
		places[index]?.label ?? '',
		printItemName(places[index]?.record.item.name ?? ''),
		...figuresOf(values[index]),
		readGroupDifference(finding).text,
	]);
	const count = (side: string): number => [...sides.values()].filter((each) => each === side).length;
	return makeSection(
		heading,
		['Place', 'Item', 'Size', 'Delta', 'Standard error', 'Share, focal less reference', 'In words'],
		rows,
		[`${count('focal')} students in the focal group, ${count('reference')} in the reference group.`, ...notes],
	);
}

function figuresOf(value: GroupDifference | undefined): readonly ReportCell[] {
	if (value === undefined) return [null, null, null, null];
	const { size, delta, standardError, shareDifference } = value;
	return [size, roundTo(delta, 2), roundTo(standardError, 2), percent(shareDifference)];
}
