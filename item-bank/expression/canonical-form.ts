import { normaliseExpression } from './normalise.ts';
import type { Expression, OperationNode } from './tree.ts';

/** Rewritings that change the tree of an expression. */
export type TreeRewriting =
	| 'subtraction-as-adding-the-opposite'
	| 'redundant-parentheses'
	| 'opposite-of-opposite'
	| 'zero-has-no-sign'
	| 'commuted-sum'
	| 'commuted-product'
	| 'regrouped-sum'
	| 'regrouped-product'
	| 'sign-of-product'
	| 'sign-of-quotient';

type Form =
	| { readonly kind: 'leaf'; readonly value: number | '?' }
	| { readonly kind: 'opposite' | 'absolute' | 'group'; readonly of: Form }
	| { readonly kind: 'sum' | 'product'; readonly parts: readonly Form[] }
	| { readonly kind: 'difference' | 'quotient'; readonly left: Form; readonly right: Form };

type Rules = ReadonlySet<TreeRewriting>;

/**
 * One text for all expressions that the given rewritings turn into each other. Two expressions with the same text
 * under a set of rewritings are linked by rewritings of that set alone.
 */
export function writeCanonicalForm(expression: Expression, rules: Rules): string {
	return JSON.stringify(dropOuterGroup(build(normaliseExpression(expression), rules), rules));
}

function build(expression: Expression, rules: Rules): Form {
	switch (expression.kind) {
		case 'number':
			return { kind: 'leaf', value: expression.value };
		case 'unknown':
			return { kind: 'leaf', value: '?' };
		case 'absolute':
			return { kind: 'absolute', of: dropOuterGroup(build(expression.of, rules), rules) };
		case 'group':
			// The parentheses of an opposite that is cancelled go with it.
			if (expression.of.kind === 'opposite') return build(expression.of, rules);
			return buildGroup(build(expression.of, rules), rules);
		case 'opposite':
			return buildOpposite(build(expression.of, rules), rules);
		case 'operation':
			return buildOperation(expression, rules);
		default:
			return expression satisfies never;
	}
}

function buildGroup(of: Form, rules: Rules): Form {
	// Parentheses around a negative number or an opposite come and go with its place in the line.
	if (of.kind === 'leaf' || of.kind === 'opposite') return of;
	const isClosed = of.kind === 'group' || of.kind === 'absolute';
	return isClosed && rules.has('redundant-parentheses') ? of : { kind: 'group', of };
}

function buildOpposite(of: Form, rules: Rules): Form {
	if (of.kind === 'opposite' && rules.has('opposite-of-opposite')) return of.of;
	if (of.kind === 'leaf' && of.value !== '?') {
		const turned: Form = { kind: 'leaf', value: 0 - of.value };
		if (of.value > 0 && rules.has('redundant-parentheses')) return turned;
		if (of.value < 0 && rules.has('opposite-of-opposite')) return turned;
		if (of.value === 0 && rules.has('zero-has-no-sign')) return turned;
	}
	return isZeroProduct(of, rules) ? of : { kind: 'opposite', of };
}

/** A product or quotient with a factor 0 may take any sign from it, because −0 is 0. */
function isZeroProduct(form: Form, rules: Rules): boolean {
	if (!rules.has('zero-has-no-sign')) return false;
	const inner = form.kind === 'group' ? form.of : form;
	const parts = inner.kind === 'product' && rules.has('sign-of-product') ? inner.parts : [];
	const sides = inner.kind === 'quotient' && rules.has('sign-of-quotient') ? [inner.left, inner.right] : [];
	return [...parts, ...sides].some((part) => (part.kind === 'leaf' && part.value === 0) || isZeroProduct(part, rules));
}

function buildOperation(node: OperationNode, rules: Rules): Form {
	const left = build(node.left, rules);
	const right = build(node.right, rules);
	switch (node.operator) {
		case 'add':
			return buildSum(left, right, rules);
		case 'subtract':
			if (rules.has('subtraction-as-adding-the-opposite')) return buildSum(left, negate(right, rules), rules);
			return { kind: 'difference', left: dropOuterGroup(left, rules), right: dropProductGroup(right, rules) };
		case 'multiply':
			if (!rules.has('sign-of-product')) return buildProduct(left, right, rules);
			return pullSigns(left, right, node, (first, second) => buildProduct(first, second, rules), rules);
		case 'divide':
			if (!rules.has('sign-of-quotient')) return buildQuotient(left, right, rules);
			return pullSigns(left, right, node, (first, second) => buildQuotient(first, second, rules), rules);
		default:
			return node.operator satisfies never;
	}
}

