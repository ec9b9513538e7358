import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fillReadme } from '../../../server/generate-readme.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { carriageOf, describeCarriage, itemCarrying, packageVersions, traitOf } from '../../../server/qti/carrying.ts';
import { itemKinds, randomItems } from './random-items.ts';

test('the README says what the data say; npm run types writes it', () => {
	const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
	expect(readme).toBe(fillReadme(readme));
	expect(readme).toContain('converted: choice among lettered points');
});

test('every row is reached by an item of some kind', () => {
	const reached = new Set(itemKinds.flatMap((kind) => randomItems(40, 8, kind).map(({ item }) => traitOf(item))));
	expect([...reached].sort()).toEqual(Object.keys(itemCarrying).sort());
});

describe('a carriage', () => {
	test('of QTI is never a conversion; what a cartridge converts always loses something or says so', () => {
		for (const kind of itemKinds) {
			for (const { item } of randomItems(20, 9, kind)) {
				for (const version of packageVersions) {
					const { how, as, lost } = carriageOf(item, version);
					expect(as).not.toBe('');
					if (version !== 'cc-1.1') expect(how).toBe('carried');
					else if (how === 'converted') expect(lost.length).toBeGreaterThan(0);
				}
			}
		}
	});

	test('in words names the conversion and the loss', () => {
		expect(describeCarriage({ how: 'converted', as: 'choice', lost: ['a', 'b'] })).toBe(
			'converted: choice; loses a, b',
		);
		expect(describeCarriage({ how: 'carried', as: 'choice', lost: [] })).toBe('choice');
	});
});
