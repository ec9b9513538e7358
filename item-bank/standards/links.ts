/** A standard named in full. */
export interface StandardKey {
	readonly framework: string;
	readonly edition: string;
	readonly code: string;
}

/** A directed link between two standards, with where it was read. */
export interface StandardLink {
	readonly kind: 'precedes' | 'replaced-by' | 'related';
	readonly from: StandardKey;
	readonly to: StandardKey;
	readonly source: string;
}

const ccss = (code: string): StandardKey => ({ framework: 'ccss-m', edition: '2010', code });
const teks = (code: string): StandardKey => ({ framework: 'teks-math', edition: '2012', code });
const virginia = (edition: string, code: string): StandardKey => ({ framework: 'va-sol-math', edition, code });

const massachusettsMap = 'Massachusetts standards map';
const ownReading = 'our inference from the wording';

/** Progression and replacement links. "Our inference" is a legitimate source. */
export const standardLinks: readonly StandardLink[] = [
	{ kind: 'precedes', from: ccss('6.NS.C.7c'), to: ccss('7.NS.A.1b'), source: massachusettsMap },
	{ kind: 'precedes', from: ccss('6.NS.C.7c'), to: ccss('7.NS.A.1c'), source: massachusettsMap },
	{ kind: 'related', from: ccss('6.NS.C.6a'), to: ccss('6.NS.C.7c'), source: massachusettsMap },
	{ kind: 'related', from: ccss('6.NS.C.6a'), to: ccss('6.NS.C.5'), source: massachusettsMap },
	{ kind: 'precedes', from: ccss('7.NS.A.1'), to: ccss('7.NS.A.3'), source: ownReading },
	{ kind: 'precedes', from: ccss('7.NS.A.2'), to: ccss('7.NS.A.3'), source: ownReading },
	{ kind: 'precedes', from: ccss('7.NS.A.3'), to: ccss('7.EE.B.3'), source: ownReading },
	{ kind: 'related', from: teks('6.3(C)'), to: teks('6.3(D)'), source: ownReading },
	{ kind: 'precedes', from: teks('6.3(D)'), to: teks('7.3(A)'), source: ownReading },
	{ kind: 'precedes', from: teks('7.3(A)'), to: teks('7.3(B)'), source: ownReading },
	{
		kind: 'replaced-by',
		from: virginia('2016', '6.6'),
		to: virginia('2023', '6.CE.2'),
		source: 'from memory, to be confirmed',
	},
];