function buildSum(left: Form, right: Form, rules: Rules): Form {
	const mayRegroup = rules.has('regrouped-sum');
	const first = mayRegroup && left.kind === 'group' && left.of.kind === 'sum' ? left.of : dropOuterGroup(left, rules);
	const second = mayRegroup && right.kind === 'group' ? dropGroup(right, ['sum']) : right;
	const parts = [...listParts(first, 'sum'), ...listParts(dropProductGroup(second, rules), 'sum')];
	return { kind: 'sum', parts: rules.has('commuted-sum') ? sortParts(parts, 'difference') : parts };
}

function buildProduct(left: Form, right: Form, rules: Rules): Form {
	const mayRegroup = rules.has('regrouped-product');
	const first = mayRegroup ? dropGroup(left, ['product']) : dropProductGroup(left, rules);
	const second = mayRegroup ? dropGroup(right, ['product']) : right;
	const parts = [...listParts(dropProductGroup(first, rules), 'product'), ...listParts(second, 'product')];
	return { kind: 'product', parts: rules.has('commuted-product') ? sortParts(parts, 'quotient') : parts };
}

function buildQuotient(left: Form, right: Form, rules: Rules): Form {
	return { kind: 'quotient', left: dropProductGroup(left, rules), right };
}

/** (−a) × b and a × (−b) as −(a × b), (−a) × (−b) as a × b; the same for ÷. */
function pullSigns(
	left: Form,
	right: Form,
	node: OperationNode,
	combine: (left: Form, right: Form) => Form,
	rules: Rules,
): Form {
	const bareLeft = dropSign(left);
	const bareRight = dropSign(right);
	const isChain = node.left.kind === 'operation' && bareLeft.kind === 'group' && bareLeft !== left;
	const combined = combine(isChain ? bareLeft.of : bareLeft, bareRight);
	const isNegative = (bareLeft !== left) !== (bareRight !== right);
	const isSigned = isNegative && !isZeroProduct(combined, rules);
	return isSigned ? buildOpposite(buildGroup(combined, rules), rules) : combined;
}

function dropSign(form: Form): Form {
	if (form.kind === 'opposite') return form.of;
	if (form.kind !== 'leaf' || form.value === '?' || form.value >= 0) return form;
	return { kind: 'leaf', value: -form.value };
}

function negate(form: Form, rules: Rules): Form {
	if (form.kind === 'leaf' && form.value !== '?') return { kind: 'leaf', value: 0 - form.value };
	return buildOpposite(form.kind === 'product' || form.kind === 'quotient' ? { kind: 'group', of: form } : form, rules);
}

function dropOuterGroup(form: Form, rules: Rules): Form {
	return form.kind === 'group' && rules.has('redundant-parentheses') ? form.of : form;
}

function dropProductGroup(form: Form, rules: Rules): Form {
	return rules.has('redundant-parentheses') ? dropGroup(form, ['product', 'quotient']) : form;
}

function dropGroup(form: Form, kinds: readonly Form['kind'][]): Form {
	return form.kind === 'group' && kinds.includes(form.of.kind) ? form.of : form;
}

function listParts(form: Form, kind: 'sum' | 'product'): readonly Form[] {
	return form.kind === kind ? form.parts : [form];
}

/** Parts in one order for all; what needs parentheses in all places but the first has them in every place. */
function sortParts(parts: readonly Form[], firstOnly: 'difference' | 'quotient'): readonly Form[] {
	return parts
		.map((part): Form => (part.kind === firstOnly ? { kind: 'group', of: part } : part))
		.map((part): readonly [string, Form] => [JSON.stringify(part), part])
		.sort(([first], [second]) => (first < second ? -1 : Number(first > second)))
		.map(([, part]) => part);
}
