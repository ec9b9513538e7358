import { invariant } from '../../item-bank/invariant.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import { acceptedEntries, readEntry } from '../../item-bank/responses/entry.ts';
import { itemCarrying, traitOf } from '../qti/carrying.ts';
import type { Placement } from '../qti/placement.ts';
import { KeyTooWideError } from '../qti/write/gridded.ts';
import { convertInlineChoice } from './conversions/inline-choice.ts';
import { convertMatch, splitMatch } from './conversions/match.ts';
import { convertOrder } from './conversions/order.ts';
import { convertPoint } from './conversions/point.ts';
import type { Asked, Converted, Question } from './question.ts';

/**
 * The questions an item, or a part of a set, becomes in a cartridge: one, or one for each entry of a match with credit in
 * parts. Throws ItemKeyError, KeyTooWideError and FigureTooSmallError for what cannot be asked.
 */
export function askQuestions(placement: Placement): readonly Question[] {
	const { record, position, part, section, identifier, title, stem, points, stimulus } = placement;
	const { id, version, status, item } = record;
	const { how, as } = itemCarrying[traitOf(item)].by['cc-1.1'];
	const asked = askItem(placement);
	return asked.map(({ added, ...converted }, at) => {
		const index = asked.length > 1 ? at + 1 : undefined;
		const { asks, note } = offerBoxes(converted);
		return {
			...asks,
			record: { id, version, status },
			kind: item.kind,
			position,
			part,
			index,
			section,
			identifier: index === undefined ? identifier : `${identifier}-${index}`,
			title: index === undefined ? title : `${title}, question ${index}`,
			stem: index === undefined ? stem : `${stem}-question-${index}`,
			points: points / asked.length,
			blocks: [...stimulus, ...item.stem, ...added, ...note],
			conversion: how === 'converted' ? as : undefined,
			losesParts: item.kind === 'multiple-choice' && item.credit === 'parts',
		};
	});
}

function askItem(placement: Placement): readonly Converted[] {
	const { item } = placement.record;
	const key = computeKey(item);
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice': {
			invariant(key.kind === 'options', 'the key of a choice is options');
			const options = item.options.map(({ id, content }) => ({ bank: id, content }));
			const right = item.options.flatMap(({ id }, index) => (key.options.includes(id) ? [index] : []));
			return [{ asks: item.kind === 'choice' ? 'choice' : 'several', options, right, added: [] }];
		}
		case 'gridded': {
			invariant(key.kind === 'value' && placement.profile, 'a gridded item has a value and a grid');
			const { profile } = placement;
			if (readEntry(String(key.value), profile).kind !== 'valid') throw new KeyTooWideError(key.value, profile);
			const unit =
				item.unit === undefined ? [] : [{ kind: 'paragraph' as const, text: `Unit of the answer: ${item.unit}` }];
			const spellings = acceptedEntries(key.value, profile);
			return [{ asks: 'entry', spellings, columns: profile.digitColumns + 1, added: unit }];
		}
		case 'point':
			invariant(key.kind === 'value', 'the key of a point is a value');
			return [convertPoint(item, key.value)];
		case 'order':
			invariant(key.kind === 'order', 'the key of an order is an order');
			return [convertOrder(item, key.order)];
		case 'match':
			invariant(key.kind === 'pairs', 'the key of a match is pairs');
			return item.credit === 'parts' ? splitMatch(item, key.pairs) : [convertMatch(item, key.pairs)];
		case 'inline-choice':
			invariant(key.kind === 'options', 'the key of an inline choice is an option');
			return [convertInlineChoice(item, key.options)];
		case 'explanation':
			return [{ asks: 'text', lines: item.lines, levels: item.rubric, added: [] }];
		default:
			return item satisfies never;
	}
}

/** A single choice needs three options (published profile, rule 4d): of two, boxes are marked, and both together earn nothing. */
function offerBoxes(asked: Asked): { readonly asks: Asked; readonly note: Question['blocks'] } {
	if (asked.asks !== 'choice' || asked.options.length > 2) return { asks: asked, note: [] };
	return { asks: { ...asked, asks: 'several' }, note: [{ kind: 'paragraph', text: 'Mark one of the two.' }] };
}
