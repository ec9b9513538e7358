import { printMathematics } from '../../expression/print.ts';
import { printSigns } from '../../items/kinds/inline-choice.ts';
import { printRichText } from '../../markup/rich-text.ts';
import type { Problem } from '../../problem.ts';
import type { PartFacts, ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** No two options, entries or choices look the same to a student. */
export const distinctOptions: Rule = {
	severity: 'stop',
	guideline: haladyna(22),
	find: ({ parts }) => parts.flatMap(checkPart),
};

/** Something to choose, as it looks. */
interface Shown {
	readonly id: string;
	readonly path: string;
	readonly face: string;
}

function checkPart({ part, path, lists }: PartFacts): readonly Problem[] {
	if (part.kind !== 'inline-choice') {
		return lists.flatMap(({ entries }) =>
			checkFaces(entries.map((entry) => ({ id: entry.option.id, path: entry.path, face: faceOf(entry) }))),
		);
	}
	return checkFaces(
		part.choices.map(({ id, math }, index) => {
			return { id, path: `${path}/choices/${index}`, face: printSigns(math).replace(/\s+/g, '') };
		}),
	);
}

function checkFaces(shown: readonly Shown[]): readonly Problem[] {
	const seen = new Map<string, string>();
	return shown.flatMap(({ id, path, face }) => {
		const twin = seen.get(face);
		if (twin === undefined) {
			seen.set(face, id);
			return [];
		}
		const message = `expected distinct options, but "${id}" says the same as "${twin}"`;
		return [{ code: 'option-repeated', path, message }];
	});
}

function faceOf({ option: { content }, mathematics, number }: ReadEntry): string {
	if (number !== undefined) return String(number);
	switch (content.kind) {
		case 'mathematics':
			return mathematics ? printMathematics(mathematics) : content.math;
		case 'text':
			return printText(content.text).trim().replace(/\s+/g, ' ').replace(/\.$/, '');
		case 'figure':
			return JSON.stringify(content.figure);
		default:
			return content satisfies never;
	}
}

/** Text that cannot be read is another rule's problem. */
function printText(text: string): string {
	try {
		return printRichText(text);
	} catch {
		return text;
	}
}
