import type { PatternId } from '../../patterns/pattern.ts';
import { type ScoreTable, stateCodes } from '../score-table.ts';
import type { ItemPatterns } from './item-patterns.ts';

/** How often a pattern had to show before it is named. */
export type Strength =
	/** Three or more answers, 100 times likelier under the pattern than without. */
	| 'repeated'
	/** Two or more answers, 10 times likelier: look again before acting. */
	| 'hint';

/** Answers of one student that are consistent with the same patterns. Never says that somebody has a wrong idea. */
export interface PatternFinding {
	/** Patterns that these responses do not tell apart, in the order of the registry. */
	readonly patterns: readonly PatternId[];
	/** Other patterns that explain the same answers nearly as well: less than 10 times less likely. */
	readonly rivals: readonly PatternId[];
	/** Answers consistent with the patterns, and answered items where the patterns would have shown. */
	readonly consistent: number;
	readonly opportunities: number;
	/** Places in the table of the items with consistent answers. */
	readonly items: readonly number[];
	readonly strength: Strength;
}

/** What one student's wrong answers are consistent with. */
export interface StudentDiagnosis {
	readonly student: string;
	readonly answered: number;
	readonly full: number;
	/** Answered and not fully right. */
	readonly wrong: number;
	readonly omitted: number;
	readonly invalid: number;
	/** Strongest first; each explains answers that those before leave. */
	readonly findings: readonly PatternFinding[];
	/** Wrong answers outside every finding. */
	readonly unexplained: number;
}

/** Share of answers that do not follow an idea somebody follows. Our choice, no source. */
const slipRate = 0.2;
/** Natural logarithms of the likelihood ratios asked for. */
const asked = { repeated: Math.log(100), hint: Math.log(10), rival: Math.log(10) } as const;

/**
 * What the wrong answers of every student are consistent with. For each pattern, the answered items where it would show are
 * compared under two assumptions: the student follows the pattern and slips one time in five, or gives that particular
 * wrong answer by chance (see ItemPatterns). The pattern with the largest likelihood ratio is named when the answers are
 * enough (see {@link Strength}); its answers then count for nothing else, and the next is looked for. Our own rule; how often
 * it finds planted patterns and cries wolf is measured in analysis/simulation. Columns and patterns are in the same order;
 * students without answers get no findings.
 */
export function diagnoseStudents(table: ScoreTable, patterns: readonly ItemPatterns[]): readonly StudentDiagnosis[] {
	const columns = table.columns.map((column, place) => {
		const own = patterns[place];
		return { column, own, led: column.distinctAnswers.map((answer) => own?.byAnswer.get(answer) ?? []) };
	});
	return table.students.map((student, at) => {
		let [answered, full, omitted, invalid] = [0, 0, 0, 0];
		const seen: SeenAnswer[] = [];
		for (const [place, { column, own, led }] of columns.entries()) {
			const state = column.states[at];
			if (state === stateCodes.omitted || state === stateCodes['not-reached']) omitted += 1;
			if (state === stateCodes.invalid) invalid += 1;
			if (state !== stateCodes.answered) continue;
			answered += 1;
			if (column.points[at] === column.item.maximum) full += 1;
			const answer = column.answers[at] as number;
			if (own !== undefined && answer >= 0 && own.visible.length > 0) {
				seen.push({ place, visible: own.visible, led: led[answer] ?? [], chance: own.chance });
			}
		}
		const findings = findPatternsIn(seen);
		const explained = new Set(findings.flatMap(({ items }) => items)).size;
		const wrong = answered - full;
		return { student, answered, full, wrong, omitted, invalid, findings, unexplained: Math.max(0, wrong - explained) };
	});
}

/**
 * Whether items can show a pattern often enough for a repeated finding: three or more of them, and together 100 times
 * likelier under the pattern when every answer follows it. Where not, the form cannot say anything about the pattern.
 */
export function canRepeat(patterns: readonly ItemPatterns[], id: PatternId): boolean {
	const shown = patterns.filter(({ visible }) => visible.includes(id));
	const ratio = shown.reduce((sum, { chance }) => sum + Math.log((1 - slipRate) / chance), 0);
	return shown.length >= 3 && ratio >= asked.repeated;
}

interface SeenAnswer {
	readonly place: number;
	readonly visible: readonly PatternId[];
	/** Patterns that lead to the answer given. */
	readonly led: readonly PatternId[];
	readonly chance: number;
}

interface Tally {
	readonly id: PatternId;
	readonly consistent: number;
	readonly opportunities: number;
	/** Natural logarithm. */
	readonly ratio: number;
	readonly items: readonly number[];
	/** Where it would show and where it did: equal texts are patterns not told apart. */
	readonly trace: string;
}

function findPatternsIn(answers: readonly SeenAnswer[]): readonly PatternFinding[] {
	const findings: PatternFinding[] = [];
	for (let left = answers; ; ) {
		if (left.every(({ led }) => led.length === 0)) return findings;
		const tallies = tallyPatterns(left).filter(({ consistent, ratio }) => consistent >= 2 && ratio >= asked.hint);
		const [best] = [...tallies].sort((a, b) => b.ratio - a.ratio);
		if (best === undefined) return findings;
		const alike = tallies.filter(({ trace }) => trace === best.trace).map(({ id }) => id);
		const rivals = tallies.filter(
			({ id, ratio, items }) =>
				!alike.includes(id) &&
				ratio > best.ratio - asked.rival &&
				items.filter((place) => best.items.includes(place)).length * 2 >= best.consistent,
		);
		findings.push({
			patterns: alike,
			rivals: rivals.map(({ id }) => id),
			consistent: best.consistent,
			opportunities: best.opportunities,
			items: best.items,
			strength: best.consistent >= 3 && best.ratio >= asked.repeated ? 'repeated' : 'hint',
		});
		left = left.filter(({ place }) => !best.items.includes(place));
	}
}

function tallyPatterns(answers: readonly SeenAnswer[]): readonly Tally[] {
	const ids = new Set(answers.flatMap(({ led }) => led));
	return [...ids].map((id) => {
		let [consistent, opportunities, ratio] = [0, 0, 0];
		const items: number[] = [];
		let trace = '';
		for (const { place, visible, led, chance } of answers) {
			if (!visible.includes(id)) continue;
			opportunities += 1;
			const isConsistent = led.includes(id);
			trace += `${place}${isConsistent ? '+' : '-'}`;
			ratio += isConsistent ? Math.log((1 - slipRate) / chance) : Math.log(slipRate / (1 - chance));
			if (!isConsistent) continue;
			consistent += 1;
			items.push(place);
		}
		return { id, consistent, opportunities, ratio, items, trace };
	});
}
