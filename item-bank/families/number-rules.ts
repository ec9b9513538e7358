import type { NumberRule } from './numbers.ts';

/** Sizes that are all different: equal ones make wrong ideas look alike. */
export const differentSizes: NumberRule = {
	name: 'the numbers differ in size',
	holds: (numbers) => {
		for (let index = 1; index < numbers.length; index += 1) {
			const size = Math.abs(numbers[index] ?? 0);
			for (let before = 0; before < index; before += 1) if (Math.abs(numbers[before] ?? 0) === size) return false;
		}
		return true;
	},
};

/** An answer that is no 0 or ±1, and not the size of a number in the item, which would make wrong ideas look alike. */
export function tellingAnswer(answer: (numbers: readonly number[]) => number): NumberRule {
	return {
		name: 'the answer is none of the numbers, 0, 1 or -1',
		holds: (numbers) => {
			const size = Math.abs(answer(numbers));
			return size > 1 && !numbers.some((number) => Math.abs(number) === size);
		},
	};
}

/** Words for how the work passes zero. */
export const crossings = ['any', 'yes', 'no'] as const;

/** Whether the work passes from one side of zero to the other. */
export function crossing(
	asked: (typeof crossings)[number],
	stops: (numbers: readonly number[]) => readonly number[],
): readonly NumberRule[] {
	if (asked === 'any') return [];
	const isCrossed = (numbers: readonly number[]): boolean => {
		const reached = stops(numbers);
		return reached.some((stop, index) => index > 0 && stop * (reached[index - 1] ?? 0) < 0);
	};
	return [
		{
			name: asked === 'yes' ? 'the work crosses zero' : 'the work does not cross zero',
			holds: (numbers) => isCrossed(numbers) === (asked === 'yes'),
		},
	];
}

/** Numbers added up one after the other, from the first. */
export function runningTotals(numbers: readonly number[]): readonly number[] {
	let total = 0;
	return numbers.map((number) => {
		total += number;
		return total;
	});
}
