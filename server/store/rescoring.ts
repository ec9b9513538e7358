import type { Kysely } from 'kysely';
import { type AnswerPlace, listAnswerPlaces, scoreAnswer } from '../../item-bank/forms/answer-places.ts';
import type { Form, RescoringReport } from '../../item-bank/types.ts';
import { readRecords } from './item-records.ts';
import { insertScore, readGiven, readScore } from './response-rows.ts';
import { expectVersion, getEntry, noteSitting } from './sitting-store.ts';
import type { StoreContext } from './store-context.ts';
import { StoreError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** The version of the form does not ask the same in the same places. */
export class PlacesDifferError extends StoreError {
	readonly code = 'places-differ';

	constructor(message: string) {
		super(message);
	}
}

/** What students answer on a version of a form. Throws NotFoundError. */
export async function readPlaces(db: Kysely<Tables>, form: string, version: number): Promise<readonly AnswerPlace[]> {
	await expectVersion(db, form, version);
	const { document } = await db
		.selectFrom('form_versions')
		.select('document')
		.where('form_id', '=', form)
		.where('version', '=', version)
		.executeTakeFirstOrThrow();
	const parsed = JSON.parse(document) as Form;
	const wanted = parsed.sections.flatMap(({ items }) =>
		items.map((entry) => ({ id: entry.item, version: entry.version })),
	);
	return listAnswerPlaces(parsed, await readRecords(db, wanted));
}

/**
 * Scores every response of a sitting anew by the keys of a version of its form; the earlier scores stay. Throws
 * NotFoundError, {@link PlacesDifferError}.
 */
export async function rescoreSitting(
	{ kysely, clock }: StoreContext,
	id: string,
	{ version, why }: { readonly version: number; readonly why: string },
): Promise<RescoringReport> {
	return kysely.transaction().execute(async (db) => {
		const { sitting, scoring: last } = await getEntry(db, id);
		const places = await readPlaces(db, sitting.form, version);
		comparePlaces(await readPlaces(db, sitting.form, sitting.version), places);
		const scoring = last + 1;
		const now = clock().toISOString();
		await db
			.insertInto('scorings')
			.values({ sitting_id: id, number: scoring, form_version: version, why, at: now })
			.execute();
		const { changed, kept } = await scoreMissing(db, id, scoring, places);
		await noteSitting(db, id, 'rescored', now);
		return { sitting: id, scoring, scoredAs: version, changed, kept };
	});
}

/** Gives every response of a sitting that has no score in a later scoring one. */
export async function completeScorings(db: Kysely<Tables>, id: string): Promise<void> {
	const { sitting } = await getEntry(db, id);
	const scorings = await db
		.selectFrom('scorings')
		.select(['number', 'form_version'])
		.where('sitting_id', '=', id)
		.where('number', '>', 1)
		.orderBy('number')
		.execute();
	for (const { number, form_version } of scorings)
		await scoreMissing(db, id, number, await readPlaces(db, sitting.form, form_version));
}

async function scoreMissing(
	db: Kysely<Tables>,
	id: string,
	scoring: number,
	places: readonly AnswerPlace[],
): Promise<Pick<RescoringReport, 'changed' | 'kept'>> {
	const byKey = new Map(places.map((place) => [`${place.position} ${place.part ?? 0}`, place]));
	const rows = await db
		.selectFrom('sitting_students')
		.innerJoin('responses', 'responses.student', 'sitting_students.id')
		.innerJoin('scores as before', (join) =>
			join
				.onRef('before.student', '=', 'responses.student')
				.onRef('before.position', '=', 'responses.position')
				.onRef('before.part', '=', 'responses.part')
				.on('before.scoring', '=', scoring - 1),
		)
		.leftJoin('scores as own', (join) =>
			join
				.onRef('own.student', '=', 'responses.student')
				.onRef('own.position', '=', 'responses.position')
				.onRef('own.part', '=', 'responses.part')
				.on('own.scoring', '=', scoring),
		)
		.where('sitting_id', '=', id)
		.where('own.state', 'is', null)
		.select(['sitting_students.code', 'responses.student', 'responses.position', 'responses.part'])
		.select(['responses.came_as', 'responses.response', 'responses.points as given_points'])
		.select(['before.state', 'before.points', 'before.maximum', 'before.reason'])
		.orderBy('sitting_students.code')
		.orderBy('responses.position')
		.orderBy('responses.part')
		.execute();
	const changed: RescoringReport['changed'][number][] = [];
	let kept = 0;
	for (const row of rows) {
		const before = readScore(row);
		const place = byKey.get(`${row.position} ${row.part}`);
		const given = readGiven({ ...row, points: row.given_points });
		const after = place === undefined || given.kind === 'points' ? before : scoreAnswer(place, given);
		if (given.kind === 'points') kept += 1;
		await insertScore(db, row, scoring, after);
		if (after.state !== before.state || after.points !== before.points) {
			const part = row.part === 0 ? {} : { part: row.part };
			changed.push({ code: row.code, position: row.position, ...part, before, after });
		}
	}
	return { changed, kept };
}

function comparePlaces(before: readonly AnswerPlace[], after: readonly AnswerPlace[]): void {
	const differs = before.find((place, index) => {
		const other = after[index];
		return other?.label !== place.label || other.record.id !== place.record.id || other.item.kind !== place.item.kind;
	});
	if (differs === undefined && before.length === after.length) return;
	const where =
		differs === undefined
			? `${before.length} places, found ${after.length}`
			: `item "${differs.record.id}" (${differs.item.kind}) at place ${differs.label}, found another`;
	throw new PlacesDifferError(`expected a version of the form that asks the same items in the same places: ${where}`);
}
