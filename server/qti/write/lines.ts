/**
 * Starts a new line at every element that stands outside paragraphs and options, where white space means nothing, so that the
 * line of a problem leads somewhere; images, which stand inside them, are left alone. Done on the text, because there "><"
 * only ever stands between two tags: in texts and attribute values "<" is escaped.
 */
export function breakLines(xml: string): string {
	return xml.replace(/>(?=<(?!img|\/))/g, '>\n');
}

/** Starts a new line at the large parts of a manifest only: it holds forty elements an item, and each line costs its reader. */
export function breakManifestLines(xml: string): string {
	return xml.replace(/>(?=<(?:manifest|metadata|organizations|resources?|file)[ >/])/g, '>\n');
}
