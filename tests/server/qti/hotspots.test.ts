import { Resvg } from '@resvg/resvg-js';
import { afterAll, describe, expect, test } from 'vitest';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import type { NumberLineFigure } from '../../../item-bank/types.ts';
import { exportItems } from '../../../server/qti/export-form.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { layHotspots, smallestSide } from '../../../server/qti/write/hotspots.ts';
import { letterPlaces } from '../../../server/qti/write/point-choice.ts';
import { drawFrom } from './random-draw.ts';
import { randomPoint } from './random-kinds.ts';
import { sampleKinds } from './sample-kinds.ts';
import { fileOf, unpack } from './unpacked.ts';

afterAll(closeValidation);

const draw = drawFrom(51);
const lines: readonly NumberLineFigure[] = Array.from({ length: 120 }, () => randomPoint(draw).line);

/** Where ticks are drawn, in pixels of the picture: the short plain strokes across the axis. */
function ticksDrawn(
	{ drawing }: ReturnType<typeof layHotspots>,
	orientation: NumberLineFigure['orientation'],
): number[] {
	const [, , wide = 1] = (drawing.root.attributes.viewBox ?? '').split(' ').map(Number);
	const [along, across] = orientation === 'horizontal' ? ['x', 'y'] : ['y', 'x'];
	return drawing.root.children
		.flatMap((mark) => (typeof mark === 'string' || mark.name !== 'line' ? [] : [mark.attributes]))
		.filter((line) => line[`${along}1`] === line[`${along}2`] && line['stroke-dasharray'] === undefined)
		.filter((line) => [12, 22].includes(Math.round(Math.abs(Number(line[`${across}1`]) - Number(line[`${across}2`])))))
		.map((line) => (Number(line[`${along}1`]) * drawing.width) / wide);
}

describe('areas of ticks', () => {
	test('lie on the ticks as drawn, one for each, from the smallest', () => {
		for (const line of lines) {
			const picture = layHotspots(line);
			const isFlat = line.orientation === 'horizontal';
			const centres = picture.areas.map(({ left, top, right, bottom }) => (isFlat ? left + right : top + bottom) / 2);
			const drawn = ticksDrawn(picture, line.orientation).sort((one, other) => (isFlat ? one - other : other - one));
			expect(centres.length).toBe(drawn.length);
			centres.forEach((centre, index) => {
				expect(Math.abs(centre - (drawn[index] ?? 0))).toBeLessThan(0.76);
			});
		}
	});

	test('are large enough to hit, clear of each other and inside the picture', () => {
		for (const line of lines) {
			const { drawing, areas } = layHotspots(line);
			areas.forEach(({ left, top, right, bottom }, index) => {
				expect(Math.min(right - left, bottom - top)).toBeGreaterThanOrEqual(smallestSide);
				expect(Math.min(left, top)).toBeGreaterThanOrEqual(0);
				expect(right).toBeLessThanOrEqual(drawing.width);
				expect(bottom).toBeLessThanOrEqual(drawing.height);
				const before = areas[index - 1];
				if (before) expect(left > before.right || bottom < before.top).toBe(true);
			});
		}
	});

	test('count pixels of the PNG: in the middle of each there is ink, between two of them beside the axis there is none', () => {
		for (const line of lines.slice(0, 25).filter(({ arrows, points }) => !arrows && !points)) {
			const { drawing, areas } = layHotspots(line);
			const isFlat = line.orientation === 'horizontal';
			const svg = toSvg(drawing.root.attributes, drawing.root.children);
			const image = new Resvg(svg, { background: '#ffffff', fitTo: { mode: 'zoom', value: 2 } }).render();
			expect([image.width, image.height]).toEqual([drawing.width, drawing.height]);
			const isInk = (x: number, y: number): boolean => (image.pixels[4 * (y * image.width + x)] ?? 255) < 128;
			// Four pixels from the axis only ticks are drawn, which reach six.
			const beside = axisPixel(drawing.root.children, drawing.root.attributes.viewBox ?? '', drawing.width, isFlat) - 4;
			const inkAt = (along: number): boolean =>
				[along - 1, along, along + 1].some((at) => (isFlat ? isInk(at, beside) : isInk(beside, at)));
			areas.forEach(({ left, top, right, bottom }, index) => {
				expect(inkAt(isFlat ? (left + right) / 2 : (top + bottom) / 2)).toBe(true);
				const edge = isFlat ? left : bottom;
				if (index > 0) expect(inkAt(isFlat ? edge - 1 : edge + 1)).toBe(false);
			});
		}
	});

	test('a line with many ticks is shown larger, and refused where no screen holds it', () => {
		const line: NumberLineFigure = { kind: 'number-line', orientation: 'horizontal', from: -15, to: 15, tickEvery: 1 };
		expect(layHotspots({ ...line, from: -5, to: 5 }).drawing.width).toBe(540);
		expect(layHotspots(line).drawing.width).toBeGreaterThan(700);
		const long = { ...line, from: -20, to: 20 };
		expect(checkFigure(long)).toEqual([]);
		expect(() => layHotspots(long)).toThrow(expect.objectContaining({ code: 'export-figure-too-small' }));
	});
});

