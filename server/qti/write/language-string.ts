import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';

/** Text of learning object metadata, in English. */
export function writeLanguageString(text: string): MarkupElement {
	return element('lom:string', { language: 'en' }, [text]);
}
