/** Draws whole numbers and choices from a seed; the same seed, the same draws (mulberry32). */
export interface Draw {
	/** A whole number from low to high, both possible. */
	readonly whole: (low: number, high: number) => number;
	readonly pick: <T>(from: readonly T[]) => T;
	readonly chance: (share: number) => boolean;
}

export function drawFrom(seed: number): Draw {
	let state = seed >>> 0;
	const next = (): number => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
	const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
	const pick = <T>(from: readonly T[]): T => {
		const drawn = from[whole(0, from.length - 1)];
		if (drawn === undefined) throw new Error('nothing to pick from');
		return drawn;
	};
	return { whole, pick, chance: (share) => next() < share };
}
