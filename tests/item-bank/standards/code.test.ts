import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
	findFramework,
	findStandard,
	normalizeCode,
	resolveCode,
	standardsBelow,
	suggestCodes,
} from '../../../item-bank/standards/code.ts';
import type { Framework } from '../../../item-bank/standards/framework.ts';
import { frameworks } from '../../../item-bank/standards/frameworks.ts';
import { standardLinks } from '../../../item-bank/standards/links.ts';
import { referenceFolder, requireOutside } from '../../helpers/reference.ts';

const get = (id: string, edition: string): Framework => {
	const framework = findFramework(id, edition);
	if (!framework) throw new Error(`${id} ${edition}`);
	return framework;
};
const ccss = get('ccss-m', '2010');
const teks = get('teks-math', '2012');

test.each([
	'7.NS.A.1b',
	'7.NS.A.1.b',
	'7.NS.1b',
	'CCSS.MATH.CONTENT.7.NS.A.1.B',
	'CCSS.Math.Content.7.NS.A.1b',
	'7.NS.A.01.b',
	'MAFS.7.NS.1.1b',
	'http://corestandards.org/Math/Content/7/NS/A/1/b',
	' 7.ns.a.1b ',
])('the spelling %s is 7.NS.A.1b (spellings seen in the wild, trade reference 1.2)', (typed) => {
	expect(normalizeCode(ccss, typed)).toBe('7.NS.A.1b');
});

test.each(['6.3(D)', '6.3D', 'TEKS 6.3(D)', '6.3 (d)', '§111.26(b)(3)(D)', '111.26(b)(3)(D)'])(
	'the spelling %s is 6.3(D)',
	(typed) => {
		expect(normalizeCode(teks, typed)).toBe('6.3(D)');
	},
);

test('the practices have codes of their own', () => {
	expect(normalizeCode(ccss, 'http://corestandards.org/Math/Practice/MP1')).toBe('MP1');
});

test('a short spelling never stands for two standards', () => {
	for (const framework of frameworks) {
		for (const { code } of framework.standards) expect(normalizeCode(framework, code)).toBe(code);
	}
});

test('a reused code means a different standard in each edition (trade reference 1.4)', () => {
	expect(findStandard('va-sol-math', '2009', '6.6')?.statement).toMatch(/fraction/i);
	expect(findStandard('va-sol-math', '2016', '6.6')?.statement).toMatch(/integer/i);
	expect(findStandard('va-sol-math', '2023', '6.6')).toBeUndefined();
	expect(resolveCode('6.6').map(({ edition }) => edition)).toEqual(['2016', '2009']);
	const replaced = standardLinks.find(({ kind }) => kind === 'replaced-by');
	expect(replaced).toMatchObject({ from: { edition: '2016', code: '6.6' }, to: { edition: '2023', code: '6.CE.2' } });
});

test('a misspelt code gets near ones offered', () => {
	expect(normalizeCode(ccss, '7.NS.A.1e')).toBeUndefined();
	expect(suggestCodes(ccss, '7.NS.A.1e')[0]).toMatch(/^7\.NS\.A\.1/);
	expect(suggestCodes(teks, '6.3(F)')).toContain('6.3(D)');
	expect(suggestCodes(ccss, 'xyzzy-quux-zork')).toEqual([]);
});

test('a standard gathers what stands below it', () => {
	expect(standardsBelow(ccss, '7.NS.A.1').map(({ code }) => code)).toEqual([
		'7.NS.A.1',
		'7.NS.A.1a',
		'7.NS.A.1b',
		'7.NS.A.1c',
		'7.NS.A.1d',
	]);
	expect(standardsBelow(ccss, 'nothing')).toEqual([]);
});

test('every parent and every link names a known standard, and codes are unique within an edition', () => {
	for (const framework of frameworks) {
		const codes = framework.standards.map(({ code }) => code);
		expect(new Set(codes).size).toBe(codes.length);
		for (const { parent } of framework.standards) if (parent !== undefined) expect(codes).toContain(parent);
	}
	for (const { from, to } of standardLinks) {
		for (const key of [from, to])
			expect(findStandard(key.framework, key.edition, key.code), JSON.stringify(key)).toBeDefined();
	}
});

test('readiness and supporting are data of the framework', () => {
	expect(findStandard('teks-math', '2012', '6.3(D)')?.label).toBe('readiness');
	expect(findStandard('teks-math', '2012', '6.3(C)')?.label).toBe('supporting');
	expect(findStandard('teks-math', '2012', '6.2(E)')?.labelSource).toBe('from memory');
});

const hasReference = requireOutside('the reference folder', referenceFolder !== undefined);
describe.skipIf(!hasReference)('against the reference table of codes', () => {
	test('every code, grade and address there is in the bank', () => {
		const rows = JSON.parse(readFileSync(join(referenceFolder ?? '', 'reference/standards.json'), 'utf8')) as {
			readonly code: string;
			readonly grade: string;
			readonly uri: string | null;
		}[];
		const ours = frameworks.flatMap(({ standards }) => standards);
		expect(ours).toHaveLength(rows.length);
		for (const row of rows.filter(({ code }) => !code.startsWith('('))) {
			expect(ours).toContainEqual(
				expect.objectContaining({ code: row.code, grade: row.grade, ...(row.uri ? { uri: row.uri } : {}) }),
			);
		}
	});
});
