import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { InvariantError } from '../../item-bank/invariant.ts';
import { BuildBrokenError } from '../../server/assembly/build-forms.ts';
import { BuildRequestError } from '../../server/assembly/build-request.ts';
import { describeError, statuses } from '../../server/error-replies.ts';
import { BuildCancelledError, ItemNotApprovedError, PositionUnknownError } from '../../server/planning-errors.ts';
import { PrintCancelledError } from '../../server/print/print-errors.ts';
import { projectRoot } from '../../server/project-root.ts';
import { ExportCancelledError } from '../../server/qti/export-errors.ts';
import { RequestError } from '../../server/request-errors.ts';
import { DiskFullError, StoreBusyError, StoreDamagedError } from '../../server/store/storage-errors.ts';
import { ContentRefusedError, IdTakenError, NotFoundError } from '../../server/store/store-errors.ts';

describe('the answer to an error', () => {
	test.each([
		[404, new NotFoundError('form', 'form-a')],
		[409, new IdTakenError('form', 'form-a')],
		[422, new PositionUnknownError('form-a', 9, 2)],
		[422, new ItemNotApprovedError('tide-one')],
		[422, new BuildRequestError('expected 1 to 4 forms, found 5')],
		[500, new BuildBrokenError('exit code 1')],
		[500, new StoreDamagedError('bank.db', 'page 3')],
		[503, new BuildCancelledError()],
		[503, new ExportCancelledError()],
		[503, new PrintCancelledError()],
		[503, new StoreBusyError()],
		[507, new DiskFullError()],
	])('has the status %i, the code and the message of the error', (status, error) => {
		const { code, message } = error;
		expect(describeError(error)).toEqual({ status, body: { code, message, problems: [] } });
	});

	test('has no status for a code the project no longer has', () => {
		const developers = readFileSync(join(projectRoot, 'DEVELOPERS.md'), 'utf8');
		const unknown = Object.keys(statuses).filter((code) => !developers.includes(`| \`${code}\` |`));
		expect(unknown).toEqual([]);
	});

	test('names every problem and nothing else of it', () => {
		const problem = { code: 'text-blank', path: '/name', message: 'expected text', secret: 'no' };
		const { status, body } = describeError(new ContentRefusedError('item', [problem]));
		expect(status).toBe(400);
		expect(body.problems).toEqual([{ code: 'text-blank', path: '/name', message: 'expected text' }]);
	});

	test('has the status a request error brings', () => {
		const error = new RequestError({ code: 'route-unknown', status: 404, message: 'nothing is found' });
		expect(describeError(error)).toMatchObject({ status: 404, body: { code: 'route-unknown' } });
	});

	test.each([
		['FST_ERR_CTP_INVALID_CONTENT_LENGTH', 400, 'body-unreadable'],
		['FST_ERR_CTP_EMPTY_JSON_BODY', 400, 'json-malformed'],
		['FST_ERR_MAX_PARAM_LENGTH', 414, 'url-malformed'],
	])('says %s in words of the bank', (code, status, ours) => {
		const { status: found, body } = describeError(Object.assign(new Error('inside'), { code }));
		expect([found, body.code]).toEqual([status, ours]);
		expect(body.message).not.toContain('inside');
	});

	test.each([
		['a fault of ours', new InvariantError('a list was empty')],
		['an error with a code nobody knows', Object.assign(new Error('at /secret/place'), { code: 'ENOENT' })],
		['something that is no error', 'at /secret/place'],
	])('tells nothing of %s', (_what, error) => {
		const { status, body } = describeError(error);
		expect([status, body.code, body.problems]).toEqual([500, 'internal', []]);
		expect(body.message).not.toMatch(/secret|empty/);
	});
});
