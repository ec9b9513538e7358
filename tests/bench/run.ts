import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';

// Runs every benchmark beside this file, or those named: `npm run bench -- qti store`. Each gets a process of its own, so
// that the memory one states is not another's.
const names = readdirSync(new URL('.', import.meta.url))
	.filter((file) => /\.bench\.js$/.test(file))
	.map((file) => basename(file, '.bench.js'))
	.sort();
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !names.includes(name));
if (unknown.length > 0) {
	console.error(`expected benchmarks among ${names.join(', ')}, found ${unknown.join(', ')}`);
	process.exit(2);
}
const [only, ...more] = wanted.length > 0 ? wanted : names;
if (only !== undefined && more.length === 0) {
	console.log(`\n== ${only} ==`);
	const { run } = (await import(`./${only}.bench.js`)) as { run: () => Promise<void> };
	await run();
} else {
	for (const name of [only, ...more]) {
		if (name === undefined) continue;
		const words = ['--expose-gc', fileURLToPath(import.meta.url), name];
		const { status } = spawnSync(process.execPath, words, { stdio: 'inherit' });
		if (status !== 0) process.exitCode = 1;
	}
}
