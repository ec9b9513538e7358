import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import type { Item, PartItem, SetItem } from '../../../item-bank/types.ts';
import { common, hardTexts, randomStem } from './random-content.ts';
import { type Draw, drawFrom } from './random-draw.ts';
import { randomExplanation, randomInlineChoice, randomMatch, randomOrder, randomPoint } from './random-kinds.ts';
import { randomChoice, randomGridded, randomMultipleChoice, randomShown, randomShows } from './random-options.ts';

/** Every kind of item. */
export const itemKinds: readonly Item['kind'][] = [
	'choice',
	'multiple-choice',
	'gridded',
	'point',
	'order',
	'match',
	'inline-choice',
	'explanation',
	'set',
];

/** Distinct random items of every kind or of one, with figures, tables, rich text and alignments; the same seed, the same items. */
export function randomItems(count: number, seed: number, kind?: Item['kind']): readonly ItemRecord[] {
	const draw = drawFrom(seed);
	const seen = new Set<string>();
	const records: ItemRecord[] = [];
	while (records.length < count) {
		const item = randomItem(draw, kind ?? draw.pick(oftenGridded));
		const text = JSON.stringify({ ...item, name: '', given: '', points: 0, dok: 0, alignments: [] });
		if (seen.has(text)) continue;
		seen.add(text);
		const status = draw.pick(['approved', 'approved', 'draft', 'retired'] as const);
		records.push({ id: `random-${seed}-${records.length}`, version: draw.whole(1, 12), status, item });
	}
	return records;
}

/** A form of all the items in order, in sections, some with points of their own. */
export function randomForm(items: readonly ItemRecord[], seed: number): FormRecord {
	const draw = drawFrom(seed);
	const sections: { title: string; items: { item: string; version: number; points?: number }[] }[] = [];
	for (const { id, version } of items) {
		const isFull = (sections.at(-1)?.items.length ?? 0) >= 900;
		if (sections.length === 0 || isFull || (sections.length < 8 && draw.chance(0.1))) {
			sections.push({ title: `Section ${sections.length + 1}: ${draw.pick(hardTexts)}`, items: [] });
		}
		const points = draw.chance(0.3) ? { points: draw.whole(1, 10) } : {};
		sections.at(-1)?.items.push({ item: id, version, ...points });
	}
	const gridProfile = draw.pick(gridProfiles).id;
	return { id: `form-${seed}`, version: 1, form: { title: `Tide & lift <${seed}>`, gridProfile, sections } };
}

const oftenGridded = [...itemKinds, 'gridded', 'choice', 'choice', 'multiple-choice'] as const;

function randomItem(draw: Draw, kind: Item['kind']): Item {
	return kind === 'set' ? randomSet(draw) : randomPart(draw, kind);
}

function randomPart(draw: Draw, kind: PartItem['kind']): PartItem {
	switch (kind) {
		case 'choice': {
			const among = draw.whole(0, 9);
			const shown = among < 2 ? randomShows(draw) : among < 4 ? randomShown(draw) : undefined;
			return shown ?? randomChoice(draw);
		}
		case 'multiple-choice':
			return randomMultipleChoice(draw);
		case 'gridded':
			return randomGridded(draw);
		case 'point':
			return randomPoint(draw);
		case 'order':
			return randomOrder(draw);
		case 'match':
			return randomMatch(draw);
		case 'inline-choice':
			return randomInlineChoice(draw);
		case 'explanation':
			return randomExplanation(draw);
	}
}

const partKinds = itemKinds.filter((kind) => kind !== 'set');

/** Two to six parts below a stimulus with a figure or a table, mostly. */
function randomSet(draw: Draw): SetItem {
	const parts = Array.from({ length: draw.pick([2, 2, 3, 3, 4, 6]) }, () => randomPart(draw, draw.pick(partKinds)));
	return {
		kind: 'set',
		...common(draw, 'set'),
		answerIn: 'number',
		stem: randomStem(draw, `Use this for all ${parts.length} parts ${draw.pick(hardTexts)}.`),
		parts,
		points: parts.reduce((sum, { points }) => sum + points, 0),
	};
}
