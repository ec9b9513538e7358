import type { FormRecord, ItemRecord } from '../item-bank/items/record.ts';
import { type CartridgeOptions, type CartridgeResult, exportCartridge } from './cartridge/export-cartridge.ts';
import { type ExportOptions, type ExportResult, exportForm } from './qti/export-form.ts';
import { type QtiVersion, qtiVersions } from './qti/versions.ts';

/** A version a form can be taken out in. */
export type ExportVersion = QtiVersion | 'cc-1.1';

/** Every version a form can be taken out in. */
export const exportVersions: readonly ExportVersion[] = [...qtiVersions, 'cc-1.1'];

/** How to take a form out; what to do with items that a cartridge does not carry has no meaning for QTI, which carries all. */
export type PackageOptions = Omit<ExportOptions, 'as'> & CartridgeOptions & { readonly as: ExportVersion };

/** Takes a form out in any version. Throws as exportForm and exportCartridge do. */
export function exportPackage(
	input: { readonly form: FormRecord; readonly items: readonly ItemRecord[] },
	{ as, ...options }: PackageOptions,
): Promise<ExportResult | CartridgeResult> {
	return as === 'cc-1.1' ? exportCartridge(input, options) : exportForm(input, { ...options, as });
}