function toSvg(attributes: Readonly<Record<string, string>>, children: readonly unknown[]): string {
	const tag = (name: string, values: Readonly<Record<string, string>>, inside: string): string =>
		`<${name} ${Object.entries(values)
			.map(([key, value]) => `${key}="${value}"`)
			.join(' ')}>${inside}</${name}>`;
	const marks = children as readonly { name: string; attributes: Record<string, string> }[];
	const shapes = marks.filter(({ name }) => name !== 'text').map((mark) => tag(mark.name, mark.attributes, ''));
	const half = {
		...attributes,
		width: String(Number(attributes.width) / 2),
		height: String(Number(attributes.height) / 2),
	};
	return tag('svg', half, shapes.join(''));
}

function axisPixel(children: readonly unknown[], viewBox: string, width: number, isFlat: boolean): number {
	const marks = children as readonly { name: string; attributes: Record<string, string> }[];
	const axis = marks.find(({ name }) => name === 'line');
	const wide = Number(viewBox.split(' ')[2]);
	return Math.round((Number(axis?.attributes[isFlat ? 'y1' : 'x1']) * width) / wide);
}

const [point] = sampleKinds;

function longPoint(): ItemRecord {
	if (point?.item.kind !== 'point') throw new Error('no point item');
	const line: NumberLineFigure = { kind: 'number-line', orientation: 'horizontal', from: -20, to: 20, tickEvery: 1 };
	return { ...point, id: 'long-line', item: { ...point.item, line } };
}

test('the PNG of a line to mark has the size its item names, pixel for pixel', async () => {
	if (!point) throw new Error('no point item');
	const { bytes } = await exportItems([point], { as: 'qti-2.1', images: 'png' });
	const { unzipSync } = await import('fflate');
	const png = Buffer.from(unzipSync(bytes)['items/images/item-001-line.png'] ?? []);
	const xml = fileOf(unpack(bytes), 'items/item-001.xml');
	const [, width, height] = /<object [^>]*type="image\/png" width="(\d+)" height="(\d+)"/.exec(xml) ?? [];
	expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([Number(width), Number(height)]);
});

test.each(qtiVersions)(
	'an export as %s names each item whose line is too small, and hands over nothing',
	async (as) => {
		const other = { ...longPoint(), id: 'another-long-line' };
		const items = [longPoint(), ...sampleKinds, other];
		await expect(exportItems(items, { as, images: 'svg' })).rejects.toMatchObject({
			code: 'export-invalid',
			problems: [
				{ code: 'export-figure-too-small', item: 'long-line', file: 'items/item-001.xml' },
				{ code: 'export-figure-too-small', item: 'another-long-line', file: 'items/item-010.xml' },
			],
		});
	},
);

describe('a choice among lettered points instead', () => {
	test('shows a line that is too small for areas, with the key among at most five letters from left to right', async () => {
		const { bytes, report, answerMap } = await exportItems([longPoint()], {
			as: 'qti-2.2',
			images: 'svg',
			points: 'choice',
		});
		const xml = fileOf(unpack(bytes), 'items/item-001.xml');
		expect(xml).not.toContain('hotspot');
		expect(xml).toContain('<p><img src="images/item-001-line.svg" alt="Horizontal number line');
		expect([...xml.matchAll(/<simpleChoice identifier="([A-E])">Point ([A-Z])</g)].map(([, , each]) => each)).toEqual([
			'A',
			'B',
			'C',
			'D',
			'E',
		]);
		expect(report.notes.join(' ')).toContain('lettered points');
		const key = /<correctResponse>\s*<value>([A-E])/.exec(xml)?.[1] ?? '';
		// -2 - 3 among the places that the answer map lists in the order of the letters.
		const places = /,A B C D E,([−\d ]+),/.exec(answerMap)?.[1]?.split(' ') ?? [];
		expect(places['ABCDE'.indexOf(key)]).toBe('−5');
		expect(places).toContain('5');
	});

	test('offers places of the line that are not marked already, the key and its opposite among them, and tells nothing by its order', () => {
		const spots = new Map<number, number>();
		for (let count = 0; count < 300; count += 1) {
			const item = randomPoint(draw);
			const key = computeKey(item);
			if (key.kind !== 'value') throw new Error('no value');
			const offered = letterPlaces(item, key.value);
			const at = offered.map((place) => place.at);
			expect(at).toContain(key.value);
			expect(at).toEqual([...new Set(at)].sort((one, other) => one - other));
			for (const place of at) expect(placesOf(item)).toContain(place);
			const marked = item.line.points ?? [];
			for (const { at: taken, label } of marked) {
				expect(at).not.toContain(taken);
				expect(offered.map(({ letter }) => letter)).not.toContain(label);
			}
			const opposite = placesOf(item).includes(-key.value) && !marked.some((each) => each.at === -key.value);
			if (opposite) expect(at).toContain(-key.value + 0);
			const spot = at.indexOf(key.value);
			spots.set(spot, (spots.get(spot) ?? 0) + 1);
		}
		for (const spot of [0, 1, 2, 3, 4]) expect(spots.get(spot), `key at letter ${spot + 1}`).toBeGreaterThan(25);
	});
});
