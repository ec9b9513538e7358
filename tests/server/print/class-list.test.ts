import { describe, expect, test } from 'vitest';
import { readClassList } from '../../../server/print/class-list.ts';

describe('a class list', () => {
	test.each([
		['one code to a line', '6A-01\n6A-02\n', ['6A-01', '6A-02']],
		[
			'a headed column among others',
			'seat,Student code,group\r\n1,6A-01,red\r\n2,"6A-02","a, b"\r\n',
			['6A-01', '6A-02'],
		],
		['the first column when none is headed', '6A-01;front\n6A-02;back', ['6A-01', '6A-02']],
		['blank lines and blanks around', '\uFEFFcode\n\n  6A-01 \n\n', ['6A-01']],
		['an empty cell', 'seat,code\n1,6A-01\n2,\n', ['6A-01', '']],
		['nothing', '', []],
	])('is read from %s', (_, text, codes) => {
		expect(readClassList(text)).toEqual(codes);
	});
});
