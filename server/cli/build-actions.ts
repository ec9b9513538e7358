import type { BuildProgress } from '../assembly/build-request.ts';
import { describeBalance } from '../assembly/describe-build.ts';
import { buildFromBank, compareInBank, findSwaps, takeSwap } from '../planning.ts';
import type { Call, Outcome } from './command.ts';
import { UsageError } from './usage-error.ts';
import { listOf, noWords, numberOf, oneWord, versionOf } from './words.ts';

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
	const { blueprint: id, seed = '1', like } = call.options;
	if (typeof id !== 'string')
		throw new UsageError('expected --blueprint with the id of one; "blueprints list" names them');
	const count = numberOf(call, 'count', { least: 1, most: 4, otherwise: 1 });
	const [ids, titles] = [listOf(call, 'id'), listOf(call, 'title')];
	const store = await call.openStore(true);
	const { blueprint } = await store.blueprints.get(id, versionOf(call));
	const today = new Date().toISOString().slice(0, 10);
	const asked = { blueprint, count, seed: String(seed), like: typeof like === 'string' ? like : undefined };
	const outcome = await buildFromBank(
		store,
		{ ...asked, keep, ids, titles, today, makeMissing: call.options['make-missing'] === true },
		{
			signal: call.world.signal,
			onProgress: tellProgress(call),
		},
	);
	const kept = [
		...outcome.made.map((item) => `made because the bank lacked it: ${item.id}  ${item.name}`),
		...outcome.kept.map((form) => `kept as ${form}`),
	];
	return {
		value: outcome,
		lines: [...outcome.lines.trimEnd().split('\n'), ...kept],
		hasFaults: outcome.answer.kind !== 'built',
	};
}

/** A line every two seconds, for builds that take a while. */
function tellProgress({ world, isJson }: Call): (progress: BuildProgress) => void {
	let last = Date.now();
	return ({ phase, nodes = 0, best, bound }) => {
		if (isJson || Date.now() - last < 2000) return;
		last = Date.now();
		const found = best === undefined ? 'no forms yet' : `unevenness ${best}, at least ${bound ?? 0}`;
		world.printError(`${phase}: ${nodes} nodes, ${found}`);
	};
}

/** forms compare A B */
export async function compare(call: Call, words: readonly string[]): Promise<Outcome> {
	const [first, second, ...more] = words;
	if (first === undefined || second === undefined || more.length > 0)
		throw new UsageError(`expected two forms, found ${words.length}`);
	const store = await call.openStore(true);
	const report = await compareInBank(store, first, second);
	return { value: report, lines: describeBalance(report).trimEnd().split('\n') };
}

/** forms swap FORM --position N: offers, or with --take ITEM a new version of the form with that item there. */
export async function swap(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FORM');
	const { blueprint, take } = call.options;
	const position = numberOf(call, 'position', { least: 1, most: 1000 });
	const store = await call.openStore(true);
	const plan = typeof blueprint === 'string' ? (await store.blueprints.get(blueprint)).blueprint : undefined;
	const version = versionOf(call);
	if (typeof take === 'string') {
		const { record, item } = await takeSwap(store, { form: id, version, position, item: take });
		const said = `${record.id} version ${record.version} has ${item.id} v${item.version} at position ${position}`;
		return { value: record, lines: [said] };
	}
	const offers = await findSwaps(store, id, position, { version, blueprint: plan, notOnForms: listOf(call, 'beside') });
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
