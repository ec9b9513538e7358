import type { Finding } from '../finding.ts';

/** A figure in words for a teacher. */
export interface Reading {
	/**
	 * - plain: nothing to do.
	 * - look: worth a look at the item or the form.
	 * - withheld: too few students to say anything.
	 * - absent: the figure has no value here; the text says why.
	 */
	readonly tone: 'plain' | 'look' | 'withheld' | 'absent';
	readonly text: string;
	/** The same without what softens it, where it was softened. */
	readonly words?: string;
	/** Where the threshold comes from; "common practice, no source" where there is none. */
	readonly basis: string;
}

/** Takers below which a figure is not read out (reference/trade.md 7.5: groups below 10, from memory). */
export const leastTakers = 10;
/** Takers below which a reading is only a hint (reference/trade.md 7.3, common practice). */
export const firmTakers = 100;

/** A band of a figure: from its lower bound upwards. */
export interface Band {
	readonly from: number;
	readonly tone: 'plain' | 'look';
	readonly words: string;
}

/**
 * Reads a figure by bands, highest first, the last one from −Infinity. Withheld under 10 takers; softened under 100; a refused
 * figure gives its own message.
 */
export function readByBands(figure: Finding<number>, takers: number, bands: readonly Band[], basis: string): Reading {
	if (takers < leastTakers) return withhold(takers);
	if (figure.kind === 'refused') return { tone: 'absent', text: `No figure: ${figure.message}.`, basis };
	// Bounds are met within rounding, so that .7 computed as .69999… is .7.
	const band = bands.find(({ from }) => figure.value >= from - 1e-9);
	return soften({ tone: band?.tone ?? 'plain', text: band?.words ?? '', basis }, takers);
}

/** The reading of anything about fewer than 10 students. */
export function withhold(takers: number): Reading {
	const who = takers === 1 ? '1 student' : `${takers} students`;
	return {
		tone: 'withheld',
		text: `Not read out: ${who}, and at least ${leastTakers} are needed.`,
		basis: 'common practice, no source',
	};
}

/** Marks a reading as a hint under 100 takers. */
export function soften(reading: Reading, takers: number): Reading {
	if (takers >= firmTakers) return reading;
	return { ...reading, words: reading.text, text: `A hint only, from ${takers} students: ${lowerFirst(reading.text)}` };
}

/** A share as whole per cent, never 0 or 100 for what is not quite. */
export function percentText(share: number): string {
	const whole = Math.round(share * 100);
	if (whole === 0 && share > 0) return 'under 1 %';
	return whole === 100 && share < 1 ? 'over 99 %' : `${whole} %`;
}

function lowerFirst(text: string): string {
	return text.charAt(0).toLowerCase() + text.slice(1);
}
