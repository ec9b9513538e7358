import type { QtiVersion } from '../versions.ts';
import { runJob } from './pool.ts';
import { findPublishedSchema, publishedFolder } from './published.ts';
import type { CheckedDocument, DocumentFinding } from './validate-document.ts';

/**
 * Checks documents in a worker against the export profile and, where it is installed in the folder, the published schema.
 * One finding each, in order.
 */
export async function checkDocuments(
	documents: readonly CheckedDocument[],
	version: QtiVersion,
	schemasFolder?: string,
): Promise<readonly DocumentFinding[]> {
	const published = findPublishedSchema(publishedFolder(schemasFolder), version);
	return runJob({ kind: 'documents', documents, published });
}
