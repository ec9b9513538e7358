import { describeBalance } from '../assembly/describe-build.ts';
import { buildFromBank, compareInBank, findSwaps, mainScope } from '../planning.ts';
import type { Call, Outcome } from './command.ts';
import { UsageError } from './usage-error.ts';
import { noWords, oneWord, versionOf } from './words.ts';

/** forms build */
export async function build(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	return runBuild(call, call.options.keep === true);
}

/** forms explain: builds, keeps nothing, and says why not where it cannot be done. */
export async function explain(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	return runBuild(call, false);
}

async function runBuild(call: Call, keep: boolean): Promise<Outcome> {
	const { blueprint: id, count: typed = '1', seed = '1', like } = call.options;
	const count = Number(typed);
	if (typeof id !== 'string')
		throw new UsageError('expected --blueprint with the id of one; "blueprints list" names them');
	if (!Number.isInteger(count) || count < 1 || count > 4)
		throw new UsageError(`expected --count 1 to 4, found "${typed}"`);
	const store = await call.openStore(true);
	const { blueprint } = await store.blueprints.get(id);
	const today = new Date().toISOString().slice(0, 10);
	const wish = { blueprint, count, seed: String(seed), like: typeof like === 'string' ? like : undefined, keep, today };
	const outcome = await buildFromBank(store, wish, { signal: call.world.signal });
	const kept = outcome.kept.map((form) => `kept as ${form}`);
	return {
		value: outcome,
		lines: [...outcome.lines.trimEnd().split('\n'), ...kept],
		hasFaults: outcome.answer.kind !== 'built',
	};
}

/** forms compare A B */
export async function compare(call: Call, words: readonly string[]): Promise<Outcome> {
	const [first, second, ...more] = words;
	if (first === undefined || second === undefined || more.length > 0)
		throw new UsageError(`expected two forms, found ${words.length}`);
	const store = await call.openStore(true);
	const report = await compareInBank(store, [first, second], mainScope((await store.forms.get(first)).items));
	return { value: report, lines: describeBalance(report).trimEnd().split('\n') };
}

/** forms swap FORM --position N */
export async function swap(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FORM');
	const { position: typed, blueprint } = call.options;
	const position = Number(typed);
	if (!Number.isInteger(position) || position < 1)
		throw new UsageError(`expected --position such as 3, found "${typed ?? 'nothing'}"`);
	const store = await call.openStore(true);
	const { items } = await store.forms.get(id, versionOf(call));
	const plan = typeof blueprint === 'string' ? (await store.blueprints.get(blueprint)).blueprint : undefined;
	const offers = await findSwaps(store, id, position, {
		version: versionOf(call),
		blueprint: plan,
		scope: mainScope(items),
	});
	const lines = offers.map(({ item, version, likeness, differences, keepsPlan }) => {
		const differs = differences.length === 0 ? 'alike in every trait' : differences.join('; ');
		return `${item} v${version}  likeness ${likeness}${keepsPlan ? '' : '  breaks the plan'}  ${differs}`;
	});
	return { value: offers, lines: lines.length > 0 ? lines : [`Nothing could stand at position ${position} of ${id}.`] };
}

/** forms give FORM --group G --date D */
export async function give(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FORM');
	const { group, date } = call.options;
	if (typeof group !== 'string' || typeof date !== 'string')
		throw new UsageError('expected --group ID and --date such as 2026-09-14');
	const store = await call.openStore(true);
	const version = versionOf(call) ?? (await store.forms.get(id)).record.version;
	const giving = await store.forms.give(id, { version, group, date });
	return { value: giving, lines: [`version ${version} of ${id} was given to ${group} on ${date}`] };
}
