import { listAnswerPlaces } from '../item-bank/forms/answer-places.ts';
import type { PatternId } from '../item-bank/patterns/pattern.ts';
import { createRandom, type Random } from '../item-bank/random/random.ts';
import type { Sitting } from '../item-bank/types.ts';
import {
	preparePlace,
	type SimulatedPlace,
	type SimulatedStudent,
	simulateAnswer,
} from './results/simulate-answers.ts';
import type { Store } from './store/open-store.ts';
import type { NewRow } from './store/response-keeping.ts';

/** A sitting of the demo department: who sat what when, and which wrong ideas its made-up students follow. */
export interface DemoSitting {
	readonly id: string;
	readonly form: string;
	readonly group: string;
	readonly date: string;
	readonly patterns: readonly PatternId[];
}

/** Fills in sittings of made-up students, each marked as simulated. The same demo gives the same answers. Returns how many students answered. */
export async function fillDemoSittings(store: Store, sittings: readonly DemoSitting[]): Promise<number> {
	const prepared = new Map<string, readonly SimulatedPlace[]>();
	let students = 0;
	for (const demo of sittings) {
		const places = prepared.get(demo.form) ?? (await preparePlaces(store, demo.form));
		prepared.set(demo.form, places);
		const sitting: Sitting = {
			form: demo.form,
			version: 1,
			group: demo.group,
			date: demo.date,
			mode: 'paper',
			simulated: true,
		};
		const { studentCodes } = (await store.groups.get(demo.group)).group;
		await store.sittings.add({ id: demo.id, sitting });
		const rows = simulateRows(demo, studentCodes, places);
		await store.responses.keep(one(rows), { sitting, onto: 'add', refuse: () => undefined });
		students += rows.length;
	}
	return students;
}

async function preparePlaces(store: Store, form: string): Promise<readonly SimulatedPlace[]> {
	const { record, items } = await store.forms.get(form, 1);
	return listAnswerPlaces(record.form, items).map(preparePlace);
}

function simulateRows(
	demo: DemoSitting,
	codes: readonly string[],
	places: readonly SimulatedPlace[],
): readonly NewRow[] {
	return codes.flatMap((code, index) => {
		const random = createRandom(`${demo.id} ${code}`);
		// One in twenty was away.
		if (random.nextInteger(1, 20) === 1) return [];
		const student = makeStudent(demo, random);
		const answers = places.map((prepared) => ({
			position: prepared.place.position,
			part: prepared.place.part,
			...simulateAnswer(student, prepared, random),
		}));
		return [{ line: index + 1, group: demo.group, code, answers }];
	});
}

/** Two in five follow no idea, two in five one, one in five two. */
function makeStudent({ patterns }: DemoSitting, random: Random): SimulatedStudent {
	const count = [0, 0, 1, 1, 2][random.nextInteger(0, 4)] ?? 0;
	return { patterns: random.shuffle(patterns).slice(0, count), rightOf100: random.nextInteger(55, 97) };
}

async function* one<T>(value: T): AsyncGenerator<T> {
	yield value;
}
