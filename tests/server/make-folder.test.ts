import { existsSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { makeFolder } from '../../server/make-folder.ts';
import { makeTestFolder } from '../helpers/test-folder.ts';

test('a folder and those above it are made for their owner alone, and made once', () => {
	const folder = join(makeTestFolder(), 'a', 'b', 'c');
	makeFolder(folder);
	makeFolder(folder);
	expect(statSync(folder).mode & 0o077).toBe(0);
});

test('a file in the way is an error', () => {
	const file = join(makeTestFolder(), 'file');
	writeFileSync(file, '');
	expect(() => makeFolder(join(file, 'below'))).toThrow();
	expect(() => makeFolder(file)).toThrow();
});

// Node's own recursive mkdir never comes back from there.
test.runIf(existsSync('/proc/self'))('a file system that refuses new folders is an error at once', () => {
	expect(() => makeFolder('/proc/zeropair/data')).toThrow();
});
