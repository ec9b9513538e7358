import { afterAll, describe, expect, test } from 'vitest';
import { type ExportOptions, exportForm } from '../../../server/qti/export-form.ts';
import { interpretItem } from '../../../server/qti/scoring/interpret-item.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { validatePackage } from '../../../server/qti/validate-package.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { randomForm, randomItems } from './random-items.ts';
import { sampleForm, sampleItems } from './sample-form.ts';
import { sampleKinds, sampleKindsForm } from './sample-kinds.ts';
import { fileOf, unpack } from './unpacked.ts';

afterAll(closeValidation);

const sample = { form: sampleForm, items: sampleItems };
const kinds = { form: sampleKindsForm, items: sampleKinds };

describe.each(qtiVersions)('feedback in %s', (as) => {
	const quiet: ExportOptions = { as, images: 'svg' };
	const told: ExportOptions = { ...quiet, hasFeedback: true };

	test('is off unless asked for: nothing says what is right, in no file', async () => {
		for (const form of [sample, kinds]) {
			for (const [path, text] of unpack((await exportForm(form, quiet)).bytes)) {
				expect(text, path).not.toMatch(
					/feedback-?(?!Type|="false")[A-Z>]|odalFeedback|modal-feedback|onsistent with|rubric/,
				);
			}
		}
	});

	test('says of each option whether it is right and what it is consistent with, never what a student has', async () => {
		const { bytes } = await exportForm(sample, told);
		const xml = fileOf(unpack(bytes), 'items/item-001.xml');
		expect(xml).toContain('This is the right answer.');
		expect(xml.match(/This is not the right answer\. Consistent with /g)).toHaveLength(3);
		expect(xml).not.toMatch(/misconception|you have|student has|wrong idea/i);
		expect(await validatePackage(bytes)).toEqual([]);
	});

	test('shows what was chosen and the worked steps once there is an answer, and nothing before', async () => {
		const files = unpack((await exportForm(sample, told)).bytes);
		const respond = (path: string, held: readonly string[]) => {
			const outcomes = interpretItem(fileOf(files, path), { RESPONSE: held });
			return ['SCORE', 'FEEDBACK', 'STEPS'].map((name) => outcomes.get(name)?.members ?? null);
		};
		expect(respond('items/item-001.xml', [])).toEqual([[0], null, null]);
		expect(respond('items/item-001.xml', ['A'])).toEqual([[1], ['A'], ['SHOWN']]);
		expect(respond('items/item-001.xml', ['C'])).toEqual([[0], ['C'], ['SHOWN']]);
		expect(respond('items/item-002.xml', ['A', 'B'])).toEqual([[0], ['A', 'B'], ['SHOWN']]);
		expect(respond('items/item-003.xml', ['-5'])).toEqual([[1], ['RIGHT'], ['SHOWN']]);
		expect(respond('items/item-003.xml', ['5'])).toEqual([[0], ['WRONG'], ['SHOWN']]);
	});

	test('has items handed in one by one, and the notes say that the keys are in the package', async () => {
		const { bytes, report } = await exportForm(sample, told);
		const written = fileOf(unpack(bytes), 'test.xml');
		expect(written).toMatch(/submission-?[mM]ode="individual"/);
		expect(written).toMatch(/show-?[fF]eedback="true"/);
		expect(report.notes.join(' ')).toContain('The package holds the keys');
		expect((await exportForm(sample, quiet)).report.notes.join(' ')).not.toContain('The package holds the keys');
	});

	test('gives the rubric of an explanation to scorers, and nothing to students', async () => {
		const xml = fileOf(unpack((await exportForm(kinds, told)).bytes), 'items/item-007.xml');
		expect(xml).toMatch(/<(?:qti-)?rubric-?[bB]lock (?:use="scoring" )?view="scorer">/);
		expect(xml).toMatch(/\d of \d: /);
		expect(xml).not.toMatch(/modal-?[fF]eedback/);
	});

	test('of every kind at random makes packages that are found valid again', async () => {
		const items = randomItems(60, 91);
		const { bytes } = await exportForm(
			{ form: randomForm(items, 91), items },
			{ ...told, grid: 'columns', points: 'choice' },
		);
		expect(await validatePackage(bytes)).toEqual([]);
	});
});

test('every remark on an option names one that is there, by the words "consistent with" alone', async () => {
	const items = randomItems(150, 92);
	const order: ExportOptions = { as: 'qti-3.0', images: 'svg', hasFeedback: true };
	const files = unpack((await exportForm({ form: randomForm(items, 92), items }, order)).bytes);
	let remarks = 0;
	for (const [path, xml] of files) {
		if (!/^items\/item-[\d-part]+\.xml$/.test(path)) continue;
		for (const [, said = ''] of xml.matchAll(/title="Your answer">\s*<qti-content-body>\s*<p[^>]*>([^<]*)</g)) {
			expect(said).toMatch(/right answer|is right|is not right/);
			const tail = said.replace(/^.*?(?:right answer|is right|is not right)\.(?: |$)/, '');
			expect(tail).toMatch(/^$|^Consistent with /);
			expect(said).not.toMatch(/\b(?:you|student|child|learner)s? ha(?:s|ve)\b/i);
			remarks += 1;
		}
	}
	expect(remarks).toBeGreaterThan(300);
});
