import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { Item, ItemFindings, Option, OptionContent, ReviewEntry, StemBlock } from '../../item-bank/types.ts';

/** An item in one line. */
export function listItem({ id, version, status, item }: ItemRecord): string {
	const lead = item.alignments.find(({ primary }) => primary === true) ?? item.alignments[0];
	return [
		`${id} v${version}`,
		status.padEnd(8),
		item.given.padEnd(11),
		`DOK ${item.dok}`,
		lead?.code ?? '',
		item.name,
	].join('  ');
}

/** An item as a person reads it: facts, stem, options with the key marked, worked steps, what is left to mend. */
export function describeItem({ id, version, status, item }: ItemRecord, findings: ItemFindings): readonly string[] {
	const { key, steps, problems } = findings;
	return [
		`${id} version ${version} (${status}): ${item.name}`,
		`${item.kind}, gives ${item.given}, answer in ${item.answerIn}, DOK ${item.dok}, ${item.points} point${item.points === 1 ? '' : 's'}`,
		...item.alignments.map(
			({ framework, edition, code, grade, extent, primary }) =>
				`  ${framework} ${edition} ${code} (grade ${grade}, ${extent}${primary ? ', primary' : ''})`,
		),
		'',
		...item.stem.flatMap(writeBlock),
		'',
		...writeAnswer(item, key),
		...(steps
			? ['', 'Worked steps:', ...steps.map(({ line, note }) => `  ${line}${note === '' ? '' : `   ${note}`}`)]
			: []),
		...(problems.length > 0 ? ['', 'To mend:', ...problems.map(({ path, message }) => `  ${path}: ${message}`)] : []),
	];
}

function writeBlock(block: StemBlock): readonly string[] {
	switch (block.kind) {
		case 'paragraph':
			return [block.text];
		case 'mathematics':
			return [`    ${block.math}`];
		case 'figure':
			return [`[${describeFigure(block.figure)}]`];
		case 'table':
			return [
				...(block.caption === undefined ? [] : [block.caption]),
				...[block.header, ...block.rows].map((row) => `  ${row.join(' | ')}`),
			];
	}
}

function writeAnswer(item: Item, key: ItemFindings['key']): readonly string[] {
	switch (item.kind) {
		case 'gridded':
			return [`Key: ${writeKey(key)}${item.unit === undefined ? '' : ` ${item.unit}`} (grid ${item.grid})`];
		case 'choice':
		case 'multiple-choice':
			return writeEntries(item.options, key?.kind === 'options' ? key.options : []);
		case 'point':
			return [`[${describeFigure(item.line)}]`, `Key: a mark at ${writeKey(key)}`];
		case 'order':
			return [...writeEntries(item.entries, []), `Key: ${writeKey(key)} (${item.direction})`];
		case 'match':
			return [...writeEntries(item.left, []), 'with', ...writeEntries(item.right, []), `Key: ${writeKey(key)}`];
		case 'inline-choice':
			return [
				`    ${item.statement.replace('_', '____')}`,
				...item.choices.map(({ id, math }) => `  ${id}) ${math}`),
				`Key: ${writeKey(key)}`,
			];
		case 'explanation':
			return item.rubric.map(({ points, descriptor }) => `  ${points}: ${descriptor}`);
		case 'set':
			return item.parts.flatMap((part, index) => {
				const keys = key?.kind === 'parts' ? key.parts : [];
				return [`Part ${index + 1}`, ...part.stem.flatMap(writeBlock), ...writeAnswer(part, keys[index])];
			});
	}
}

function writeEntries(entries: readonly Option[], right: readonly string[]): readonly string[] {
	return entries.map(({ id, content }) => `${right.includes(id) ? '*' : ' '} ${id}) ${writeContent(content)}`);
}

/** A key in a few words. */
export function writeKey(key: ItemFindings['key']): string {
	switch (key?.kind) {
		case 'value':
			return String(key.value).replace('-', '\u2212');
		case 'options':
			return key.options.join(', ');
		case 'order':
			return key.order.join(', ');
		case 'pairs':
			return key.pairs.map(({ left, right }) => `${left}-${right}`).join(', ');
		default:
			return 'none yet';
	}
}

function writeContent(content: OptionContent): string {
	switch (content.kind) {
		case 'mathematics':
			return content.math;
		case 'text':
			return content.text;
		case 'figure':
			return `[${describeFigure(content.figure)}]`;
	}
}

/** A note of the rules of item writing, from its path on. */
export function writeNote({ severity, path, message, guideline }: ReviewEntry): string {
	const { source, number, isFromMemory } = guideline;
	const where = `${source}${number === undefined ? '' : `, guideline ${number}`}${isFromMemory ? ', number from memory' : ''}`;
	return `${path}: ${severity === 'stop' ? 'stops approval' : 'advice'}: ${message} (${where})`;
}
