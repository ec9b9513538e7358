import { type AnswerPlace, labelPlace, scoreAnswer } from '../item-bank/forms/answer-places.ts';
import { ResponseKindError } from '../item-bank/items/score.ts';
import type { Problem } from '../item-bank/problem.ts';
import type {
	AnswerEntry,
	AnswerGiven,
	RatedResponse,
	RatingAgreement,
	RatingOrder,
	StudentEntry,
} from '../item-bank/types.ts';
import { compareReaders } from './results/agreement.ts';
import { createCellReader } from './results/answer-cell.ts';
import type { Store } from './store/open-store.ts';
import type { RatedPlace } from './store/rating-store.ts';
import type { NewAnswer } from './store/response-rows.ts';
import { ContentRefusedError, NotFoundError } from './store/store-errors.ts';

/**
 * Keeps answers of one student typed in by hand: all of them or none. Texts are read as those of a file are. Throws NotFoundError for
 * a sitting or a student nobody knows, ContentRefusedError for answers that do not fit.
 */
export async function enterAnswers(
	store: Store,
	sitting: string,
	code: string,
	{ answers }: StudentEntry,
): Promise<void> {
	const { sitting: facts } = await store.sittings.get(sitting);
	const { studentCodes } = (await store.groups.get(facts.group)).group;
	if (!studentCodes.includes(code)) throw new NotFoundError('student', code);
	const places = await store.responses.places(sitting);
	const problems: Problem[] = [];
	const kept: NewAnswer[] = [];
	for (const [index, entry] of answers.entries()) {
		const finding = readEntry(places, entry, `/answers/${index}`);
		if ('code' in finding) problems.push(finding);
		else if (kept.some(({ position, part }) => position === finding.position && part === finding.part)) {
			const label = labelPlace(finding.position, finding.part);
			problems.push({ code: 'place-repeated', path: `/answers/${index}`, message: `expected place ${label} once` });
		} else kept.push(finding);
	}
	if (problems.length > 0) throw new ContentRefusedError('sitting', problems);
	await store.responses.put(sitting, code, kept);
}

function readEntry(places: readonly AnswerPlace[], entry: AnswerEntry, path: string): NewAnswer | Problem {
	const { position, part, text, given } = entry;
	const index = places.findIndex((each) => each.position === position && each.part === part);
	const place = places[index];
	if (place === undefined) {
		const message = `expected a place of the form, found ${labelPlace(position, part)}`;
		return { code: 'place-unknown', path, message };
	}
	if ((text === undefined) === (given === undefined)) {
		return { code: 'order-contradictory', path, message: 'expected either text or given, found both or neither' };
	}
	if (given !== undefined) return readGiven(place, given, path);
	const cell = createCellReader({ index, place }, 'responses', { student: 1 })(text ?? '');
	return 'message' in cell
		? { code: cell.code, path: `${path}/text`, message: cell.message }
		: { position, part, raw: cell.raw, given: cell.given, score: cell.score };
}

function readGiven(place: AnswerPlace, given: AnswerGiven, path: string): NewAnswer | Problem {
	if (given.kind === 'points' && given.points > place.points) {
		const message = `expected 0 to ${place.points} points at place ${place.label}, found ${given.points}`;
		return { code: 'points-above-maximum', path: `${path}/given/points`, message };
	}
	try {
		const raw =
			given.kind === 'response' ? JSON.stringify(given.response) : given.kind === 'points' ? String(given.points) : '';
		return { position: place.position, part: place.part, raw, given, score: scoreAnswer(place, given) };
	} catch (error) {
		if (!(error instanceof ResponseKindError)) throw error;
		return { code: error.code, path: `${path}/given/response`, message: error.message };
	}
}

/** Below this many responses rated by both, kappa says little (common practice, no source). */
const fewRated = 30;

/** A reader of explanations, or those who agree on points after both have read. */
export type Reader = RatingOrder['reader'];

/**
 * How far two readers agree in a sitting, place by place, and what a named reader has to score. A reader is told nothing of what
 * the other gave. Throws NotFoundError.
 */
export async function readAgreement(store: Store, sitting: string, reader?: Reader): Promise<RatingAgreement> {
	const rated = await store.ratings.read(sitting);
	return {
		sitting,
		places: rated.map(({ place, responses }) => {
			const pairs = responses.flatMap(({ first, second }): readonly (readonly [number, number])[] =>
				first === undefined || second === undefined ? [] : [[first, second]],
			);
			const most = place.item.kind === 'explanation' ? place.item.points : 0;
			const { table, count, exact, kappa, weightedKappa } = compareReaders(pairs, most);
			return {
				position: place.position,
				...(place.part === undefined ? {} : { part: place.part }),
				label: place.label,
				item: place.record.id,
				waiting: responses.filter(({ first, agreed }) => first === undefined && agreed === undefined).length,
				first: responses.filter(({ first }) => first !== undefined).length,
				both: count,
				table,
				...(exact === undefined ? {} : { exact }),
				...(kappa === undefined ? {} : { kappa }),
				...(weightedKappa === undefined ? {} : { weightedKappa }),
				...(reader === undefined ? {} : { responses: responses.map((each) => listForReader(each, reader)) }),
				...(count < fewRated
					? { caution: `Rated by both: ${count}. With fewer than ${fewRated} kappa swings widely.` }
					: {}),
			};
		}),
	};
}

function listForReader({ code, raw, ...given }: RatedPlace['responses'][number], reader: Reader): RatedResponse {
	const points = given[reader];
	const { first, second } = given;
	return {
		code,
		text: raw,
		...(points === undefined ? {} : { points }),
		...(reader === 'agreed' && first !== undefined ? { first } : {}),
		...(reader === 'agreed' && second !== undefined ? { second } : {}),
	};
}
