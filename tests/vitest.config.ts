import { defineConfig } from 'vitest/config';

const shared = {
	root: new URL('..', import.meta.url).pathname,
	testTimeout: 60_000,
	hookTimeout: 60_000,
	pool: 'forks',
} as const;

export default defineConfig({
	root: shared.root,
	test: {
		maxWorkers: 2,
		projects: [
			// The core keeps no state, so its tests may share a process: loading it once takes a fifth of the time.
			{ test: { ...shared, name: 'core', include: ['tests/item-bank/**/*.test.ts'], isolate: false } },
			{
				test: {
					...shared,
					name: 'rest',
					include: ['tests/**/*.test.ts'],
					exclude: ['tests/item-bank/**', 'tests/prove/**'],
				},
			},
		],
	},
});
