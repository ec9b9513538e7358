import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { writeNumber } from '../../../item-bank/figures/marks.ts';
import type { PointItem } from '../../../item-bank/types.ts';
import { FigureTooSmallError } from '../../qti/write/hotspots.ts';
import { letterLine, letterPlaces } from '../../qti/write/point-choice.ts';
import type { Converted } from '../question.ts';

/**
 * A point as a choice among lettered points of its line, the same ones as in a QTI package. Throws FigureTooSmallError where
 * the letters have no room, or where the line has no second place.
 */
export function convertPoint(item: PointItem, value: number): Converted {
	const places = letterPlaces(item, value);
	const line = letterLine(item.line, places);
	const [problem] = checkFigure(line);
	if (problem) throw new FigureTooSmallError(`expected room for lettered points on the line: ${problem.message}`);
	if (places.length < 2) throw new FigureTooSmallError('expected two places to choose from on the line, found one');
	return {
		asks: 'choice',
		added: [{ kind: 'figure', figure: line }],
		options: places.map(({ at, letter }) => ({
			bank: writeNumber(at),
			content: { kind: 'text', text: `Point ${letter}` },
		})),
		right: [places.findIndex(({ at }) => at === value)],
	};
}
