import type { ScoreDistribution } from '../../item-bank/analysis/score-distribution.ts';
import { writeRange } from '../../item-bank/plots/scores.ts';
import type { Report, ReportSection, ScoreBar, ScoresPlot } from '../../item-bank/types.ts';
import { poolAtCuts } from './pool-counts.ts';
import { leastShared, makeSection, percent, type ReportCell } from './report-text.ts';

/** Bars of a plot of scores at most. */
const mostBars = 41;

/** Where something begins on the scale of scores, such as a band of the blueprint. */
export type ScoreCuts = NonNullable<ScoresPlot['cuts']>;

/** How many students have which scores. In a shared copy scores of fewer than 3 students share a row with their neighbours. */
export function spreadSection(
	scores: ScoreDistribution,
	title: string,
	copy: Report['copy'],
	cuts: ScoreCuts = [],
): ReportSection {
	const bars = shareBars(barScores(scores), copy, cuts);
	const { students, mean, maximum } = scores;
	let below = 0;
	const rows = bars
		.filter(({ count }) => count > 0)
		.map(({ from, to, count }): readonly ReportCell[] => {
			below += count;
			return [writeRange(from, to), count, percent(count / students), percent(below / students)];
		});
	const pooled =
		copy === 'own' ? '' : ` Scores of fewer than ${leastShared} students share a row with their neighbours.`;
	const notes = [`${students} students.${pooled}`];
	return {
		...makeSection(
			`How scores spread: ${title}`,
			['Points', 'Students', 'Share', 'So many or fewer points'],
			rows,
			notes,
		),
		plot: {
			kind: 'scores',
			maximum,
			students,
			mean,
			bars: [...bars],
			...(cuts.length === 0 ? {} : { cuts: [...cuts] }),
		},
	};
}

/** Bars of whole scores as a copy may tell them. */
export function shareBars(bars: readonly ScoreBar[], copy: Report['copy'], cuts: ScoreCuts): readonly ScoreBar[] {
	const starts = cuts.map(({ from }) => Math.ceil(from));
	return copy === 'own' ? bars : poolAtCuts(bars, leastShared, starts);
}

/** One bar a whole score, halves rounded up; several scores a bar where there would be too many. */
export function barScores({ maximum, scores }: ScoreDistribution): readonly ScoreBar[] {
	const top = Math.ceil(maximum);
	const width = Math.ceil((top + 1) / mostBars);
	const counts = new Float64Array(Math.ceil((top + 1) / width));
	for (const { score, count } of scores) {
		const bar = Math.floor(Math.round(score) / width);
		counts[bar] = (counts[bar] ?? 0) + count;
	}
	return [...counts].map((count, bar) => ({ from: bar * width, to: Math.min(top, (bar + 1) * width - 1), count }));
}
