import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { childrenOf, ScoringError, textOf } from './read-tree.ts';
import { type Declaration, float, isTrue, type Mapping, parseMember, truth, type Value } from './values.ts';

/** What expressions are evaluated against. */
export interface Scope {
	readonly declarations: ReadonlyMap<string, Declaration>;
	readonly values: ReadonlyMap<string, Value>;
	/** Answers testVariables in outcome processing; absent in response processing. */
	readonly testVariables?: (node: MarkupElement) => Value;
}

/** Evaluates an expression of the supported subset. Throws {@link ScoringError} naming any other element. */
export function evaluateExpression(node: MarkupElement, scope: Scope): Value {
	const operands = (): readonly Value[] => childrenOf(node).map((child) => evaluateExpression(child, scope));
	switch (node.name) {
		case 'variable':
			return variableOf(node, scope);
		case 'correct':
			return declarationOf(node, scope).correct;
		case 'baseValue':
			return readBaseValue(node);
		case 'mapResponse':
			return mapResponse(declarationOf(node, scope), variableOf(node, scope));
		case 'isNull':
			return truth(operands()[0] === null);
		case 'not': {
			const [operand = null] = operands();
			return operand === null ? null : truth(!isTrue(operand));
		}
		case 'and':
			return truth(childrenOf(node).every((child) => isTrue(evaluateExpression(child, scope))));
		case 'or':
			return truth(childrenOf(node).some((child) => isTrue(evaluateExpression(child, scope))));
		case 'match': {
			const [left = null, right = null] = operands();
			return left === null || right === null ? null : truth(matches(left, right));
		}
		case 'gte': {
			const [left = null, right = null] = operands();
			return left === null || right === null ? null : truth(Number(left.members[0]) >= Number(right.members[0]));
		}
		case 'sum':
			return sum(operands());
		case 'testVariables':
			if (scope.testVariables) return scope.testVariables(node);
			break;
	}
	throw new ScoringError(node.name, `expected an expression that exports use, found <${node.name}>`);
}

/** QTI 2.2, match: same base type and cardinality, same members; multiple containers have no order. */
function matches(left: NonNullable<Value>, right: NonNullable<Value>): boolean {
	if (left.cardinality !== right.cardinality || left.baseType !== right.baseType) return false;
	const order = (value: NonNullable<Value>): readonly unknown[] =>
		value.cardinality === 'multiple' ? [...value.members].sort() : value.members;
	return JSON.stringify(order(left)) === JSON.stringify(order(right));
}

/** QTI 2.2, mapResponse: the mapped value of a single response, the sum over the distinct members of a multiple one. */
function mapResponse(declaration: Declaration, response: Value): Value {
	const { mapping } = declaration;
	if (!mapping) throw new ScoringError('mapResponse', `expected a mapping on ${declaration.identifier}, found none`);
	if (response === null) return float(bounded(0, mapping));
	const members = [...new Set(response.members)];
	const total = members.reduce<number>((so, member) => so + mapMember(String(member), mapping), 0);
	return float(bounded(total, mapping));
}

function mapMember(member: string, mapping: Mapping): number {
	// Of two entries that differ in capitals alone the very one is meant, as in the published example of text entry.
	const exact = mapping.entries.find(({ key }) => key === member);
	const entry = mapping.entries.find(
		({ key, isCaseSensitive }) => !isCaseSensitive && key.toLowerCase() === member.toLowerCase(),
	);
	return (exact ?? entry)?.value ?? mapping.otherwise;
}

function bounded(value: number, mapping: Mapping): number {
	return Math.min(Math.max(value, mapping.lower), mapping.upper);
}

/** QTI 2.2, sum: NULL as soon as one operand is; containers count with all their members. */
function sum(operands: readonly Value[]): Value {
	let total = 0;
	for (const operand of operands) {
		if (operand === null) return null;
		for (const member of operand.members) total += Number(member);
	}
	return float(total);
}

function readBaseValue(node: MarkupElement): Value {
	const { baseType } = node.attributes;
	switch (baseType) {
		case 'identifier':
		case 'string':
		case 'integer':
		case 'float':
		case 'boolean':
			return { cardinality: 'single', baseType, members: [parseMember(textOf(node), baseType)] };
		default:
			throw new ScoringError('baseValue', `expected a simple base type, found "${baseType}"`);
	}
}

function variableOf(node: MarkupElement, scope: Scope): Value {
	const { identifier = '' } = node.attributes;
	const value = scope.values.get(identifier);
	if (value !== undefined) return value;
	throw new ScoringError(node.name, `expected a declared variable, found "${identifier}"`);
}

function declarationOf(node: MarkupElement, scope: Scope): Declaration {
	const { identifier = '' } = node.attributes;
	const declaration = scope.declarations.get(identifier);
	if (declaration) return declaration;
	throw new ScoringError(node.name, `expected a declared variable, found "${identifier}"`);
}
