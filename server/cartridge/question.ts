import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { Item, OptionContent, RubricLevel, StemBlock } from '../../item-bank/types.ts';

/** One option of a question, with what it means in the bank. */
export interface QuestionOption {
	/** An option id, the number of a place, ids in an order, or pairs of ids. */
	readonly bank: string;
	readonly content: OptionContent;
}

/** What a question wants of a student, in the few ways a cartridge knows. */
export type Asked =
	| {
			/** choice: one option; several: any number, all or nothing. */
			readonly asks: 'choice' | 'several';
			readonly options: readonly QuestionOption[];
			/** Indexes of the right options. */
			readonly right: readonly number[];
	  }
	| {
			readonly asks: 'entry';
			/** Every spelling that is right, the plainest first. */
			readonly spellings: readonly string[];
			/** Characters the field has room for. */
			readonly columns: number;
	  }
	| { readonly asks: 'text'; readonly lines: number; readonly levels: readonly RubricLevel[] };

/** A question of a cartridge: an item, a part of one, or what was made of it. Plain data, so that it can be handed to a worker. */
export type Question = Asked & {
	readonly record: Pick<ItemRecord, 'id' | 'version' | 'status'>;
	readonly kind: Item['kind'];
	/** Counted from 1 over the whole form. */
	readonly position: number;
	/** Counted from 1 within a set. */
	readonly part: number | undefined;
	/** Counted from 1 where one item became several questions. */
	readonly index: number | undefined;
	readonly section: number;
	/** On the platform. */
	readonly identifier: string;
	/** Neutral title that students may see. */
	readonly title: string;
	/** File name stem of its figures. */
	readonly stem: string;
	readonly points: number;
	/** Everything shown above the answer. */
	readonly blocks: readonly StemBlock[];
	/** What it was converted to, in words; undefined for what is carried as it is. */
	readonly conversion: string | undefined;
	/** Whether the bank gives credit in parts for it and the cartridge does not. */
	readonly losesParts: boolean;
};

/** What an item is asked as, with the blocks shown below its stem. */
export type Converted = Asked & { readonly added: readonly StemBlock[] };
