import type { ItemText } from '../items/texts.ts';
import type { Standard } from '../standards/framework.ts';
import { frameworks } from '../standards/frameworks.ts';
import type { Alignment } from '../types.ts';
import type { ItemFacts } from './facts.ts';

/** Something with alignments of its own: the item, or a part of a set. */
export interface Aligned {
	readonly alignments: readonly Alignment[];
	/** JSON pointer of what is aligned. */
	readonly path: string;
	readonly texts: readonly ItemText[];
}

/** The item first, then the parts of a set. */
export function alignedIn({ item, parts, texts }: ItemFacts): readonly Aligned[] {
	const whole = { alignments: item.alignments, path: '', texts };
	if (item.kind !== 'set') return [whole];
	const inside = parts.map(({ part, path }) => ({
		alignments: part.alignments,
		path,
		texts: texts.filter((text) => text.path.startsWith(`${path}/`)),
	}));
	return [whole, ...inside];
}

/** Standards by code, for each edition of each framework: items are checked by the ten thousand. */
const standards: readonly {
	readonly id: string;
	readonly edition: string;
	readonly codes: ReadonlyMap<string, Standard>;
}[] = frameworks.map((framework) => ({
	id: framework.id,
	edition: framework.edition,
	codes: new Map(framework.standards.map((standard) => [standard.code, standard])),
}));

/** The standard an alignment names in exactly these words, or undefined. */
export function findAlignedStandard({ framework, edition, code }: Alignment): Standard | undefined {
	return standards.find((one) => one.id === framework && one.edition === edition)?.codes.get(code);
}
