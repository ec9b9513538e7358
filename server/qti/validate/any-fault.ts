import type { Rule } from './rule.ts';

/** Steps of paths that open alike, told once, with the conditions of the rules that look at their end. */
interface Branch {
	readonly faults: string[];
	readonly next: Map<string, Branch>;
}

/**
 * One XPath that finds nothing exactly when no rule is broken. Rules below the same element stand inside one condition of that
 * element, so that each step of a path is walked once: asking rule after rule takes longer than parsing the document.
 */
export function anyFaultOf(rules: readonly Rule[]): string {
	const root: Branch = { faults: [], next: new Map() };
	for (const { at, fault } of rules) {
		let branch = root;
		for (const step of stepsOf(at)) {
			const next = branch.next.get(step) ?? { faults: [], next: new Map() };
			branch.next.set(step, next);
			branch = next;
		}
		branch.faults.push(`(${fault})`);
	}
	return [...root.next].map(([step, branch]) => `/${writeBranch(step, branch)}`).join(' | ');
}

function writeBranch(step: string, { faults, next }: Branch): string {
	const conditions = [...faults, ...[...next].map(([below, branch]) => writeBranch(below, branch))];
	return `${step}[${conditions.join(' or ')}]`;
}

/** The steps of an absolute path; slashes within conditions and quotes belong to their step. */
function stepsOf(path: string): readonly string[] {
	const steps = path.match(/\/(?:[^/[]|\[(?:[^\]'"]|'[^']*'|"[^"]*")*\])*/g) ?? [];
	return steps.flatMap((step, index) => {
		if (step === '/') return [];
		return [steps[index - 1] === '/' ? `descendant::${step.slice(1)}` : step.slice(1)];
	});
}
