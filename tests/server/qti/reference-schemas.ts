import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { XmlBufferInputProvider, XmlDocument, XsdValidator, xmlRegisterInputProvider } from 'libxml2-wasm';

/**
 * Compiles a schema of the reference folder that is not part of the product. Whatever it includes comes from its own
 * folder, or from the files named by address; nothing is fetched.
 */
export function compileReference(
	folder: string,
	main: string,
	byAddress: Readonly<Record<string, string>> = {},
): XsdValidator {
	const base = `http://reference.invalid/${main}/`;
	const provider = new XmlBufferInputProvider({});
	for (const file of listFiles(folder)) provider.addBuffer(base + relative(folder, file), readFileSync(file));
	for (const [address, file] of Object.entries(byAddress)) provider.addBuffer(address, readFileSync(file));
	xmlRegisterInputProvider(provider);
	return XsdValidator.fromDoc(XmlDocument.fromBuffer(readFileSync(join(folder, main)), { url: base + main }));
}

function listFiles(folder: string): readonly string[] {
	return readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		return statSync(path).isDirectory() ? listFiles(path) : [path];
	});
}
