import type { Rule } from './rule.ts';

const body = '/q:assessmentItem/q:itemBody';
const choice = `${body}/*/q:simpleChoice`;
const gapChoice = `${body}/q:p/q:inlineChoiceInteraction/q:inlineChoice`;
const entry = `${body}/q:matchInteraction/q:simpleMatchSet/q:simpleAssociableChoice`;
const hotspot = `${body}/q:hotspotInteraction/q:hotspotChoice`;
const inOrder = 'options named A, B, C … in order';
const stray = 'text, or one image alone';
const isStray = "q:img and text() or not(*) and normalize-space() = ''";
/** Sides of the area of a hotspot: left, top, right, bottom. */
const [left, top, right, bottom] = sidesOf('@coords');
const [, topBefore, rightBefore] = sidesOf('preceding-sibling::q:hotspotChoice[1]/@coords');

/** How what there is to answer is named, filled and laid out. */
export const interactionRules: readonly Rule[] = [
	{
		code: 'qti-option-order',
		at: choice,
		fault: "@identifier != substring('ABCDEFGH', count(preceding-sibling::q:simpleChoice) + 1, 1)",
		expected: inOrder,
	},
	{
		code: 'qti-option-order',
		at: gapChoice,
		fault: "@identifier != substring('ABCDEFGH', count(preceding-sibling::*) + 1, 1)",
		expected: inOrder,
	},
	{
		code: 'qti-option-order',
		at: entry,
		fault:
			"@identifier != concat(substring('LR', count(../preceding-sibling::q:simpleMatchSet) + 1, 1), count(preceding-sibling::*) + 1)",
		expected: 'entries named L1, L2 … on the left and R1, R2 … on the right, in order',
	},
	{
		code: 'qti-option-order',
		at: hotspot,
		fault: "@identifier != concat('P', count(preceding-sibling::q:hotspotChoice) + 1)",
		expected: 'ticks named P1, P2 … in order',
	},
	{
		code: 'qti-option-order',
		at: hotspot,
		fault:
			"not(starts-with(@hotspotLabel, concat('Tick ', substring(@identifier, 2), ' of ', count(../q:hotspotChoice), ' ')))",
		expected: 'a label that tells the place of its tick',
	},
	{
		code: 'qti-hotspot-area',
		at: hotspot,
		fault: `${right} - ${left} < 24 or ${bottom} - ${top} < 24`,
		expected: 'an area of at least 24 by 24 pixels',
	},
	{
		code: 'qti-hotspot-area',
		at: hotspot,
		fault: `${right} > ../q:object/@width or ${bottom} > ../q:object/@height`,
		expected: 'an area inside its picture',
	},
	{
		code: 'qti-hotspot-area',
		at: hotspot,
		fault: `preceding-sibling::q:hotspotChoice and not(${left} > ${rightBefore} or ${bottom} < ${topBefore})`,
		expected: 'an area clear of the one before it, to the right of it or above it',
	},
	{
		code: 'qti-picture-type',
		at: `${body}/q:hotspotInteraction/q:object`,
		fault: "(@type = 'image/png') != (substring-after(@data, '.') = 'png')",
		expected: 'a picture of the type of its file',
	},
	{
		code: 'qti-match-limit',
		at: `${body}/q:matchInteraction`,
		fault: '@maxAssociations != count(q:simpleMatchSet[1]/*)',
		expected: 'as many pairs as there are entries on the left',
	},
	{ code: 'qti-stray-text', at: `${body}/q:p`, fault: isStray, expected: stray },
	{ code: 'qti-stray-text', at: choice, fault: isStray, expected: stray },
	{ code: 'qti-stray-text', at: entry, fault: isStray, expected: stray },
];

function sidesOf(coords: string): readonly [string, string, string, string] {
	const afterFirst = `substring-after(${coords}, ',')`;
	const afterSecond = `substring-after(${afterFirst}, ',')`;
	return [
		`substring-before(${coords}, ',')`,
		`substring-before(${afterFirst}, ',')`,
		`substring-before(${afterSecond}, ',')`,
		`substring-after(${afterSecond}, ',')`,
	];
}
