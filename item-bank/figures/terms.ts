import type { Expression } from '../expression/tree.ts';

/** The numbers a sum adds, left to right, with a − b counted as a + (−b); undefined where anything but numbers is added. */
export function termsOf(expression: Expression): readonly number[] | undefined {
	const plain = withoutGroups(expression);
	if (plain.kind === 'number') return [plain.value];
	if (plain.kind !== 'operation' || plain.operator === 'multiply' || plain.operator === 'divide') return undefined;
	const before = termsOf(plain.left);
	const last = numberIn(plain.right);
	if (before === undefined || last === undefined) return undefined;
	return [...before, plain.operator === 'add' ? last : 0 - last];
}

/** The two numbers a product multiplies, as written; undefined for anything else. */
export function factorsOf(expression: Expression): readonly [number, number] | undefined {
	const plain = withoutGroups(expression);
	if (plain.kind !== 'operation' || plain.operator !== 'multiply') return undefined;
	const [left, right] = [numberIn(plain.left), numberIn(plain.right)];
	return left === undefined || right === undefined ? undefined : [left, right];
}

/** The number an expression writes, within parentheses or not; undefined for anything but a number. */
export function numberIn(expression: Expression): number | undefined {
	const plain = withoutGroups(expression);
	return plain.kind === 'number' ? plain.value : undefined;
}

/** The expression inside any outer parentheses. */
export function withoutGroups(expression: Expression): Expression {
	return expression.kind === 'group' ? withoutGroups(expression.of) : expression;
}
