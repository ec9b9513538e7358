import { findKey } from '../../items/key.ts';
import { haladyna, type ReviewRule } from '../review-note.ts';

/** A key much longer than every other option is picked for its length. */
export const optionLength: ReviewRule = {
	code: 'review-option-length',
	guideline: haladyna(24),
	find: (item) => {
		if (item.kind !== 'choice') return [];
		const lengths = item.options.map(({ content }) => (content.kind === 'text' ? content.text.length : 0));
		const finding = findKey(item);
		if (lengths.includes(0) || !('key' in finding) || finding.key.kind !== 'options') return [];
		const [keyId] = finding.key.options;
		const key = item.options.findIndex(({ id }) => id === keyId);
		const others = lengths.filter((_, index) => index !== key);
		const longest = Math.max(...others);
		if ((lengths[key] ?? 0) < longest * 1.5 + 10) return [];
		return [
			{
				path: `/options/${key}`,
				message: `expected options of like length, found a key of ${lengths[key]} characters beside ${longest} at most`,
			},
		];
	},
};
