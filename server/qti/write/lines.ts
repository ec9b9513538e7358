/** Whether an element starts a new line where it follows another tag. */
export type LineStart = (name: string) => boolean;

/**
 * Items and tests start a line at every element that stands outside paragraphs and options, where white space means nothing,
 * so that the line of a problem leads somewhere; images and spans, which stand inside them, are left alone.
 */
export const startsItemLine: LineStart = (name) => name !== 'img' && name !== 'span';

const largeParts: ReadonlySet<string> = new Set([
	'manifest',
	'metadata',
	'organizations',
	'resources',
	'resource',
	'file',
]);

/** Manifests start a line at their large parts only: they hold forty elements an item, and each line costs its reader. */
export const startsManifestLine: LineStart = (name) => largeParts.has(name);

/**
 * Starts the lines in a text. Done between "><", which only ever stands between two tags: in texts and attribute values "<"
 * is escaped.
 */
export function breakLines(xml: string, startsLine: LineStart): string {
	return xml.replace(/>(?=<([^\s/>]+))/g, (_, name: string) => (startsLine(name) ? '>\n' : '>'));
}
