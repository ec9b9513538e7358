import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { unzipSync } from 'fflate';
import { closeCartridges } from '../../server/cartridge/cartridge-pool.ts';
import { exportCartridge } from '../../server/cartridge/export-cartridge.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { randomForm, randomItems } from '../server/qti/random-items.ts';

const counts = [100, 1_000, 10_000] as const;
const rounds = 3;

/**
 * Converts, writes, validates and packs distinct items with figures as SVG as a Common Cartridge, against `xmllint --noout --schema`
 * over the same assessment and manifest (one process each, the published Common Cartridge 1.1 schemas) plus `zip -q -r` of the
 * same folder. Every round has items of its own, and nothing is cached between rounds but compiled schemas. Prints seconds
 * and ratios.
 */
export async function run(): Promise<void> {
	if (referenceFolder === undefined) {
		throw new Error('the bench needs the reference folder with the published Common Cartridge 1.1 schemas');
	}
	console.log(`load of the machine before: ${loadavg()[0]?.toFixed(2)}`);
	// Schemas and workers are made ready once, as in a service that runs.
	await measure(50, 1, join(referenceFolder, 'schemas'));
	for (const count of counts) {
		const measured: Round[] = [];
		for (let round = 0; round < rounds; round += 1) {
			measured.push(await measure(count, 7000 + count + round, join(referenceFolder, 'schemas')));
		}
		const middle = [...measured].sort((one, other) => ratioOf(one) - ratioOf(other))[Math.floor(rounds / 2)];
		if (!middle) throw new Error('no round was measured');
		console.log(
			[
				`${count} items, ${middle.files} files, ${(middle.bytes / 1e6).toFixed(1)} MB: ${middle.ours.toFixed(2)} s (${middle.work.toFixed(2)} s of processor time)`,
				`xmllint ${middle.xmllint.toFixed(2)} s + zip ${middle.zip.toFixed(2)} s`,
				`ratio ${ratioOf(middle).toFixed(2)} (rounds ${measured.map((each) => ratioOf(each).toFixed(2)).join(', ')})`,
				`${((middle.ours / count) * 1e6).toFixed(0)} µs an item`,
			].join('; '),
		);
	}
	await closeCartridges();
	console.log(`load of the machine after: ${loadavg()[0]?.toFixed(2)}`);
}

interface Round {
	readonly files: number;
	readonly bytes: number;
	/** Seconds on the clock. */
	readonly ours: number;
	/** Seconds of processor time, all threads together. */
	readonly work: number;
	readonly xmllint: number;
	readonly zip: number;
}

function ratioOf({ ours, xmllint, zip }: Round): number {
	return ours / (xmllint + zip);
}

async function measure(count: number, seed: number, schemas: string): Promise<Round> {
	const items = randomItems(count, seed);
	const form = randomForm(items, seed);
	const before = process.cpuUsage();
	const started = performance.now();
	const { bytes, report } = await exportCartridge({ form, items }, { images: 'svg', convert: true, leaveOut: true });
	const ours = (performance.now() - started) / 1000;
	const { user, system } = process.cpuUsage(before);
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		for (const [path, content] of Object.entries(unzipSync(bytes))) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), content);
		}
		const catalog = writeCatalog(`${folder}-catalog.xml`, schemas);
		const lint = (schema: string, document: string): void => {
			execFileSync('xmllint', ['--noout', '--nonet', '--schema', join(schemas, schema), document], {
				cwd: folder,
				stdio: ['ignore', 'ignore', 'pipe'],
				env: { ...process.env, XML_CATALOG_FILES: catalog },
			});
		};
		const xmllint = time(() => {
			lint('qti1.2/ccv1p1_qtiasiv1p2p1_v1p0.xsd', 'assessment/assessment.xml');
			lint('cc1.1/ccv1p1_imscp_v1p2_v1p0.xsd', 'imsmanifest.xml');
		});
		const zip = time(() => execFileSync('zip', ['-q', '-r', 'unit.imscc', '.'], { cwd: folder }));
		return { files: report.files.length, bytes: bytes.length, ours, work: (user + system) / 1e6, xmllint, zip };
	} finally {
		rmSync(folder, { recursive: true });
		rmSync(`${folder}-catalog.xml`, { force: true });
	}
}

/** Says where the files lie that the published schemas import by address. */
function writeCatalog(file: string, schemas: string): string {
	const base = 'http://www.imsglobal.org/profile/cc/ccv1p1';
	const places = {
		'http://www.w3.org/2001/xml.xsd': 'w3c/xml.xsd',
		[`${base}/ccv1p1_imsccauth_v1p1.xsd`]: 'cc1.1/ccv1p1_imsccauth_v1p1.xsd',
		[`${base}/LOM/ccv1p1_lommanifest_v1p0.xsd`]: 'cc1.1/ccv1p1_lommanifest_v1p0.xsd',
		[`${base}/LOM/ccv1p1_lomresource_v1p0.xsd`]: 'cc1.1/ccv1p1_lomresource_v1p0.xsd',
	};
	const entries = Object.entries(places).flatMap(([address, path]) => {
		const uri = pathToFileURL(join(schemas, path)).href;
		return [`<uri name="${address}" uri="${uri}"/>`, `<system systemId="${address}" uri="${uri}"/>`];
	});
	writeFileSync(file, `<catalog xmlns="urn:oasis:names:tc:entity:xmlns:xml:catalog">${entries.join('')}</catalog>`);
	return file;
}

function time(work: () => void): number {
	const started = performance.now();
	work();
	return (performance.now() - started) / 1000;
}
