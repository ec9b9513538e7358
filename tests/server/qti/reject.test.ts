import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { validateDocument } from '../../../server/qti/validate/validate-document.ts';
import { type QtiVersion, qtiVersions } from '../../../server/qti/versions.ts';
import { schemaOf } from './fixtures.ts';

/** One fault put into a valid document, with the verdict written down before the profile ever saw it. */
interface Mutant {
	readonly name: string;
	readonly file: string;
	/** Text replaced where it first stands; or, cut away, all from the first text to the end of the second. */
	readonly from?: string;
	readonly cut?: readonly [string, string];
	readonly to?: string;
	readonly code: string;
	/** The element that the first problem must name. */
	readonly element: string;
	/** Both when left out. */
	readonly versions?: readonly QtiVersion[];
}

const mutants: readonly Mutant[] = JSON.parse(
	readFileSync(new URL('../../fixtures/qti/reject/mutants.json', import.meta.url), 'utf8'),
);

function mutate(xml: string, { from, cut, to = '' }: Mutant): string {
	const [opening, closing] = cut ?? [from ?? '', from ?? ''];
	const start = xml.indexOf(opening);
	const end = cut ? xml.indexOf(closing, start) : start;
	if (start < 0 || end < 0) throw new Error(`nothing to change: ${opening}`);
	return xml.slice(0, start) + to + xml.slice(end + closing.length);
}

test('there are at least fifty mutants, each with a name of its own', () => {
	expect(new Set(mutants.map(({ name }) => name)).size).toBe(mutants.length);
	expect(mutants.length).toBeGreaterThanOrEqual(50);
});

describe.each(qtiVersions)('the profile of %s refuses', (version) => {
	const known = mutants.filter(({ versions }) => versions?.includes(version) ?? true);
	test.each(known)('$name', (mutant) => {
		const file = new URL(`../../fixtures/qti/accept/${version}/${mutant.file}`, import.meta.url);
		const xml = mutate(readFileSync(file, 'utf8'), mutant);
		const { problems } = validateDocument({ path: mutant.file, xml, schema: schemaOf(mutant.file, version) });
		const [first] = problems;
		expect({ code: first?.code, element: first?.element }).toEqual({ code: mutant.code, element: mutant.element });
		expect(first?.line).toBeGreaterThan(0);
		expect(first?.file).toBe(mutant.file);
	});
});
