import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

export default defineConfig({
	root: fileURLToPath(new URL('.', import.meta.url)),
	base: './',
	build: {
		outDir: fileURLToPath(new URL('../dist/web', import.meta.url)),
		emptyOutDir: true,
		target: 'es2022',
		assetsInlineLimit: 0,
		modulePreload: { polyfill: false },
	},
});
