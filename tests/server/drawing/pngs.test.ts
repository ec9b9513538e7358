import { expect, test } from 'vitest';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { renderPng } from '../../../server/drawing/png.ts';
import { renderPngs } from '../../../server/drawing/pngs.ts';
import { writeSvg } from '../../../server/drawing/svg.ts';
import { workerFile } from '../../../server/worker-file.ts';

const svgs = Array.from({ length: 9 }, (_, plus) =>
	writeSvg(drawFigure({ kind: 'counters', plus: plus + 1, minus: 2 }).root),
);

test('gives the same pictures in the same order as drawing one at a time', async () => {
	const pictures = await renderPngs(svgs);
	expect(pictures.map((picture) => Buffer.from(picture).toString('base64'))).toEqual(
		svgs.map((svg) => Buffer.from(renderPng(svg)).toString('base64')),
	);
});

test('reports each finished picture once, up to the total', async () => {
	const heard: (readonly [number, number])[] = [];
	await renderPngs(svgs, (done, total) => heard.push([done, total]));
	expect(heard).toEqual(svgs.map((_, index) => [index + 1, svgs.length]));
});

test('returns nothing for an empty list', async () => {
	expect(await renderPngs([])).toEqual([]);
});

test('names the document that cannot be drawn', async () => {
	const broken = [...svgs.slice(0, 3), '<svg', ...svgs.slice(3)];
	await expect(renderPngs(broken)).rejects.toMatchObject({ code: 'picture-batch-failed', index: 3 });
});

test('stops with the reason of an aborted signal, before and during the work', async () => {
	await expect(renderPngs(svgs, undefined, AbortSignal.abort('not now'))).rejects.toBe('not now');
	const controller = new AbortController();
	const heard: number[] = [];
	const many = Array.from({ length: 40 }, () => svgs).flat();
	const stopAtFirst = (done: number) => {
		heard.push(done);
		controller.abort('enough');
	};
	await expect(renderPngs(many, stopAtFirst, controller.signal)).rejects.toBe('enough');
	expect(heard.length).toBeLessThan(many.length);
});

test('breaks off when the listener of progress throws', async () => {
	const failing = () => {
		throw new Error('listener failed');
	};
	await expect(renderPngs(svgs, failing)).rejects.toThrow('listener failed');
});

test('leaves no thread running, whether it succeeds or not', async () => {
	const threads = () => (process.report.getReport() as unknown as { workers: readonly unknown[] }).workers.length;
	const before = threads();
	await renderPngs(svgs.slice(0, 2), () => expect(threads()).toBe(before + 2));
	expect(threads()).toBe(before);
	await expect(renderPngs(['<svg', '<svg'])).rejects.toMatchObject({ index: expect.any(Number) });
	expect(threads()).toBe(before);
});

test('says to build when a worker is missing', () => {
	expect(() => workerFile('drawing/no-such-worker')).toThrow(
		expect.objectContaining({ code: 'worker-not-built', message: expect.stringContaining('npm run build') }),
	);
});
