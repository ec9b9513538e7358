import type { ReviewRule } from '../review-note.ts';
import { wordsOf } from './words.ts';

/** Words of topics that can hurt or distract some students; our own list after the topics of published fairness guidelines. */
const topics: Readonly<Record<string, RegExp>> = {
	'money trouble': /\b(debt|owe[sd]?|owing|rent|evict\w*|bankrupt\w*|loan|poor|homeless\w*|overdrawn|overdraft)\b/i,
	gambling: /\b(bet|bets|betting|gambl\w*|casino|poker|lottery|dice)\b/i,
	'danger and disaster':
		/\b(drown\w*|crash\w*|accident|flood\w*|fire|injur\w*|dead|death|die[sd]?|kill\w*|war|weapon|gun)\b/i,
	'food and drink': /\b(alcohol|beer|wine|soda|candy|junk food)\b/i,
	'family and holidays': /\b(divorce\w*|birthday|christmas|easter|halloween|mother|father|parents?)\b/i,
	body: /\b(weight loss|overweight|diet|calories)\b/i,
	religion: /\b(church|temple|mosque|pray\w*|god)\b/i,
};

/** A word that a person should judge in its place. */
export const sensitiveWord: ReviewRule = {
	code: 'review-sensitive-word',
	guideline: {
		source: "a multi-state consortium's bias and sensitivity guidelines, 2021 (topics; the words are ours)",
	},
	find: (item) =>
		wordsOf(item).flatMap(({ path, words }) =>
			Object.entries(topics).flatMap(([topic, pattern]) => {
				const found = pattern.exec(words);
				return found
					? [{ path, message: `"${found[0]}" touches ${topic}: judge whether it may distract or hurt` }]
					: [];
			}),
		),
};
