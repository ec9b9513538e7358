import type { SchemaCheck } from '../qti/report.ts';
import type { ImageFormat } from '../qti/write/images.ts';
import type { ChosenQuestions } from './choose-questions.ts';
import type { Question } from './question.ts';
import { largestShift, type Weighing } from './weights.ts';

/** What a cartridge holds, how it was checked, and what a teacher must know before using it. */
export interface CartridgeReport {
	readonly as: 'cc-1.1';
	/** Number of items of the bank that are there; a set counts once. */
	readonly items: number;
	/** Paths within the cartridge, in the order they stand there. */
	readonly files: readonly string[];
	readonly validated: readonly SchemaCheck[];
	readonly notes: readonly string[];
	readonly warnings: readonly string[];
}

/** Describes a finished cartridge. */
export function reportCartridge(
	chosen: ChosenQuestions,
	{
		weighing,
		images,
		files,
		sections,
	}: {
		readonly weighing: Weighing;
		readonly images: ImageFormat;
		readonly files: readonly string[];
		readonly sections: number;
	},
): CartridgeReport {
	const { questions, leftOut } = chosen;
	return {
		as: 'cc-1.1',
		items: new Set(questions.map(({ position }) => position)).size,
		files,
		validated: [
			{ schema: 'export profile Common Cartridge 1.1: assessment, HTML of its texts, manifest', checked: true },
		],
		notes: [
			...describeKinds(chosen),
			describeWeights(questions, weighing),
			...(sections > 1 ? ['The sections of the form become one: their titles are not carried.'] : []),
			...(images === 'svg' && files.length > 2
				? ['Figures are SVG: sharp at any size, but not every platform shows them. PNG is the default.']
				: []),
			'answer-map.csv holds keys: keep it apart from the cartridge and confidential.',
		],
		warnings: [
			...leftOut.map(
				({ placement: { title, record }, reason }) =>
					`${title} ("${record.id}" version ${record.version}, ${record.item.kind}) is left out: ${reason}.`,
			),
			...describeStatus(questions),
		],
	};
}

function describeWeights(questions: readonly Question[], weighing: Weighing): string {
	if (!weighing.isExact) {
		const shift = largestShift(questions, weighing).toFixed(2);
		return `Shares of points are finer than whole weights from 1 to 99 can tell: they are rounded, and no question counts for more than ${shift} percent of the whole too much or too little.`;
	}
	return weighing.factor === 1
		? 'Points are the weights of the questions. A platform that ignores weights counts every question once.'
		: `Weights are ${weighing.factor} times the points, so that every share is a whole number; the platform counts in percent, and so nothing changes.`;
}

function describeKinds({ questions, setPositions }: ChosenQuestions): readonly string[] {
	const notes: string[] = [];
	if (questions.some(({ kind }) => kind === 'gridded')) {
		notes.push(
			'Gridded items become entry: placement in the grid is not enforced. Every spelling the grid allows (hyphen or minus sign, leading zeros) earns the points.',
			'Blanks typed around a number are ignored here; a platform that keeps them scores the entry as wrong.',
		);
	}
	if (questions.some(({ losesParts }) => losesParts)) {
		notes.push('Credit in parts is lost: multiple response earns all points or none here.');
	}
	if (questions.some(({ asks }) => asks === 'text')) {
		notes.push(
			'Explanations are scored by a person; answer-map.csv gives the percentage for each level of the rubric. The rubric is not in the cartridge.',
		);
	}
	for (const [conversion, positions] of groupConversions(questions)) {
		notes.push(`Converted to ${conversion}: ${listPositions(positions)}.`);
	}
	if (setPositions.length > 0) {
		notes.push(
			`Sets become one item a part, each with the shared material above it; the parts stand one after another but are not kept together: ${listPositions(setPositions)}.`,
		);
	}
	return notes;
}

function groupConversions(questions: readonly Question[]): ReadonlyMap<string, readonly number[]> {
	const groups = new Map<string, number[]>();
	for (const { conversion, position } of questions) {
		if (conversion === undefined) continue;
		const group = groups.get(conversion) ?? [];
		if (group.at(-1) !== position) group.push(position);
		groups.set(conversion, group);
	}
	return groups;
}

function listPositions(positions: readonly number[]): string {
	const shown = positions.slice(0, 12).join(', ');
	const rest = positions.length > 12 ? ` and ${positions.length - 12} more` : '';
	return `${positions.length === 1 ? 'item' : 'items'} ${shown}${rest}`;
}

function describeStatus(questions: readonly Question[]): readonly string[] {
	const first = new Map(questions.map((question) => [question.position, question]));
	return [...first.values()]
		.filter(({ record }) => record.status !== 'approved')
		.map(
			({ record: { id, version, status }, position }) =>
				`Item ${position} ("${id}" version ${version}) is ${status}, not approved.`,
		);
}
