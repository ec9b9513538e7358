import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkItem } from '../../item-bank/checks/check-item.ts';
import { reviewForm } from '../../item-bank/checks/review-form.ts';
import { reviewItem } from '../../item-bank/checks/review-item.ts';
import { parseMathematics } from '../../item-bank/expression/parse.ts';
import { textsOf } from '../../item-bank/items/texts.ts';
import { parseRichText } from '../../item-bank/markup/rich-text.ts';
import type { Form, Item } from '../../item-bank/types.ts';
import { projectRoot } from '../../server/project-root.ts';

const demo = join(projectRoot, 'item-bank/demo');
const read = <T>(path: string): T => JSON.parse(readFileSync(join(demo, path), 'utf8')) as T;
const rounds = 5;
const passes = 60;

/**
 * Prints how many items of the demo bank a second are checked for approval and reviewed with advice, in processor time, and
 * how long that takes against parsing all texts of the same items; then how long a form takes.
 */
export async function run(): Promise<void> {
	const entries = readdirSync(join(demo, 'items')).flatMap((name) =>
		read<readonly { readonly id: string; readonly item: Item }[]>(`items/${name}`),
	);
	const items = entries.map(({ item }) => item);
	// The rules are many small functions, which take a while to be compiled.
	for (let pass = 0; pass < passes * 20; pass += 1) items.forEach((item) => [parseTexts(item), reviewItem(item)]);
	const ratios: { readonly checked: number; readonly reviewed: number }[] = [];
	for (let round = 0; round < rounds; round += 1) {
		const parsed = time(items, parseTexts);
		const checked = time(items, checkItem);
		const reviewed = time(items, reviewItem);
		ratios.push({ checked: checked / parsed, reviewed: reviewed / parsed });
		console.log(
			`${rate(parsed)} parsed, ${rate(checked)} checked, ${rate(reviewed)} reviewed items a second; ` +
				`time against parsing ${(checked / parsed).toFixed(1)} and ${(reviewed / parsed).toFixed(1)}`,
		);
	}
	const median = (values: readonly number[]): string =>
		[...values].sort((a, b) => a - b)[rounds >> 1]?.toFixed(1) ?? '';
	console.log(
		`median of ${rounds}: checking to parsing ${median(ratios.map(({ checked }) => checked))}, reviewing to parsing ${median(ratios.map(({ reviewed }) => reviewed))}`,
	);
	const notes = items.flatMap(reviewItem);
	console.log(`${notes.length} notes on ${items.length} items`);
	const bank = new Map(entries.map(({ id, item }) => [id, item]));
	const forms = read<readonly { readonly form: Form }[]>('forms.json').map(({ form }) => form);
	const perForm = time(forms, (form) => reviewForm(form, (id) => bank.get(id)));
	console.log(`a form of 20 items is reviewed in ${(perForm / 1000).toFixed(2)} ms`);
}

function parseTexts(item: Item): void {
	for (const { kind, text } of textsOf(item)) {
		if (kind === 'rich') parseRichText(text);
		else if (kind === 'mathematics') parseMathematics(text);
	}
}

/** Microseconds of processor time for one. */
function time<T>(all: readonly T[], work: (one: T) => unknown): number {
	const start = process.cpuUsage();
	for (let pass = 0; pass < passes; pass += 1) for (const one of all) work(one);
	const { user, system } = process.cpuUsage(start);
	return (user + system) / (passes * all.length);
}

function rate(microseconds: number): string {
	return Math.round(1_000_000 / microseconds).toLocaleString('en');
}
