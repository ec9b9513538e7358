import type { DocumentProblem } from '../export-errors.ts';
import type { DocumentFacts } from '../validate/validate-document.ts';
import { manifestPath } from '../write/manifest.ts';
import { testPath } from '../write/test.ts';

/** The documents of a package, each valid by itself, and every path it holds. */
export interface PackageContent {
	readonly paths: readonly string[];
	/** Facts of the manifest, the test if any, and the items, by path. */
	readonly facts: ReadonlyMap<string, DocumentFacts>;
}

/** Checks what documents say of each other: files exist and are listed, identifiers agree, dependencies are complete. */
export function checkLinks(content: PackageContent): readonly DocumentProblem[] {
	const manifest = content.facts.get(manifestPath);
	if (!manifest) return [];
	const held = new Set(content.paths);
	const listed = new Map(manifest.references.map(({ href, identifier }) => [href, identifier]));
	const needed = new Set(manifest.dependencies.map(([from, to]) => `${from} ${to}`));
	const problems: DocumentProblem[] = [];
	for (const href of listed.keys()) {
		if (!held.has(href)) {
			problems.push(
				linkProblem('package-file-missing', manifestPath, 'resource', `file ${href} in the package`, 'none'),
			);
		}
	}
	for (const path of content.paths) {
		if (path === manifestPath || listed.has(path)) continue;
		problems.push(
			linkProblem('package-file-unlisted', path, undefined, 'every file listed in the manifest', `${path} unlisted`),
		);
	}
	for (const [path, facts] of content.facts) {
		if (path === manifestPath) continue;
		problems.push(...checkIdentifier(path, facts.identifier, listed.get(path)));
		for (const reference of facts.references) {
			const href = path === testPath ? reference.href : `items/${reference.href}`;
			const element = path === testPath ? 'assessmentItemRef' : elementShowing(href);
			const isNamed = reference.identifier !== '';
			if (!held.has(href)) {
				problems.push(linkProblem('package-href-missing', path, element, `file ${href} in the package`, 'none'));
				continue;
			}
			if (isNamed) {
				const found = content.facts.get(href)?.identifier;
				if (found !== undefined && found !== reference.identifier) {
					const expected = `the identifier ${found} of ${href}`;
					problems.push(linkProblem('package-identifier-mismatch', path, element, expected, reference.identifier));
				}
			}
			if (!needed.has(`${facts.identifier} ${listed.get(href)}`)) {
				const expected = `a dependency of ${facts.identifier} on ${href}`;
				problems.push(linkProblem('package-dependency-missing', manifestPath, 'resource', expected, 'none'));
			}
		}
	}
	return problems;
}

/** What is shared is a reference, a line to mark an object, any other figure an img. */
function elementShowing(href: string): 'assessmentStimulusRef' | 'object' | 'img' {
	if (href.endsWith('.xml')) return 'assessmentStimulusRef';
	return /-line\.(?:png|svg)$/.test(href) ? 'object' : 'img';
}

function checkIdentifier(path: string, identifier: string, listed: string | undefined): readonly DocumentProblem[] {
	if (listed === undefined || listed === identifier) return [];
	const expected = `the identifier ${identifier} of ${path}`;
	return [linkProblem('package-identifier-mismatch', manifestPath, 'resource', expected, listed)];
}

function linkProblem(
	code: string,
	file: string,
	element: string | undefined,
	expected: string,
	found: string,
): DocumentProblem {
	return { code, path: file, file, line: undefined, element, message: `expected ${expected}, found ${found}` };
}
