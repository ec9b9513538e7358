/**
 * Starts a new line at every tag outside paragraphs and options, where white space means nothing, so that the line of a
 * problem leads somewhere. Done on the text because "><" only ever stands between two tags there: in texts and attribute
 * values "<" is always escaped.
 */
export function breakLines(xml: string): string {
	return xml.replace(/>(?=<(?!img|\/p>|\/simpleChoice>))/g, '>\n');
}

/** Starts a new line at the large parts of a manifest only: it holds forty tags an item, and each line costs its reader. */
export function breakManifestLines(xml: string): string {
	return xml.replace(/>(?=<(?:manifest|metadata|organizations|resources?|file|\/resources|\/manifest)[ >/])/g, '>\n');
}
