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
		// No module under test keeps state that a test could leave behind, so tests of one project share a process: loading all
		// of it for every file took a third of the time.
		projects: [
			{ test: { ...shared, name: 'core', include: ['tests/item-bank/**/*.test.ts'], isolate: false } },
			{
				test: {
					...shared,
					name: 'rest',
					include: ['tests/**/*.test.ts'],
					exclude: ['tests/item-bank/**', 'tests/prove/**'],
					isolate: false,
				},
			},
		],
	},
});
