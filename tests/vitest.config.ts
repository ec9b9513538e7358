import { defineConfig } from 'vitest/config';

export default defineConfig({
	root: new URL('..', import.meta.url).pathname,
	test: {
		include: ['tests/**/*.test.ts'],
		exclude: ['tests/prove/**', 'node_modules/**', 'dist/**'],
		testTimeout: 60_000,
		hookTimeout: 60_000,
		pool: 'forks',
		maxWorkers: 2,
	},
});
