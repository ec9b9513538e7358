// Generated from schemas/json by `npm run types`. Edit the schemas, not this file.

/**
 * A figure as a model, never as a picture: what is drawn follows from these numbers alone.
 */
export type Figure = CountersFigure | CounterGroupsFigure | NumberLineFigure;
export type CounterSign = 'plus' | 'minus';
/**
 * What an author decides about an item. The bank adds id, version and status; it computes keys, worked steps, drawings and descriptions. In every text, mathematics stands between backticks.
 */
export type Item = ChoiceItem | MultipleChoiceItem | GriddedItem;
/**
 * What the item gives the student.
 */
export type ModelType = 'symbols' | 'counters' | 'number-line' | 'story' | 'table';
/**
 * What the answer is expressed in.
 */
export type AnswerForm = 'number' | 'expression' | 'statement' | 'words' | 'counters' | 'number-line';
export type StemBlock = ParagraphBlock | MathematicsBlock | FigureBlock | TableBlock;
/**
 * Plain text; mathematics between backticks, as in: What is `-3 + (-8)`?
 */
export type RichText = string;
/**
 * An expression, or two or more joined by = < > ≤ ≥; ? stands for the unknown number.
 */
export type Mathematics = string;
/**
 * @minItems 1
 * @maxItems 12
 */
export type Stem = readonly StemBlock[];
export type OptionId = string;
export type OptionContent = MathematicsOption | TextOption | FigureOption;
/**
 * @minItems 2
 * @maxItems 8
 */
export type Options = readonly Option[];
/**
 * How the key among options is computed.
 */
export type ChoiceRule = SameValueRule | ShowsRule | ShownRule | TrueStatementRule | StatedRule;
/**
 * @minItems 1
 * @maxItems 20
 */
export type Alignments = readonly Alignment[];
/**
 * @maxItems 20
 */
export type Tags = readonly string[];
/**
 * What a student did with one item.
 */
export type ItemResponse = ChoiceResponse | GridResponse | EntryResponse;

/**
 * A row of plus counters above a row of minus counters. Pairs can be ringed, zero pairs can be added beside the starting set, counters can be crossed out as taken away.
 */
export interface CountersFigure {
	readonly kind: 'counters';
	/**
	 * Plus counters in the starting set.
	 */
	readonly plus: number;
	/**
	 * Minus counters in the starting set.
	 */
	readonly minus: number;
	/**
	 * Zero pairs ringed within the starting set; at most the smaller of plus and minus.
	 */
	readonly ringedPairs?: number;
	/**
	 * Zero pairs drawn beside the starting set so that something can be taken away.
	 */
	readonly addedPairs?: number;
	/**
	 * Counters crossed out, counted over the starting set and the added pairs together.
	 */
	readonly removed?: {
		readonly sign: CounterSign;
		readonly count: number;
	};
}
/**
 * Equal groups of like counters: groups × each.
 */
export interface CounterGroupsFigure {
	readonly kind: 'counter-groups';
	readonly groups: number;
	readonly each: number;
	readonly sign: CounterSign;
}
/**
 * A number line with ticks, arrows drawn one after the other from the start, and points. Window and ticks left out are chosen by the bank.
 */
export interface NumberLineFigure {
	readonly kind: 'number-line';
	readonly orientation: 'horizontal' | 'vertical';
	/**
	 * Smallest tick.
	 */
	readonly from?: number;
	/**
	 * Largest tick.
	 */
	readonly to?: number;
	readonly tickEvery?: number;
	/**
	 * Which ticks carry a number.
	 */
	readonly labels?: ('every-tick' | 'ends' | 'ends-and-zero' | 'zero') | readonly number[];
	/**
	 * Where the first arrow starts; 0 when left out.
	 */
	readonly start?: number;
	/**
	 * Signed lengths; each arrow starts where the one before ended.
	 *
	 * @minItems 1
	 * @maxItems 6
	 */
	readonly arrows?: readonly number[];
	/**
	 * Whether each arrow carries its signed length.
	 */
	readonly arrowLabels?: boolean;
	/**
	 * @minItems 1
	 * @maxItems 8
	 */
	readonly points?: readonly LinePoint[];
}
export interface LinePoint {
	readonly at: number;
	readonly label?: string;
}
/**
 * One test: ordered items in sections, each at a fixed version. The bank adds id and version.
 */
export interface Form {
	readonly title: string;
	readonly gridProfile: string;
	/**
	 * @minItems 1
	 * @maxItems 20
	 */
	readonly sections: readonly FormSection[];
}
export interface FormSection {
	readonly title: string;
	/**
	 * @maxItems 1000
	 */
	readonly items: readonly FormItem[];
}
export interface FormItem {
	readonly item: string;
	readonly version: number;
	/**
	 * Instead of the item's own points.
	 */
	readonly points?: number;
}
/**
 * The rules of one signed answer grid.
 */
