import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const candidates = [
	process.env.ZEROPAIR_BROWSER,
	'/usr/bin/chromium',
	'/usr/bin/chromium-browser',
	'/usr/bin/google-chrome',
];

/** Path of a Chromium on this machine; undefined where there is none. ZEROPAIR_BROWSER names another. */
export const browserPath: string | undefined = candidates.find((path) => path !== undefined && existsSync(path));

/** Starts a headless browser that asks nothing of the network by itself. */
export async function launchBrowser(): Promise<Browser> {
	if (browserPath === undefined) throw new Error('no Chromium on this machine');
	return chromium.launch({
		executablePath: browserPath,
		args: [
			'--no-sandbox',
			'--disable-gpu',
			'--disable-quic',
			'--no-first-run',
			'--disable-background-networking',
			'--disable-component-update',
			'--disable-sync',
		],
		downloadsPath: mkdtempSync(join(tmpdir(), 'zeropair-downloads-')),
	});
}
