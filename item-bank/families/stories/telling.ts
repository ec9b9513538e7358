import type { Situation } from './situation.ts';

/** A text with {level} replaced by a signed number and its unit. */
export function tellLevel(text: string, { levelUnit }: Situation, level: number): string {
	return text.replace('{level}', `\`${level}\` ${levelUnit}`);
}

/** A text with {amount} replaced by a size and its unit. */
export function tellAmount(text: string, { amountUnit }: Situation, size: number): string {
	return text.replace('{amount}', `${size} ${amountUnit[size === 1 ? 0 : 1]}`);
}

/** A clause of a gain or a loss, the next of its kind each time. */
export function tellMove(situation: Situation, move: number, turn = 0): string {
	const clauses = move < 0 ? situation.losses : situation.gains;
	return tellAmount(clauses[turn % clauses.length] ?? clauses[0], situation, Math.abs(move));
}

/** A clause as a sentence. */
export function sentence(clause: string): string {
	return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

/** Sentences of moves in order: Then …, Next …, Last …; a first move without a word before it when nothing came before. */
export function tellMoves(situation: Situation, moves: readonly number[], isOpening: boolean): string {
	const used = { gain: 0, loss: 0 };
	const sentences = moves.map((move, index) => {
		const kind = move < 0 ? 'loss' : 'gain';
		const clause = tellMove(situation, move, used[kind]);
		used[kind] += 1;
		const word = wordBefore(index, moves.length, isOpening);
		return word === '' ? sentence(clause) : `${word} ${clause}.`;
	});
	return sentences.join(' ');
}

/** Sentences with one blank between them; empty ones are left out. */
export function tell(...sentences: readonly string[]): string {
	return sentences.filter((text) => text !== '').join(' ');
}

function wordBefore(index: number, count: number, isOpening: boolean): string {
	if (count === 1) return isOpening ? '' : 'Then';
	if (index === 0) return 'First,';
	if (index === count - 1 && count > 2) return 'Last,';
	return index === 1 ? 'Then' : 'Next,';
}
