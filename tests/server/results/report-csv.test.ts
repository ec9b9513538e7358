import { expect, test } from 'vitest';
import type { Report } from '../../../item-bank/types.ts';
import { writeReportCsv } from '../../../server/results/report-csv.ts';

const report: Report = {
	kind: 'compare',
	title: 'Two forms side by side',
	copy: 'shared',
	simulated: false,
	sittings: [],
	cautions: ['A caution.'],
	sections: [
		{
			title: '=1+1 and @form',
			notes: ['-5+A1', '−6 to 7 %'],
			plot: { kind: 'scores', maximum: 1, students: 1, mean: 1, bars: [{ from: 1, to: 1, count: 1 }] },
			table: {
				headings: ['Figure', '=cmd', '+A'],
				rows: [
					['@name', -0.25, null],
					['-5', '=2', 'hidden'],
				],
			},
		},
	],
};

test('titles, headings, notes and cells that a spreadsheet would run are guarded, and numbers stay numbers', () => {
	const lines = writeReportCsv(report).slice(1).split('\r\n');
	expect(lines).toEqual([
		'Two forms side by side,,',
		'shared copy,,',
		'A caution.,,',
		',,',
		"'=1+1 and @form,,",
		"'-5+A1,,",
		'−6 to 7 %,,',
		"Figure,'=cmd,'+A",
		"'@name,-0.25,",
		"-5,'=2,hidden",
		'',
	]);
});
