import { readFileSync } from 'node:fs';
import { qtiVersions } from '../versions.ts';
import { runJob } from './pool.ts';
import { findPublishedSchema, type PublishedSchema } from './published.ts';

/** An installed schema does not compile: no document could be checked against it. */
export class SchemaBrokenError extends Error {
	readonly code = 'schemas-broken';
	readonly file: string;

	constructor(file: string, cause: unknown) {
		const why = cause instanceof Error ? cause.message.trim().split('\n')[0] : String(cause);
		super(`expected a schema that compiles, found ${file}: ${why}`, { cause });
		this.name = 'SchemaBrokenError';
		this.file = file;
	}
}

/**
 * Compiles each published schema of a folder in a worker, as exports will, and says how long it took and how much memory it
 * keeps (of the whole process, so about); once a second that it goes on. Throws {@link SchemaBrokenError}.
 */
export async function compilePublished(folder: string, say: (line: string) => void): Promise<void> {
	for (const version of qtiVersions) {
		const schema = findPublishedSchema(folder, version);
		if (schema) await compileOne(schema, say);
	}
}

async function compileOne(schema: PublishedSchema, say: (line: string) => void): Promise<void> {
	const megabytes = megabytesOf(readFileSync(schema.file).length);
	say(`${schema.version}: compiling a schema of ${megabytes} MB in a worker`);
	const started = performance.now();
	const seconds = () => ((performance.now() - started) / 1000).toFixed(1);
	const before = process.memoryUsage().rss;
	const waiting = setInterval(() => say(`${schema.version}: still compiling after ${seconds()} s`), 1000);
	try {
		await runJob({ kind: 'documents', documents: [], published: undefined });
		await runJob({ kind: 'schema', published: schema });
	} catch (error) {
		throw new SchemaBrokenError(schema.file, error);
	} finally {
		clearInterval(waiting);
	}
	const kept = megabytesOf(Math.max(0, process.memoryUsage().rss - before));
	say(`${schema.version}: compiled in ${seconds()} s, about ${kept} MB of memory`);
}

function megabytesOf(bytes: number): string {
	return (bytes / 1e6).toFixed(1);
}
