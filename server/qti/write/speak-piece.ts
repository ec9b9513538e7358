const words: Readonly<Record<string, string>> = {
	'+': 'plus',
	'×': 'times',
	'÷': 'divided by',
	'=': 'equals',
	'<': 'is less than',
	'>': 'is greater than',
	'≤': 'is less than or equal to',
	'≥': 'is greater than or equal to',
	'(': 'open parenthesis',
	')': 'close parenthesis',
};

/**
 * The words for a piece of a statement with true signs that is too short to be parsed, such as what stands before a gap: a minus
 * after a value is "minus", any other before a number "negative". Signs that are not known stand as they are. What stands before
 * the piece is a value or not.
 */
export function speakPiece(piece: string, followsValue = false): string {
	const tokens = piece.match(/\d+|[^\s\d]/g) ?? [];
	let isAfterValue = followsValue;
	return tokens
		.map((token, index) => {
			const after = tokens[index + 1] ?? '';
			const isClosing = token === '|' && (isAfterValue || /^[^\d−(|]/.test(after));
			const spoken = speakToken(token, after, isAfterValue, isClosing);
			isAfterValue = /^\d|\)/.test(token) || isClosing;
			return spoken;
		})
		.join(' ');
}

function speakToken(token: string, after: string, isAfterValue: boolean, isClosing: boolean): string {
	if (token === '|') return isClosing ? 'end of absolute value' : 'the absolute value of';
	if (token !== '−') return words[token] ?? token;
	if (isAfterValue || after === '') return 'minus';
	return /^\d/.test(after) ? 'negative' : 'the opposite of';
}
