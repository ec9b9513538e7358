import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MATHML_NAMESPACE, renderMathml } from '../../../item-bank/expression/mathml.ts';
import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import type { MarkupNode } from '../../../item-bank/markup/tree.ts';
import { hasCommand, referenceFolder, requireOutside } from '../../helpers/reference.ts';
import { anyExpression, anyStatement } from './arbitraries.ts';

function write(node: MarkupNode): string {
	if (typeof node === 'string') return node.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
	const attributes = Object.entries(node.attributes).map(([name, value]) => ` ${name}="${value}"`);
	return `<${node.name}${attributes.join('')}>${node.children.map(write).join('')}</${node.name}>`;
}

function readText(node: MarkupNode): string {
	return typeof node === 'string' ? node : node.children.map(readText).join('');
}

describe('renderMathml', () => {
	it('draws numerals, signs, operators and fences as rows', () => {
		const fence = (form: string, glyph: string) => `<mo form="${form}" fence="true" stretchy="false">${glyph}</mo>`;
		expect(write(renderMathml(parseMathematics('|3 + -8| = ?')))).toBe(
			`<math xmlns="${MATHML_NAMESPACE}"><mrow><mrow>${fence('prefix', '|')}<mn>3</mn><mo form="infix">+</mo>` +
				`<mrow>${fence('prefix', '(')}<mo form="prefix">−</mo><mn>8</mn>${fence('postfix', ')')}</mrow>` +
				`${fence('postfix', '|')}</mrow><mo form="infix">=</mo><mi mathvariant="normal">?</mi></mrow></math>`,
		);
	});

	it('shows the same signs as the printed line, in both styles', () => {
		fc.assert(
			fc.property(fc.oneof(anyExpression(true), anyStatement()), fc.boolean(), (tree, isShort) => {
				const style = isShort ? 'shortened' : 'textbook';
				expect(readText(renderMathml(tree, style))).toBe(printMathematics(tree, style).replaceAll(' ', ''));
			}),
			{ numRuns: 500 },
		);
	});

	const schema = referenceFolder && join(referenceFolder, 'schemas/w3c/mathml3/mathml3.xsd');
	const isReady =
		requireOutside('the MathML schema', schema !== undefined) && requireOutside('xmllint', hasCommand('xmllint'));

	// Source: the XML Schema of MathML 3 as published by the W3C, checked by libxml2's xmllint.
	it.skipIf(!isReady)('is valid MathML 3 for hundreds of expressions and statements', () => {
		const trees = [
			...fc.sample(anyExpression(true), { numRuns: 300, seed: 3 }),
			...fc.sample(anyStatement(), { numRuns: 200, seed: 4 }),
		];
		const documents = new Set(trees.map((tree) => write(renderMathml(tree))));
		expect(documents.size).toBeGreaterThan(400);
		const folder = mkdtempSync(join(tmpdir(), 'zeropair-mathml-'));
		try {
			const bad = write(renderMathml(parseMathematics('3 + 4'))).replace('infix', 'middle');
			const files = [...documents, bad].map((text, index) => {
				const file = join(folder, `${index}.xml`);
				writeFileSync(file, text);
				return file;
			});
			const run = spawnSync('xmllint', ['--noout', '--nonet', '--schema', schema ?? '', ...files], {
				encoding: 'utf8',
			});
			const complaints = run.stderr.split('\n').filter((line) => !line.endsWith(' validates') && line !== '');
			// One document is wrong on purpose, to show that the schema is looked at.
			expect(complaints.filter((line) => !line.includes(`/${documents.size}.xml`))).toStrictEqual([]);
			expect(complaints.join()).toContain("'middle'");
			expect(run.stderr.match(/ validates$/gm)?.length).toBe(documents.size);
		} finally {
			rmSync(folder, { recursive: true });
		}
	});
});
