import type { Problem } from '../problem.ts';

/** A whole number to ask of a family. */
export interface IntegerRule {
	readonly kind: 'integer';
	/** What it decides, for a person. */
	readonly sentence: string;
	readonly least: number;
	readonly most: number;
	/** Taken when nothing is asked. */
	readonly usual: number;
}

/** One of a few words to ask of a family. */
export interface WordRule<Word extends string = string> {
	readonly kind: 'word';
	readonly sentence: string;
	readonly words: readonly Word[];
	readonly usual: Word;
}

/** Yes or no to ask of a family. */
export interface SwitchRule {
	readonly kind: 'switch';
	readonly sentence: string;
	readonly usual: boolean;
}

/** What may be asked of a family under one name. */
export type ParameterRule = IntegerRule | WordRule | SwitchRule;

/** Everything that may be asked of a family, by name. */
export type ParameterRules = Readonly<Record<string, ParameterRule>>;

/** What is asked of a family; names left out are left to it. */
export type Parameters = Readonly<Record<string, number | string | boolean>>;

/** Parameters as a family works with them: all there, each of its own type. */
export type ValuesOf<Rules extends ParameterRules> = {
	readonly [Name in keyof Rules]: Rules[Name] extends WordRule<infer Word>
		? Word
		: Rules[Name] extends IntegerRule
			? number
			: boolean;
};

/** A rule for a whole number from least to most. */
export function integer(sentence: string, least: number, most: number, usual: number): IntegerRule {
	return { kind: 'integer', sentence, least, most, usual };
}

/** A rule for one of a few words; the first is taken when nothing is asked. */
export function word<const Word extends string>(sentence: string, words: readonly [Word, ...Word[]]): WordRule<Word> {
	return { kind: 'word', sentence, words, usual: words[0] };
}

/** A rule for yes or no; no is taken when nothing is asked. */
export function flag(sentence: string): SwitchRule {
	return { kind: 'switch', sentence, usual: false };
}

/** What is asked, with what is left to the family filled in, in the order of its rules. Names without a rule are dropped. */
export function fillParameters(rules: ParameterRules, asked: Parameters): Parameters {
	return Object.fromEntries(Object.entries(rules).map(([name, rule]) => [name, asked[name] ?? rule.usual]));
}

/** Names the family does not know, and values outside their rules. Paths are JSON pointers into the parameters. */
export function checkValues(rules: ParameterRules, asked: Parameters): readonly Problem[] {
	return Object.entries(asked).flatMap(([name, value]): readonly Problem[] => {
		const rule = Object.hasOwn(rules, name) ? rules[name] : undefined;
		if (rule === undefined) {
			const known = Object.keys(rules).join(', ') || 'none';
			const message = `expected a parameter among ${known}, found "${name}"`;
			return [{ code: 'family-parameter-unknown', path: `/${name}`, message }];
		}
		if (fitsRule(rule, value)) return [];
		const message = `expected ${describeRule(rule)} for "${name}", found ${JSON.stringify(value)}`;
		return [{ code: 'family-parameter-value', path: `/${name}`, message }];
	});
}

function fitsRule(rule: ParameterRule, value: unknown): boolean {
	switch (rule.kind) {
		case 'integer':
			return Number.isInteger(value) && Number(value) >= rule.least && Number(value) <= rule.most;
		case 'word':
			return typeof value === 'string' && rule.words.includes(value);
		case 'switch':
			return typeof value === 'boolean';
		default:
			return rule satisfies never;
	}
}

function describeRule(rule: ParameterRule): string {
	switch (rule.kind) {
		case 'integer':
			return `a whole number from ${rule.least} to ${rule.most}`;
		case 'word':
			return `one of ${rule.words.join(', ')}`;
		case 'switch':
			return 'true or false';
		default:
			return rule satisfies never;
	}
}
