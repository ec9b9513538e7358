import { createRequire } from 'node:module';
import { Worker } from 'node:worker_threads';
import { drawFigure } from '../../item-bank/figures/draw-figure.ts';
import type { Figure } from '../../item-bank/types.ts';
import { renderPngs } from '../../server/drawing/pngs.ts';
import { writeSvg } from '../../server/drawing/svg.ts';

const require = createRequire(import.meta.url);
const pictures = 400;
const rounds = 3;

/** The rasteriser alone: the same calls that renderPng makes, on a fixed half of the list, with no messages in between. */
const bareWorker = `
	const { parentPort, workerData } = require('node:worker_threads');
	const { Resvg } = require(workerData.rasteriser);
	const font = { loadSystemFonts: false, fontFiles: [workerData.font], serifFamily: 'Source Serif 4' };
	const options = { background: '#ffffff', fitTo: { mode: 'zoom', value: 2 }, font };
	parentPort.postMessage(workerData.svgs.map((svg) => new Resvg(svg, options).render().asPng().length));
`;

/** Prints how fast figures are drawn and written, and how pictures on two threads compare with the rasteriser alone. */
export async function run(): Promise<void> {
	const figures = manyFigures(3000);
	let start = performance.now();
	const svgs = figures.map((figure) => writeSvg(drawFigure(figure).root));
	const perSecond = figures.length / ((performance.now() - start) / 1000);
	if (new Set(svgs).size !== svgs.length) throw new Error('expected distinct figures, found some alike');
	console.log(`drawFigure + writeSvg: ${Math.round(perSecond)} figures a second (${figures.length} distinct figures)`);

	const ratios: number[] = [];
	for (let round = 0; round < rounds; round += 1) {
		const batch = svgs.slice(round * pictures, (round + 1) * pictures);
		start = performance.now();
		await renderBare(batch);
		const bare = performance.now() - start;
		start = performance.now();
		const made = await renderPngs(batch);
		const ours = performance.now() - start;
		if (made.length !== batch.length) throw new Error(`expected ${batch.length} pictures, found ${made.length}`);
		ratios.push(ours / bare);
		const each = (time: number) => `${(time / pictures).toFixed(2)} ms`;
		console.log(
			`${pictures} pictures on two threads: ${each(ours)} each, rasteriser alone ${each(bare)}, ratio ${(ours / bare).toFixed(2)}`,
		);
	}
	console.log(
		`renderPngs to rasteriser alone, median of ${rounds}: ${[...ratios].sort((a, b) => a - b)[1]?.toFixed(2)}`,
	);
}

async function renderBare(svgs: readonly string[]): Promise<void> {
	const font = require.resolve('@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf');
	const rasteriser = require.resolve('@resvg/resvg-js');
	const halves = [0, 1].map((half) => svgs.filter((_, index) => index % 2 === half));
	await Promise.all(
		halves.map(
			(half) =>
				new Promise<void>((resolve, reject) => {
					const worker = new Worker(bareWorker, { eval: true, workerData: { rasteriser, font, svgs: half } });
					worker.on('error', reject);
					worker.on('exit', () => resolve());
				}),
		),
	);
}

/** Figures no two of which are alike: lines with arrows, counters and lines with points in turn. */
function manyFigures(count: number): readonly Figure[] {
	const figures: Figure[] = [];
	for (let index = 0; figures.length < count; index += 1) {
		const [a, b, c] = [(index % 12) + 1, (Math.floor(index / 12) % 12) + 1, Math.floor(index / 144)];
		const orientation = index % 2 === 0 ? 'horizontal' : 'vertical';
		const arrows = [a, -b, c + 1];
		figures.push({ kind: 'number-line', orientation, arrows, arrowLabels: true });
		figures.push({ kind: 'counters', plus: a, minus: b, addedPairs: c + 1, removed: { sign: 'minus', count: b } });
		figures.push({
			kind: 'number-line',
			orientation,
			points: [{ at: a }, { at: -b - c, label: 'P' }, { at: a + c + 1 }],
		});
	}
	return figures.slice(0, count);
}
