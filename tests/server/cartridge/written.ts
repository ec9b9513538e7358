import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { askQuestions } from '../../../server/cartridge/ask-questions.ts';
import { writeQuestions } from '../../../server/cartridge/cartridge-jobs.ts';
import type { Question } from '../../../server/cartridge/question.ts';
import { writeAssessment } from '../../../server/cartridge/write/assessment.ts';
import { type Placement, placeItems } from '../../../server/qti/placement.ts';
import { FigureTooSmallError } from '../../../server/qti/write/hotspots.ts';

/** An assessment put together without workers. */
export interface WrittenAssessment {
	readonly asked: readonly { readonly placement: Placement; readonly questions: readonly Question[] }[];
	readonly xml: string;
	/** Paths of the figures, in document order. */
	readonly images: readonly string[];
}

const form: FormRecord = {
	id: 'harbour-check',
	version: 1,
	form: { title: 'Harbour check', gridProfile: 'plain-sign-first', sections: [{ title: 'All', items: [] }] },
};

/** The items as one assessment, everything converted; lines whose letters have no room are left out. Every question weighs 1. */
export function writeWhole(items: readonly ItemRecord[]): WrittenAssessment {
	const asked = placeItems(items).flatMap((each) => {
		// By letters, as a cartridge asks for points.
		const placement = { ...each, pointStyle: 'choice' } as const;
		const questions = askOrSkip(placement);
		return questions.length === 0 ? [] : [{ placement, questions }];
	});
	const questions = asked.flatMap((each) => each.questions).map((question) => ({ ...question, points: 1 }));
	const { problems, texts, images } = writeQuestions({
		questions,
		weighing: { factor: 1, isExact: true },
		images: 'png',
	});
	if (problems.length > 0) throw new Error(problems.map(({ message }) => message).join('; '));
	return { asked, xml: writeAssessment(form, texts), images };
}

function askOrSkip(placement: Placement): readonly Question[] {
	try {
		return askQuestions(placement);
	} catch (error) {
		if (error instanceof FigureTooSmallError) return [];
		throw error;
	}
}

/** The form that {@link writeWhole} names. */
export const harbourForm: FormRecord = form;
