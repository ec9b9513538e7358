import { getPattern } from '../../patterns/index.ts';
import type { PatternFinding } from '../diagnosis/student.ts';
import type { EvidenceChange } from '../evidence/change.ts';
import type { EvidenceCell } from '../evidence/evidence.ts';
import { percentText, type Reading, soften, withhold } from './reading.ts';

/** Reads one cell of the evidence: share, interval and what it rests on. */
export function readEvidence(cell: EvidenceCell): Reading {
	const basis = '3 to 4 items for a hint, 5 before naming a strength: from memory';
	const { students, items, responses, earned, possible, share, interval } = cell;
	if (students < 10) return withhold(students);
	const span =
		interval.kind === 'found'
			? ` (between ${percentText(interval.value.low)} and ${percentText(interval.value.high)})`
			: '';
	const itemWords = items === 1 ? 'one item' : `${items} items`;
	const start = `${earned} of ${possible} points, ${percentText(share)}${span}, from ${responses} responses of ${students} students to ${itemWords}.`;
	if (items < 3)
		return { tone: 'look', text: `${start} So few items show how these went, not yet how the standard goes.`, basis };
	return soften({ tone: 'plain', text: items < 5 ? `${start} Enough items for a hint.` : start, basis }, students);
}

/** Reads a change between sittings. */
export function readChange({ change, interval, studentsBefore, studentsAfter, isSameItems }: EvidenceChange): Reading {
	const basis = 'an interval that holds 0 leaves it open whether anything changed';
	const fewest = Math.min(studentsBefore, studentsAfter);
	if (fewest < 10) return withhold(fewest);
	const words = `${percentText(Math.abs(change))} of the points ${change < 0 ? 'less' : 'more'} than before`;
	const isOpen = interval.kind === 'refused' || (interval.value.low <= 0 && interval.value.high >= 0);
	const caution = isSameItems ? '' : ' The items were not the same, so part of it may lie in the items.';
	const text = isOpen
		? `No clear change: ${words}, which chance alone may explain.${caution}`
		: `A change: ${words}.${caution}`;
	return soften({ tone: 'plain', text, basis }, fewest);
}

/** Reads one finding about a student, for the teacher of that student. Never says that somebody has a wrong idea. */
export function readPatternFinding({ patterns, rivals, consistent, opportunities, strength }: PatternFinding): Reading {
	const names = patterns.map((id) => getPattern(id).name).join('; or: ');
	const other = rivals.map((id) => getPattern(id).name).join('; ');
	const text =
		`${consistent} of ${opportunities} answers are consistent with this idea: ${names}.` +
		(rivals.length === 0 ? '' : ` Nearly as well with: ${other}.`) +
		(strength === 'hint'
			? ' Too few answers to act on; ask again.'
			: ' Talk with the student before concluding anything.');
	return { tone: 'look', text, basis: 'our own rule; its hits and false alarms are measured on simulated students' };
}
