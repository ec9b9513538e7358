import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../../server/print/page/fonts.ts';
import { type Block, isMark, type Mark } from '../../../../server/print/page/marks.ts';
import { layText, richSpans } from '../../../../server/print/page/text.ts';

const style = { size: 12, leading: 16 };
const textsOf = (parts: readonly (Block | Mark)[]): readonly Extract<Mark, { kind: 'text' }>[] =>
	parts.flatMap((part) => (isMark(part) ? (part.kind === 'text' ? [part] : []) : textsOf(part.children)));

/** Lines from top to bottom, as their marks joined. */
function linesOf(text: string, width: number): readonly string[] {
	const marks = textsOf(layText(richSpans(text, 'serif'), width, style).place(0, 0));
	const rows = [...new Set(marks.map(({ y }) => y))];
	return rows.map((row) =>
		marks
			.filter(({ y }) => y === row)
			.map(({ text: part }) => part)
			.join(''),
	);
}

describe('lines of rich text', () => {
	test('stay within the width, lose nothing and keep the order', () => {
		const words = fc.array(
			fc.oneof(fc.stringMatching(/^[a-z,.]{1,40}$/), fc.constantFrom('`-3 + (-8)`', '`-5`', '`2 × (-7) - 4`')),
			{ minLength: 1, maxLength: 30 },
		);
		fc.assert(
			fc.property(words, fc.integer({ min: 40, max: 400 }), (parts, width) => {
				const text = parts.join(' ');
				const marks = textsOf(layText(richSpans(text, 'serif'), width, style).place(0, 0));
				for (const mark of marks)
					expect(mark.x + textWidth(mark.text.trimEnd(), mark.font, mark.size)).toBeLessThanOrEqual(width + 0.5);
				const plain = (all: string) => all.replace(/\s/g, '');
				const printed = richSpans(text, 'serif')
					.map((span) => span.text)
					.join('');
				expect(plain(marks.map((mark) => mark.text).join(''))).toBe(plain(printed));
			}),
			{ numRuns: 60 },
		);
	});

	test('do not break mathematics that fits on a line, nor part a number from its degree sign', () => {
		expect(linesOf('The water stood at `-3 + (-8)` yesterday', 130)).toEqual([
			'The water stood at ',
			'−3 + (−8) yesterday',
		]);
		expect(linesOf('It was then `-18` °C again', 92)).toEqual(['It was then ', '−18 °C again']);
	});

	test('break mathematics before an operator when a line cannot hold it', () => {
		expect(linesOf('`2 × (-7) - 4 + 5 - 6`', 60).map((line) => line.trim())).toEqual(['2 × (−7)', '− 4 + 5 − 6']);
	});

	test('carry mathematics with how it is read aloud', () => {
		const parts = layText(richSpans('What is `-5 - (-12)`?', 'serif'), 400, style).place(0, 0);
		expect(parts).toMatchObject([
			{ kind: 'text', text: 'What is ' },
			{ tag: 'Formula', alt: 'negative 5 minus negative 12' },
			{ kind: 'text', text: '?' },
		]);
	});
});
