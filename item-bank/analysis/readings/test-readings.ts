import type { DecisionConsistency } from '../decision-consistency.ts';
import { type Finding, found } from '../finding.ts';
import type { AnchorComparison, ScoreComparison } from '../form-comparison.ts';
import type { ItemPersonMap } from '../rasch/item-person-map.ts';
import type { Reliability } from '../reliability.ts';
import type { ScoreDistribution } from '../score-distribution.ts';
import { percentText, type Reading, readByBands, soften, withhold } from './reading.ts';

/** Reads reliability: what decisions it can carry. Teacher-made tests come to about .50. */
export function readReliability(reliability: Finding<Reliability>, takers: number): Reading {
	const figure = reliability.kind === 'found' ? found(reliability.value.alpha) : reliability;
	return readByBands(
		figure,
		takers,
		[
			{
				from: 0.9,
				tone: 'plain',
				words: 'Scores are very consistent. Still no weighty decision about a child rests on one score.',
			},
			{
				from: 0.7,
				tone: 'plain',
				words: 'Scores are consistent enough to compare groups and to start a conversation about one student.',
			},
			{
				from: 0.5,
				tone: 'look',
				words:
					'Scores are about as consistent as those of most tests teachers write: use them beside other work, not alone.',
			},
			{
				from: -Infinity,
				tone: 'look',
				words:
					'Scores are not consistent: the form is short, very easy or hard, or asks different things. Look at single items, not at totals.',
			},
		],
		'.90: Nunnally 1978, read second hand; .70: Wells & Wollack 2003, from memory; .50: Frisbie 1988, abstract read',
	);
}

/** Reads the standard error of measurement in points. */
export function readStandardError(reliability: Finding<Reliability>, takers: number): Reading {
	const basis = 'two scores in three lie within one standard error: classical test theory';
	if (takers < 10) return withhold(takers);
	if (reliability.kind === 'refused') return { tone: 'absent', text: `No figure: ${reliability.message}.`, basis };
	const points = reliability.value.standardError.toFixed(1);
	const text = `Give or take ${points} points: on another form like this, about two students in three would come out that near to their score.`;
	return soften({ tone: 'plain', text, basis }, takers);
}

/** Reads where scores lie: many at the bottom or top say that the form was too hard or easy for this group. */
export function readScores(scores: Finding<ScoreDistribution>): Reading {
	const basis = 'common practice, no source';
	if (scores.kind === 'refused') return { tone: 'absent', text: `No figure: ${scores.message}.`, basis };
	const { students, mean, maximum, scores: counts } = scores.value;
	if (students < 10) return withhold(students);
	const at = (score: number): number => (counts.find((row) => row.score === score)?.count ?? 0) / students;
	const [none, all] = [at(0), at(maximum)];
	const start = `The mean is ${mean.toFixed(1)} of ${maximum} points.`;
	if (all > 0.15)
		return soften(
			{
				tone: 'look',
				text: `${start} ${percentText(all)} earned every point: the form cannot tell them apart.`,
				basis,
			},
			students,
		);
	if (none > 0.15)
		return soften(
			{
				tone: 'look',
				text: `${start} ${percentText(none)} earned nothing: the form was too hard for them to show what they know.`,
				basis,
			},
			students,
		);
	return soften({ tone: 'plain', text: start, basis }, students);
}

/** Reads the consistency of a decision at a cut. */
export function readConsistency(consistency: Finding<DecisionConsistency>, takers: number): Reading {
	const figure = consistency.kind === 'found' ? found(consistency.value.agreement) : consistency;
	const share = consistency.kind === 'found' ? percentText(consistency.value.agreement) : '';
	const chance = consistency.kind === 'found' ? percentText(consistency.value.chance) : '';
	const words = `On another form like this, about ${share} would fall on the same side of the cut; by chance alone it would be ${chance}.`;
	return readByBands(
		figure,
		takers,
		[
			{ from: 0.85, tone: 'plain', words },
			{ from: -Infinity, tone: 'look', words: `${words} Look again at students near the cut.` },
		],
		'.85: common practice, no source',
	);
}

/** Reads whether items stand where students are. */
export function readTargeting(map: Finding<ItemPersonMap>, takers: number): Reading {
	const figure = map.kind === 'found' ? found(map.value.targeting) : map;
	return readByBands(
		figure,
		takers,
		[
			{ from: 1, tone: 'look', words: 'The form was easy for these students: most stand above most items.' },
			{ from: -1, tone: 'plain', words: 'Items stand about where the students are.' },
			{ from: -Infinity, tone: 'look', words: 'The form was hard for these students: most stand below most items.' },
		],
		'1 logit either way: common practice, no source',
	);
}

/** Reads how two forms came out, without claiming that they are equated. */
export function readComparison(comparison: Finding<ScoreComparison>): Reading {
	const basis = 'built to the same plan, not equated: common practice, no source';
	if (comparison.kind === 'refused') return { tone: 'absent', text: `No figure: ${comparison.message}.`, basis };
	const { first, second, difference, interval } = comparison.value;
	const fewest = Math.min(first.students, second.students);
	if (fewest < 10) return withhold(fewest);
	const side = difference < 0 ? 'The second came out lower' : 'The second came out higher';
	const size = `${side} by ${percentText(Math.abs(difference))} of the points`;
	const isClear = interval.low > 0 || interval.high < 0;
	const text = isClear
		? `${size}, more than chance explains. The forms are built to the same plan, not equated: do not compare single scores across them.`
		: `${size}, which chance alone may explain. The forms are built to the same plan, not equated.`;
	return soften({ tone: isClear ? 'look' : 'plain', text, basis }, fewest);
}

/** Reads what items on both forms say about a difference, without claiming that the forms are equated. */
export function readAnchors(comparison: Finding<AnchorComparison>): Reading {
	const basis = 'items in common tell groups from forms, roughly: common practice, no source';
	if (comparison.kind === 'refused') return { tone: 'absent', text: `No figure: ${comparison.message}.`, basis };
	const { items, anchors, gap } = comparison.value;
	const fewest = Math.min(anchors.first.students, anchors.second.students);
	if (fewest < 10) return withhold(fewest);
	const count = items.length === 1 ? 'the one item' : `the ${items.length} items`;
	const isClear = anchors.interval.low > 0 || anchors.interval.high < 0;
	const who = isClear
		? `On ${count} of both forms the second group earned ${percentText(Math.abs(anchors.difference))} of the points ${anchors.difference > 0 ? 'more' : 'less'}: the groups differ.`
		: `On ${count} of both forms no clear difference between the groups shows.`;
	const what =
		gap.kind === 'refused'
			? ''
			: ` On the rest the gap is ${percentText(Math.abs(gap.value))} of the points ${gap.value < 0 ? 'lower' : 'higher'} than that, which may lie in the items.`;
	return soften(
		{ tone: isClear ? 'look' : 'plain', text: `${who}${what} Nothing here equates the forms.`, basis },
		fewest,
	);
}
