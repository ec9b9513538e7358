/** Path of the assessment within a cartridge. */
export const assessmentPath = 'assessment/assessment.xml';

/** Path of the manifest within a cartridge. */
export const cartridgeManifestPath = 'imsmanifest.xml';

/** Folder of the figures. */
const imageFolder = 'images';

/** Path of a figure within a cartridge: the nth of its question. */
export function imagePath(stem: string, count: number, format: 'png' | 'svg'): string {
	return `${imageFolder}/${stem}-figure-${count}.${format}`;
}

/**
 * Address of a file of the cartridge as HTML within a question names it. The token stands for the folder that holds the files of
 * the cartridge (from memory of the Common Cartridge profile: the schema files do not say it).
 */
export function fileAddress(path: string): string {
	return `$IMS-CC-FILEBASE$/${path}`;
}

/** Identifier of the resource of a figure. */
export function imageIdentifier(path: string): string {
	const name = path.slice(path.lastIndexOf('/') + 1);
	return `image-${name.slice(0, name.lastIndexOf('.'))}`;
}
