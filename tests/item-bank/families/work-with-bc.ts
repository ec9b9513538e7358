import { execFileSync } from 'node:child_process';
import { families } from '../../../item-bank/families/index.ts';
import { makeItem } from '../../../item-bank/families/make-items.ts';
import { workOf } from '../../../item-bank/items/asked.ts';
import type { Item } from '../../../item-bank/types.ts';
import { worthOf } from './family-laws.ts';

/** Work of made items, each with its key as the bank says it and as bc works it out. */
export interface WorkedTwice {
	readonly ours: readonly string[];
	readonly theirs: readonly string[];
}

/**
 * Makes so many items of every family whose keys are numbers that work leads to, and has bc (POSIX; integer arithmetic, scale
 * 0) work them out as well. Items whose work has an unknown are left out.
 */
export function workWithBc(seed: string, each: number): WorkedTwice {
	const keyed: { readonly line: string; readonly key: number }[] = [];
	for (const family of families) {
		if (!family.kinds.includes('gridded') || family.given.includes('number-line')) continue;
		for (let turn = 1; turn <= each; turn += 1) {
			const item = makeItem(family, `${seed}/${turn}`);
			const line = item === undefined ? '' : (workOf(item) ?? '');
			if (item === undefined || line === '' || line.includes('?') || !hasNumber(item)) continue;
			keyed.push({ line, key: worthOf(item) });
		}
	}
	const program = [
		'define a(x) { if (x < 0) return (-x); return (x); }',
		...keyed.map(({ line }) => writeForBc(line)),
		'',
	];
	const output = execFileSync('bc', ['-q'], { input: program.join('\n'), encoding: 'utf8', maxBuffer: 2 ** 28 });
	const worked = output.trim().split('\n');
	return {
		ours: keyed.map(({ line, key }) => `${line} = ${key}`),
		theirs: keyed.map(({ line }, index) => `${line} = ${worked[index]}`),
	};
}

/** Whether the answer is a number that the item says, rather than a letter, a picture or a word. */
function hasNumber(item: Item): boolean {
	if (item.kind === 'gridded' || item.kind === 'point') return true;
	return (
		item.kind === 'choice' &&
		item.answerIn === 'number' &&
		item.options.every(({ content }) => content.kind === 'mathematics')
	);
}

/** An expression of the core in the language of bc: operators mapped, absolute values as calls of a function a. */
function writeForBc(line: string): string {
	let written = '';
	let canEnd = false;
	for (const glyph of line) {
		if (glyph === '|') written += canEnd ? ')' : 'a(';
		else written += { '×': '*', '÷': '/' }[glyph] ?? glyph;
		if (glyph !== ' ' && !(glyph === '|' && canEnd)) canEnd = /[0-9)]/.test(glyph);
	}
	return written;
}
