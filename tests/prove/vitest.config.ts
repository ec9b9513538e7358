import { defineConfig } from 'vitest/config';

export default defineConfig({
	root: new URL('../..', import.meta.url).pathname,
	test: {
		include: ['tests/prove/**/*.prove.ts'],
		testTimeout: 3_600_000,
		hookTimeout: 600_000,
		pool: 'forks',
		maxWorkers: 1,
	},
});
