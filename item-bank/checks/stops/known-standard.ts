import type { Problem } from '../../problem.ts';
import { findFramework, normalizeCode, suggestCodes } from '../../standards/code.ts';
import { frameworks } from '../../standards/frameworks.ts';
import type { Alignment } from '../../types.ts';
import { alignedIn, findAlignedStandard } from '../aligned.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Every alignment is to a known standard in the framework's own spelling. */
export const knownStandard: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: (facts) =>
		alignedIn(facts).flatMap(({ alignments, path }) =>
			alignments.flatMap((alignment, index) => checkCode(alignment, `${path}/alignments/${index}`)),
		),
};

function checkCode(alignment: Alignment, path: string): readonly Problem[] {
	if (findAlignedStandard(alignment)) return [];
	const { framework: id, edition, code } = alignment;
	const framework = findFramework(id, edition);
	if (!framework) {
		const known = frameworks.map((one) => `${one.id} ${one.edition}`).join(', ');
		const message = `expected a framework and edition among ${known}, found "${id} ${edition}"`;
		return [{ code: 'unknown-framework', path, message }];
	}
	const normal = normalizeCode(framework, code);
	const near = normal === undefined ? suggestCodes(framework, code) : [normal];
	const hint = near.length === 0 ? '' : `; did you mean ${near.join(' or ')}?`;
	const message = `expected a code of ${id} ${edition}, found "${code}"${hint}`;
	return [{ code: 'unknown-standard', path: `${path}/code`, message }];
}
