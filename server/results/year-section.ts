import type { CoveredItem } from '../../item-bank/analysis/coverage/coverage.ts';
import { viewYear } from '../../item-bank/analysis/coverage/year.ts';
import type { Framework } from '../../item-bank/standards/framework.ts';
import type { ReportSection } from '../../item-bank/types.ts';
import { nameModel } from './evidence-report.ts';
import { makeSection, type ReportCell } from './report-text.ts';

/** A form as a group sat it on a day, with responses or without. */
export interface SatForm {
	/** Id and version. */
	readonly form: string;
	readonly title: string;
	/** YYYY-MM-DD. */
	readonly date: string;
	readonly items: readonly CoveredItem[];
}

/** Sittings of one form version no further apart than this are one occasion: a form goes round the classes within a month. */
const daysOfOccasion = 28;

/** Which standards were asked when, by how many items: a row every standard at the foot of its framework, never asked ones among them. */
export function yearSection(sat: readonly SatForm[], framework: Framework): ReportSection {
	const occasions = gatherOccasions(sat);
	const leaves = framework.standards.filter(({ code }) => !framework.standards.some(({ parent }) => parent === code));
	const view = viewYear(
		occasions.map(({ form, date, items }) => ({ form, date, items })),
		framework.standards.map(({ code }) => code),
		{ framework: framework.id, edition: framework.edition },
	);
	const isLeaf = new Set(leaves.map(({ code }) => code));
	// A standard with parts below it stands here only where items are aligned to it as a whole.
	const rows = view.filter(({ standard, items }) => items > 0 || isLeaf.has(standard));
	const shown = rows.filter(({ items }) => items > 0);
	const never = rows.filter(({ items }) => items === 0).map(({ standard }) => standard);
	const columns = occasions.map(
		({ title, date, times }) => `${title}, ${date}${times > 1 ? ` (${times} sittings)` : ''}`,
	);
	const table = shown.map(({ standard, sittings, items, timesAsked, models, lastAsked }): readonly ReportCell[] => [
		standard,
		...sittings.map((entry) => entry.items),
		items,
		timesAsked,
		models.map(nameModel).join(', '),
		lastAsked ?? null,
	]);
	return makeSection(
		'Which standards were asked when',
		['Standard', ...columns, 'Different items', 'Times asked', 'Models', 'Last asked'],
		table,
		[
			'Items of every form by the standard they lead with. Sittings of one form within four weeks stand together. It says what was asked, not what is known.',
			...(never.length === 0 ? [] : [`Never asked in these sittings: ${never.join(', ')}.`]),
		],
		shown.length === 0
			? undefined
			: {
					kind: 'count-board',
					columns,
					rows: shown.map(({ standard, sittings }) => ({
						label: standard,
						counts: sittings.map((entry) => entry.items),
					})),
				},
	);
}

interface Occasion extends SatForm {
	readonly times: number;
}

function gatherOccasions(sat: readonly SatForm[]): readonly Occasion[] {
	const occasions: Occasion[] = [];
	for (const one of [...sat].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))) {
		const at = occasions.findIndex(
			({ form, date }) => form === one.form && dayNumber(one.date) - dayNumber(date) <= daysOfOccasion,
		);
		const known = occasions[at];
		if (known === undefined) occasions.push({ ...one, times: 1 });
		else occasions[at] = { ...known, times: known.times + 1 };
	}
	return occasions;
}

/** Days since an arbitrary day, of a day such as 2026-09-14. */
function dayNumber(date: string): number {
	return Math.round(Date.parse(`${date}T00:00:00Z`) / 86_400_000);
}
