import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { fetchSchemas, readSchemaList } from '../../../server/fetch-schemas.ts';
import type { SchemaList } from '../../../server/qti/install-schemas.ts';
import { findPublishedSchema } from '../../../server/qti/validate/published.ts';
import { referenceFolder, requireOutside } from '../../helpers/reference.ts';

requireOutside('the reference folder', referenceFolder !== undefined);

const main =
	'<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"><xs:import schemaLocation="parts/a.xsd" namespace="urn:a"/></xs:schema>';
const part =
	'<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="urn:a"><!-- <xs:include schemaLocation="no.xsd"/> --></xs:schema>';

const senseless =
	'<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="urn:main"><xs:element name="a" type="missing"/></xs:schema>';

let server: Server;
let origin: string;
let folder: string;
let isBroken = false;
let isSenseless = false;

beforeEach(async () => {
	isBroken = false;
	isSenseless = false;
	folder = mkdtempSync(join(tmpdir(), 'zeropair-schemas-'));
	server = createServer((request, response) => {
		const known: Record<string, string> = {
			'/imsqti_v2p2.xsd': isSenseless ? senseless : main,
			'/parts/a.xsd': part,
		};
		const text = known[request.url ?? ''];
		if (text === undefined) {
			response.writeHead(404).end();
		} else if (isBroken) {
			response.writeHead(200, { 'content-length': text.length });
			response.write(text.slice(0, 20), () => response.destroy());
		} else {
			response.writeHead(200, { 'content-length': text.length }).end(text);
		}
	});
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});

afterEach(async () => {
	await new Promise((resolve) => server.close(resolve));
	rmSync(folder, { recursive: true });
});

function listOf(change: Partial<SchemaList['files'][number]> = {}): SchemaList {
	const sha256 = createHash('sha256').update(main).digest('hex');
	const known = { schema: 'QTI 2.2', version: '2.2.0', folder: 'qti-2.2', bytes: main.length, sha256, isProven: true };
	return { hosts: ['127.0.0.1'], files: [{ ...known, address: `${origin}/imsqti_v2p2.xsd`, ...change }] };
}

async function fetchInto(list: SchemaList): Promise<{ readonly exit: number; readonly said: string }> {
	const said: string[] = [];
	const exit = await fetchSchemas([], list, folder, (line) => said.push(line));
	return { exit, said: said.join('\n') };
}

test('a schema is fetched with what it imports, checked, and found by the validator', async () => {
	const { exit, said } = await fetchInto(listOf());
	expect(exit).toBe(0);
	expect(said).toContain(`${main.length} bytes`);
	expect(said).toContain('qti-2.2/imsqti_v2p2.xsd, verified');
	expect(said).toMatch(/qti-2\.2: compiled in \d+\.\d s, about \d+\.\d MB of memory/);
	expect(readFileSync(join(folder, 'qti-2.2/imsqti_v2p2.xsd'), 'utf8')).toBe(main);
	const found = findPublishedSchema(folder, 'qti-2.2');
	expect(found?.imports[`${origin}/parts/a.xsd`]).toBe(join(folder, 'qti-2.2/imports/127.0.0.1/parts/a.xsd'));
	expect(readdirSync(folder).sort()).toEqual(['installed.json', 'qti-2.2']);
});

test('a second fetch replaces the first', async () => {
	await fetchInto(listOf());
	expect((await fetchInto(listOf())).exit).toBe(0);
	expect(readdirSync(folder).sort()).toEqual(['installed.json', 'qti-2.2']);
});

test('where no hash is known the file is recorded and shown as unverified', async () => {
	const { exit, said } = await fetchInto(listOf({ bytes: null, sha256: null }));
	expect(exit).toBe(0);
	expect(said).toMatch(/imsqti_v2p2\.xsd, unverified, sha256 [0-9a-f]{64}/);
	expect(JSON.parse(readFileSync(join(folder, 'installed.json'), 'utf8'))[0]).toMatchObject({ isVerified: false });
});

