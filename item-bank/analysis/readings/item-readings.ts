import type { Difficulty } from '../difficulty.ts';
import type { DistractorTable, OptionFlag } from '../distractors.ts';
import { type Finding, found } from '../finding.ts';
import type { GroupDifference } from '../mantel-haenszel.ts';
import type { OmitRates } from '../omit-rates.ts';
import { percentText, type Reading, readByBands, soften, withhold } from './reading.ts';

/** Reads the difficulty of an item: .30 to .90 is usual for a class test. */
export function readDifficulty(difficulty: Finding<Difficulty>, takers: number): Reading {
	const figure = difficulty.kind === 'found' ? found(difficulty.value.share) : difficulty;
	const share = difficulty.kind === 'found' ? percentText(difficulty.value.share) : '';
	return readByBands(
		figure,
		takers,
		[
			{
				from: 0.9,
				tone: 'look',
				words: `Easy: students earned ${share} of the points. It tells few of them apart; keep it if it opens the test or checks a basic.`,
			},
			{ from: 0.3, tone: 'plain', words: `Students earned ${share} of the points.` },
			{
				from: -Infinity,
				tone: 'look',
				words: `Hard: students earned ${share} of the points. Look at the key, the wording, and whether it was taught.`,
			},
		],
		'below .30 or above .90 needs attention: UW Oshkosh Testing Services, read',
	);
}

/** Reads a corrected point-biserial: .20 is the usual flag, below 0 the key is looked at first. */
export function readCorrelation(corrected: Finding<number>, takers: number): Reading {
	return readByBands(
		corrected,
		takers,
		[
			{
				from: 0.2,
				tone: 'plain',
				words: 'Students who do well on the rest do well here: the item goes with the test.',
			},
			{
				from: 0,
				tone: 'look',
				words: 'The item hardly goes with the rest of the test. It may ask something else, or be very easy or hard.',
			},
			{
				from: -Infinity,
				tone: 'look',
				words: 'Students who do well on the rest do worse here. Check the key first, then the wording.',
			},
		],
		'.20: common practice in technical reports, from memory',
	);
}

/** Reads an upper-lower discrimination by the bands of Ebel and Frisbie. */
export function readDiscrimination(discrimination: Finding<number>, takers: number): Reading {
	return readByBands(
		discrimination,
		takers,
		[
			{ from: 0.4, tone: 'plain', words: 'The item separates the strongest and weakest scores very well.' },
			{ from: 0.3, tone: 'plain', words: 'The item separates the strongest and weakest scores reasonably well.' },
			{ from: 0.2, tone: 'look', words: 'The item separates the strongest and weakest scores only a little.' },
			{
				from: -Infinity,
				tone: 'look',
				words: 'The item hardly separates the strongest and weakest scores; very easy and very hard items cannot.',
			},
		],
		'.40, .30, .20: bands read on a worksheet, attributed to Ebel & Frisbie 1991, p. 232, from memory',
	);
}

/** Reads omitted and not reached responses: over 5 % together is worth a look. */
export function readOmits(rates: Finding<OmitRates>): Reading {
	const basis = 'omitted or not reached over 5 %: common practice, no source';
	if (rates.kind === 'refused') return { tone: 'absent', text: `No figure: ${rates.message}.`, basis };
	const { given, omitted, notReached, invalid } = rates.value;
	if (given < 10) return withhold(given);
	const share = omitted.share + notReached.share;
	const text =
		`${percentText(omitted.share)} left it out, ${percentText(notReached.share)} did not reach it` +
		(invalid.count > 0 ? `, ${percentText(invalid.share)} marked it in a way that cannot be read.` : '.');
	return soften({ tone: share > 0.05 || invalid.share > 0.05 ? 'look' : 'plain', text, basis }, given);
}

const flagWords: Readonly<Record<OptionFlag, string>> = {
	'rarely-chosen': 'fewer than 5 % chose it, so it does no work',
	'draws-strong': 'students who chose it did no worse on the rest',
	'key-draws-weak': 'it is the key, yet students who chose it did worse on the rest: check it',
	'above-key-in-upper': 'the strongest students chose it more often than the key: check the key',
};

/** Reads the options of a choice item, flagged options by name. */
export function readDistractors(table: Finding<DistractorTable>): Reading {
	const basis = '5 % and direction: BMC Medical Education 2009, 9:40, read in the abstract';
	if (table.kind === 'refused') return { tone: 'absent', text: `No figure: ${table.message}.`, basis };
	const { options, functioning, distractors, given } = table.value;
	if (given < 10) return withhold(given);
	const flagged = options.flatMap(({ option, flags }) =>
		flags.length === 0 ? [] : [`${option.toUpperCase()}: ${flags.map((flag) => flagWords[flag]).join('; ')}`],
	);
	const text = `${functioning} of ${distractors} wrong options work${flagged.length === 0 ? '.' : `. ${flagged.join('. ')}.`}`;
	return soften({ tone: flagged.length === 0 ? 'plain' : 'look', text, basis }, given);
}

/** Reads a difference between groups. It asks for a look by people, and never says that an item is unfair. */
export function readGroupDifference(difference: Finding<GroupDifference>): Reading {
	const basis = 'NAEP technical documentation, categories A, B and C, read';
	if (difference.kind === 'refused') return { tone: 'absent', text: `No figure: ${difference.message}.`, basis };
	const { size, delta, shareDifference } = difference.value;
	const side = delta < 0 ? 'the reference group' : 'the focal group';
	const points = percentText(Math.abs(shareDifference));
	const texts = {
		small: 'Students of both groups with the same total do about equally well here.',
		moderate: `Among students with the same total, ${side} does better here, by ${points} of the points. Look at the wording together.`,
		large: `Among students with the same total, ${side} does clearly better here, by ${points} of the points. Have people of both groups look at the item before using it again.`,
	} as const;
	return { tone: size === 'small' ? 'plain' : 'look', text: texts[size], basis };
}
