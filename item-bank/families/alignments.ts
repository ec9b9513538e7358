import type { Alignment, Alignments } from '../types.ts';

/** Codes whose whole content an item about integers can show; rational-number standards are shown in part. */
const shownInFull = new Set([
	'6.2(B)',
	'6.3(C)',
	'6.3(D)',
	'6.NS.C.5',
	'6.NS.C.6a',
	'6.NS.C.7a',
	'6.NS.C.7d',
	'6.CE.2.a',
	'6.CE.2.b',
	'6.CE.2.c',
	'6.CE.2.d',
]);

/** Alignments to codes of teks-math 2012, ccss-m 2010 and va-sol-math 2023, whose codes differ; the first is primary. */
export function alignTo(primary: string, ...others: readonly string[]): Alignments {
	return [{ ...align(primary), primary: true }, ...others.map(align)];
}

/** All alignments of several lists, each standard once. */
export function joinAlignments(...lists: readonly Alignments[]): Alignments {
	return [...new Map(lists.flat().map((alignment) => [alignment.code, alignment])).values()];
}

function align(code: string): Alignment {
	const [framework, edition] = frameworkOf(code);
	return { framework, edition, code, grade: code.charAt(0), extent: shownInFull.has(code) ? 'full' : 'partial' };
}

function frameworkOf(code: string): readonly [string, string] {
	if (code.includes('(')) return ['teks-math', '2012'];
	return code.includes('.CE.') ? ['va-sol-math', '2023'] : ['ccss-m', '2010'];
}
