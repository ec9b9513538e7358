import type { CoveredItem } from '../../item-bank/analysis/coverage/coverage.ts';
import { type Criterion, judgeAlignment, type StandardAlignment } from '../../item-bank/analysis/coverage/webb.ts';
import type { Finding } from '../../item-bank/analysis/finding.ts';
import { readConcurrence, readDokConsistency, readRange } from '../../item-bank/analysis/readings/coverage-readings.ts';
import type { Framework } from '../../item-bank/standards/framework.ts';
import type { ReportSection } from '../../item-bank/types.ts';
import { makeSection, type ReportCell, roundTo } from './report-text.ts';

/** Levels of depth that a department gives its standards, by code: frameworks print none. */
export type DokLevels = ReadonlyMap<string, number>;

/** Levels from texts such as "6.3(D)=2"; a text of another form counts for nothing. */
export function readLevels(texts: readonly string[]): DokLevels {
	return new Map(
		texts.flatMap((text) => {
			const [, code, level] = /^(.+)=([1-4])$/.exec(text.trim()) ?? [];
			return code === undefined ? [] : [[code.trim(), Number(level)] as const];
		}),
	);
}

/** A form and what it asks. */
export interface AskedForm {
	readonly form: string;
	readonly items: readonly CoveredItem[];
}

/** How forms represent every standard they ask for: Webb's four criteria with what they mean. */
export function alignmentSection(forms: readonly AskedForm[], framework: Framework, levels: DokLevels): ReportSection {
	const judged = forms.flatMap(({ form, items }) =>
		judgeAlignment(items, framework, (code) => levels.get(code)).map((alignment) => ({ form, alignment })),
	);
	const asked = judged.filter(({ alignment }) => alignment.concurrence.value > 0);
	const known = new Set(asked.map(({ alignment }) => alignment.standard));
	const unasked = [...new Set(judged.map(({ alignment }) => alignment.standard))].filter((code) => !known.has(code));
	const rows = asked.map(({ form, alignment }): readonly ReportCell[] => {
		const { standard, objectives, concurrence, dokConsistency, range, balance } = alignment;
		return [
			form,
			standard,
			`${concurrence.value} (${words[concurrence.verdict]})`,
			judgement(dokConsistency),
			`${Math.round(range.value * objectives.length)} of ${objectives.length} (${words[range.verdict]})`,
			judgement(balance),
			tellAlignment(alignment, levels.size > 0),
		];
	});
	return makeSection(
		'Alignment of items and standards',
		['Form', 'Standard', 'Items', 'As deep or deeper', 'Parts asked for', 'Balance', 'In words'],
		rows,
		[
			'Four criteria after Webb: six items a standard; half of the items as deep as it; half of its parts asked for; items spread evenly over these parts (balance .70). They were made for state tests of a whole year, so that a unit check misses some by design. They say what is asked, not what is known.',
			...(levels.size > 0
				? []
				: ['Depth is not judged: give the level of each standard to see it, because frameworks print none.']),
			...(unasked.length === 0 ? [] : [`Nothing asks for: ${unasked.join(', ')}.`]),
		],
	);
}

const words: Readonly<Record<Criterion['verdict'], string>> = { met: 'met', weak: 'weak', 'not-met': 'not met' };

function judgement(finding: Finding<Criterion>): string | null {
	if (finding.kind === 'refused') return null;
	return `${roundTo(finding.value.value, 2)} (${words[finding.value.verdict]})`;
}

function tellAlignment(alignment: StandardAlignment, isDepthGiven: boolean): string {
	return [readConcurrence, readRange, ...(isDepthGiven ? [readDokConsistency] : [])]
		.map((read) => read(alignment))
		.filter(({ tone }) => tone !== 'plain')
		.map(({ text }) => text)
		.join(' ');
}
