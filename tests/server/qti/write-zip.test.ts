import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readZip } from '../../../server/qti/package/read-zip.ts';
import { joinSegments, packFiles } from '../../../server/qti/package/write-zip.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';

const hasUnzip = requireOutside('unzip', hasCommand('unzip'));

const segments = fc
	.uniqueArray(fc.tuple(fc.stringMatching(/^[a-z]{1,8}\.(xml|png)$/), fc.uint8Array({ maxLength: 3000 })), {
		selector: ([path]) => path,
		maxLength: 12,
	})
	.map((files) => files.map(([path, bytes]) => ({ path, bytes })));

test('what is packed in any segments is read back by two readers', async () => {
	await fc.assert(
		fc.asyncProperty(segments, fc.nat(12), async (files, cut) => {
			const bytes = joinSegments([packFiles(files.slice(0, cut)), packFiles(files.slice(cut))]);
			const expected = new Map(files.map(({ path, bytes: content }) => [path, Buffer.from(content).toString('hex')]));
			const own = new Map([...(await readZip(bytes))].map(([path, content]) => [path, content.toString('hex')]));
			expect(own).toEqual(expected);
			const other = Object.entries(unzipSync(bytes)).map(
				([path, content]) => [path, Buffer.from(content).toString('hex')] as const,
			);
			expect(new Map(other)).toEqual(expected);
		}),
		{ numRuns: 60 },
	);
});

test.skipIf(!hasUnzip)('unzip, a reader of another make, finds an archive sound', () => {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-zip-'));
	try {
		const file = join(folder, 'a.zip');
		writeFileSync(
			file,
			joinSegments([
				packFiles([
					{ path: 'a/b.xml', bytes: Buffer.from('<a/>'.repeat(50)) },
					{ path: 'c.png', bytes: Buffer.from('png') },
				]),
			]),
		);
		expect(execFileSync('unzip', ['-t', file], { encoding: 'utf8' })).toContain('No errors detected');
		expect(execFileSync('unzip', ['-p', file, 'a/b.xml'], { encoding: 'utf8' })).toBe('<a/>'.repeat(50));
	} finally {
		rmSync(folder, { recursive: true });
	}
});

test('the bytes do not depend on the time zone', () => {
	const script = `import { packFiles, joinSegments } from './dist/server/qti/package/write-zip.js';
process.stdout.write(Buffer.from(joinSegments([packFiles([{ path: 'a.xml', bytes: Buffer.from('<a/>') }])])).toString('hex'));`;
	const inZone = (TZ: string): string =>
		execFileSync(process.execPath, ['--input-type=module', '-e', script], {
			encoding: 'utf8',
			env: { ...process.env, TZ },
		});
	const here = Buffer.from(joinSegments([packFiles([{ path: 'a.xml', bytes: Buffer.from('<a/>') }])])).toString('hex');
	expect(inZone('Asia/Tokyo')).toBe(here);
	expect(inZone('America/Denver')).toBe(here);
});
