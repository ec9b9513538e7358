import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { projectRoot } from '../../server/project-root.ts';

const named = process.env.ZEROPAIR_REFERENCE ?? resolve(projectRoot, '../shared');

/** Folder with the published schemas and reference tables that outside checks read; undefined where it is not at hand. */
export const referenceFolder: string | undefined = existsSync(resolve(named, 'schemas')) ? named : undefined;

/** Whether a command can be started here. */
export function hasCommand(command: string): boolean {
	try {
		execFileSync('which', [command], { stdio: 'ignore' });
		return true;
	} catch {
		return false;
	}
}

/**
 * Says whether a test that needs something from outside can run. In CI its absence is an error, so that nothing is
 * skipped there; elsewhere the reason is printed and the caller skips.
 */
export function requireOutside(name: string, available: boolean): boolean {
	if (available) return true;
	if (process.env.CI) throw new Error(`outside check needs ${name}, which is missing here`);
	console.warn(`outside check left out: ${name} is not at hand`);
	return false;
}
