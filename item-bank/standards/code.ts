import type { Framework, Standard } from './framework.ts';
import { frameworks } from './frameworks.ts';
import type { StandardKey } from './links.ts';

/** The framework edition, or undefined when the bank does not know it. */
export function findFramework(framework: string, edition: string): Framework | undefined {
	return frameworks.find((candidate) => candidate.id === framework && candidate.edition === edition);
}

/** The standard with exactly this key, or undefined. The code must be spelled as the framework prints it: see {@link resolveCode}. */
export function findStandard(framework: string, edition: string, code: string): Standard | undefined {
	return findFramework(framework, edition)?.standards.find((standard) => standard.code === code);
}

/** All standards at or below a code, the standard itself first; empty when the code is unknown. */
export function standardsBelow(framework: Framework, code: string): readonly Standard[] {
	const self = framework.standards.find((standard) => standard.code === code);
	if (!self) return [];
	const children = framework.standards.filter((standard) => standard.parent === code);
	return [self, ...children.flatMap((child) => standardsBelow(framework, child.code))];
}

/**
 * The one spelling a framework prints for a code typed in any spelling seen in the wild, such as "7.NS.A.01.b",
 * "CCSS.MATH.CONTENT.7.NS.A.1.B" or "TEKS 6.3D"; undefined when none or more than one standard fits.
 */
export function normalizeCode(framework: Framework, typed: string): string | undefined {
	const parts = splitCode(typed);
	const exact = framework.standards.filter((standard) => sameParts(splitCode(standard.code), parts));
	const fits =
		exact.length > 0
			? exact
			: framework.standards.filter((standard) =>
					shortSpellings(standard.code).some((short) => sameParts(short, parts)),
				);
	return fits.length === 1 ? fits[0]?.code : undefined;
}

/** Every standard in any framework and edition that a typed code can mean: more than one where a code was reused. */
export function resolveCode(typed: string): readonly StandardKey[] {
	return frameworks.flatMap((framework) => {
		const code = normalizeCode(framework, typed);
		return code === undefined ? [] : [{ framework: framework.id, edition: framework.edition, code }];
	});
}

/** Up to three codes of the framework that are spelled most like the typed one, nearest first, ties in framework order. */
export function suggestCodes(framework: Framework, typed: string): readonly string[] {
	const wanted = splitCode(typed).join('.');
	return framework.standards
		.map((standard) => ({ code: standard.code, distance: editDistance(splitCode(standard.code).join('.'), wanted) }))
		.filter(({ distance }) => distance <= Math.max(2, Math.floor(wanted.length / 2)))
		.sort((a, b) => a.distance - b.distance)
		.slice(0, 3)
		.map(({ code }) => code);
}

/** Letters and digits of a code in upper case, without publisher prefixes, punctuation or leading zeros. */
function splitCode(code: string): readonly string[] {
	const bare = code
		.trim()
		.toUpperCase()
		.replace(/^HTTPS?:\/\/[^/]*\//, '')
		.replace(/^(CCSS|MAFS|TEKS|SOL)[\s.:-]+/, '')
		.replace(/^MATH[./]/, '')
		.replace(/^(CONTENT|PRACTICE)[./]/, '')
		.replace(/^§?\s*111\.2([67])\s*\(B\)/, (_all, last: string) => (last === '6' ? '6' : '7'));
	const parts = bare.match(/[0-9]+|[A-Z]+/g) ?? [];
	return parts.map((part) => part.replace(/^0+(?=\d)/, ''));
}

/**
 * Older and local spellings of a dotted code: without the cluster letter (7.NS.1b), and with the cluster's number in its
 * place (7.NS.1.1b, where A is 1, B is 2 and C is 3).
 */
function shortSpellings(code: string): readonly (readonly string[])[] {
	const [grade, domain, cluster, number, ...rest] = splitCode(code);
	const hasCluster = grade && domain && cluster && number && /^[A-E]$/.test(cluster) && /^\d+$/.test(number);
	if (!hasCluster) return [];
	const clusterNumber = String(cluster.charCodeAt(0) - 64);
	return [
		[grade, domain, number, ...rest],
		[grade, domain, clusterNumber, number, ...rest],
	];
}

function sameParts(a: readonly string[], b: readonly string[]): boolean {
	return a.length === b.length && a.every((part, index) => part === b[index]);
}

/** Levenshtein distance. */
function editDistance(a: string, b: string): number {
	let previous = Array.from({ length: b.length + 1 }, (_unused, index) => index);
	for (let row = 1; row <= a.length; row += 1) {
		const current = [row];
		for (let column = 1; column <= b.length; column += 1) {
			const substitution = (previous[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
			current.push(Math.min(substitution, (previous[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
		}
		previous = current;
	}
	return previous[b.length] ?? 0;
}
