import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { childrenOf, ScoringError, textOf } from './read-tree.ts';

/** The containers that exports use. */
export type Cardinality = 'single' | 'multiple' | 'ordered';

/** The base types that exports use. */
export type BaseType = 'identifier' | 'string' | 'integer' | 'float' | 'boolean' | 'directedPair';

/** A value as a platform holds it: NULL, or members of one base type in a container. Strings as typed, pairs as two identifiers with a blank between. */
export type Value = null | {
	readonly cardinality: Cardinality;
	readonly baseType: BaseType;
	readonly members: readonly (string | number | boolean)[];
};

/** A declared response or outcome variable. */
export interface Declaration {
	readonly identifier: string;
	readonly cardinality: Cardinality;
	readonly baseType: BaseType;
	readonly correct: Value;
	readonly initial: Value;
	readonly mapping: Mapping | undefined;
}

/** A mapping from values to numbers (QTI 2.2, Mapping). */
export interface Mapping {
	readonly lower: number;
	readonly upper: number;
	readonly otherwise: number;
	readonly entries: readonly { readonly key: string; readonly value: number; readonly isCaseSensitive: boolean }[];
}

const cardinalities = ['single', 'multiple', 'ordered'] as const;
const baseTypes = ['identifier', 'string', 'integer', 'float', 'boolean', 'directedPair'] as const;

/** A single number. */
export function float(value: number): Value {
	return { cardinality: 'single', baseType: 'float', members: [value] };
}

/** A single truth value. */
export function truth(value: boolean): Value {
	return { cardinality: 'single', baseType: 'boolean', members: [value] };
}

/** Whether a value is single true; NULL and everything else is not (QTI 2.2, responseIf). */
export function isTrue(value: Value): boolean {
	return value?.baseType === 'boolean' && value.members[0] === true;
}

/** Reads a responseDeclaration or outcomeDeclaration. Throws {@link ScoringError} for what the exports do not use. */
export function readDeclaration(node: MarkupElement): Declaration {
	const cardinality = cardinalities.find((known) => known === node.attributes.cardinality);
	const baseType = baseTypes.find((known) => known === node.attributes.baseType);
	if (!cardinality || !baseType) {
		const found = `${node.attributes.cardinality} ${node.attributes.baseType}`;
		throw new ScoringError(
			node.name,
			`expected single, multiple or ordered of a base type that exports use, found ${found}`,
		);
	}
	const values = (name: string): Value => {
		const [holder] = childrenOf(node, name);
		const members = holder ? childrenOf(holder, 'value').map((value) => parseMember(textOf(value), baseType)) : [];
		return members.length === 0 ? null : { cardinality, baseType, members };
	};
	for (const { name } of childrenOf(node)) {
		if (!['correctResponse', 'defaultValue', 'mapping'].includes(name)) {
			throw new ScoringError(name, `expected correctResponse, defaultValue or mapping, found <${name}>`);
		}
	}
	const [mapping] = childrenOf(node, 'mapping');
	return {
		identifier: node.attributes.identifier ?? '',
		cardinality,
		baseType,
		correct: values('correctResponse'),
		initial: values('defaultValue'),
		mapping: mapping && readMapping(mapping),
	};
}

/** One value from its text, by base type. */
export function parseMember(text: string, baseType: BaseType): string | number | boolean {
	switch (baseType) {
		case 'identifier':
		case 'string':
		case 'directedPair':
			return text;
		case 'integer':
		case 'float':
			return Number(text);
		case 'boolean':
			return text === 'true';
	}
}

function readMapping(node: MarkupElement): Mapping {
	const bound = (name: string, absent: number): number => {
		const written = node.attributes[name];
		return written === undefined ? absent : Number(written);
	};
	return {
		lower: bound('lowerBound', Number.NEGATIVE_INFINITY),
		upper: bound('upperBound', Number.POSITIVE_INFINITY),
		otherwise: bound('defaultValue', 0),
		entries: childrenOf(node, 'mapEntry').map(({ attributes }) => ({
			key: attributes.mapKey ?? '',
			value: Number(attributes.mappedValue),
			isCaseSensitive: attributes.caseSensitive === 'true',
		})),
	};
}
