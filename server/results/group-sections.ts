import { diagnoseClass, type GroupProposal } from '../../item-bank/analysis/diagnosis/class.ts';
import { readItemPatterns } from '../../item-bank/analysis/diagnosis/item-patterns.ts';
import { type NextItem, proposeItems } from '../../item-bank/analysis/diagnosis/next-items.ts';
import type { StudentDiagnosis } from '../../item-bank/analysis/diagnosis/student.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import { numberNode, operationNode } from '../../item-bank/expression/tree.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
import { findProbes } from '../../item-bank/patterns/probes.ts';
import type { RegroupingProposal, Report, ReportSection } from '../../item-bank/types.ts';
import { diagnoseTable } from './pattern-sections.ts';
import { makeSection, type ReportCell } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** Items of the bank that groups can be given next, read once for all groups. */
export interface NextSupply {
	readonly items: readonly NextItem[];
	readonly nameOf: (id: string) => string;
}

/** Expressions to ask a group at most. */
const mostProbes = 4;
/** Items a report looks through at most: reading the wrong ideas behind the answers to one takes a while. */
const mostRead = 5000;

/** Items that can be given next. Sets are left out: their parts are not given singly. */
export function gatherSupply(bank: readonly ItemRecord[]): NextSupply {
	const free = bank.filter(({ item }) => item.kind !== 'set').slice(0, mostRead);
	const names = new Map(free.map(({ id, item }) => [id, printItemName(item.name)]));
	return {
		items: free.map(({ id, version, item }) => ({
			id,
			version,
			model: item.given,
			dok: item.dok,
			patterns: readItemPatterns(item),
		})),
		nameOf: (id) => names.get(id) ?? id,
	};
}

/** Proposals for regrouping by what answers are consistent with, with items to use next; names codes, so it belongs to the teacher's own copy. */
export function groupSections(
	result: ResultTable,
	title: string,
	copy: Report['copy'],
	supply: NextSupply,
): readonly ReportSection[] {
	const heading = `Who could work on the same thing: ${title}`;
	if (copy === 'shared')
		return [{ title: heading, notes: ['Names student codes: only in the class teacher’s own copy.'] }];
	const diagnoses = diagnoseTable(result);
	const finding = diagnoseClass(diagnoses);
	if (finding.kind === 'refused') return [{ title: heading, notes: [finding.message] }];
	const { groups, single, withoutPattern, allRight, tooFewAnswers } = finding.value;
	const hinted = groupByFirst(diagnoses.filter(({ student }) => withoutPattern.includes(student)));
	const alone = groupByFirst(diagnoses.filter(({ student }) => single.includes(student)));
	const proposals = [
		...[...groups, ...alone].map((group) => proposeNext(group, 'repeated', supply)),
		...hinted.map((group) => proposeNext(group, 'hint', supply)),
	];
	const unnamed = withoutPattern.filter((code) => !hinted.some(({ students }) => students.includes(code)));
	const list = (codes: readonly string[]): string => codes.join(', ');
	const rows = proposals.map((proposal): readonly ReportCell[] => [
		proposal.strength === 'hint' ? `${proposal.name} (a hint only)` : proposal.name,
		proposal.notToldApart.join('; '),
		proposal.students.length,
		list(proposal.students),
		tellNext(proposal),
	]);
	const rest: readonly (readonly ReportCell[])[] = [
		['Wrong answers that repeat no pattern', '', unnamed.length, list(unnamed), ''],
		['Everything answered is right', '', allRight.length, list(allRight), ''],
		['Too few answers to say', '', tooFewAnswers.length, list(tooFewAnswers), ''],
	].filter(([, , count]) => count !== 0);
	return [
		{
			...makeSection(
				heading,
				['Answers consistent with', 'Not told apart from', 'Students', 'Codes', 'Use next'],
				[...rows, ...rest],
				[
					'A proposal from answers on one day: ask the next questions before acting. The teacher knows more.',
					'Items are approved and on no form that was sat or given. “Tell apart” comes first where the answers so far fit several ideas; “same idea again” checks one idea in another representation.',
				],
			),
			proposals,
		},
	];
}

type Grouped = Pick<GroupProposal, 'pattern' | 'notToldApart' | 'students'>;

/** Students by their strongest finding, those alike together; students without any stand aside. */
function groupByFirst(diagnoses: readonly StudentDiagnosis[]): readonly Grouped[] {
	const groups = new Map<string, Grouped>();
	for (const { student, findings } of diagnoses) {
		const [first] = findings;
		const [pattern, ...alike] = first?.patterns ?? [];
		if (first === undefined || pattern === undefined) continue;
		const notToldApart = [...alike, ...first.rivals];
		const key = [pattern, ...notToldApart].join(' ');
		groups.set(key, { pattern, notToldApart, students: [...(groups.get(key)?.students ?? []), student] });
	}
	return [...groups.values()].sort((a, b) => b.students.length - a.students.length);
}

function proposeNext(
	group: Grouped,
	strength: RegroupingProposal['strength'],
	{ items, nameOf }: NextSupply,
): RegroupingProposal {
	const next = proposeItems(group, items);
	const probes = findProbes([group.pattern, ...group.notToldApart], mostProbes);
	return {
		pattern: group.pattern,
		name: nameOfPattern(group.pattern),
		notToldApart: group.notToldApart.map(nameOfPattern),
		strength,
		settled: next.settled && strength === 'repeated',
		students: group.students,
		ask: probes.items.map(({ operator, left, right }) =>
			printMathematics(operationNode(operator, numberNode(left), numberNode(right))),
		),
		next: next.items.map(({ id, version }) => ({ id, version, name: nameOf(id), why: next.why })),
	};
}

function tellNext({ strength, notToldApart, next, ask }: RegroupingProposal): string {
	const names = next.map(({ name }) => name).join('; ');
	const start =
		notToldApart.length > 0 ? 'Tell apart' : strength === 'hint' ? 'See whether it shows again' : 'Same idea again';
	if (names !== '') return `${start}: ${names}`;
	return ask.length === 0 ? 'The bank has no item for it.' : `${start}, by asking: ${ask.join(', ')}`;
}

function nameOfPattern(pattern: PatternId): string {
	return getPattern(pattern).name;
}
