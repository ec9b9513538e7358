import { isTrue } from '../../expression/evaluate.ts';
import type { Problem } from '../../problem.ts';
import type { ChoiceResponse, InlineChoiceItem } from '../../types.ts';
import { computeAt, notComputable, parseAt } from '../compute.ts';
import { checkTyped, type KeyFinding } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** Key of an inline choice: the choice that makes the statement true. */
export function findInlineKey(item: InlineChoiceItem): KeyFinding<{ kind: 'options'; options: readonly string[] }> {
	const options = item.choices
		.filter(({ math }, index) => isTrueWith(item, math, `/choices/${index}`))
		.map(({ id }) => id);
	const problems = [...checkCount(options), ...checkTyped(options.join(', '), item.key, 'the statement is true with')];
	return problems.length > 0 ? { problems } : { key: { kind: 'options', options } };
}

/** One choice counts; more than one is invalid. */
export function scoreInline(item: InlineChoiceItem, key: readonly string[], { options }: ChoiceResponse): Outcome {
	if (options.length === 0) return { state: 'omitted' };
	if (options.some((id) => !item.choices.some((choice) => choice.id === id))) {
		return { state: 'invalid', reason: 'option-not-offered' };
	}
	if (options.length > 1) return { state: 'invalid', reason: 'double-mark' };
	return { state: options[0] === key[0] ? 'correct' : 'incorrect' };
}

/** What stands before and after the gap, with true signs. */
export function gapSides(item: InlineChoiceItem): readonly [string, string] {
	const [before = '', after = ''] = item.statement.split('_');
	return [printSigns(before.trim()), printSigns(after.trim())];
}

/** A piece of mathematics that is too short to be read by itself, with true signs. */
export function printSigns(piece: string): string {
	return piece.replace(/[-–]/g, '−').replace(/\*/g, '×').replace(/\//g, '÷').replace(/<=/g, '≤').replace(/>=/g, '≥');
}

/** Every choice must make a readable statement, true or false. */
function isTrueWith(item: InlineChoiceItem, math: string, path: string): boolean {
	const statement = parseAt(item.statement.replace('_', math), path);
	if (statement.kind !== 'statement') throw notComputable(path, 'a statement with =, <, >, ≤ or ≥', 'an expression');
	return computeAt(path, () => isTrue(statement));
}

function checkCount(options: readonly string[]): Problem[] {
	if (options.length === 1) return [];
	const found = options.length === 0 ? 'none' : options.join(' and ');
	const message = `expected one choice that makes the statement true, found ${found}`;
	const code = options.length === 0 ? { code: 'key-missing' } : { code: 'key-not-unique' };
	return [{ ...code, path: '/choices', message }];
}
