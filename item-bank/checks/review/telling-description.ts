import { describeFigure } from '../../figures/describe-figure.ts';
import { figuresOf } from '../../items/figures.ts';
import { findKey } from '../../items/key.ts';
import type { ReviewRule } from '../review-note.ts';

/** A description that speaks the very number asked for may give the answer to those who hear it. */
export const tellingDescription: ReviewRule = {
	code: 'review-telling-description',
	guideline: { source: 'WCAG 2.2, 1.1.1: where text would spoil a test, it identifies only' },
	find: (item) => {
		const finding = findKey(item);
		if (!('key' in finding) || finding.key.kind !== 'value' || Math.abs(finding.key.value) < 2) return [];
		const { value } = finding.key;
		const spoken = value < 0 ? `negative ${-value}` : String(value);
		const pattern = new RegExp(`(?<!negative )\\b${spoken}\\b(?! counters| groups| evenly| ticks|th )`);
		return figuresOf(item).flatMap(({ path, figure }) => {
			const description = describeFigure(figure);
			if (!pattern.test(description) || path.startsWith('/line')) return [];
			return [
				{
					path,
					message: `expected a description that leaves the answer open, found "${spoken}" in "${description.slice(0, 80)}…"`,
				},
			];
		});
	},
};
