import { textsOf } from '../items/texts.ts';
import type { Problem } from '../problem.ts';
import { findFramework, findStandard, normalizeCode, suggestCodes } from '../standards/code.ts';
import { frameworks } from '../standards/frameworks.ts';
import type { Alignment, Item } from '../types.ts';

/** Exactly one primary alignment, each to a known standard in the framework's own spelling, none twice. */
export function checkAlignments(item: Item): readonly Problem[] {
	const primaries = item.alignments.filter(({ primary }) => primary === true);
	const count = `expected exactly one primary alignment, found ${primaries.length}`;
	return [
		...(primaries.length === 1 ? [] : [{ code: 'primary-alignment-count', path: '/alignments', message: count }]),
		...item.alignments.flatMap((alignment, index) => checkCode(alignment, `/alignments/${index}`)),
		...checkPositiveOnly(item),
		...checkRepeats(item.alignments),
	];
}

function checkCode(alignment: Alignment, path: string): readonly Problem[] {
	const framework = findFramework(alignment.framework, alignment.edition);
	if (!framework) {
		const known = frameworks.map(({ id, edition }) => `${id} ${edition}`).join(', ');
		const message = `expected a framework and edition among ${known}, found "${alignment.framework} ${alignment.edition}"`;
		return [{ code: 'unknown-framework', path, message }];
	}
	if (findStandard(alignment.framework, alignment.edition, alignment.code)) return [];
	const normal = normalizeCode(framework, alignment.code);
	const near = normal === undefined ? suggestCodes(framework, alignment.code) : [normal];
	const hint = near.length === 0 ? '' : `; did you mean ${near.join(' or ')}?`;
	const message = `expected a code of ${framework.id} ${framework.edition}, found "${alignment.code}"${hint}`;
	return [{ code: 'unknown-standard', path: `${path}/code`, message }];
}

/** A number with a minus of its own: at the start, or after a bracket, a backtick or a relation. */
const negativeNumber = /(?:^|[([`=<>≤≥+×÷*/-])\s*[-−]\s*\d/;

function checkPositiveOnly(item: Item): readonly Problem[] {
	const signed = textsOf(item).find(({ kind, text }) => kind !== 'plain' && negativeNumber.test(text));
	if (!signed) return [];
	return item.alignments.flatMap(({ framework, edition, code }, index) => {
		const message = `expected positive numbers only, as ${code} asks, found "${signed.text}" at ${signed.path}`;
		const isPositiveOnly = findStandard(framework, edition, code)?.isPositiveOnly === true;
		return isPositiveOnly ? [{ code: 'standard-positive-only', path: `/alignments/${index}/code`, message }] : [];
	});
}

function checkRepeats(alignments: readonly Alignment[]): readonly Problem[] {
	const keys = alignments.map(({ framework, edition, code }) => `${framework} ${edition} ${code}`);
	return keys.flatMap((key, index) => {
		const message = `expected each standard once, found ${key} again`;
		return keys.indexOf(key) === index ? [] : [{ code: 'alignment-repeated', path: `/alignments/${index}`, message }];
	});
}
