import { layOutMathematics, type Piece, type WritingStyle } from './layout.ts';
import type { MathematicsNode } from './tree.ts';

/**
 * Writes an expression or statement as one line: minus U+2212, ×, ÷, blanks around operators and relations, the
 * author's parentheses and the necessary ones. parse(print(e)) is e up to normaliseExpression; printing what was parsed
 * from a printed line gives the same line. The shortened style reads back as an equivalent expression, not the same one.
 */
export function printMathematics(mathematics: MathematicsNode, style: WritingStyle = 'textbook'): string {
	return printPieces(layOutMathematics(mathematics, style));
}

function printPieces(pieces: readonly Piece[]): string {
	return pieces.map(printPiece).join('');
}

function printPiece(piece: Piece): string {
	switch (piece.kind) {
		case 'numeral':
			return piece.text;
		case 'unknown':
			return '?';
		case 'sign':
			return '−';
		case 'operator':
		case 'relation':
			return ` ${piece.text} `;
		case 'fence':
			return piece.fence === 'bars' ? `|${printPieces(piece.pieces)}|` : `(${printPieces(piece.pieces)})`;
		default:
			return piece satisfies never;
	}
}
