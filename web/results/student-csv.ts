import { labelPlace } from '../../item-bank/forms/answer-places.ts';
import type { StudentRecord } from '../../item-bank/types.ts';
import { writeCsv } from '../csv.ts';
import { studentText } from '../messages/student.ts';

/** The responses of one student with their newest scores, one line each, as CSV. */
export function writeStudentCsv({ sittings }: StudentRecord): string {
	const lines = sittings.flatMap(({ sitting, answers }) =>
		answers.map(({ position, part, raw, scores }) => {
			const score = scores.at(-1)?.score;
			return [sitting.form, sitting.date, labelPlace(position, part), raw, score?.state, score?.points, score?.maximum];
		}),
	);
	// The mark by which spreadsheets know UTF-8.
	return `\uFEFF${writeCsv([studentText.csvHead, ...lines])}`;
}
