import type { PreviewOrder, ReadingPreview, ResponseMapping } from '../../item-bank/types.ts';
import { ApiError } from '../api-client.ts';
import { callApi } from '../call-api.ts';

/** A file as the bank understands it. */
export interface FileLook {
	readonly preview: ReadingPreview;
	/** False where no column held codes the bank knows; the columns then stand as if the first were the student. */
	readonly isStudentKnown: boolean;
}

/** Looks at the beginning of a file, by a mapping or as the bank understands it. Throws ApiError. */
export async function lookAtFile(order: Omit<PreviewOrder, 'mapping'>, mapping?: ResponseMapping): Promise<FileLook> {
	const ask = (by?: ResponseMapping): Promise<ReadingPreview> =>
		callApi('POST /api/responses/preview', { body: by ? { ...order, mapping: by } : order });
	try {
		return { preview: await ask(mapping), isStudentKnown: true };
	} catch (error) {
		if (!(error instanceof ApiError) || error.code !== 'student-column-unknown') throw error;
		return { preview: await ask({ student: 1 }), isStudentKnown: false };
	}
}

/** Deletes sittings that a reading has just made. Throws ApiError. */
export async function takeBackSittings(ids: readonly string[]): Promise<void> {
	for (const id of ids) await callApi('POST /api/sittings/{id}/purge', { path: { id }, body: { confirm: id } });
}
