import type { DocumentProblem } from '../export-errors.ts';
import { interpretItemTree, type PlatformResponses } from '../scoring/interpret-item.ts';
import { childrenOf, readTree, textOf } from '../scoring/read-tree.ts';
import { toNewerElement } from '../vocabulary.ts';
import type { CheckedDocument } from './validate-document.ts';

/**
 * Carries out response processing that is written out: the correct response must earn the whole score, and no response none.
 * The document must be valid otherwise.
 */
export function checkOwnProcessing({ path, xml, schema }: CheckedDocument): readonly DocumentProblem[] {
	const root = readTree(typeof xml === 'string' ? xml : Buffer.from(xml).toString('utf8'));
	const declarations = childrenOf(root, 'responseDeclaration');
	const respond = (answer: (values: readonly string[]) => readonly string[]): PlatformResponses =>
		Object.fromEntries(
			declarations.map((declaration) => {
				const values = childrenOf(declaration, 'correctResponse').flatMap((holder) => childrenOf(holder, 'value'));
				return [declaration.attributes.identifier ?? '', answer(values.map(textOf))];
			}),
		);
	const earn = (responses: PlatformResponses): unknown => interpretItemTree(root, responses).get('SCORE')?.members[0];
	const [forKey, forNone] = [earn(respond((values) => values)), earn(respond(() => []))];
	if (forKey === 1 && forNone === 0) return [];
	const message = `expected 1 for the correct response and 0 for none, found ${String(forKey)} and ${String(forNone)}`;
	const element = schema === 'qti-3.0' ? toNewerElement('responseProcessing') : 'responseProcessing';
	const at = { path, file: path, line: undefined, element };
	return [{ ...at, code: 'qti-key-not-scored', message }];
}
