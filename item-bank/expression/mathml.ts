import { element, type MarkupElement } from '../markup/tree.ts';
import { layOutMathematics, type Piece, type WritingStyle } from './layout.ts';
import type { MathematicsNode } from './tree.ts';

/** Namespace of MathML (MathML 3, section 2.1). */
export const MATHML_NAMESPACE = 'http://www.w3.org/1998/Math/MathML';

/**
 * Draws an expression or statement as presentation MathML with the same signs and parentheses as printMathematics:
 * one math element holding rows of numerals and operators. A negative number is a minus operator before its numeral
 * (MathML 3, section 3.2.4.4).
 */
export function renderMathml(mathematics: MathematicsNode, style: WritingStyle = 'textbook'): MarkupElement {
	const row = element('mrow', {}, layOutMathematics(mathematics, style).map(renderPiece));
	return element('math', { xmlns: MATHML_NAMESPACE }, [row]);
}

function renderPiece(piece: Piece): MarkupElement {
	switch (piece.kind) {
		case 'numeral':
			return element('mn', {}, [piece.text]);
		case 'unknown':
			return element('mi', { mathvariant: 'normal' }, ['?']);
		case 'sign':
			return element('mo', { form: 'prefix' }, ['−']);
		case 'operator':
		case 'relation':
			return element('mo', { form: 'infix' }, [piece.text]);
		case 'fence': {
			const [opening, closing] = piece.fence === 'bars' ? ['|', '|'] : ['(', ')'];
			return element('mrow', {}, [
				element('mo', { form: 'prefix', fence: 'true', stretchy: 'false' }, [opening ?? '']),
				...piece.pieces.map(renderPiece),
				element('mo', { form: 'postfix', fence: 'true', stretchy: 'false' }, [closing ?? '']),
			]);
		}
		default:
			return piece satisfies never;
	}
}
