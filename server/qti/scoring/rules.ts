import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { evaluateExpression, type Scope } from './expressions.ts';
import { childrenOf, ScoringError } from './read-tree.ts';
import { isTrue, type Value } from './values.ts';

/** Variables that rules may change. */
export interface RuleScope extends Scope {
	readonly values: Map<string, Value>;
}

/** Carries out rules of response or outcome processing in order. Throws {@link ScoringError} naming any unsupported one. */
export function runRules(rules: readonly MarkupElement[], scope: RuleScope): void {
	for (const rule of rules) {
		switch (rule.name) {
			case 'setOutcomeValue':
				setOutcome(rule, scope);
				break;
			case 'responseCondition':
			case 'outcomeCondition':
				runCondition(rule, scope);
				break;
			default:
				throw new ScoringError(rule.name, `expected a rule that exports use, found <${rule.name}>`);
		}
	}
}

function setOutcome(rule: MarkupElement, scope: RuleScope): void {
	const { identifier = '' } = rule.attributes;
	const [expression] = childrenOf(rule);
	if (!expression || !scope.declarations.has(identifier)) {
		throw new ScoringError(rule.name, `expected a declared outcome and an expression, found "${identifier}"`);
	}
	scope.values.set(identifier, evaluateExpression(expression, scope));
}

function runCondition(rule: MarkupElement, scope: RuleScope): void {
	for (const branch of childrenOf(rule)) {
		const [first, ...rest] = childrenOf(branch);
		if (/(?:If|ElseIf)$/.test(branch.name)) {
			if (!first || !isTrue(evaluateExpression(first, scope))) continue;
			runRules(rest, scope);
			return;
		}
		if (!branch.name.endsWith('Else')) {
			throw new ScoringError(branch.name, `expected if, else if or else, found <${branch.name}>`);
		}
		runRules(childrenOf(branch), scope);
	}
}
