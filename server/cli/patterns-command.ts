import { printMathematics } from '../../item-bank/expression/print.ts';
import { numberNode, operationNode } from '../../item-bank/expression/tree.ts';
import { explainAnswer } from '../../item-bank/patterns/explain-answer.ts';
import { describeExplanation } from '../../item-bank/patterns/explanation-text.ts';
import { getPattern, patterns } from '../../item-bank/patterns/index.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
import { findProbes } from '../../item-bank/patterns/probes.ts';
import { readAnswer } from '../answers.ts';
import type { Call, Command, Outcome } from './command.ts';
import { UsageError } from './usage-error.ts';
import { noWords, oneWord, pickAction, versionOf } from './words.ts';

/** Lists error patterns, explains wrong answers, finds items that tell patterns apart. */
export const patternsCommand: Command = {
	name: 'patterns',
	usage: [
		'patterns list',
		'patterns explain ITEM --answer V [--version N]',
		'patterns probes PATTERN PATTERN … [--most N]',
	],
	summary: 'lists error patterns, says what a wrong answer is consistent with, finds probes',
	options: {
		answer: { type: 'string', help: 'a number such as -5, or the letter of an option' },
		version: { type: 'string', help: 'of the item; the newest when left out' },
		most: { type: 'string', help: 'at most this many probe items, 1 to 8; 4 when left out' },
	},
	run: (call) => pickAction(call, { list, explain, probes }),
};

async function list(_call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const value = patterns.map(({ id, name, sentence, source }) => ({ id, name, sentence, source }));
	return { value, lines: value.map(({ id, name }) => `${id.padEnd(33)} ${name}`) };
}

async function explain(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'ITEM');
	const { answer } = call.options;
	if (typeof answer !== 'string') throw new UsageError('expected --answer with a number or the letter of an option');
	const store = await call.openStore(true);
	const { item } = await store.items.get(id, versionOf(call));
	const explanation = explainAnswer(item, readAnswer(answer));
	return { value: explanation, lines: describeExplanation(explanation) };
}

async function probes(call: Call, words: readonly string[]): Promise<Outcome> {
	const ids = words.map((word): PatternId => getPattern(word).id);
	const most = Number(call.options.most ?? 4);
	if (ids.length === 0) throw new UsageError('expected the ids of patterns to tell apart; "patterns list" names them');
	if (!Number.isInteger(most) || most < 1 || most > 8)
		throw new UsageError(`expected --most 1 to 8, found "${call.options.most}"`);
	const found = findProbes(ids, most);
	const items = found.items.map(({ operator, left, right }) =>
		printMathematics(operationNode(operator, numberNode(left), numberNode(right))),
	);
	const apart = found.together.map((group) => `Not told apart: ${group.map(nameOf).join('; ')}.`);
	const proof = found.isSmallest
		? 'No smaller set of the pool does as much.'
		: 'Whether fewer items would do was not shown.';
	return { value: { ...found, printed: items }, lines: [...items, ...apart, proof] };
}

function nameOf(rule: PatternId | 'right'): string {
	return rule === 'right' ? 'working it out right' : getPattern(rule).name;
}
