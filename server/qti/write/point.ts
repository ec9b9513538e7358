import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import { element } from '../../../item-bank/markup/tree.ts';
import type { PointItem } from '../../../item-bank/types.ts';
import { tickIdentifier, variables } from '../identifiers.ts';
import { writeQuestion } from './blocks.ts';
import { layHotspots } from './hotspots.ts';
import { lineImage } from './images.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse } from './options.ts';

/**
 * A point item as hotspotInteraction: an area around each tick of the line, whose labels tell the place of the tick and never
 * its number. A slider is no answer, because its bounds cannot be negative. Throws FigureTooSmallError.
 */
export function writePoint(item: PointItem, value: number, desk: WritingDesk): WrittenInteraction {
	const { above, prompt } = writeQuestion(desk);
	const { drawing, areas } = layHotspots(item.line);
	const { width, height } = drawing;
	const described = describeFigure(item.line);
	const support = desk.support('long-description', () => described, '');
	const picture = { ...desk.writePicture(drawing, lineImage), width, height, ...support };
	const from = item.line.orientation === 'horizontal' ? 'left' : 'bottom';
	const hotspots = areas.map(({ left, top, right, bottom }, index) =>
		element('hotspotChoice', {
			identifier: tickIdentifier(index),
			shape: 'rect',
			coords: `${left},${top},${right},${bottom}`,
			hotspotLabel: `Tick ${index + 1} of ${areas.length} from the ${from}`,
		}),
	);
	const attributes = { responseIdentifier: variables.response, maxChoices: 1 };
	const interaction = element('hotspotInteraction', attributes, [
		...prompt,
		element('object', picture, [described]),
		...hotspots,
	]);
	return {
		declarations: [declareResponse('single', 'identifier', [tickIdentifier(placesOf(item).indexOf(value))])],
		body: [...above, interaction],
		scoring: 'match_correct',
	};
}
