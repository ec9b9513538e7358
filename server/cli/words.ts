import type { Call, Outcome } from './command.ts';
import { findNearest, UsageError } from './usage-error.ts';

/** What a command with several actions does for each. */
export type Actions = Readonly<Record<string, (call: Call, words: readonly string[]) => Promise<Outcome>>>;

/** Runs the action named first. Throws UsageError, with the nearest name, for one there is not. */
export function pickAction(call: Call, actions: Actions): Promise<Outcome> {
	const [name, ...words] = call.words;
	const names = Object.keys(actions);
	const action = name !== undefined && Object.hasOwn(actions, name) ? actions[name] : undefined;
	if (action) return action(call, words);
	const near = name === undefined ? undefined : findNearest(name, names);
	const hint = near === undefined ? '' : `; did you mean ${near}?`;
	throw new UsageError(`expected ${names.join(', ')}, found ${name === undefined ? 'nothing' : `"${name}"`}${hint}`);
}

/** The only word a command takes. Throws UsageError when there is none or another. */
export function oneWord(words: readonly string[], name: string): string {
	const [word, ...others] = words;
	if (word === undefined) throw new UsageError(`expected ${name}, found nothing`);
	noWords(others);
	return word;
}

/** Throws UsageError when words are left. */
export function noWords(words: readonly string[]): void {
	if (words.length > 0) throw new UsageError(`expected nothing more, found "${words[0]}"`);
}

/** The version named with --version. Throws UsageError for text that is no version. */
export function versionOf(call: Call): number | undefined {
	const { version } = call.options;
	if (version === undefined) return undefined;
	if (typeof version !== 'string' || !/^[1-9]\d{0,8}$/.test(version)) {
		throw new UsageError(`expected a version such as 1 after --version, found "${version}"`);
	}
	return Number(version);
}

/** The value of an option that must be one of a few. Throws UsageError. */
export function oneOf<T extends string>(call: Call, option: string, allowed: readonly T[], otherwise?: T): T {
	const typed = call.options[option] ?? otherwise;
	const found = allowed.find((value) => value === typed);
	if (found === undefined) {
		const near = typeof typed === 'string' ? findNearest(typed, allowed) : undefined;
		const hint = near === undefined ? '' : `; did you mean ${near}?`;
		throw new UsageError(
			`expected --${option} ${allowed.join(' or ')}, found ${typed === undefined ? 'none' : `"${typed}"`}${hint}`,
		);
	}
	return found;
}

/** A whole number typed after an option. Throws UsageError where it is missing or out of range. */
export function numberOf(
	call: Call,
	option: string,
	{ least, most, otherwise }: { readonly least: number; readonly most: number; readonly otherwise?: number },
): number {
	const typed = call.options[option];
	if (typed === undefined && otherwise !== undefined) return otherwise;
	const number = typeof typed === 'string' && /^\d{1,9}$/.test(typed) ? Number(typed) : undefined;
	if (number === undefined || number < least || number > most)
		throw new UsageError(
			`expected --${option} from ${least} to ${most}, found ${typed === undefined ? 'none' : `"${typed}"`}`,
		);
	return number;
}

/** The values of an option that may be repeated; undefined where it was not typed. */
export function listOf(call: Call, option: string): readonly string[] | undefined {
	const typed = call.options[option];
	return Array.isArray(typed) ? typed.map(String) : undefined;
}
