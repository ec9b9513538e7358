import { en, type Words } from './en.ts';

/** What the pages say, in the language of the document; a second language is another object of the same shape. */
export const words: Words = en;
