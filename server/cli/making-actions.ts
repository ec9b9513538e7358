import { findFamily } from '../../item-bank/families/index.ts';
import type { Parameters } from '../../item-bank/families/parameters.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import type { Item, MadeItems } from '../../item-bank/types.ts';
import { makeInBank, makeVariants } from '../making.ts';
import type { Call, Outcome } from './command.ts';
import { writeKey } from './item-text.ts';
import { UsageError } from './usage-error.ts';
import { listOf, noWords, numberOf, oneWord, versionOf } from './words.ts';

/** items make: items of a family, kept unless it is a dry run. */
export async function make(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const { family, standard } = call.options;
	if (typeof family !== 'string') throw new UsageError('expected --family with a family; "families list" names them');
	const keep = call.options['dry-run'] !== true;
	const order = {
		family,
		count: numberOf(call, 'count', { least: 1, most: 1000, otherwise: 1 }),
		seed: seedOf(call),
		parameters: readParameters(family, listOf(call, 'with') ?? []),
		...(typeof standard === 'string' ? { standard } : {}),
		keep,
		approve: call.options.approve === true,
	};
	return tell(await makeInBank(keep ? await call.openStore(false) : undefined, order), keep);
}

/** items variants: items of the same shape as one of the bank. */
export async function variants(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'ITEM');
	const version = versionOf(call);
	const keep = call.options['dry-run'] !== true;
	const order = {
		count: numberOf(call, 'count', { least: 1, most: 200, otherwise: 1 }),
		seed: seedOf(call),
		...(version === undefined ? {} : { version }),
		keep,
		approve: call.options.approve === true,
	};
	return tell(await makeVariants(await call.openStore(true), id, order), keep);
}

function tell(made: MadeItems, keep: boolean): Outcome {
	const lines = made.items.map(({ id, isNew, item }) => {
		const mark = id === undefined ? '' : `${id}  ${isNew ? '' : 'already there  '}`;
		return `${mark}${item.name}${describeKey(item)}`;
	});
	const fresh = made.items.filter(({ isNew }) => isNew).length;
	const end = keep ? `${fresh} kept in the bank` : `${made.items.length} made, nothing kept`;
	return { value: made, lines: [...lines, ...made.problems.map(({ message }) => message), end] };
}

/** The key in a few words; nothing for kinds whose key says little without its entries. */
function describeKey(item: Item): string {
	const key = computeKey(item);
	return key.kind === 'value' || key.kind === 'options' ? `  key ${writeKey(key)}` : '';
}

function seedOf(call: Call): string {
	const { seed } = call.options;
	if (seed === undefined) return '1';
	if (typeof seed === 'string' && /^[A-Za-z0-9][A-Za-z0-9 ._-]{0,39}$/.test(seed)) return seed;
	throw new UsageError(`expected --seed of letters, digits, spaces, ".", "_" or "-", found "${seed}"`);
}

/** NAME=VALUE as typed, numbers and yes or no as the rules of the family read them. */
function readParameters(family: string, typed: readonly string[]): Parameters {
	const rules = findFamily(family)?.parameters ?? {};
	return Object.fromEntries(
		typed.map((text) => {
			const [, name, value] = /^([A-Za-z]+)=(.+)$/.exec(text) ?? [];
			if (name === undefined || value === undefined)
				throw new UsageError(`expected --with NAME=VALUE, found "${text}"`);
			const kind = Object.hasOwn(rules, name) ? rules[name]?.kind : undefined;
			if (kind === 'integer' && /^-?\d{1,9}$/.test(value)) return [name, Number(value)];
			if (kind === 'switch' && /^(true|false)$/.test(value)) return [name, value === 'true'];
			return [name, value];
		}),
	);
}
