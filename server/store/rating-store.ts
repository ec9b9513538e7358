import type { Kysely } from 'kysely';
import { type AnswerPlace, labelPlace, scoreAnswer } from '../../item-bank/forms/answer-places.ts';
import type { ExplanationResponse, RatingEntry, RatingOrder } from '../../item-bank/types.ts';
import { readPlaces } from './rescoring.ts';
import { insertScore } from './response-rows.ts';
import { getEntry, noteSitting } from './sitting-store.ts';
import type { StoreContext } from './store-context.ts';
import { StoreError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** Points that cannot be given: no explanation stands there, or no level of its rubric has them. */
export class RatingRefusedError extends StoreError {
	readonly code = 'rating-refused';

	constructor(message: string) {
		super(message);
	}
}

/** A place that is rated, and what readers gave. */
export interface RatedPlace {
	readonly place: AnswerPlace;
	/** One entry a response; readers who have not rated it are missing. */
	readonly responses: readonly {
		readonly code: string;
		/** As it came in. */
		readonly raw: string;
		readonly first?: number;
		readonly second?: number;
		readonly agreed?: number;
	}[];
}

/** Ratings of explanations. */
export interface RatingStore {
	/** Keeps what a reader gave, all or nothing, and scores by it. Throws NotFoundError, {@link RatingRefusedError}. */
	rate(sitting: string, order: RatingOrder): Promise<void>;
	/** Every place with a rubric and its ratings. Throws NotFoundError. */
	read(sitting: string): Promise<readonly RatedPlace[]>;
}

/** Ratings kept in the tables of a store. */
export function createRatingStore({ kysely, clock }: StoreContext): RatingStore {
	return {
		rate(id, { reader, ratings }) {
			return kysely.transaction().execute(async (db) => {
				const { sitting } = await getEntry(db, id);
				const places = await readPlaces(db, sitting.form, sitting.version);
				const now = clock().toISOString();
				for (const rating of ratings) {
					const place = expectLevel(places, rating);
					const key = await expectResponse(db, id, rating);
					await db
						.insertInto('ratings')
						.values({ ...key, reader, points: rating.points, at: now })
						.onConflict((clash) => clash.doUpdateSet({ points: rating.points, at: now }))
						.execute();
					await scoreByRating(db, id, place, key);
				}
				await noteSitting(db, id, `rated by the ${reader} reader`, now);
			});
		},

		read(id) {
			return kysely
				.transaction()
				.setAccessMode('read only')
				.execute(async (db) => {
					const { sitting } = await getEntry(db, id);
					const places = await readPlaces(db, sitting.form, sitting.version);
					const rows = await db
						.selectFrom('sitting_students')
						.innerJoin('responses', 'responses.student', 'sitting_students.id')
						.leftJoin('ratings', (join) =>
							join
								.onRef('ratings.student', '=', 'responses.student')
								.onRef('ratings.position', '=', 'responses.position')
								.onRef('ratings.part', '=', 'responses.part'),
						)
						.where('sitting_id', '=', id)
						.where('came_as', '=', 'response')
						.select(['code', 'responses.position', 'responses.part', 'responses.raw', 'reader', 'ratings.points'])
						.orderBy('code')
						.execute();
					return places
						.filter(({ item }) => item.kind === 'explanation')
						.map((place) => {
							const own = rows.filter((row) => row.position === place.position && row.part === (place.part ?? 0));
							const codes = [...new Set(own.map(({ code }) => code))];
							const responses = codes.map((code) => ({
								code,
								raw: own.find((row) => row.code === code)?.raw ?? '',
								...Object.fromEntries(
									own.flatMap((row) =>
										row.code === code && row.reader !== null ? [[row.reader, row.points ?? 0]] : [],
									),
								),
							}));
							return { place, responses };
						});
				});
		},
	};
}

interface AnswerKey {
	readonly student: number;
	readonly position: number;
	readonly part: number;
}

function expectLevel(places: readonly AnswerPlace[], { position, part, points }: RatingEntry): AnswerPlace {
	const place = places.find((each) => each.position === position && each.part === part);
	if (place?.item.kind !== 'explanation') {
		throw new RatingRefusedError(`expected an explanation at place ${labelPlace(position, part)}, found none`);
	}
	const levels = place.item.rubric.map((level) => level.points);
	if (!levels.includes(points)) {
		throw new RatingRefusedError(
			`expected a level of the rubric (${levels.join(', ')}) at place ${place.label}, found ${points}`,
		);
	}
	return place;
}

async function expectResponse(
	db: Kysely<Tables>,
	id: string,
	{ code, position, part = 0 }: RatingEntry,
): Promise<AnswerKey> {
	const row = await db
		.selectFrom('sitting_students')
		.innerJoin('responses', 'responses.student', 'sitting_students.id')
		.where('sitting_id', '=', id)
		.where('code', '=', code)
		.where('position', '=', position)
		.where('part', '=', part)
		.where('came_as', '=', 'response')
		.select('responses.student')
		.executeTakeFirst();
	if (row) return { student: row.student, position, part };
	const label = labelPlace(position, part === 0 ? undefined : part);
	throw new RatingRefusedError(`expected a response of "${code}" at place ${label}, found none`);
}

/** What readers agreed on counts, else what the first gave; the response carries it, so that a new scoring finds it. */
async function scoreByRating(db: Kysely<Tables>, id: string, place: AnswerPlace, key: AnswerKey): Promise<void> {
	const rows = await db
		.selectFrom('ratings')
		.select(['reader', 'points'])
		.where('student', '=', key.student)
		.where('position', '=', key.position)
		.where('part', '=', key.part)
		.execute();
	const rating = (rows.find(({ reader }) => reader === 'agreed') ?? rows.find(({ reader }) => reader === 'first'))
		?.points;
	if (rating === undefined) return;
	const stored = await db
		.selectFrom('responses')
		.select('response')
		.where('student', '=', key.student)
		.where('position', '=', key.position)
		.where('part', '=', key.part)
		.executeTakeFirstOrThrow();
	const response: ExplanationResponse = { ...(JSON.parse(stored.response ?? '{}') as ExplanationResponse), rating };
	await db
		.updateTable('responses')
		.set({ response: JSON.stringify(response) })
		.where('student', '=', key.student)
		.where('position', '=', key.position)
		.where('part', '=', key.part)
		.execute();
	const score = scoreAnswer(place, { kind: 'response', response });
	const scorings = await db.selectFrom('scorings').select('number').where('sitting_id', '=', id).execute();
	for (const { number } of scorings) await insertScore(db, key, number, score);
}