export interface GridProfile {
	readonly id: string;
	readonly name: string;
	readonly digitColumns: number;
	/**
	 * none: digits only; first: the first column holds only a sign; floating: one more column than digits, and the sign stands directly before the first digit in any column.
	 */
	readonly signColumn: 'none' | 'first' | 'floating';
	/**
	 * @maxItems 2
	 */
	readonly symbols: readonly ('-' | '+')[];
	readonly placement: 'any' | 'left-when-negative';
	/**
	 * Whether zeros before the first digit are refused or ignored.
	 */
	readonly zeros: 'strict' | 'lenient';
	/**
	 * Where each rule was found.
	 *
	 * @minItems 1
	 */
	readonly basis: readonly string[];
}
/**
 * A class group: student codes only, never names.
 */
export interface Group {
	readonly name: string;
	readonly grade?: string;
	/**
	 * @maxItems 500
	 */
	readonly studentCodes: readonly string[];
}
export interface ChoiceItem {
	readonly kind: 'choice';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	readonly options: Options;
	readonly rule: ChoiceRule;
	readonly key?: OptionId;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
}
export interface ParagraphBlock {
	readonly kind: 'paragraph';
	readonly text: RichText;
}
/**
 * A displayed line of mathematics.
 */
export interface MathematicsBlock {
	readonly kind: 'mathematics';
	readonly math: Mathematics;
}
export interface FigureBlock {
	readonly kind: 'figure';
	readonly figure: Figure;
}
export interface TableBlock {
	readonly kind: 'table';
	readonly caption?: RichText;
	/**
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly header: readonly RichText[];
	/**
	 * @minItems 1
	 * @maxItems 12
	 */
	readonly rows: readonly (readonly RichText[])[];
}
export interface Option {
	readonly id: OptionId;
	readonly content: OptionContent;
	/**
	 * Ids of the error patterns that produce this option.
	 *
	 * @maxItems 30
	 */
	readonly patterns?: readonly string[];
}
export interface MathematicsOption {
	readonly kind: 'mathematics';
	readonly math: Mathematics;
}
export interface TextOption {
	readonly kind: 'text';
	readonly text: RichText;
	readonly worth?: Mathematics;
}
export interface FigureOption {
	readonly kind: 'figure';
	readonly figure: Figure;
}
/**
 * The options worth as much as the expression.
 */
export interface SameValueRule {
	readonly kind: 'same-value';
	readonly expression: Mathematics;
}
/**
 * The figure options that show the expression.
 */
export interface ShowsRule {
	readonly kind: 'shows';
	readonly expression: Mathematics;
}
/**
 * The options whose expression the figure in the stem shows.
 */
export interface ShownRule {
	readonly kind: 'shown';
}
/**
 * The options that are true statements.
 */
export interface TrueStatementRule {
	readonly kind: 'true-statement';
}
/**
 * Words that no computation decides: the author names the key and says why.
 */
export interface StatedRule {
	readonly kind: 'stated';
	/**
	 * @minItems 1
	 * @maxItems 8
	 */
	readonly options: readonly OptionId[];
	readonly reason: RichText;
}
export interface Context {
	/**
	 * Where the story plays, such as mine-lift.
	 */
	readonly setting: string;
	readonly role: 'position' | 'change' | 'total-distance' | 'comparison';
}
/**
 * Link from an item to one standard: framework + edition + code. Grade and extent belong to the link.
 */
export interface Alignment {
	readonly framework: string;
	readonly edition: string;
	readonly code: string;
	readonly grade: string;
	readonly extent: 'full' | 'partial';
	readonly primary?: boolean;
}
export interface MultipleChoiceItem {
	readonly kind: 'multiple-choice';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	readonly options: Options;
	readonly rule: ChoiceRule;
	/**
	 * Optional; when given it must be the computed key.
	 */
	readonly key?: readonly OptionId[];
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
}
export interface GriddedItem {
	readonly kind: 'gridded';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: 'number';
	readonly stem: Stem;
	readonly expression: Mathematics;
	/**
	 * Optional; when given it must be the value of the expression.
	 */
	readonly key?: number;
	/**
	 * Id of the grid profile the item was written for.
	 */
	readonly grid: string;
	/**
	 * Printed after the answer, such as metres.
	 */
	readonly unit?: string;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
}
/**
 * Options marked; none is an omission. Answers choice and multiple choice.
 */
export interface ChoiceResponse {
	readonly kind: 'choice';
	/**
	 * @maxItems 8
	 */
	readonly options: readonly string[];
}
/**
 * Symbols marked in each column of a signed answer grid, left to right.
 */
export interface GridResponse {
	readonly kind: 'grid';
	/**
	 * @maxItems 8
	 */
	readonly columns: readonly (readonly ('-' | '+' | '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9')[])[];
}
/**
 * A number typed in a field.
 */
export interface EntryResponse {
	readonly kind: 'entry';
	readonly text: string;
}
