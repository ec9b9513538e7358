import type { StandardAlignment } from '../coverage/webb.ts';
import { percentText, type Reading } from './reading.ts';

const source = 'Webb 1997, 1999: thresholds from memory; made for state tests';

/** Reads categorical concurrence: whether a form has items enough to say anything about a standard. */
export function readConcurrence({ standard, concurrence }: StandardAlignment): Reading {
	const { value } = concurrence;
	const count = value === 1 ? 'One item' : `${value} items`;
	const text =
		concurrence.verdict === 'met'
			? `${count} under ${standard}: enough to report on it by itself.`
			: `${count} under ${standard}; six are asked for before a standard is reported by itself. A short form for one unit seldom has them, which is no fault: put sittings together before saying much.`;
	return { tone: concurrence.verdict === 'met' ? 'plain' : 'look', text, basis: `6 items: ${source}` };
}

/** Reads DOK consistency: whether the items ask as deep as the standard does. */
export function readDokConsistency({ standard, dokConsistency }: StandardAlignment): Reading {
	const basis = `half of the items, weak from 40 %: ${source}`;
	if (dokConsistency.kind === 'refused')
		return { tone: 'absent', text: `No figure: ${dokConsistency.message}.`, basis };
	const { value, verdict } = dokConsistency.value;
	const share = percentText(value);
	const text =
		verdict === 'met'
			? `${share} of the items under ${standard} ask at least as deep as the standard.`
			: `Only ${share} of the items under ${standard} ask at least as deep as the standard: students can do well without showing what it asks for.`;
	return { tone: verdict === 'met' ? 'plain' : 'look', text, basis };
}

/** Reads range and balance together: how many parts of a standard are asked for, and how evenly. */
export function readRange({ standard, objectives, range, balance, concurrence }: StandardAlignment): Reading {
	const basis = `half of the parts, balance .70: ${source}`;
	const [hit, all] = [Math.round(range.value * objectives.length), objectives.length];
	const parts = `${hit} of ${all} ${all === 1 ? 'part' : 'parts'} of ${standard}`;
	if (concurrence.value === 0) return { tone: 'look', text: `Nothing asks for ${standard}.`, basis };
	const start =
		range.verdict === 'met' ? `Items ask for ${parts}.` : `Items ask for ${parts} only: the rest stays unseen.`;
	const isUneven = balance.kind === 'found' && balance.value.verdict !== 'met';
	const text = isUneven ? `${start} Most of them sit on few of these parts.` : start;
	return { tone: range.verdict === 'met' && !isUneven ? 'plain' : 'look', text, basis };
}
