import type { DocumentProblem } from '../qti/export-errors.ts';
import { readZip, ZipError } from '../qti/package/read-zip.ts';
import { runCartridgeJob } from './cartridge-pool.ts';
import { assessmentPath, cartridgeManifestPath } from './write/paths.ts';

/**
 * Checks a cartridge of this bank from its bytes: a sound archive, manifest and assessment valid by the export profile, every
 * figure listed, shown and there. Undefined for an archive whose manifest does not call itself a Common Cartridge, and for
 * what is no archive. Never throws for bad bytes.
 */
export async function validateCartridge(bytes: Uint8Array): Promise<readonly DocumentProblem[] | undefined> {
	let files: ReadonlyMap<string, Buffer>;
	try {
		files = await readZip(bytes);
	} catch (error) {
		if (error instanceof ZipError) return undefined;
		throw error;
	}
	const manifest = files.get(cartridgeManifestPath)?.toString('utf8');
	if (manifest === undefined || !manifest.includes('<schema>IMS Common Cartridge</schema>')) return undefined;
	const assessment = files.get(assessmentPath)?.toString('utf8');
	if (assessment === undefined) {
		return [problemOf('package-file-missing', assessmentPath, `expected ${assessmentPath}, found none`)];
	}
	const { problems, images } = await runCartridgeJob('check', { kind: 'check', manifest, assessment });
	const shown = new Set(images);
	const known = new Set([cartridgeManifestPath, assessmentPath]);
	return [
		...problems,
		...images
			.filter((path) => !files.has(path))
			.map((path) => problemOf('package-file-missing', path, `expected the figure ${path}, found none`)),
		...(problems.length > 0 ? [] : [...files])
			.filter(([path, content]) => !known.has(path) && !(shown.has(path) && isPicture(path, content)))
			.map(([path]) => problemOf('package-stray-file', path, `expected a figure of the assessment, found ${path}`)),
	];
}

/** Whether the first bytes are of what the name says. */
function isPicture(path: string, bytes: Buffer): boolean {
	return path.endsWith('.png')
		? bytes.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))
		: bytes.includes('<svg ');
}

function problemOf(code: string, file: string, message: string): DocumentProblem {
	return { code, path: file, file, line: undefined, element: undefined, message };
}