test('a difference from hearsay is told, and the file shown as unverified', async () => {
	const { exit, said } = await fetchInto(listOf({ sha256: 'f'.repeat(64), isProven: false }));
	expect(exit).toBe(0);
	expect(said).toContain('note: expected');
	expect(said).toContain('unverified');
});

describe('nothing is kept, and what was there before stays, when', () => {
	beforeEach(async () => {
		await fetchInto(listOf());
	});

	test.each<[string, Partial<SchemaList['files'][number]>, string]>([
		['the hash is another', { sha256: 'f'.repeat(64) }, 'schemas-mismatch'],
		['the size is another', { bytes: 5 }, 'schemas-mismatch'],
		['the file is not there', { address: '/gone.xsd' }, 'schemas-refused'],
		['the address is on another host', { address: 'http://schemas.invalid/a.xsd' }, 'schemas-foreign-address'],
	])('%s', async (_, change, code) => {
		const address = change.address?.startsWith('/') ? { address: origin + change.address } : {};
		const { exit, said } = await fetchInto(listOf({ ...change, ...address }));
		expect(exit).toBe(1);
		expect(said).toContain(`${code}: expected`);
	});

	test('the schema does not compile', async () => {
		isSenseless = true;
		const { exit, said } = await fetchInto(listOf({ bytes: null, sha256: null }));
		expect(exit).toBe(1);
		expect(said).toMatch(/schemas-broken: expected a schema that compiles, found .*imsqti_v2p2\.xsd: .*import/);
	});

	test('the download is broken off', async () => {
		isBroken = true;
		const { exit, said } = await fetchInto(listOf());
		expect(exit).toBe(1);
		expect(said).toContain('schemas-broken-off: expected all of');
	});

	test('nobody answers, which reads as offline', async () => {
		const list = listOf();
		await new Promise((resolve) => server.close(resolve));
		const { exit, said } = await fetchInto(list);
		await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
		expect(exit).toBe(1);
		expect(said).toContain('schemas-unreachable');
		expect(said).toContain('offline');
	});

	afterEach(() => {
		expect(readdirSync(folder).sort()).toEqual(['installed.json', 'qti-2.2']);
		expect(readFileSync(join(folder, 'qti-2.2/imsqti_v2p2.xsd'), 'utf8')).toBe(main);
	});
});

test('unknown words get the usage, and a folder without schemas is said to hold none', async () => {
	const said: string[] = [];
	const say = (line: string): number => said.push(line);
	expect(await fetchSchemas(['--all'], listOf(), folder, say)).toBe(2);
	expect(await fetchSchemas(['--schemas', folder], listOf(), folder, say)).toBe(1);
	expect(said.join('\n')).toContain('usage: npm run schemas');
	expect(said.join('\n')).toContain('qti-2.2: none');
});

test.skipIf(!referenceFolder)('copies in a folder are found, and are the file that the list describes', async () => {
	const said: string[] = [];
	const schemas = join(referenceFolder ?? '', 'schemas');
	expect(await fetchSchemas(['--schemas', schemas], readSchemaList(), folder, (line) => said.push(line))).toBe(0);
	expect(said.join('\n')).toMatch(/qti-2\.2: .*imsqti_v2p2\.xsd, with 8 imported addresses/);
	// The reference folder's README gives this hash for the file published on 1 September 2015.
	const copy = readFileSync(join(schemas, 'qti2.2/imsqti_v2p2.xsd'));
	const listed = readSchemaList().files.find((file) => file.address.endsWith('imsqti_v2p2.xsd'));
	expect(createHash('sha256').update(copy).digest('hex')).toBe(listed?.sha256);
	expect(copy.length).toBe(listed?.bytes);
	expect(existsSync(join(folder, 'installed.json'))).toBe(false);
});
