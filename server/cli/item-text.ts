import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { Item, ItemFindings, OptionContent, StemBlock } from '../../item-bank/types.ts';

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
	if (item.kind === 'gridded') {
		const value = key?.kind === 'value' ? String(key.value).replace('-', '\u2212') : 'none yet';
		return [`Key: ${value}${item.unit === undefined ? '' : ` ${item.unit}`} (grid ${item.grid})`];
	}
	const right = key?.kind === 'options' ? key.options : [];
	return item.options.map(({ id, content }) => `${right.includes(id) ? '*' : ' '} ${id}) ${writeContent(content)}`);
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
