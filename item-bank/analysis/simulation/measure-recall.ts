import { patterns as registry } from '../../patterns/index.ts';
import type { PatternId } from '../../patterns/pattern.ts';
import { readItemPatterns } from '../diagnosis/item-patterns.ts';
import { canRepeat, diagnoseStudents } from '../diagnosis/student.ts';
import { type SimulatedItem, type SimulatedStudent, simulateStudents } from './simulate-students.ts';

/** How well planted patterns are found again on a form. */
export interface Recall {
	/** One row a planted pattern that shows on enough items of the form. */
	readonly planted: readonly PlantedRow[];
	/** One row a habit without a pattern. */
	readonly others: readonly OtherRow[];
}

/** Students who follow one pattern. */
export interface PlantedRow {
	readonly pattern: PatternId;
	/** Items of the form that show it. */
	readonly items: number;
	/** Whether these items can make a repeated finding at all, all answers consistent: four choices of three options cannot. */
	readonly isReachable: boolean;
	readonly students: number;
	/** A repeated finding names the pattern, alone or not told apart from others. */
	readonly found: number;
	/** The strongest finding names it, or calls it a rival. */
	readonly strongest: number;
	/** A repeated finding that does not name the pattern, with what it names instead. */
	readonly astray: number;
	readonly instead: ReadonlyMap<PatternId, number>;
	/** Patterns named beside it on average where it was found. */
	readonly beside: number;
}

/** Students without a pattern. */
export interface OtherRow {
	readonly habit: string;
	readonly students: number;
	/** Students with a repeated finding: every one is false. */
	readonly named: number;
	readonly hinted: number;
}

/** What to simulate: students of each pattern and habit, share of slips and omissions. */
export interface RecallPlan {
	readonly each: number;
	readonly slips: number;
	/** Items that have to show a pattern for it to be planted. */
	readonly leastItems: number;
	readonly seed: string;
}

/**
 * Plants every pattern that shows on enough items in students who slip, adds students without patterns (slips only, many
 * slips, guesses, omissions), and counts what diagnoseStudents makes of them.
 */
export function measureRecall(items: readonly SimulatedItem[], { each, slips, leastItems, seed }: RecallPlan): Recall {
	const read = items.map(({ item }) => readItemPatterns(item));
	const diagnose = (name: string, habit: SimulatedStudent['habit'], ownSlips: number, omits: number) => {
		const students = Array.from({ length: each }, (_, at) => ({
			code: `${name} ${at}`,
			habit,
			slips: ownSlips,
			omits,
		}));
		return diagnoseStudents(simulateStudents(items, students, seed), read);
	};
	const planted = registry.flatMap(({ id }): readonly PlantedRow[] => {
		const shown = read.filter(({ visible }) => visible.includes(id)).length;
		if (shown < leastItems) return [];
		const diagnoses = diagnose(id, { kind: 'follows', patterns: [id] }, slips, 0);
		const repeated = diagnoses.map(({ findings }) => findings.filter(({ strength }) => strength === 'repeated'));
		const naming = repeated.map((list) => list.filter(({ patterns }) => patterns.includes(id)));
		const others = repeated.map((list) => list.filter(({ patterns }) => !patterns.includes(id)));
		const instead = new Map<PatternId, number>();
		for (const list of others) {
			for (const [first] of list.map(({ patterns }) => patterns)) {
				if (first !== undefined) instead.set(first, (instead.get(first) ?? 0) + 1);
			}
		}
		const hits = naming.filter((list) => list.length > 0);
		return [
			{
				pattern: id,
				items: shown,
				isReachable: canRepeat(read, id),
				students: each,
				found: hits.length,
				strongest: repeated.filter(([first]) => first?.patterns.includes(id) || first?.rivals.includes(id)).length,
				astray: others.filter((list) => list.length > 0).length,
				instead,
				beside: hits.reduce((sum, [first]) => sum + (first?.patterns.length ?? 1) - 1, 0) / Math.max(1, hits.length),
			},
		];
	});
	const habits: readonly (readonly [string, SimulatedStudent['habit'], number, number])[] = [
		['knows, slips as the others', { kind: 'knows' }, slips, 0],
		['knows, slips three times as often', { kind: 'knows' }, 3 * slips, 0],
		['guesses everything', { kind: 'guesses' }, 0, 0],
		['knows, leaves out half', { kind: 'knows' }, slips, 0.5],
		['guesses half, leaves out half', { kind: 'guesses' }, 0, 0.5],
	];
	const others = habits.map(([habit, how, ownSlips, omits]): OtherRow => {
		const diagnoses = diagnose(habit, how, ownSlips, omits);
		const named = diagnoses.filter(({ findings }) => findings.some(({ strength }) => strength === 'repeated')).length;
		const any = diagnoses.filter(({ findings }) => findings.length > 0).length;
		return { habit, students: each, named, hinted: any - named };
	});
	return { planted, others };
}

/** The counts as lines of text, a planted pattern or habit each, for people who judge the diagnosis. */
export function describeRecall({ planted, others }: Recall): readonly string[] {
	const percent = (part: number, all: number): string => `${((100 * part) / all).toFixed(1).padStart(5)} %`;
	return [
		'planted pattern                    items   found   strongest  astray  beside  instead',
		...planted.map(({ pattern, items, isReachable, students, found, strongest, astray, beside, instead }) => {
			const most = [...instead].sort(([, a], [, b]) => b - a);
			const names = most.map(([id, count]) => `${id} ${count}`).join(', ');
			const named = isReachable ? names : 'cannot be repeated on these items';
			const shares = [found, strongest, astray].map((count) => percent(count, students)).join('  ');
			return `${pattern.padEnd(34)} ${String(items).padStart(4)}  ${shares}  ${beside.toFixed(1).padStart(5)}   ${named}`;
		}),
		'no pattern planted                         named    hint',
		...others.map(
			({ habit, students, named, hinted }) =>
				`${habit.padEnd(38)}  ${percent(named, students)}  ${percent(hinted, students)}`,
		),
	];
}
