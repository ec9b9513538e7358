import { patterns as registry } from '../../patterns/index.ts';
import type { PatternId } from '../../patterns/pattern.ts';
import { findProbes, type ProbeSet } from '../../patterns/probes.ts';
import { type Finding, found, refuse } from '../finding.ts';
import { type Interval, wilsonInterval } from '../intervals.ts';
import type { PatternFinding, StudentDiagnosis } from './student.ts';

/** How much of a class gives answers consistent with one pattern. */
export interface PatternShare {
	readonly pattern: PatternId;
	/** Students with a repeated finding that names the pattern, alone or with others it is not told apart from. */
	readonly repeated: number;
	/** Students with a hint only. */
	readonly hint: number;
	/** repeated over students who answered anything, 0 to 1. */
	readonly share: number;
	/** Wilson's. */
	readonly interval: Interval;
}

/** Students who could work on the same thing next. A proposal: the teacher knows more. */
export interface GroupProposal {
	/** The pattern that most of their answers share, and those that are not told apart from it for some of them. */
	readonly pattern: PatternId;
	readonly notToldApart: readonly PatternId[];
	readonly students: readonly string[];
	/** Items to ask next, which tell these patterns apart. */
	readonly probes: ProbeSet;
}

/** A class by what its answers are consistent with. */
export interface ClassDiagnosis {
	readonly students: number;
	/** Most frequent first; patterns that nobody's answers repeat or hint at are left out. */
	readonly shares: readonly PatternShare[];
	readonly groups: readonly GroupProposal[];
	/** Students with a pattern that nobody shares. */
	readonly single: readonly string[];
	/** Students whose wrong answers repeat no pattern. */
	readonly withoutPattern: readonly string[];
	/** Students with every answered item right. */
	readonly allRight: readonly string[];
	/** Students who left out half of their items or more: too little to say. */
	readonly tooFewAnswers: readonly string[];
}

/** Probes proposed for a group at most. */
const mostProbes = 4;

/**
 * Shares of a class per pattern and proposals for regrouping: the pattern named in most students' strongest repeated finding
 * makes the first group, then the same among those left; a group has two students or more. Probes come from findProbes and
 * separate what the group's answers do not. Refused for a class without students.
 */
export function diagnoseClass(students: readonly StudentDiagnosis[]): Finding<ClassDiagnosis> {
	if (students.length === 0) return refuse('too-few-students', 'expected students, found none');
	const present = students.filter(({ answered }) => answered > 0);
	const isThin = ({ answered, omitted }: StudentDiagnosis): boolean => omitted >= Math.max(1, answered);
	const thin = students.filter((student) => student.answered === 0 || (isThin(student) && !hasRepeated(student)));
	const rest = students.filter((student) => !thin.includes(student));
	const patterned = rest.filter(hasRepeated);
	const { groups, single } = proposeGroups(patterned);
	const others = rest.filter((student) => !patterned.includes(student));
	return found({
		students: students.length,
		shares: sharesOf(present),
		groups,
		single,
		withoutPattern: others.filter(({ wrong }) => wrong > 0).map(({ student }) => student),
		allRight: others.filter(({ wrong }) => wrong === 0).map(({ student }) => student),
		tooFewAnswers: thin.map(({ student }) => student),
	});
}

function hasRepeated({ findings }: StudentDiagnosis): boolean {
	return findings.some(({ strength }) => strength === 'repeated');
}

function sharesOf(students: readonly StudentDiagnosis[]): readonly PatternShare[] {
	const counted = registry.map(({ id }) => {
		const names = ({ patterns }: PatternFinding): boolean => patterns.includes(id);
		const strengths = students.map(({ findings }) => findings.filter(names).map(({ strength }) => strength));
		const repeated = strengths.filter((list) => list.includes('repeated')).length;
		return { pattern: id, repeated, hint: strengths.filter((list) => list.length > 0).length - repeated };
	});
	return counted
		.filter(({ repeated, hint }) => repeated + hint > 0)
		.sort((a, b) => b.repeated - a.repeated || b.hint - a.hint)
		.map((counts) => ({
			...counts,
			share: counts.repeated / students.length,
			interval: wilsonInterval(counts.repeated, students.length),
		}));
}

function proposeGroups(students: readonly StudentDiagnosis[]): Pick<ClassDiagnosis, 'groups' | 'single'> {
	const groups: GroupProposal[] = [];
	let left = students.flatMap(({ student, findings }) => {
		const strongest = findings.find(({ strength }) => strength === 'repeated');
		return strongest === undefined ? [] : [{ student, finding: strongest }];
	});
	for (;;) {
		const counts = registry.map(({ id }) => ({
			id,
			count: left.filter(({ finding }) => finding.patterns.includes(id)).length,
		}));
		const best = counts.reduce((most, one) => (one.count > most.count ? one : most), { id: undefined, count: 1 } as {
			readonly id: PatternId | undefined;
			readonly count: number;
		});
		if (best.id === undefined) return { groups, single: left.map(({ student }) => student) };
		const { id } = best;
		const members = left.filter(({ finding }) => finding.patterns.includes(id));
		const together = new Set(members.flatMap(({ finding }) => [...finding.patterns, ...finding.rivals]));
		const named = registry.map((pattern) => pattern.id).filter((other) => other !== id && together.has(other));
		groups.push({
			pattern: id,
			notToldApart: named,
			students: members.map(({ student }) => student),
			probes: findProbes([id, ...named], mostProbes),
		});
		left = left.filter((one) => !members.includes(one));
	}
}
