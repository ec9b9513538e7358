import type { Problem } from '../../item-bank/problem.ts';
import { validateCartridge } from '../cartridge/validate-bytes.ts';
import { findOut } from '../item-findings.ts';
import { validatePackage } from '../qti/validate-package.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readBytes, readJson } from './files.ts';
import { oneWord } from './words.ts';

/** Checks a package of the bank, or a file of items before they are added. */
export const validateCommand: Command = {
	name: 'validate',
	usage: ['validate FILE'],
	summary: 'checks a package of this bank, or a JSON file of items, and changes nothing',
	options: {},
	run,
};

async function run(call: Call): Promise<Outcome> {
	const file = oneWord(call.words, 'FILE');
	const bytes = readBytes(file);
	const isJson = /^\s*[[{]/.test(bytes.subarray(0, 200).toString('latin1').replace(/^ï»¿/, ''));
	const problems = isJson
		? checkItems(readJson(file))
		: ((await validateCartridge(bytes)) ?? (await validatePackage(bytes))).map(describeProblem);
	const lines =
		problems.length === 0
			? [`${file}: nothing to mend`]
			: [
					...problems.map(({ path, message, code }) => `${path}: ${message} (${code})`),
					`${file}: ${problems.length} to mend`,
				];
	return { value: { file, problems }, lines, hasFaults: problems.length > 0 };
}

function checkItems(document: unknown): readonly Problem[] {
	const isList = Array.isArray(document);
	return (isList ? document : [document]).flatMap((entry: unknown, index) => {
		const isWrapped = typeof entry === 'object' && entry !== null && 'item' in entry;
		const place = `${isList ? `/${index}` : ''}${isWrapped ? '/item' : ''}`;
		return findOut(isWrapped ? entry.item : entry).problems.map((problem) => ({
			...problem,
			path: place + problem.path,
		}));
	});
}

function describeProblem(problem: Awaited<ReturnType<typeof validatePackage>>[number]): Problem {
	const { code, message, file, line, element } = problem;
	const where = [
		file,
		...(line === undefined ? [] : [`line ${line}`]),
		...(element === undefined ? [] : [`<${element}>`]),
	];
	return { code, message, path: where.join(', ') };
}
