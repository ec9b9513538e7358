import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { writeCartridgeMap } from './answer-map.ts';
import { chooseQuestions, type Uncarried } from './choose-questions.ts';
import { weighQuestions } from './weights.ts';

/** The answer map of a cartridge without the cartridge. Throws as chooseQuestions does. */
export async function mapCartridge(
	form: FormRecord,
	items: readonly ItemRecord[],
	uncarried: Uncarried,
): Promise<string> {
	const { questions } = await chooseQuestions(form, items, uncarried);
	return writeCartridgeMap(form, questions, weighQuestions(questions));
}
