import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { validateDocument } from '../../../server/qti/validate/validate-document.ts';
import { type QtiVersion, qtiVersions } from '../../../server/qti/versions.ts';
import { schemaOf } from './fixtures.ts';

/** One fault put into a valid document, with the verdict written down before the profile ever saw it. */
interface Mutant {
	readonly name: string;
	readonly file: string;
	/** Text replaced where it first stands, or everywhere; or, cut away, all from the first text to the end of the second. */
	readonly from?: string;
	readonly all?: boolean;
	readonly cut?: readonly [string, string];
	readonly to?: string;
	readonly code: string;
	/** The element that the first problem must name; null where none is named. */
	readonly element: string | null;
	/** QTI 2.1 and 2.2 when left out. */
	readonly versions?: readonly QtiVersion[];
	/** The folder of the valid documents, where the list does not say. */
	readonly place?: string;
}

const fixtures = new URL('../../fixtures/qti/', import.meta.url);

function readMutants(file: string): readonly Mutant[] {
	return JSON.parse(readFileSync(new URL(`reject/${file}`, fixtures), 'utf8'));
}

/** By the folder of the valid documents that they are made of. */
const lists = [
	{ place: '', mutants: readMutants('mutants.json') },
	{ place: 'kinds-', mutants: readMutants('kinds.json') },
	{
		place: '',
		mutants: readMutants('newer.json').map((mutant): Mutant => ({ ...mutant, versions: ['qti-3.0'] })),
	},
] as const;

function mutate(xml: string, { from, cut, all, to = '' }: Mutant): string {
	if (all && from !== undefined) {
		if (!xml.includes(from)) throw new Error(`nothing to change: ${from}`);
		return xml.replaceAll(from, to);
	}
	const [opening, closing] = cut ?? [from ?? '', from ?? ''];
	const start = xml.indexOf(opening);
	const end = cut ? xml.indexOf(closing, start) : start;
	if (start < 0 || end < 0) throw new Error(`nothing to change: ${opening}`);
	return xml.slice(0, start) + to + xml.slice(end + closing.length);
}

test('there are at least fifty mutants of the sample form, twenty of further kinds and forty of 3.0, each by its own name', () => {
	const names = [lists[0], lists[1]].flatMap(({ mutants }) => mutants.map(({ name }) => name));
	expect(new Set(names).size).toBe(names.length);
	expect(new Set(lists[2].mutants.map(({ name }) => name)).size).toBeGreaterThanOrEqual(40);
	expect(lists[0].mutants.length).toBeGreaterThanOrEqual(50);
	expect(lists[1].mutants.length).toBeGreaterThanOrEqual(20);
});

describe.each(qtiVersions)('the profile of %s refuses', (version) => {
	const known = lists.flatMap(({ place, mutants }) =>
		mutants
			.filter(({ versions }) => versions?.includes(version) ?? version !== 'qti-3.0')
			.map((mutant) => ({ name: mutant.name, place: mutant.place ?? place, mutant })),
	);
	test.each(known)('$name', ({ place, mutant }) => {
		const file = new URL(`accept/${place}${version}/${mutant.file}`, fixtures);
		const xml = mutate(readFileSync(file, 'utf8'), mutant).replace(
			'/VERSION/',
			`/${version.replace('qti-2.', 'qti_v2p')}/`,
		);
		const { problems } = validateDocument({ path: mutant.file, xml, schema: schemaOf(mutant.file, version) });
		const [first] = problems;
		expect({ code: first?.code, element: first?.element ?? null }).toEqual({
			code: mutant.code,
			element: mutant.element,
		});
		// What comes of carrying out all of a document's rules has no line.
		if (first?.code !== 'qti-key-not-scored') expect(first?.line).toBeGreaterThan(0);
		expect(first?.file).toBe(mutant.file);
	});
});
