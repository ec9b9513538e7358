import { families } from '../../item-bank/families/index.ts';
import type { FamilyEntry } from '../../item-bank/types.ts';
import { listFamilies } from '../routes/families.ts';
import type { Call, Command, Outcome } from './command.ts';
import { findNearest, UsageError } from './usage-error.ts';
import { noWords, oneWord, pickAction } from './words.ts';

/** Lists the families of items and shows what may be asked of one. */
export const familiesCommand: Command = {
	name: 'families',
	usage: ['families list', 'families show FAMILY'],
	summary: 'lists families of items and what may be asked of each; "items make" makes items of one',
	options: {},
	run: (call) => pickAction(call, { list, show }),
};

async function list(_call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const value = listFamilies();
	const lines = value.map(({ id, given, kinds, name }) =>
		[id.padEnd(21), given.join(', ').padEnd(13), kinds.join(', ').padEnd(16), name].join('  '),
	);
	return { value, lines };
}

async function show(_call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FAMILY');
	const value = listFamilies().find((family) => family.id === id);
	if (value) return { value, lines: describe(value) };
	const ids = families.map((family) => family.id);
	const near = findNearest(id, ids);
	throw new UsageError(
		`expected a family, found "${id}"${near === undefined ? '; "families list" names them' : `; did you mean ${near}?`}`,
	);
}

function describe(family: FamilyEntry): readonly string[] {
	const asked = Object.entries(family.parameters).map(([name, rule]) => {
		const range =
			rule.kind === 'integer'
				? `${rule.least} to ${rule.most}`
				: rule.kind === 'word'
					? rule.words.join(', ')
					: 'true, false';
		return `  ${name.padEnd(12)} ${rule.sentence} ${range}; ${rule.usual} when left out.`;
	});
	return [
		`${family.id} version ${family.version}: ${family.name}`,
		family.sentence,
		`Gives ${family.given.join(', ')}; ${family.kinds.join(', ')}; DOK ${family.dok.join(', ')}.`,
		`Standards: ${family.standards.map(({ framework, edition, code }) => `${framework} ${edition} ${code}`).join(', ')}.`,
		`Error patterns: ${family.targets.join(', ') || 'none'}.`,
		`Harder or easier by: ${family.features.join(', ')}.`,
		...(asked.length > 0 ? ['Parameters, each with --with NAME=VALUE:', ...asked] : []),
	];
}
