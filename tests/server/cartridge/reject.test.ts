import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { validateAssessment, validateManifest } from '../../../server/cartridge/validate/validate-cartridge.ts';

/** One fault put into a valid file, with the verdict written down before the profile ever saw it. */
interface Mutant {
	readonly name: string;
	readonly file: 'assessment' | 'imsmanifest';
	/** Text replaced where it first stands, or, cut away, all from the first text to the end of the second. */
	readonly from?: string;
	readonly cut?: readonly [string, string];
	readonly to?: string;
	readonly code: string;
	/** The element that the first problem must name; null where the fault is no element's. */
	readonly element: string | null;
}

const fixtures = new URL('../../fixtures/cartridge/', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, fixtures), 'utf8');
const mutants = JSON.parse(read('reject/mutants.json')) as readonly Mutant[];
const valid = { assessment: read('accept/assessment.xml'), imsmanifest: read('accept/imsmanifest.xml') };

function mutate(xml: string, { from, cut, to = '' }: Mutant): string {
	const [opening, closing] = cut ?? [from ?? '', from ?? ''];
	const start = xml.indexOf(opening);
	const end = cut ? xml.indexOf(closing, start) : start;
	if (start < 0 || end < 0) throw new Error(`nothing to change: ${opening}`);
	return xml.slice(0, start) + to + xml.slice(end + closing.length);
}

test('there are at least forty mutants, each with a name of its own', () => {
	expect(new Set(mutants.map(({ name }) => name)).size).toBe(mutants.length);
	expect(mutants.length).toBeGreaterThanOrEqual(40);
});

test('what they are made of is valid', () => {
	const { problems, read: facts } = validateAssessment(valid.assessment);
	expect(problems).toEqual([]);
	if (!facts) throw new Error('nothing read');
	expect(validateManifest(valid.imsmanifest, facts)).toEqual([]);
});

describe('the profile of cartridges refuses', () => {
	const { read: facts } = validateAssessment(valid.assessment);
	test.each(mutants)('$name', (mutant) => {
		if (!facts) throw new Error('nothing read');
		const xml = mutate(valid[mutant.file], mutant);
		const problems = mutant.file === 'assessment' ? validateAssessment(xml).problems : validateManifest(xml, facts);
		const [first] = problems;
		expect({ code: first?.code, element: first?.element ?? null }).toEqual({
			code: mutant.code,
			element: mutant.element,
		});
		expect(first?.message).toMatch(/\S/);
	});
});
