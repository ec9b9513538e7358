import type { RejectedRow } from '../../item-bank/types.ts';
import { writeCsv } from '../csv.ts';

/** Rows that were not taken, as CSV. */
export function writeRejected(rejected: readonly RejectedRow[]): string {
	return writeCsv([['line', 'code', 'reason'], ...rejected.map(({ line, code, message }) => [line, code, message])]);
}
