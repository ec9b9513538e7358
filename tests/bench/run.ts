import { readdirSync } from 'node:fs';
import { basename } from 'node:path';

// Runs every benchmark beside this file, or those named: `npm run bench -- qti store`.
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
for (const name of wanted.length > 0 ? wanted : names) {
	console.log(`\n== ${name} ==`);
	const { run } = (await import(`./${name}.bench.js`)) as { run: () => Promise<void> };
	await run();
}
