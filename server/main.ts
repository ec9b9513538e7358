import { join } from 'node:path';
import { buildApp } from './app.ts';
import { type DemoReport, fillDemo } from './demo.ts';
import { projectRoot } from './project-root.ts';
import { watchSilentSockets } from './silent-sockets.ts';
import { openStore } from './store/open-store.ts';

/** Where and how to serve. */
export interface ServeOptions {
	/** Folder of the bank; see {@link findDataFolder}. */
	readonly dataFolder: string;
	/** 0 lets the system choose one. */
	readonly port: number;
	/** A loopback address: 127.0.0.1, ::1 or localhost. */
	readonly host: string;
}

/** A service that answers. */
export interface Service {
	readonly url: string;
	/** What was filled in because the bank was new. */
	readonly demo?: DemoReport;
	/** Answers what was begun, then closes the bank. */
	stop(): Promise<void>;
}

/** An address other machines could reach. */
export class AddressRefusedError extends Error {
	readonly code = 'address-refused';
	readonly host: string;

	constructor(host: string) {
		super(
			`expected a loopback address (127.0.0.1, ::1 or localhost), found "${host}": there are no accounts yet, so the bank answers this machine only`,
		);
		this.name = 'AddressRefusedError';
		this.host = host;
	}
}

/** Another program listens on the port, or this account may not. */
export class PortRefusedError extends Error {
	readonly code = 'port-refused';
	readonly port: number | string;

	constructor(port: number | string, cause: unknown) {
		super(`expected a free port from 0 to 65535, but "${port}" cannot be used: name another with --port or PORT`, {
			cause,
		});
		this.name = 'PortRefusedError';
		this.port = port;
	}
}

/** The usual port. */
export const defaultPort = 8417;

/** Folder of the bank: the one named, else ZEROPAIR_DATA, else data/ in the project. */
export function findDataFolder(named?: string): string {
	return named ?? process.env.ZEROPAIR_DATA ?? join(projectRoot, 'data');
}

/**
 * Opens the bank, fills in the demo department when it is new, and listens. Throws {@link AddressRefusedError},
 * {@link PortRefusedError} and the errors of openStore.
 */
export async function serve({ dataFolder, port, host }: ServeOptions): Promise<Service> {
	if (!['127.0.0.1', '::1', 'localhost'].includes(host)) throw new AddressRefusedError(host);
	const store = await openStore(dataFolder);
	const app = buildApp({ store });
	const closeSilentSockets = watchSilentSockets(app.server);
	const stop = async (): Promise<void> => {
		const closed = app.close();
		closeSilentSockets();
		// Connections that fell silent only after closing began would be waited for; what is still asked gets ten seconds.
		const sweep = setInterval(() => {
			closeSilentSockets();
			app.server.closeIdleConnections();
		}, 250);
		const cutOff = setTimeout(() => app.server.closeAllConnections(), 10_000);
		await closed.finally(() => {
			clearInterval(sweep);
			clearTimeout(cutOff);
		});
		await store.close();
	};
	try {
		const demo = (await store.isNew()) ? await fillDemo(store) : undefined;
		// localhost may stand for any address in the machine's own list of names; the address itself does not.
		await listen(app, port, host === 'localhost' ? '127.0.0.1' : host);
		const address = app.server.address();
		const heardOn = typeof address === 'object' && address ? address.port : port;
		const url = `http://${host === '::1' ? '[::1]' : host}:${heardOn}/`;
		return { url, stop, ...(demo ? { demo } : {}) };
	} catch (error) {
		await stop();
		throw error;
	}
}

/**
 * Serves until the process is told to stop (SIGINT, SIGTERM) or the signal is given, then closes the bank and returns. print
 * gets one line at a time.
 */
export async function runService(
	options: ServeOptions,
	print: (line: string) => void,
	signal?: AbortSignal,
): Promise<void> {
	const told = new Promise<void>((resolve) => {
		if (signal?.aborted) resolve();
		process.once('SIGINT', () => resolve());
		process.once('SIGTERM', () => resolve());
		signal?.addEventListener('abort', () => resolve(), { once: true });
	});
	const service = await serve(options);
	if (service.demo) {
		const { items, forms, groups, blueprints, sittings } = service.demo;
		print(
			`The bank was empty: Saltmarsh Ridge moved in with ${items} items, ${forms} forms, ${groups} groups, ${blueprints} blueprints and ${sittings} sittings of made-up students.`,
		);
	}
	print(`Zeropair answers at ${service.url} (this machine only; Ctrl+C stops it)`);
	await told;
	await service.stop();
	print('The bank is closed.');
}

/** The port named in the environment (PORT), else the usual one. Throws {@link PortRefusedError} for text that is no port. */
export function findPort(named: string | undefined = process.env.PORT): number {
	if (named === undefined || named === '') return defaultPort;
	const port = Number(named);
	if (!/^\d{1,5}$/.test(named) || port > 65535) throw new PortRefusedError(named, undefined);
	return port;
}

async function listen(app: ReturnType<typeof buildApp>, port: number, host: string): Promise<void> {
	try {
		await app.listen({ port, host });
	} catch (error) {
		const code = error instanceof Error && 'code' in error ? error.code : undefined;
		if (code === 'EADDRINUSE' || code === 'EACCES') throw new PortRefusedError(port, error);
		throw error;
	}
}
