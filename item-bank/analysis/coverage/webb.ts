import { balanceOfRepresentation } from '../../forms/balance-of-representation.ts';
import { leadAlignment } from '../../forms/item-traits.ts';
import type { Framework, Standard } from '../../standards/framework.ts';
import { type Finding, found, refuse } from '../finding.ts';
import type { CoveredItem } from './coverage.ts';

/** One of Webb's four criteria. */
export interface Criterion {
	/** Items, or a share from 0 to 1. */
	readonly value: number;
	readonly verdict: 'met' | 'weak' | 'not-met';
}

/** How a form represents one standard and the objectives below it. */
export interface StandardAlignment {
	readonly standard: string;
	/** Codes of the objectives: the standards below it that have none below themselves, or itself where it has none. */
	readonly objectives: readonly string[];
	/** Categorical concurrence: items under the standard; 6 or more are met. */
	readonly concurrence: Criterion;
	/** Share of its items at or above the DOK of their objective; .50 met, .40 weak. Refused without DOK levels or items. */
	readonly dokConsistency: Finding<Criterion>;
	/** Share of the objectives with an item; .50 met, .40 weak. */
	readonly range: Criterion;
	/** How evenly the items spread over the objectives hit; .70 met, .60 weak. Refused without items. */
	readonly balance: Finding<Criterion>;
}

/**
 * Webb's four alignment criteria for every topmost standard of a framework (Webb 1997, 1999; Applied Measurement in Education
 * 20(1), 2007, 7 to 25: criteria read in its abstract, thresholds and the balance formula from memory). They were made for
 * state tests; a department's form of 20 items meets six items a standard seldom, which is no fault. An item counts under
 * its lead alignment. DOK levels of objectives come from the caller, because frameworks do not print them.
 * Balance looks only at objectives hit: one objective with every item scores 1 while the range fails.
 */
export function judgeAlignment(
	items: readonly CoveredItem[],
	framework: Framework,
	dokOf: (code: string) => number | undefined = () => undefined,
): readonly StandardAlignment[] {
	const placed = items.flatMap(({ item }) => {
		const code = leadAlignment(item, framework.id, framework.edition)?.code;
		return code === undefined ? [] : [{ code, dok: item.dok }];
	});
	const tops = framework.standards.filter(
		({ parent }) => parent === undefined || !framework.standards.some(({ code }) => code === parent),
	);
	return tops.map((top) => {
		const family = familyOf(top, framework.standards);
		const leaves = family.filter(({ code }) => !framework.standards.some(({ parent }) => parent === code));
		const objectives = leaves.map(({ code }) => code);
		const own = placed.filter(({ code }) => family.some((standard) => standard.code === code));
		const hits = family.map(({ code }) => own.filter((one) => one.code === code).length);
		const hitObjectives = objectives.filter((code) => own.some((one) => one.code === code)).length;
		const levels = own.flatMap(({ code, dok }) => {
			const level = dokOf(code);
			return level === undefined ? [] : [dok >= level];
		});
		return {
			standard: top.code,
			objectives,
			concurrence: { value: own.length, verdict: own.length >= 6 ? 'met' : 'not-met' },
			dokConsistency:
				levels.length === 0 || levels.length < own.length
					? refuse('not-applicable', `expected a DOK level for the objective of each item under ${top.code}`)
					: found(judge(levels.filter(Boolean).length / levels.length, 0.5, 0.4)),
			range: judge(hitObjectives / objectives.length, 0.5, 0.4),
			balance:
				own.length === 0
					? refuse('not-applicable', `expected items under ${top.code}, found none`)
					: found(judge(balanceOfRepresentation(hits), 0.7, 0.6)),
		};
	});
}

/** A share against its thresholds; a hair below one by rounding still counts, such as a balance of exactly .7. */
export function judge(value: number, met: number, weak: number): Criterion {
	const reaches = (threshold: number): boolean => value >= threshold - 1e-9;
	return { value, verdict: reaches(met) ? 'met' : reaches(weak) ? 'weak' : 'not-met' };
}

function familyOf(top: Standard, standards: readonly Standard[]): readonly Standard[] {
	return [top, ...standards.filter(({ parent }) => parent === top.code).flatMap((child) => familyOf(child, standards))];
}
