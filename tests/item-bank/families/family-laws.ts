import { describe, expect, test } from 'vitest';
import { reviewItem } from '../../../item-bank/checks/review-item.ts';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import type { Family } from '../../../item-bank/families/family.ts';
import { featuresOf } from '../../../item-bank/families/features.ts';
import { findFamily } from '../../../item-bank/families/index.ts';
import { checkParameters, makeItem } from '../../../item-bank/families/make-items.ts';
import type { Parameters } from '../../../item-bank/families/parameters.ts';
import { optionsOf, workOf } from '../../../item-bank/items/asked.ts';
import { entryListsOf } from '../../../item-bank/items/entries.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { partsOf } from '../../../item-bank/items/parts.ts';
import { createRandom } from '../../../item-bank/random/random.ts';
import type { Figure, Item } from '../../../item-bank/types.ts';
import { checkShape } from '../../../server/json-schemas.ts';

/** What a test of one family says of it besides what holds for all. */
export interface FamilyExpectations {
	/** Name and key of the item of seed "test/1", worked out by hand from the name: the same forever. */
	readonly first: { readonly name: string; readonly key: unknown };
	/** What the family promises of each item. The asked expression is empty for kinds without one. */
	readonly holds: (item: Item, asked: string) => void;
	/** Parameters of the right type that leave no item, and a word of the reason; none where every choice leaves some. */
	readonly impossible?: readonly [Parameters, string];
}

const seeds = Array.from({ length: 60 }, (_, index) => `test/${index + 1}`);

/** Runs on a family what holds for all of them, and what its own test expects. */
export function testFamily(family: Family, { first, holds, impossible }: FamilyExpectations): void {
	describe(family.id, () => {
		const items = seeds.flatMap((seed) => makeItem(family, seed) ?? []);

		test('makes the item it always made of a seed', () => {
			const item = makeItem(family, 'test/1');
			expect(item?.name).toBe(first.name);
			expect(item && computeKey(item)).toEqual(first.key);
		});

		test('makes sound items of its kinds, models, depths and standards, each from its origin again', () => {
			expect(items.length).toBeGreaterThan(seeds.length / 2);
			const codes = new Set(family.standards.map(({ code }) => code));
			for (const item of items) {
				expect(checkShape('item.schema.json', item), item.name).toEqual([]);
				expect(
					reviewItem(item).filter(({ severity }) => severity === 'stop'),
					item.name,
				).toEqual([]);
				expect(family.kinds).toContain(item.kind);
				expect(family.given).toContain(item.given);
				expect(family.dok).toContain(item.dok);
				for (const { code } of item.alignments) expect([...codes]).toContain(code);
				const { origin } = item;
				expect(origin && findFamily(origin.family, origin.version)).toBe(family);
				expect(origin && makeItem(family, origin.seed, origin.parameters)).toEqual(item);
			}
		});

		test('gives every wrong option the patterns that lead to it, some of them its targets', () => {
			const tagged = items.flatMap((item) =>
				partsOf(item).flatMap((part) => entryListsOf(part).flatMap(({ entries }) => entries.flatMap(patternsOf))),
			);
			for (const pattern of tagged) expect(pattern).toMatch(/^[a-z]+(-[a-z]+)+$/);
			if (tagged.length > 0) expect(tagged.some((pattern) => family.targets.some((id) => id === pattern))).toBe(true);
		});

		test('makes some items harder than others by the features it names, over what may be asked of it', () => {
			const varied = [...items, ...makeVaried(family)].map(featuresOf);
			for (const name of family.features) {
				expect(new Set(varied.map((features) => features[name])).size, name).toBeGreaterThan(1);
			}
		});

		test('keeps its promise', () => {
			for (const item of items) holds(item, workOf(item) ?? '');
		});

		test('refuses parameters it does not have, and values beyond their rules', () => {
			expect(checkParameters(family, { colour: 3 })).toMatchObject([
				{ code: 'family-parameter-unknown', path: '/colour' },
			]);
			for (const [name, rule] of Object.entries(family.parameters)) {
				const beyond = rule.kind === 'integer' ? rule.most + 1 : 'neither';
				expect(checkParameters(family, { [name]: beyond })).toMatchObject([
					{ code: 'family-parameter-value', path: `/${name}` },
				]);
			}
		});

		if (impossible !== undefined) {
			test('says within a second what leaves no item', () => {
				const [parameters, reason] = impossible;
				const begun = performance.now();
				const problems = checkParameters(family, parameters);
				expect(performance.now() - begun).toBeLessThan(1000);
				expect(problems).toMatchObject([{ code: 'family-parameters-impossible', path: '' }]);
				expect(problems[0]?.message).toContain(reason);
			});
		}
	});
}

function patternsOf(entry: unknown): readonly string[] {
	const tagged = entry as { readonly patterns?: readonly string[] };
	return tagged.patterns ?? [];
}

/** The value of an expression, or of the right option of an item that has one. */
export function worthOf(subject: Item | string): number {
	if (typeof subject === 'string') return evaluate(parseExpression(subject));
	const key = computeKey(subject);
	if (key.kind === 'value') return key.value;
	const [id] = key.kind === 'options' ? key.options : [];
	const content = optionsOf(subject).find((option) => option.id === id)?.content;
	if (content?.kind !== 'mathematics') throw new Error(`no value among the options of ${subject.name}`);
	return worthOf(content.math);
}

/** The only figure of a stem. */
export function figureOf({ stem, name }: { readonly stem: Item['stem']; readonly name: string }): Figure {
	const figures = stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	const [figure] = figures;
	if (figure === undefined || figures.length > 1)
		throw new Error(`expected one figure in ${name}, found ${figures.length}`);
	return figure;
}

/** Rows of the only table of a stem, without backticks. */
export function rowsOf({
	stem,
	name,
}: {
	readonly stem: Item['stem'];
	readonly name: string;
}): readonly (readonly string[])[] {
	const tables = stem.flatMap((block) => (block.kind === 'table' ? [block.rows] : []));
	const [rows] = tables;
	if (rows === undefined || tables.length > 1) throw new Error(`expected one table in ${name}, found ${tables.length}`);
	return rows.map((row) => row.map((cell) => cell.replaceAll('`', '')));
}

/** What the options say, in order. */
export function optionTextsOf(item: Item): readonly string[] {
	return optionsOf(item).map(({ content }) =>
		content.kind === 'mathematics' ? content.math : content.kind === 'text' ? content.text : content.figure.kind,
	);
}

/** Items of parameters drawn within their rules; those that leave no item are passed over. */
function makeVaried(family: Family): readonly Item[] {
	const random = createRandom(`vary ${family.id}`);
	return Array.from({ length: 40 }, (_, turn) => {
		const parameters = Object.fromEntries(
			Object.entries(family.parameters).map(([name, rule]) => [
				name,
				rule.kind === 'integer'
					? random.nextInteger(rule.least, rule.most)
					: rule.kind === 'word'
						? random.pick(rule.words)
						: random.pick([true, false]),
			]),
		);
		return checkParameters(family, parameters).length > 0 ? [] : (makeItem(family, `vary/${turn}`, parameters) ?? []);
	}).flat();
}
