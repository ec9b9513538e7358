import { invariant } from '../invariant.ts';

/** Draws that follow from a seed alone. Every draw moves the source on, so one source is not shared between makers. */
export interface Random {
	/** The next 32 bits as an integer from 0 to 4,294,967,295. */
	readonly nextWord: () => number;
	/** An integer from least to most, both included, every one equally likely; least ≤ most, at most 2³² of them. */
	readonly nextInteger: (least: number, most: number) => number;
	/** One entry of a list that is not empty. */
	readonly pick: <T>(list: readonly T[]) => T;
	/** The entries in random order, each order equally likely; the list itself stays as it is. */
	readonly shuffle: <T>(list: readonly T[]) => readonly T[];
}

/** Four 32-bit words, not all 0. */
export type RandomState = readonly [number, number, number, number];

/** Draws that are the same forever for the same seed: a text, or a number by its decimal text. */
export function createRandom(seed: string | number): Random {
	const text = String(seed);
	const word = (salt: number): number => hashText(text, salt);
	return createRandomFrom([word(1), word(2), word(3), word(4) || 1]);
}

/**
 * Draws from a state: the generator xor128 of Marsaglia 2003, "Xorshift RNGs", section 4, with a period of 2¹²⁸ − 1.
 * Not for secrets.
 */
export function createRandomFrom(state: RandomState): Random {
	let [x, y, z, w] = state;
	invariant((x | y | z | w) !== 0, 'a random state of zeros never moves');
	const nextWord = (): number => {
		const mixed = x ^ (x << 11);
		x = y;
		y = z;
		z = w;
		w = w ^ (w >>> 19) ^ (mixed ^ (mixed >>> 8));
		return w >>> 0;
	};
	const nextInteger = (least: number, most: number): number => {
		const count = most - least + 1;
		invariant(Number.isSafeInteger(least) && count >= 1 && count <= 2 ** 32, `no integers from ${least} to ${most}`);
		// Words past the last whole multiple of the count would favour the small ones.
		const limit = 2 ** 32 - (2 ** 32 % count);
		let word = nextWord();
		while (word >= limit) word = nextWord();
		return least + (word % count);
	};
	const pick = <T>(list: readonly T[]): T => {
		invariant(list.length > 0, 'nothing to pick from');
		return list[nextInteger(0, list.length - 1)] as T;
	};
	const shuffle = <T>(list: readonly T[]): readonly T[] => {
		const shuffled = [...list];
		for (let last = shuffled.length - 1; last > 0; last -= 1) {
			const other = nextInteger(0, last);
			[shuffled[last], shuffled[other]] = [shuffled[other] as T, shuffled[last] as T];
		}
		return shuffled;
	};
	return { nextWord, nextInteger, pick, shuffle };
}

/** A 32-bit word that every character of the text and the salt have a share in (FNV-1a, then stirred). */
function hashText(text: string, salt: number): number {
	let hash = Math.imul(0x811c9dc5 ^ salt, 0x01000193);
	for (let index = 0; index < text.length; index += 1) {
		hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
	}
	hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
	hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
	return (hash ^ (hash >>> 16)) >>> 0;
}
