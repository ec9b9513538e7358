import type { FormRecord, ItemRecord } from '../item-bank/items/record.ts';
import { mapCartridge } from './cartridge/map-cartridge.ts';
import type { ExportVersion } from './export-package.ts';
import { writeAnswerMap } from './qti/answer-map.ts';
import type { GridStyle, PointStyle } from './qti/exportable.ts';
import { placeForm } from './qti/placement.ts';

/** The answer map of the package that an export with the same choices writes. Throws as the export does. */
export async function mapAnswers(
	{ form, items }: { readonly form: FormRecord; readonly items: readonly ItemRecord[] },
	{
		as,
		points = 'hotspot',
		grid = 'number',
		...uncarried
	}: {
		readonly as?: ExportVersion;
		readonly convert?: boolean;
		readonly leaveOut?: boolean;
		readonly points?: PointStyle;
		readonly grid?: GridStyle;
	},
): Promise<string> {
	return as === 'cc-1.1'
		? mapCartridge(form, items, uncarried)
		: writeAnswerMap(form, placeForm(form, items, { pointStyle: points, gridStyle: grid }));
}
