import { positionsOf } from '../../item-bank/forms/check-form.ts';
import type { Form } from '../../item-bank/types.ts';
import { callApi } from '../call-api.ts';
import { findPlace, replaceItem } from './form-edits.ts';

/** A retake of a form. */
export interface Retake {
	readonly form: Form;
	/** Ids of the items that no family can vary; they stay. */
	readonly stayed: readonly string[];
}

/**
 * The form with a variant in the place of every item a family can vary. Variants are kept in the bank as drafts; the same seed
 * makes the same ones and keeps none twice. Throws ApiError.
 */
export async function makeRetake(
	form: Form,
	seed: string,
	onProgress: (done: number, all: number) => void,
): Promise<Retake> {
	const places = positionsOf(form);
	const stayed: string[] = [];
	let retake = form;
	for (const [index, { entry }] of places.entries()) {
		onProgress(index, places.length);
		const made = await callApi('POST /api/items/{id}/variants', {
			path: { id: entry.item },
			body: { version: entry.version, count: 1, seed, keep: true },
		});
		const id = made.items[0]?.id;
		if (id === undefined || findPlace(retake, id)) {
			stayed.push(entry.item);
			continue;
		}
		const { version } = await callApi('GET /api/items/{id}', { path: { id } });
		const points = entry.points === undefined ? {} : { points: entry.points };
		retake = replaceItem(retake, entry.item, { item: id, version, ...points });
	}
	return { form: retake, stayed };
}
