import type { Rule } from '../rule.ts';

/** Words of topics that can hurt, distract or shut out some students; our own list after the topics of published fairness guidelines. */
const topics: readonly (readonly [string, RegExp])[] = [
	[
		'money trouble',
		/\b(debts?|owe[sd]?|owing|rent|evict\w*|bankrupt\w*|loans?|poor|poverty|homeless\w*|overdrawn|overdraft|welfare)\b/i,
	],
	['gambling', /\b(bet|bets|betting|gambl\w*|casino|poker|lotter(?:y|ies)|dice|jackpot|wager\w*)\b/i],
	['shares and their losses', /\b(stock market|stock price|share price|shares? (?:fell|lost|dropped)|investors?)\b/i],
	['luxuries', /\b(yacht|mansion|limousine|jewel\w*|luxury|private jet|cruise)\b/i],
	[
		'danger and disaster',
		/\b(drown\w*|crash\w*|accident|flood(?:s|ed|ing)?|fire|injur\w*|dead|death|die[sd]?|kill\w*|war|weapons?|guns?|earthquake|hurricane|tornado|explosion|scuba|skydiv\w*|divers?|diving)\b/i,
	],
	['food and drink', /\b(alcohol|beer|wine|soda|candy|junk food)\b/i],
	[
		'family and holidays',
		/\b(divorce\w*|birthday|christmas|easter|halloween|thanksgiving|mother|father|mom|dad|parents?)\b/i,
	],
	['body', /\b(weight loss|overweight|diet|calories)\b/i],
	['religion', /\b(church|temple|mosque|synagogue|pray\w*|god|bible)\b/i],
	[
		'knowledge of a sport',
		/\b(golf\w*|birdie|bogey|(?:under|over|above|below) par|yard line|quarterback|touchdown|line of scrimmage)\b/i,
	],
];

/** A quick look whether any of them is there at all. */
const anyTopic = new RegExp(topics.map(([, pattern]) => pattern.source).join('|'), 'i');

/** A word that a person should judge in its place. */
export const sensitiveWord: Rule = {
	severity: 'advise',
	guideline: {
		source: "a multi-state consortium's bias and sensitivity guidelines, 2021 (topics; the words are ours)",
	},
	find: ({ words }) =>
		words.flatMap(({ path, words: text }) => {
			if (!anyTopic.test(text)) return [];
			return topics.flatMap(([topic, pattern]) => {
				const found = pattern.exec(text)?.[0];
				if (found === undefined) return [];
				const message = `"${found}" touches ${topic}: judge whether it may distract, hurt or shut out`;
				return [{ code: 'review-sensitive-word', path, message }];
			});
		}),
};
