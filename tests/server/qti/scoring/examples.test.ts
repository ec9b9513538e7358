import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { interpretItem, type PlatformResponses } from '../../../../server/qti/scoring/interpret-item.ts';
import { ScoringError } from '../../../../server/qti/scoring/read-tree.ts';
import { referenceFolder, requireOutside } from '../../../helpers/reference.ts';

/** What a published example item must score, or the element it is refused for; written down before it was first tried. */
interface Example {
	/** File name without its ending. */
	readonly item: string;
	/** Folders of the published QTI 2.2 and 3.0 examples that hold the item. */
	readonly folders: readonly string[];
	readonly verdicts: readonly Verdict[];
}

interface Verdict {
	readonly held: PlatformResponses;
	/** Null where nobody has scored it yet. */
	readonly score?: number | null;
	/** By its name in QTI 2.x. */
	readonly refused?: string;
}

requireOutside('the reference folder', referenceFolder !== undefined);
const table: readonly Example[] = JSON.parse(
	readFileSync(new URL('../../../fixtures/qti/examples.json', import.meta.url), 'utf8'),
);
const places = table.flatMap(({ item, folders, verdicts }) =>
	folders.map((folder) => ({ place: `${folder}/${item}.xml`, verdicts })),
);

describe.skipIf(!referenceFolder)('published example items are scored as written down, or refused by name', () => {
	test.each(places)('$place', ({ place, verdicts }) => {
		const xml = readFileSync(join(referenceFolder ?? '', 'qti-examples', place), 'utf8');
		for (const { held, score, refused } of verdicts) {
			if (refused === undefined) {
				expect(interpretItem(xml, held).get('SCORE')?.members[0] ?? null, JSON.stringify(held)).toBe(score);
				continue;
			}
			try {
				interpretItem(xml, held);
				expect.fail(`expected ${refused} to be refused`);
			} catch (error) {
				if (!(error instanceof ScoringError)) throw error;
				expect(error.element).toBe(refused);
			}
		}
	});

	test('every example item of the reference folder is in the table', async () => {
		const { readdirSync } = await import('node:fs');
		for (const folder of ['2.2', '3.0-items']) {
			const held = readdirSync(join(referenceFolder ?? '', 'qti-examples', folder)).sort();
			const listed = places.map(({ place }) => place.split('/')).filter(([first]) => first === folder);
			expect(listed.map(([, name]) => name).sort()).toEqual(held);
		}
	});
});
