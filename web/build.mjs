// Builds the browser part when a source is newer than the last build.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const built = join(root, 'dist/web/index.html');

const newest = Math.max(
	...['web', 'item-bank'].map((folder) => newestIn(join(root, folder))),
	statSync(join(root, 'package-lock.json')).mtimeMs,
);
if (!existsSync(built) || statSync(built).mtimeMs < newest) {
	await build({ configFile: join(root, 'web/vite.config.ts'), logLevel: 'warn' });
}

function newestIn(folder) {
	return Math.max(
		0,
		...readdirSync(folder, { recursive: true, withFileTypes: true })
			.filter((entry) => entry.isFile())
			.map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs),
	);
}
