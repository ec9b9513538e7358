// Generated from schemas/json by `npm run types`. Edit the schemas, not this file.

/**
 * What is known of a student at one place of a form.
 */
export type AnswerGiven = GivenResponse | GivenPoints | GivenMark;
export type PartResponse =
	ChoiceResponse | GridResponse | EntryResponse | PointResponse | OrderResponse | MatchResponse | ExplanationResponse;
/**
 * A place to answer. Every kind is columns of bubbles. A set has a field for each of its parts.
 */
export type SheetField =
	ChoiceField | GridField | PointField | OrderField | MatchField | RatingField | StudentCodeField;
export type MeasureGroup =
	| 'items'
	| 'points'
	| 'cells'
	| 'kinds'
	| 'dok'
	| 'roles'
	| 'shapes'
	| 'levels'
	| 'difficulty'
	| 'spread'
	| 'readingLoad'
	| 'keyPlaces';
/**
 * What the item gives the student.
 */
export type ModelType = 'symbols' | 'counters' | 'number-line' | 'story' | 'table';
export type KindName =
	'choice' | 'multiple-choice' | 'gridded' | 'point' | 'order' | 'match' | 'inline-choice' | 'explanation' | 'set';
export type RoleName = 'position' | 'change' | 'total-distance' | 'comparison';
/**
 * The calculation an item asks for, by its operation and the signs of its numbers.
 */
export type ItemShape =
	| 'sum-unlike-signs'
	| 'sum-of-negatives'
	| 'positive-minus-greater'
	| 'negative-minus-positive'
	| 'minus-negative'
	| 'product-unlike-signs'
	| 'product-of-negatives'
	| 'quotient-unlike-signs'
	| 'quotient-of-negatives'
	| 'several-steps'
	| 'size-or-opposite'
	| 'no-negative'
	| 'order'
	| 'other';
export type ItemId = string;
/**
 * Largest difference between two forms: items, points, steps of the estimate summed over the form, or words.
 */
export type Band = number;
/**
 * What came of building forms: forms with what is proved of them, why there are none, or that the limits ended the search.
 */
export type BuildAnswer = FormsBuilt | FormsImpossible | BuildUndecided;
/**
 * Everything wrong with a piece of content, in a stable order.
 */
export type ProblemList = readonly ProblemEntry[];
export type FamilyParameter = IntegerParameter | WordParameter | SwitchParameter;
/**
 * Every family of items at its newest version.
 */
export type FamilyList = readonly FamilyEntry[];
/**
 * A figure as a model, never as a picture: what is drawn follows from these numbers alone.
 */
export type Figure = CountersFigure | CounterGroupsFigure | NumberLineFigure;
export type CounterSign = 'plus' | 'minus';
/**
 * What an author decides about an item. The bank adds id, version and status; it computes keys, worked steps, drawings and descriptions. In every text, mathematics stands between backticks.
 */
export type Item =
	| ChoiceItem
	| MultipleChoiceItem
	| GriddedItem
	| PointItem
	| OrderItem
	| MatchItem
	| InlineChoiceItem
	| ExplanationItem
	| SetItem;
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
 * whole: all points or none, as when left out; parts: a share for each part that is right.
 */
export type Credit = 'whole' | 'parts';
export type PartItem =
	| ChoiceItem
	| MultipleChoiceItem
	| GriddedItem
	| PointItem
	| OrderItem
	| MatchItem
	| InlineChoiceItem
	| ExplanationItem;
/**
 * The newest version of every form, by title.
 */
export type FormList = readonly FormSummary[];
/**
 * Frameworks the bank knows.
 */
export type FrameworkList = readonly FrameworkEntry[];
export type SinglePartKey = OptionsKey | ValueKey | OrderKey | PairsKey | RubricKey;
/**
 * Every error pattern: one wrong idea each.
 */
export type PatternList = readonly PatternEntry[];
/**
 * What a section of a report shows at a glance, as plain data; the table of the section stands behind it.
 */
export type Plot =
	| ScoresPlot
	| ItemPersonPlot
	| ItemScatterPlot
	| OptionCurvesPlot
	| PatternBarsPlot
	| EvidenceBoardPlot
	| CountBoardPlot;
/**
 * What a student did with one item.
 */
export type ItemResponse =
	| ChoiceResponse
	| GridResponse
	| EntryResponse
	| PointResponse
	| OrderResponse
	| MatchResponse
	| ExplanationResponse
	| SetResponse;
/**
 * What the rules of item writing say of items that stand on one form.
 */
export type ReviewList = readonly ReviewEntry[];
/**
 * Items that could stand in another's place, the best first.
 */
export type SwapOffers = readonly SwapOfferEntry[];

/**
 * What an answer to an item is consistent with. One answer never shows which idea a student followed.
 */
export interface AnswerExplanation {
	readonly isRight: boolean;
	/**
	 * Patterns that each lead to the answer alone; this item does not tell them apart.
	 */
	readonly patterns: readonly string[];
	/**
	 * Those among them that no item of the same kind tells apart.
	 */
	readonly inseparable: readonly (readonly string[])[];
	/**
	 * Weaker: two patterns that lead there only together.
	 */
	readonly pairs: readonly (readonly string[])[];
	/**
	 * The same in sentences.
	 */
	readonly lines: readonly string[];
}
/**
 * A response, scored by the bank.
 */
export interface GivenResponse {
	readonly kind: 'response';
	readonly response: PartResponse;
}
/**
 * Options marked; none is an omission. Answers choice, multiple choice and inline choice.
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
/**
 * The place marked on a number line; none is an omission.
 */
export interface PointResponse {
	readonly kind: 'point';
	readonly at?: number;
}
/**
 * Entries in the order given; none is an omission.
 */
export interface OrderResponse {
	readonly kind: 'order';
	/**
	 * @maxItems 8
	 */
	readonly order: readonly string[];
}
/**
 * Pairs of a left and a right entry.
 */
export interface MatchResponse {
	readonly kind: 'match';
	/**
	 * @maxItems 48
	 */
	readonly pairs: readonly MatchPair[];
}
export interface MatchPair {
	readonly left: string;
	readonly right: string;
}
/**
 * What was written, and how a scorer rated it.
 */
export interface ExplanationResponse {
	readonly kind: 'explanation';
	readonly text: string;
	readonly rating?: number;
}
/**
 * Points somebody else gave; they stay as they are when a key is corrected.
 */
export interface GivenPoints {
	readonly kind: 'points';
	readonly points: number;
}
/**
 * No response: left out though seen, never come to, or marked in a way that cannot be read.
 */
export interface GivenMark {
	readonly kind: 'mark';
	readonly mark: 'omitted' | 'not-reached' | 'invalid';
}
/**
 * How an answer stands and what it earned.
 */
export interface AnswerScore {
	readonly state: 'correct' | 'partly' | 'incorrect' | 'omitted' | 'not-reached' | 'invalid' | 'unrated';
	/**
	 * Earned; 0 while unrated.
	 */
	readonly points: number;
	/**
	 * Possible.
	 */
	readonly maximum: number;
	/**
	 * Why a response is invalid.
	 */
	readonly reason?: string;
}
/**
 * Where everything stands that is read from answer sheets or from booklets with answer places: millimetres from the top left corner of the page, x to the right and y down. Every place of a bubble is its centre.
 */
export interface AnswerSheetGeometry {
	readonly format: 1;
	readonly form: string;
	readonly formVersion: number;
	readonly paper: 'a4' | 'letter';
	readonly large: boolean;
	readonly gridProfile: string;
	readonly page: {
		readonly width: number;
		readonly height: number;
	};
	readonly bubble: number;
	/**
	 * @minItems 4
	 * @maxItems 4
	 */
	readonly fiducials: readonly Fiducial[];
	/**
	 * @minItems 1
	 */
	readonly layouts: readonly SheetLayout[];
}
/**
 * A square mark in a corner of every page. The one at the bottom left is open, so that a page can be turned the right way up.
 */
export interface Fiducial {
	readonly corner: 'top-left' | 'top-right' | 'bottom-left' | 'bottom-right';
	readonly x: number;
	readonly y: number;
	readonly size: number;
	readonly isOpen: boolean;
}
export interface SheetLayout {
	/**
	 * Stands in the code of every page, so that a page names its own geometry.
	 */
	readonly id: string;
	/**
	 * coded: the student is named in the code; blank: the student is to be filled in; booklet: answer places beside the items.
	 */
	readonly kind: 'coded' | 'blank' | 'booklet';
	/**
	 * @minItems 1
	 */
	readonly pages: readonly SheetPage[];
}
export interface SheetPage {
	readonly page: number;
	readonly code: CodePlace;
	readonly fields: readonly SheetField[];
}
/**
 * The Data Matrix of the page (ISO/IEC 16022), without its quiet zone.
 */
export interface CodePlace {
	readonly x: number;
	readonly y: number;
	readonly size: number;
	readonly modules: number;
}
export interface ChoiceField {
	readonly kind: 'choice';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	readonly marks: 'one' | 'several';
	/**
	 * @minItems 1
	 * @maxItems 1
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * Bubbles of which one is filled, unless the field takes several marks, with the box to write in above them. In fields without boxes they stand in a row.
 */
export interface BubbleColumn {
	readonly box?: SheetBox;
	/**
	 * @minItems 1
	 */
	readonly bubbles: readonly Bubble[];
}
export interface SheetBox {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}
export interface Bubble {
	/**
	 * What the bubble stands for: an option id, a sign, a digit, a character, a number of a line, points of a rubric.
	 */
	readonly symbol: string;
	readonly x: number;
	readonly y: number;
}
export interface GridField {
	readonly kind: 'grid';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	/**
	 * @minItems 1
	 * @maxItems 8
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * A number line with one bubble for each tick, of which one is filled; a symbol is the number of its tick.
 */
export interface PointField {
	readonly kind: 'point';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	readonly line: SheetLine;
	/**
	 * @minItems 1
	 * @maxItems 1
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * The drawn line from its smallest tick to its largest. The tick of a bubble stands at its foot on the line.
 */
export interface SheetLine {
	readonly x1: number;
	readonly y1: number;
	readonly x2: number;
	readonly y2: number;
}
/**
 * One row of bubbles for each place from the first; a symbol is the id of the entry put there.
 */
export interface OrderField {
	readonly kind: 'order';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	/**
	 * @minItems 3
	 * @maxItems 6
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * One row of bubbles for each entry on the left; a symbol is the id of its partner on the right.
 */
export interface MatchField {
	readonly kind: 'match';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	/**
	 * Ids of the entries on the left, row by row.
	 *
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly left: readonly string[];
	/**
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * Filled by a scorer: one bubble for each level of the rubric; a symbol is its points.
 */
export interface RatingField {
	readonly kind: 'rating';
	/**
	 * Number of the item on the test.
	 */
	readonly position: number;
	/**
	 * Letter of a part of a set; left out for items that are no set.
	 */
	readonly part?: string;
	readonly item: string;
	readonly itemVersion: number;
	/**
	 * @minItems 1
	 * @maxItems 1
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * One column for each character of a student code; short codes leave the last ones empty.
 */
export interface StudentCodeField {
	readonly kind: 'student-code';
	/**
	 * @minItems 1
	 * @maxItems 24
	 */
	readonly columns: readonly BubbleColumn[];
}
/**
 * How two or more forms compare, measure by measure.
 */
export interface BalanceReport {
	/**
	 * Titles, in the order of the values.
	 */
	readonly forms: readonly string[];
	readonly rows: readonly BalanceRow[];
	/**
	 * Ids of items on more than one of the forms.
	 */
	readonly shared: readonly string[];
	/**
	 * Webb's balance of representation of each form over the standards it hits, 0 to 1.
	 */
	readonly representation: readonly number[];
}
export interface BalanceRow {
	readonly group: MeasureGroup;
	readonly label: string;
	readonly values: readonly number[];
	/**
	 * Largest value less smallest.
	 */
	readonly difference: number;
	/**
	 * The band of the blueprint, where it has one.
	 */
	readonly allowed?: number;
}
/**
 * A new blueprint; without an id the bank chooses one.
 */
export interface BlueprintCreation {
	readonly id?: string;
	readonly blueprint: Blueprint;
}
/**
 * The plan of a test. Standards are named in one framework and edition; an item counts once, under its lead alignment there. Every range holds for each form.
 */
export interface Blueprint {
	readonly title: string;
	/**
	 * What the results are for.
	 */
	readonly purpose?: string;
	readonly framework: string;
	readonly edition: string;
	readonly gridProfile: string;
	readonly items: Range;
	readonly points?: Range;
	/**
	 * @maxItems 120
	 */
	readonly cells: readonly BlueprintCell[];
	/**
	 * @maxItems 4
	 */
	readonly dok?: readonly DokShare[];
	/**
	 * @maxItems 12
	 */
	readonly kinds?: readonly KindShare[];
	/**
	 * @maxItems 10
	 */
	readonly pointValues?: readonly PointShare[];
	/**
	 * @maxItems 4
	 */
	readonly roles?: readonly RoleShare[];
	/**
	 * @maxItems 12
	 */
	readonly shapes?: readonly ShapeShare[];
	readonly readingLoad?: ReadingLimits;
	readonly difficulty?: DifficultyTarget;
	/**
	 * @minItems 1
	 * @maxItems 20
	 */
	readonly sections: readonly BlueprintSection[];
	readonly order?: OrderRules;
	readonly exclusions?: Exclusions;
	/**
	 * @maxItems 40
	 */
	readonly anchors?: readonly Anchor[];
	/**
	 * @maxItems 200
	 */
	readonly forced?: readonly ForcedItem[];
	/**
	 * @maxItems 1000
	 */
	readonly forbidden?: readonly ForbiddenItem[];
	readonly parallel?: ParallelBands;
	readonly scoreBands?: ScoreBands;
}
/**
 * At least min, at most max; one may be left out.
 */
export interface Range {
	readonly min?: number;
	readonly max?: number;
}
/**
 * A standard with everything below it, or any standard; in a model type, or any.
 */
export interface BlueprintCell {
	readonly standard?: string;
	readonly model?: ModelType;
	readonly items?: Range;
	readonly points?: Range;
}
export interface DokShare {
	readonly dok: number;
	readonly items?: Range;
	readonly points?: Range;
}
export interface KindShare {
	readonly kind: KindName;
	readonly items?: Range;
	readonly points?: Range;
}
export interface PointShare {
	/**
	 * What one item is worth.
	 */
	readonly points: number;
	readonly items: Range;
}
export interface RoleShare {
	readonly role: RoleName;
	readonly items?: Range;
	readonly points?: Range;
}
export interface ShapeShare {
	readonly shape: ItemShape;
	readonly items: Range;
}
/**
 * Words to read, rounded up to fives for each item.
 */
export interface ReadingLimits {
	readonly words?: Range;
	readonly mostPerItem?: number;
}
/**
 * Mean of the estimates of all items, on the scale from 1 to 10 in tenths.
 */
export interface DifficultyTarget {
	readonly target: number;
	/**
	 * How far the mean may be from the target.
	 */
	readonly band: number;
}
/**
 * A named part in this place; every list given narrows what may stand in it.
 */
export interface BlueprintSection {
	readonly title: string;
	/**
	 * @minItems 1
	 * @maxItems 40
	 */
	readonly standards?: readonly string[];
	/**
	 * @minItems 1
	 * @maxItems 5
	 */
	readonly models?: readonly ModelType[];
	/**
	 * @minItems 1
	 * @maxItems 12
	 */
	readonly kinds?: readonly KindName[];
	/**
	 * @minItems 1
	 * @maxItems 20
	 */
	readonly shapes?: readonly ItemShape[];
	readonly items: Range;
}
export interface OrderRules {
	/**
	 * Order inside each section, anchors apart; easier-first when left out.
	 */
	readonly within?: 'easier-first' | 'free';
	/**
	 * How many places in a row may have the same answer.
	 */
	readonly sameAnswerInARow?: number;
}
export interface Exclusions {
	/**
	 * No item that was given in the last so many days.
	 */
	readonly usedWithinDays?: number;
	/**
	 * No item of these forms.
	 *
	 * @maxItems 40
	 */
	readonly notOnForms?: readonly string[];
	/**
	 * Items of one form that may share a setting.
	 */
	readonly settingMost?: number;
	/**
	 * Items of one form that may have the same answer.
	 */
	readonly answerMost?: number;
	/**
	 * Items of one form that may use the same numbers, signs apart.
	 */
	readonly numbersMost?: number;
	/**
	 * Choice items of one form that may have their key at the same option.
	 */
	readonly keyPlaceMost?: number;
	/**
	 * Items of one form that may be of one sort: the same standard, model type, kind, DOK, context role and shape.
	 */
	readonly likeMost?: number;
	/**
	 * true: no two items of one form where one tells or asks what the other asks.
	 */
	readonly giveaways?: boolean;
}
/**
 * An item on every form, at the same place.
 */
export interface Anchor {
	readonly item: ItemId;
	/**
	 * The first that admits it when left out.
	 */
	readonly section?: number;
}
/**
 * An item that has to be on one of the forms.
 */
export interface ForcedItem {
	readonly item: ItemId;
	readonly form?: number;
}
export interface ForbiddenItem {
	readonly item: ItemId;
	readonly reason?: string;
}
/**
 * How far forms built together may differ; what is left out is balanced as well as it goes.
 */
export interface ParallelBands {
	readonly cells?: Band;
	readonly kinds?: Band;
	readonly dok?: Band;
	readonly shapes?: Band;
	readonly levels?: Band;
	readonly points?: Band;
	readonly difficulty?: Band;
	readonly readingLoad?: Band;
}
/**
 * What a score is called, with the cut points and who set them, why and when.
 */
export interface ScoreBands {
	/**
	 * @minItems 2
	 * @maxItems 8
	 */
	readonly bands: readonly ScoreBand[];
	readonly setBy: string;
	readonly why: string;
	readonly on: string;
}
export interface ScoreBand {
	readonly name: string;
	/**
	 * Lowest number of points.
	 */
	readonly from: number;
}
/**
 * One version of a blueprint with its place in the bank.
 */
export interface BlueprintEntry {
	readonly id: string;
	readonly version: number;
	readonly blueprint: Blueprint;
}
/**
 * A changed blueprint, and the version that was changed.
 */
export interface BlueprintRevision {
	readonly baseVersion: number;
	readonly blueprint: Blueprint;
}
export interface FormsBuilt {
	readonly kind: 'built';
	readonly forms: readonly Form[];
	readonly proof: BuildProof;
	readonly balance: BalanceReport;
	/**
	 * Order rules that no arrangement found keeps.
	 */
	readonly departures: readonly Shortfall[];
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
export interface BuildProof {
	readonly status: 'optimal' | 'feasible';
	/**
	 * Weighted differences between the forms and distance from the difficulty target; 0 is none.
	 */
	readonly unevenness: number;
	/**
	 * No forms can have less.
	 */
	readonly bound: number;
	readonly nodes: number;
	/**
	 * Every form from the same classes of like items; from the same classes of nearly like items; form after form; from classes freely; with sharing rules in the program.
	 */
	readonly method: 'like-for-like' | 'near-alike' | 'in-turn' | 'classes' | 'items';
}
export interface Shortfall {
	/**
	 * 1 for the first form; left out where forms are compared.
	 */
	readonly form?: number;
	/**
	 * JSON pointer into the blueprint.
	 */
	readonly path: string;
	readonly requirement: string;
	readonly found: string;
}
export interface FormsImpossible {
	readonly kind: 'impossible';
	/**
	 * Requirements that cannot hold together; without any one of them they can, if isIrreducible.
	 */
	readonly conflict: readonly ConflictEntry[];
	readonly isIrreducible: boolean;
	readonly nearest?: NearestForms;
	/**
	 * The fewest new items with which the forms can be built; empty when no new item helps.
	 */
	readonly missing: readonly MissingItems[];
}
export interface ConflictEntry {
	/**
	 * JSON pointer into the blueprint.
	 */
	readonly path: string;
	readonly requirement: string;
	/**
	 * Approved items that count for it.
	 */
	readonly inBank: number;
	/**
	 * Those that are not excluded.
	 */
	readonly usable: number;
	readonly excluded: readonly ExcludedItem[];
}
export interface ExcludedItem {
	readonly item: string;
	readonly reason: string;
}
export interface NearestForms {
	readonly forms: readonly Form[];
	readonly shortfalls: readonly Shortfall[];
}
export interface MissingItems {
	readonly count: number;
	readonly standard: string;
	readonly model: ModelType;
	readonly kind: KindName;
	readonly dok: number;
	readonly points: number;
	readonly role?: RoleName;
	readonly shape?: ItemShape;
}
export interface BuildUndecided {
	readonly kind: 'undecided';
	readonly message: string;
	readonly nodes: number;
}
/**
 * What forms to build: by a blueprint of the bank or one sent along.
 */
export interface BuildOrder {
	/**
	 * Id of a blueprint of the bank.
	 */
	readonly blueprint?: string;
	/**
	 * Version of that blueprint; the newest when left out.
	 */
	readonly version?: number;
	readonly document?: Blueprint;
	readonly count: number;
	/**
	 * The same seed gives the same forms; 1 when left out.
	 */
	readonly seed?: string;
	/**
	 * Id of a form the new ones are to be parallel to, as for a retake; its items are not used again.
	 */
	readonly like?: string;
	/**
	 * Whether to keep the forms in the bank: all of them or none.
	 */
	readonly keep?: boolean;
	/**
	 * Ids of the kept forms, one for each; chosen by the bank when left out.
	 *
	 * @minItems 1
	 * @maxItems 4
	 */
	readonly ids?: readonly string[];
	/**
	 * Titles of the forms, one for each; the blueprint's title with a letter when left out.
	 *
	 * @minItems 1
	 * @maxItems 4
	 */
	readonly titles?: readonly string[];
	/**
	 * Whether to make what the bank lacks for the plan from families, and try again. What stands on the forms comes into the bank, approved, when they are kept.
	 */
	readonly makeMissing?: boolean;
}
/**
 * What came of building forms, and the forms kept of it.
 */
export interface BuildResult {
	readonly answer: BuildAnswer;
	/**
	 * Ids of the forms kept in the bank.
	 */
	readonly kept: readonly string[];
	/**
	 * The answer as plain text.
	 */
	readonly lines: string;
	/**
	 * Items made because the bank lacked them; in the bank where the forms are kept.
	 */
	readonly made: readonly MadeForPlan[];
}
export interface MadeForPlan {
	readonly id: string;
	readonly name: string;
}
/**
 * What each version a form can be taken out in carries of it, item by item.
 */
export interface CarryingTable {
	readonly form: string;
	readonly version: number;
	readonly items: readonly CarriedItem[];
	/**
	 * The form around its items: sections, points, standards, figures.
	 */
	readonly around: readonly CarriedSide[];
}
export interface CarriedItem {
	readonly position: number;
	readonly item: string;
	readonly version: number;
	readonly name: string;
	readonly kind: string;
	readonly carries: Carriages;
}
export interface Carriages {
	readonly 'qti-2.1': CarriageEntry;
	readonly 'qti-2.2': CarriageEntry;
	readonly 'qti-3.0': CarriageEntry;
	readonly 'cc-1.1': CarriageEntry;
}
export interface CarriageEntry {
	/**
	 * converted: only when asked; refused: this item cannot be written so.
	 */
	readonly how: 'carried' | 'converted' | 'refused';
	/**
	 * What it becomes.
	 */
	readonly as: string;
	readonly lost: readonly string[];
	/**
	 * Why it is refused.
	 */
	readonly why?: string;
}
export interface CarriedSide {
	readonly label: string;
	readonly carries: Carriages;
}
/**
 * The one shape of every error the service answers with.
 */
export interface ErrorReport {
	/**
	 * Permanent, listed in DEVELOPERS.md.
	 */
	readonly code: string;
	readonly message: string;
	readonly problems: ProblemList;
}
export interface ProblemEntry {
	/**
	 * Permanent, listed in DEVELOPERS.md.
	 */
	readonly code: string;
	/**
	 * JSON pointer into the checked document, empty for the whole of it.
	 */
	readonly path: string;
	readonly message: string;
}
/**
 * What students did in each standard and model type over any sittings: the evidence lens of the board.
 */
export interface Evidence {
	readonly framework: string;
	readonly edition: string;
	/**
	 * Shared: groups under 10 students are hidden, and what would give them away. Own: the class teacher's copy, with student codes, hides nothing.
	 */
	readonly copy: 'shared' | 'own';
	readonly simulated: boolean;
	readonly sittings: readonly string[];
	/**
	 * Different student codes with responses.
	 */
	readonly students: number;
	readonly cautions: readonly string[];
	readonly cells: readonly EvidenceEntry[];
}
/**
 * A cell; without a model the total of its standard, without a standard the total of its model, without both of all.
 */
export interface EvidenceEntry {
	readonly standard?: string;
	readonly model?: 'symbols' | 'counters' | 'number-line' | 'story' | 'table';
	/**
	 * Too few students, or a small cell could be computed from it; then no figures are given.
	 */
	readonly hidden?: 'small' | 'protects';
	/**
	 * Different items.
	 */
	readonly items: number;
	/**
	 * Points.
	 */
	readonly earned?: number;
	/**
	 * Points.
	 */
	readonly possible?: number;
	/**
	 * Earned of possible, 0 to 1.
	 */
	readonly share?: number;
	/**
	 * Of the 95 % interval of the share; missing where none can be given.
	 */
	readonly low?: number;
	readonly high?: number;
	readonly responses?: number;
	readonly students?: number;
}
/**
 * How to take a form out: as a QTI package, or as a Common Cartridge.
 */
export interface ExportOrder {
	/**
	 * The newest when left out.
	 */
	readonly version?: number;
	readonly as: 'qti-2.1' | 'qti-2.2' | 'qti-3.0' | 'cc-1.1';
	/**
	 * png when left out.
	 */
	readonly images?: 'png' | 'svg';
	/**
	 * Convert items that the version does not carry as they are; without this and leaveOut they stop the export.
	 */
	readonly convert?: boolean;
	/**
	 * Leave items out that the version neither carries nor, with convert, converts.
	 */
	readonly leaveOut?: boolean;
	/**
	 * How points on number lines are marked: on a picture (when left out), or by choosing a lettered point.
	 */
	readonly points?: 'hotspot' | 'choice';
	/**
	 * How gridded items are answered: by a number typed (when left out), or column by column as on paper.
	 */
	readonly grid?: 'number' | 'columns';
	/**
	 * Whether students are told, after answering, what is right, what their answer is consistent with, and the worked steps. Puts keys into the package; false when left out.
	 */
	readonly feedback?: boolean;
}
/**
 * A seeded maker of items of one sort.
 */
export interface FamilyEntry {
	readonly id: string;
	readonly version: number;
	readonly name: string;
	/**
	 * What it makes, for a person.
	 */
	readonly sentence: string;
	/**
	 * What may be asked of it, by name.
	 */
	readonly parameters: {
		[k: string]: FamilyParameter;
	};
	readonly standards: readonly Alignment[];
	readonly given: readonly ModelType[];
	readonly kinds: readonly string[];
	readonly dok: readonly number[];
	/**
	 * Ids of the error patterns its wrong answers are there to show.
	 */
	readonly targets: readonly string[];
	/**
	 * What makes some of its items harder than others.
	 */
	readonly features: readonly string[];
}
/**
 * A whole number from least to most.
 */
export interface IntegerParameter {
	readonly kind: 'integer';
	readonly sentence: string;
	readonly least: number;
	readonly most: number;
	readonly usual: number;
}
/**
 * One of a few words.
 */
export interface WordParameter {
	readonly kind: 'word';
	readonly sentence: string;
	readonly words: readonly string[];
	readonly usual: string;
}
/**
 * Yes or no.
 */
export interface SwitchParameter {
	readonly kind: 'switch';
	readonly sentence: string;
	readonly usual: boolean;
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
/**
 * A figure drawn, and described in words.
 */
export interface FigureDrawing {
	readonly svg: string;
	readonly description: string;
}
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
 * A new form; without an id the bank chooses one.
 */
export interface FormCreation {
	readonly id?: string;
	readonly form: Form;
}
/**
 * A version of a form, its items, and when it was given.
 */
export interface FormDetails {
	readonly record: FormEntry;
	/**
	 * In form order.
	 */
	readonly items: readonly ItemEntry[];
	readonly givings: readonly FormGiving[];
}
/**
 * One version of a form with its place in the bank.
 */
export interface FormEntry {
	readonly id: string;
	readonly version: number;
	readonly form: Form;
}
/**
 * One version of an item with its place in the bank.
 */
export interface ItemEntry {
	readonly id: string;
	readonly version: number;
	readonly status: 'draft' | 'approved' | 'retired';
	readonly item: Item;
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
	readonly origin?: Origin;
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
 * The family that made the item, for a record only: the item stands by itself and stays readable when the family is gone.
 */
export interface Origin {
	readonly family: string;
	readonly version: number;
	readonly seed: string;
	readonly parameters: FamilyParameters;
}
/**
 * What was asked of the family, by the names of its parameters, those left to it filled in.
 */
export interface FamilyParameters {
	[k: string]: string | number | boolean;
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
	readonly credit?: Credit;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
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
	readonly origin?: Origin;
}
/**
 * Answered by marking one place on a number line.
 */
export interface PointItem {
	readonly kind: 'point';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: 'number-line';
	readonly stem: Stem;
	readonly line: NumberLineFigure;
	readonly expression: Mathematics;
	/**
	 * Optional; when given it must be the value of the expression.
	 */
	readonly key?: number;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
}
/**
 * Answered by putting the entries in order; they are shown as they stand here.
 */
export interface OrderItem {
	readonly kind: 'order';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	/**
	 * @minItems 3
	 * @maxItems 6
	 */
	readonly entries: readonly Option[];
	readonly direction: 'ascending' | 'descending';
	/**
	 * Optional; when given it must be the computed order.
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
	readonly origin?: Origin;
}
/**
 * Answered by giving each entry on the left its partner on the right.
 */
export interface MatchItem {
	readonly kind: 'match';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	/**
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly left: readonly Option[];
	/**
	 * @minItems 2
	 * @maxItems 8
	 */
	readonly right: readonly Option[];
	/**
	 * same-value: partners are worth the same; shows: one of the two is a figure that shows the other.
	 */
	readonly partners: 'same-value' | 'shows';
	readonly credit?: Credit;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
}
/**
 * Answered by choosing what belongs in the gap of a statement.
 */
export interface InlineChoiceItem {
	readonly kind: 'inline-choice';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	/**
	 * A statement with one gap, written _, such as -8 _ -3.
	 */
	readonly statement: string;
	/**
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly choices: readonly GapChoice[];
	readonly key?: OptionId;
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
}
export interface GapChoice {
	readonly id: OptionId;
	/**
	 * What is put into the gap, such as < or -5.
	 */
	readonly math: string;
	/**
	 * Ids of the error patterns that produce this option.
	 *
	 * @maxItems 30
	 */
	readonly patterns?: readonly string[];
}
/**
 * Answered in writing; a scorer rates it by the rubric.
 */
export interface ExplanationItem {
	readonly kind: 'explanation';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: 'words';
	readonly stem: Stem;
	/**
	 * Lines to write on.
	 */
	readonly lines: number;
	/**
	 * From the most points down to 0.
	 *
	 * @minItems 2
	 * @maxItems 11
	 */
	readonly rubric: readonly RubricLevel[];
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
}
export interface RubricLevel {
	readonly points: number;
	readonly descriptor: RichText;
	readonly sample?: RichText;
}
/**
 * Several items over one shared stimulus, its stem. Its points are the sum of theirs.
 */
export interface SetItem {
	readonly kind: 'set';
	/**
	 * Working name for the department; students never see it.
	 */
	readonly name: string;
	readonly given: ModelType;
	readonly answerIn: AnswerForm;
	readonly stem: Stem;
	/**
	 * @minItems 2
	 * @maxItems 6
	 */
	readonly parts: readonly PartItem[];
	readonly points: number;
	/**
	 * Depth of knowledge (Webb), 1 to 4.
	 */
	readonly dok: number;
	readonly context?: Context;
	readonly alignments: Alignments;
	readonly tags?: Tags;
	readonly origin?: Origin;
}
/**
 * That a version of a form was given to a group on a day.
 */
export interface FormGiving {
	readonly version: number;
	readonly group: string;
	/**
	 * ISO 8601 calendar date.
	 */
	readonly date: string;
}
export interface FormSummary {
	readonly id: string;
	readonly version: number;
	readonly title: string;
	/**
	 * Number of items.
	 */
	readonly items: number;
	/**
	 * How often any version was given.
	 */
	readonly givings: number;
}
/**
 * A changed form, and the version that was changed.
 */
export interface FormRevision {
	readonly baseVersion: number;
	readonly form: Form;
}
export interface FrameworkEntry {
	readonly framework: string;
	readonly edition: string;
	readonly name: string;
	/**
	 * ISO 3166.
	 */
	readonly place: string;
	readonly note?: string;
	readonly standards: number;
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
 * A new class group; without an id the bank chooses one.
 */
export interface GroupCreation {
	readonly id?: string;
	readonly group: Group;
}
/**
 * A class group: student codes only, never names.
 */
export interface Group {
	readonly name: string;
	readonly grade?: string;
	/**
	 * Label of who teaches the class, such as initials: classes with the same label are told together in reports.
	 */
	readonly teacher?: string;
	/**
	 * @maxItems 500
	 */
	readonly studentCodes: readonly string[];
}
/**
 * A class group with its place in the bank.
 */
export interface GroupEntry {
	readonly id: string;
	readonly group: Group;
}
/**
 * That the service answers.
 */
export interface Health {
	readonly status: 'ok';
}
/**
 * A new item; without an id the bank chooses one.
 */
export interface ItemCreation {
	readonly id?: string;
	readonly item: Item;
}
/**
 * What the bank computes of an item: what speaks against approval, the key, and the worked steps of its expression.
 */
export interface ItemFindings {
	readonly problems: ProblemList;
	readonly key?: OptionsKey | ValueKey | OrderKey | PairsKey | RubricKey | PartsKey;
	/**
	 * The worked solution of the item's expression, where it has one: the expression as given, then a line for each step.
	 */
	readonly steps?: readonly StepLine[];
	/**
	 * All that the rules of item writing say: what stops the item first, then advice for a person to judge.
	 */
	readonly notes?: readonly ReviewEntry[];
}
export interface OptionsKey {
	readonly kind: 'options';
	readonly options: readonly string[];
}
export interface ValueKey {
	readonly kind: 'value';
	readonly value: number;
}
export interface OrderKey {
	readonly kind: 'order';
	readonly order: readonly string[];
}
export interface PairsKey {
	readonly kind: 'pairs';
	readonly pairs: readonly KeyPair[];
}
export interface KeyPair {
	readonly left: string;
	readonly right: string;
}
export interface RubricKey {
	readonly kind: 'rubric';
}
export interface PartsKey {
	readonly kind: 'parts';
	readonly parts: readonly SinglePartKey[];
}
export interface StepLine {
	/**
	 * The whole expression at this point.
	 */
	readonly line: string;
	/**
	 * What was done, empty beside the expression as given.
	 */
	readonly note: string;
}
export interface ReviewEntry {
	readonly severity: 'stop' | 'advise';
	readonly code: string;
	readonly path: string;
	readonly message: string;
	readonly guideline: GuidelineEntry;
}
export interface GuidelineEntry {
	readonly source: string;
	readonly number?: number;
	readonly isFromMemory?: boolean;
}
/**
 * Every version of an item, newest first, and what was done when.
 */
export interface ItemHistory {
	readonly id: string;
	readonly versions: readonly ItemVersion[];
	readonly happenings: readonly Happening[];
}
export interface ItemVersion {
	readonly version: number;
	readonly status: 'draft' | 'approved' | 'retired';
	readonly createdAt: string;
	readonly name: string;
}
export interface Happening {
	readonly what: 'created' | 'revised' | 'approved' | 'retired' | 'given';
	readonly version?: number;
	/**
	 * ISO 8601, UTC.
	 */
	readonly at: string;
}
/**
 * One page of what was found, the number of all that fit, and counts per value.
 */
export interface ItemPage {
	readonly items: readonly ItemEntry[];
	readonly total: number;
	/**
	 * Cursor of the next page, if there is one.
	 */
	readonly next?: string;
	readonly facets?: ItemFacets;
}
/**
 * Counts per value; each field is counted as if it had not been asked for.
 */
export interface ItemFacets {
	readonly model: readonly FacetCount[];
	readonly kind: readonly FacetCount[];
	readonly dok: readonly FacetCount[];
	readonly status: readonly FacetCount[];
	readonly points: readonly FacetCount[];
	readonly setting: readonly FacetCount[];
	readonly role: readonly FacetCount[];
	/**
	 * Standards of the framework asked for.
	 */
	readonly code?: readonly FacetCount[];
}
export interface FacetCount {
	readonly value: string | number;
	readonly count: number;
}
/**
 * What to look for. Values of one field are alternatives; different fields have to hold together.
 */
export interface ItemQuery {
	/**
	 * With edition and code: the standard. With edition alone: the framework whose standards are counted.
	 */
	readonly framework?: string;
	readonly edition?: string;
	/**
	 * In any spelling the framework is known by.
	 */
	readonly code?: string;
	/**
	 * Also the standards below the code.
	 */
	readonly below?: boolean;
	/**
	 * lead (when left out): items counted under the standard, as on the board; any: every item aligned to it.
	 */
	readonly alignment?: 'lead' | 'any';
	/**
	 * @maxItems 20
	 */
	readonly model?: readonly ModelType[];
	/**
	 * @maxItems 20
	 */
	readonly kind?: readonly (
		'choice' | 'multiple-choice' | 'gridded' | 'point' | 'order' | 'match' | 'inline-choice' | 'explanation' | 'set'
	)[];
	/**
	 * @maxItems 20
	 */
	readonly dok?: readonly number[];
	/**
	 * @maxItems 20
	 */
	readonly status?: readonly ('draft' | 'approved' | 'retired')[];
	/**
	 * @maxItems 20
	 */
	readonly points?: readonly number[];
	/**
	 * @maxItems 20
	 */
	readonly setting?: readonly string[];
	/**
	 * @maxItems 20
	 */
	readonly role?: readonly ('position' | 'change' | 'total-distance' | 'comparison')[];
	/**
	 * Words that all have to be there; the last may go on; text between double quotes as it stands.
	 */
	readonly text?: string;
	/**
	 * added (when left out): as they came into the bank; changed: latest first.
	 */
	readonly sort?: 'added' | 'name' | 'changed';
	/**
	 * 25 when left out.
	 */
	readonly limit?: number;
	/**
	 * The "next" of the page before.
	 */
	readonly cursor?: string;
	/**
	 * false leaves the counts per value out, which is quicker.
	 */
	readonly facets?: boolean;
}
/**
 * A changed item, and the version that was changed.
 */
export interface ItemRevision {
	readonly baseVersion: number;
	readonly item: Item;
}
/**
 * A kept version, and what still speaks against approving it.
 */
export interface ItemSaved {
	readonly record: ItemEntry;
	readonly problems: ProblemList;
}
/**
 * Items that were made, and why there are fewer than asked for.
 */
export interface MadeItems {
	/**
	 * Family that made them; left out where none makes items of the shape.
	 */
	readonly family?: string;
	readonly items: readonly MadeItem[];
	readonly problems: ProblemList;
}
/**
 * An item of a family, and its id where the bank keeps it.
 */
export interface MadeItem {
	readonly id?: string;
	/**
	 * Whether this order brought it into the bank; the same order keeps nothing twice.
	 */
	readonly isNew?: boolean;
	readonly item: Item;
}
/**
 * What is wanted of a family.
 */
export interface MakeOrder {
	readonly family: string;
	readonly count: number;
	/**
	 * The same seed makes the same items; 1 when left out.
	 */
	readonly seed?: string;
	/**
	 * What is asked of the family, by name; the rest is left to it.
	 */
	readonly parameters?: {
		[k: string]: number | string | boolean;
	};
	/**
	 * Code of a standard that every item must carry.
	 */
	readonly standard?: string;
	/**
	 * Whether to keep the items in the bank; otherwise they are only shown.
	 */
	readonly keep?: boolean;
	/**
	 * Whether kept items are approved at once; otherwise they are drafts.
	 */
	readonly approve?: boolean;
}
export interface PatternEntry {
	readonly id: string;
	readonly name: string;
	/**
	 * For a teacher; begins with: Consistent with.
	 */
	readonly sentence: string;
	readonly source: string;
}
/**
 * How total scores spread, in points.
 */
export interface ScoresPlot {
	readonly kind: 'scores';
	readonly maximum: number;
	readonly students: number;
	readonly mean: number;
	readonly bars: readonly ScoreBar[];
	readonly cuts?: readonly ScoreCut[];
}
/**
 * Students from one score up to another, both included; several scores share a bar where few students have one.
 */
export interface ScoreBar {
	readonly from: number;
	readonly to: number;
	readonly count: number;
}
/**
 * A score from which something begins, such as a band of the blueprint.
 */
export interface ScoreCut {
	readonly label: string;
	readonly from: number;
}
/**
 * Items and students on one scale, in logits: hard items and high scores to the right.
 */
export interface ItemPersonPlot {
	readonly kind: 'item-person';
	readonly items: readonly PlottedDifficulty[];
	/**
	 * Students between two measures in logits.
	 */
	readonly students: readonly ScoreBar[];
}
/**
 * An item at its difficulty with its standard error.
 */
export interface PlottedDifficulty {
	/**
	 * Place on the form.
	 */
	readonly label: string;
	readonly at: number;
	readonly error: number;
}
/**
 * Items by the share of points earned and the correlation with the rest.
 */
export interface ItemScatterPlot {
	readonly kind: 'item-scatter';
	readonly items: readonly PlottedItem[];
}
/**
 * An item of a form.
 */
export interface PlottedItem {
	/**
	 * Place on the form.
	 */
	readonly label: string;
	readonly share: number;
	readonly correlation: number;
	/**
	 * Whether its figures ask for a look.
	 */
	readonly look: boolean;
}
/**
 * For items answered by marking an option: the share of each score group that marked each, lowest scores first.
 */
export interface OptionCurvesPlot {
	readonly kind: 'option-curves';
	readonly panels: readonly OptionPanel[];
}
/**
 * One item.
 */
export interface OptionPanel {
	/**
	 * Place on the form.
	 */
	readonly label: string;
	/**
	 * Students of each score group, lowest scores first.
	 */
	readonly groups: readonly number[];
	readonly lines: readonly OptionLine[];
}
/**
 * One option, or what stands beside the options.
 */
export interface OptionLine {
	readonly label: string;
	readonly key: boolean;
	readonly shares: readonly number[];
}
/**
 * How many students' answers are consistent with a wrong idea.
 */
export interface PatternBarsPlot {
	readonly kind: 'pattern-bars';
	readonly students: number;
	readonly bars: readonly PatternBar[];
}
/**
 * One wrong idea; without counts where few students would be told apart.
 */
export interface PatternBar {
	readonly label: string;
	/**
	 * Students whose answers repeat it.
	 */
	readonly repeated?: number;
	/**
	 * Students with a hint of it only.
	 */
	readonly hint?: number;
	readonly low?: number;
	readonly high?: number;
}
/**
 * Points earned over points possible, a row a standard and a column a model type.
 */
export interface EvidenceBoardPlot {
	readonly kind: 'evidence-board';
	readonly columns: readonly string[];
	readonly rows: readonly EvidenceRow[];
}
/**
 * One standard, or all.
 */
export interface EvidenceRow {
	readonly label: string;
	/**
	 * One a column; null where nothing was asked.
	 */
	readonly cells: readonly (EvidenceSpot | null)[];
}
/**
 * One cell; without figures where it is hidden.
 */
export interface EvidenceSpot {
	readonly share?: number;
	readonly low?: number;
	readonly high?: number;
	readonly students?: number;
	readonly items: number;
}
/**
 * Counts of items, such as standards over the sittings of a year.
 */
export interface CountBoardPlot {
	readonly kind: 'count-board';
	readonly columns: readonly string[];
	readonly rows: readonly CountRow[];
}
/**
 * One standard.
 */
export interface CountRow {
	readonly label: string;
	readonly counts: readonly number[];
}
/**
 * A file of responses to be looked at.
 */
export interface PreviewOrder {
	readonly form: string;
	/**
	 * The newest when left out.
	 */
	readonly version?: number;
	/**
	 * The file as base64; its beginning is enough.
	 */
	readonly content: string;
	readonly mapping?: ResponseMapping;
	readonly answerMap?: string;
}
/**
 * How a file of responses is to be read. Columns not named are never kept.
 */
export interface ResponseMapping {
	/**
	 * A row a student and a column an item, or a row a response; wide when left out.
	 */
	readonly layout?: 'wide' | 'long';
	/**
	 * Found by itself when left out.
	 */
	readonly delimiter?: ',' | ';' | '\t' | '|';
	/**
	 * Found by itself when left out.
	 */
	readonly encoding?: 'utf-8' | 'windows-1252' | 'utf-16le' | 'utf-16be';
	/**
	 * Rows before the first student; the last of them holds the headings. 1 when left out.
	 */
	readonly headingRows?: number;
	/**
	 * Column of the student code, or of the name a file of codes translates.
	 */
	readonly student: string | number;
	/**
	 * Column of the class group, for files of several classes: its id or name.
	 */
	readonly group?: string | number;
	/**
	 * Codes that are not in the group; refused when left out.
	 */
	readonly newStudents?: 'refuse' | 'keep';
	/**
	 * Wide files: which column is which place. When left out, columns headed by a position (7, Q7, 7.2), an item id or an identifier of the answer map are taken.
	 *
	 * @minItems 1
	 * @maxItems 1000
	 */
	readonly items?: readonly MappedItem[];
	/**
	 * Long files: column of the place.
	 */
	readonly place?: string | number;
	/**
	 * Long files: column of the response.
	 */
	readonly answer?: string | number;
	/**
	 * Responses, points, shares of the points from 0 to 1, or ratings of explanations; responses when left out.
	 */
	readonly holds?: 'responses' | 'points' | 'shares' | 'ratings';
	/**
	 * What an empty cell means; omitted when left out.
	 */
	readonly blanks?: 'omitted' | 'not-reached';
	/**
	 * What empty cells after the last response of a student mean; as other blanks when left out. Wide files only.
	 */
	readonly blanksAtEnd?: 'omitted' | 'not-reached';
	/**
	 * A student without any response was absent and is left out, or sat the form; absent when left out. Wide files only.
	 */
	readonly blankRows?: 'absent' | 'taken';
	readonly codes?: MappedCodes;
	/**
	 * Numbers in answers to options and orders: places from 1 as shown, or the values shown; places when left out.
	 */
	readonly numbers?: 'places' | 'values';
	/**
	 * A student or response that comes twice: refuse all, or take the first or last row; refuse when left out.
	 */
	readonly repeats?: 'refuse' | 'first' | 'last';
}
export interface MappedItem {
	readonly column: string | number;
	/**
	 * Position such as 7 or 7.2, item id, or identifier of the answer map.
	 */
	readonly place: string;
	/**
	 * Instead of what the whole file holds.
	 */
	readonly holds?: 'responses' | 'points' | 'shares' | 'ratings';
}
/**
 * Texts that stand for no response, compared without regard to case.
 */
export interface MappedCodes {
	/**
	 * @maxItems 20
	 */
	readonly omitted?: readonly string[];
	/**
	 * @maxItems 20
	 */
	readonly notReached?: readonly string[];
	/**
	 * @maxItems 20
	 */
	readonly invalid?: readonly string[];
}
/**
 * How to print a form: booklet, answer sheets with their geometry, key with worked steps, administration sheet, work pages.
 */
export interface PrintOrder {
	/**
	 * The newest when left out.
	 */
	readonly version?: number;
	readonly paper: 'a4' | 'letter';
	/**
	 * Large print: nothing below 18 points, one item a page.
	 */
	readonly large?: boolean;
	/**
	 * Columns of the booklet; 1 when left out, always 1 in large print.
	 */
	readonly columns?: 1 | 2;
	/**
	 * Where answers are marked: on answer sheets, or beside each item in the booklet; separate when left out.
	 */
	readonly grids?: 'separate' | 'beside';
	/**
	 * Work pages: one for each item, or one ruled page; items when left out.
	 */
	readonly work?: 'items' | 'ruled';
	/**
	 * Id of the class group to print a set for. Not together with students.
	 */
	readonly group?: string;
	/**
	 * Student codes to print a set for, instead of a group.
	 *
	 * @maxItems 500
	 */
	readonly students?: readonly string[];
}
/**
 * Delete for good; the confirmation repeats the id or code.
 */
export interface PurgeOrder {
	readonly confirm: string;
	/**
	 * Files of backups the bank does not know of.
	 *
	 * @maxItems 50
	 */
	readonly backups?: readonly string[];
}
/**
 * What was deleted, and where.
 */
export interface PurgeReport {
	readonly sittings: number;
	readonly students: number;
	readonly answers: number;
	readonly places: readonly PurgedPlace[];
}
export interface PurgedPlace {
	readonly file: string;
	/**
	 * Purged; held nothing of it; no longer there; could not be opened, see why.
	 */
	readonly found: 'purged' | 'nothing' | 'missing' | 'refused';
	readonly why?: string;
}
/**
 * How far two readers agree, place by place.
 */
export interface RatingAgreement {
	readonly sitting: string;
	readonly places: readonly PlaceAgreement[];
}
export interface PlaceAgreement {
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	readonly label: string;
	readonly item: string;
	/**
	 * Without a first rating.
	 */
	readonly waiting: number;
	readonly first: number;
	/**
	 * Rated by both.
	 */
	readonly both: number;
	/**
	 * Rows: points of the first reader from 0; columns: points of the second.
	 */
	readonly table: readonly (readonly number[])[];
	/**
	 * Share of the same points.
	 */
	readonly exact?: number;
	/**
	 * Cohen 1960; missing where it is not defined.
	 */
	readonly kappa?: number;
	/**
	 * Cohen 1968 with squared differences; missing where it is not defined.
	 */
	readonly weightedKappa?: number;
	readonly caution?: string;
	/**
	 * What one reader has to score, by code; only where a reader was named. What the other gave to whom is told to those who agree alone.
	 */
	readonly responses?: readonly RatedResponse[];
}
export interface RatedResponse {
	readonly code: string;
	/**
	 * As it came in.
	 */
	readonly text: string;
	/**
	 * Given by the named reader.
	 */
	readonly points?: number;
	/**
	 * Given by the first reader; for those who agree.
	 */
	readonly first?: number;
	/**
	 * Given by the second reader; for those who agree.
	 */
	readonly second?: number;
}
/**
 * Points a reader gives explanations by the rubric.
 */
export interface RatingOrder {
	/**
	 * Two readers rate without seeing each other; what they agree on after talking counts. Without it the first reader's points count.
	 */
	readonly reader: 'first' | 'second' | 'agreed';
	/**
	 * @minItems 1
	 * @maxItems 1000
	 */
	readonly ratings: readonly RatingEntry[];
}
export interface RatingEntry {
	readonly code: string;
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	readonly points: number;
}
/**
 * A file of responses to be read into sittings of a form version on a day.
 */
export interface ReadingOrder {
	readonly form: string;
	/**
	 * The newest when left out.
	 */
	readonly version?: number;
	/**
	 * Not needed where the mapping names a column of groups.
	 */
	readonly group?: string;
	readonly date: string;
	readonly mode: 'paper' | 'platform' | 'hand';
	/**
	 * The file as base64, at most 32 MB.
	 */
	readonly content: string;
	readonly mapping: ResponseMapping;
	/**
	 * Text of the answer map written beside the export, for results of a platform.
	 */
	readonly answerMap?: string;
	/**
	 * What the file calls a student, and the student code; used while reading and never kept.
	 *
	 * @maxItems 20000
	 */
	readonly codes?: readonly (readonly string[])[];
	/**
	 * What may be there already: nothing; other students and places, which stay; or responses that are replaced. Nothing when left out.
	 */
	readonly onto?: 'nothing' | 'add' | 'replace';
	/**
	 * Only say what would be done.
	 */
	readonly dryRun?: boolean;
}
/**
 * The first rows of a file as they would be read, and a mapping to begin with. Nothing of columns that are not taken is shown but the heading.
 */
export interface ReadingPreview {
	readonly encoding: string;
	readonly delimiter: string;
	readonly columns: readonly TakenColumn[];
	readonly mapping: ResponseMapping;
	readonly problems: ProblemList;
	readonly rows: readonly PreviewRow[];
}
/**
 * What a column of a file is taken for.
 */
export interface TakenColumn {
	readonly number: number;
	readonly heading: string;
	readonly as: 'student' | 'group' | 'place' | 'answer' | 'item' | 'discarded';
	/**
	 * Label of the place.
	 */
	readonly place?: string;
}
export interface PreviewRow {
	readonly line: number;
	readonly student: string;
	readonly answers: readonly PreviewAnswer[];
}
export interface PreviewAnswer {
	readonly place: string;
	readonly raw: string;
	/**
	 * State of the answer, or what speaks against it.
	 */
	readonly reads: string;
}
/**
 * What was read from a file of responses, or would be.
 */
export interface ReadingReport {
	readonly dryRun: boolean;
	readonly encoding: string;
	readonly delimiter: string;
	readonly columns: readonly TakenColumn[];
	/**
	 * Rows below the headings that hold anything.
	 */
	readonly rows: number;
	/**
	 * Taken.
	 */
	readonly students: number;
	/**
	 * Taken.
	 */
	readonly answers: number;
	/**
	 * Codes of students without any response, left out.
	 */
	readonly absent: readonly string[];
	/**
	 * Rows that were in the bank already, exactly like this.
	 */
	readonly unchanged: number;
	readonly rejected: readonly RejectedRow[];
	/**
	 * Taken answers by state.
	 */
	readonly states: {
		[k: string]: number;
	};
	readonly notes: readonly string[];
	readonly sittings: readonly SittingRead[];
}
/**
 * A row that was not taken.
 */
export interface RejectedRow {
	/**
	 * Line of the file, 1 for the first.
	 */
	readonly line: number;
	readonly code: string;
	readonly message: string;
}
export interface SittingRead {
	/**
	 * Missing in a dry run of a new sitting.
	 */
	readonly id?: string;
	readonly group: string;
	readonly students: number;
	readonly answers: number;
}
/**
 * What sittings show, as sections of sentences and tables, with the cautions that belong to it.
 */
export interface Report {
	readonly kind: 'coverage' | 'class' | 'items' | 'item' | 'form' | 'patterns' | 'groups' | 'compare' | 'pack';
	readonly title: string;
	/**
	 * Shared: groups under 10 students are hidden, and what would give them away. Own: the class teacher's copy, with student codes, hides nothing.
	 */
	readonly copy: 'shared' | 'own';
	/**
	 * Whether any of the responses come from a simulation.
	 */
	readonly simulated: boolean;
	readonly sittings: readonly string[];
	readonly cautions: readonly string[];
	readonly sections: readonly ReportSection[];
}
export interface ReportSection {
	readonly title: string;
	readonly notes: readonly string[];
	readonly table?: ReportTable;
	readonly plot?: Plot;
	readonly proposals?: readonly RegroupingProposal[];
}
export interface ReportTable {
	readonly headings: readonly string[];
	readonly rows: readonly (readonly (string | number | null)[])[];
}
/**
 * Students who could work on the same thing next, by what their answers are consistent with. Only in the class teacher's own copy.
 */
export interface RegroupingProposal {
	/**
	 * Id of the error pattern.
	 */
	readonly pattern: string;
	/**
	 * Its name in words.
	 */
	readonly name: string;
	/**
	 * Names of the patterns that the answers do not tell apart from it.
	 */
	readonly notToldApart: readonly string[];
	/**
	 * hint: two answers or more, too few to name a pattern; repeated: three or more, far likelier under the pattern.
	 */
	readonly strength: 'repeated' | 'hint';
	/**
	 * Whether the answers of every student of the group single out this pattern. Where not, probes come first.
	 */
	readonly settled: boolean;
	/**
	 * Student codes.
	 */
	readonly students: readonly string[];
	/**
	 * Expressions to ask next that tell the patterns apart, when the bank has no items for it.
	 */
	readonly ask: readonly string[];
	readonly next: readonly ProposedItem[];
}
/**
 * An item of the bank to use next.
 */
export interface ProposedItem {
	readonly id: string;
	readonly version: number;
	readonly name: string;
	/**
	 * probe: tells the patterns apart; like: asks for the same idea again.
	 */
	readonly why: 'probe' | 'like';
}
/**
 * Score a sitting anew by the keys of another version of its form.
 */
export interface RescoringOrder {
	/**
	 * Of the form: the same places, items in other versions.
	 */
	readonly version: number;
	/**
	 * Such as: the key of item 7 was corrected.
	 */
	readonly why: string;
}
/**
 * What a new scoring changed; the earlier ones are kept.
 */
export interface RescoringReport {
	readonly sitting: string;
	readonly scoring: number;
	readonly scoredAs: number;
	readonly changed: readonly ChangedScore[];
	/**
	 * Answers that came as points and stay as they are.
	 */
	readonly kept: number;
}
export interface ChangedScore {
	readonly code: string;
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	readonly before: AnswerScore;
	readonly after: AnswerScore;
}
/**
 * One response for each part of a set, in order.
 */
export interface SetResponse {
	readonly kind: 'set';
	/**
	 * @maxItems 6
	 */
	readonly parts: readonly PartResponse[];
}
/**
 * All responses of a sitting with their newest scores: a class grid.
 */
export interface SittingAnswers {
	readonly entry: SittingEntry;
	/**
	 * What is answered, in form order.
	 */
	readonly places: readonly SittingPlace[];
	/**
	 * Every code of the group and every code with responses.
	 */
	readonly students: readonly StudentAnswers[];
}
/**
 * A sitting with how much of it is in the bank.
 */
export interface SittingEntry {
	readonly id: string;
	readonly sitting: Sitting;
	/**
	 * Students with responses.
	 */
	readonly students: number;
	/**
	 * Places of the form with a response, over all students.
	 */
	readonly answers: number;
	/**
	 * Responses that wait for a scorer.
	 */
	readonly unrated: number;
	/**
	 * Number of the newest scoring; 1 is the first.
	 */
	readonly scoring: number;
	/**
	 * Version of the form whose keys the newest scoring follows.
	 */
	readonly scoredAs: number;
}
/**
 * That a class group sat a version of a form on a day.
 */
export interface Sitting {
	readonly form: string;
	/**
	 * Of the form.
	 */
	readonly version: number;
	readonly group: string;
	/**
	 * ISO 8601 calendar date.
	 */
	readonly date: string;
	/**
	 * Where responses come from: answer sheets, a learning platform, or entry by hand.
	 */
	readonly mode: 'paper' | 'platform' | 'hand';
	/**
	 * Responses come from a simulation and from no child.
	 */
	readonly simulated?: true;
	/**
	 * Day after which the department wants the sitting purged; reminds, deletes nothing by itself.
	 */
	readonly keepUntil?: string;
}
export interface SittingPlace {
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	/**
	 * Such as 7, or 7.2 for the second part of a set.
	 */
	readonly label: string;
	readonly item: string;
	readonly version: number;
	readonly name: string;
	readonly kind: string;
	readonly points: number;
}
export interface StudentAnswers {
	readonly code: string;
	readonly answers: readonly StudentAnswer[];
}
export interface StudentAnswer {
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	/**
	 * As it came in.
	 */
	readonly raw: string;
	readonly given: AnswerGiven;
	readonly score: AnswerScore;
}
/**
 * A new sitting; without an id the bank chooses one.
 */
export interface SittingCreation {
	readonly id?: string;
	readonly sitting: Sitting;
}
/**
 * Responses of one student entered by hand; places not named stay as they are.
 */
export interface StudentEntry {
	/**
	 * @minItems 1
	 * @maxItems 1000
	 */
	readonly answers: readonly AnswerEntry[];
}
export interface AnswerEntry {
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	/**
	 * As it would stand in a file, such as B, -50 or 4,2,1; blank for omitted.
	 */
	readonly text?: string;
	readonly given?: AnswerGiven;
}
/**
 * Everything the bank holds about one student code.
 */
export interface StudentRecord {
	readonly code: string;
	readonly groups: readonly StudentGroup[];
	readonly sittings: readonly StudentSitting[];
}
export interface StudentGroup {
	readonly id: string;
	readonly name: string;
}
export interface StudentSitting {
	readonly id: string;
	readonly sitting: Sitting;
	readonly answers: readonly RecordedAnswer[];
}
export interface RecordedAnswer {
	/**
	 * Place on the form, 1 for the first item.
	 */
	readonly position: number;
	/**
	 * Part of a set, 1 for the first.
	 */
	readonly part?: number;
	readonly raw: string;
	readonly given: AnswerGiven;
	readonly scores: readonly RecordedScore[];
	readonly ratings: readonly RecordedRating[];
}
export interface RecordedScore {
	readonly scoring: number;
	readonly scoredAs: number;
	readonly at: string;
	readonly score: AnswerScore;
}
export interface RecordedRating {
	readonly reader: 'first' | 'second' | 'agreed';
	readonly points: number;
	readonly at: string;
}
/**
 * Which items supply counts. Values of one field are alternatives; different fields have to hold together.
 */
export interface SupplyQuery {
	/**
	 * @maxItems 20
	 */
	readonly kind?: readonly (
		'choice' | 'multiple-choice' | 'gridded' | 'point' | 'order' | 'match' | 'inline-choice' | 'explanation' | 'set'
	)[];
	/**
	 * @maxItems 20
	 */
	readonly dok?: readonly number[];
	/**
	 * approved when left out.
	 *
	 * @maxItems 20
	 */
	readonly status?: readonly ('draft' | 'approved' | 'retired')[];
	/**
	 * @maxItems 20
	 */
	readonly points?: readonly number[];
}
/**
 * Items of one framework per standard and model type, approved ones unless asked otherwise; an item counts once, under its lead alignment.
 */
export interface Supply {
	readonly framework: string;
	readonly edition: string;
	readonly name: string;
	readonly standards: readonly StandardSupply[];
}
export interface StandardSupply {
	readonly code: string;
	readonly parent?: string;
	readonly heading?: string;
	readonly grade: string;
	/**
	 * Our paraphrase.
	 */
	readonly statement: string;
	readonly label?: string;
	readonly source: string;
	readonly total: number;
	readonly supply: {
		readonly symbols: number;
		readonly counters: number;
		readonly 'number-line': number;
		readonly story: number;
		readonly table: number;
	};
}
export interface SwapOfferEntry {
	readonly item: string;
	readonly version: number;
	/**
	 * 100 for an item like the old one in every trait.
	 */
	readonly likeness: number;
	readonly differences: readonly string[];
	readonly keepsPlan: boolean;
}
/**
 * Which place of a form wants another item.
 */
export interface SwapOrder {
	readonly version?: number;
	readonly position: number;
	/**
	 * Blueprint the form should keep.
	 */
	readonly blueprint?: string;
	/**
	 * Ids of forms, such as the parallel one, whose items are not offered.
	 *
	 * @maxItems 40
	 */
	readonly notOnForms?: readonly string[];
}
/**
 * How many items like one of the bank are wanted.
 */
export interface VariantOrder {
	readonly version?: number;
	readonly count: number;
	/**
	 * The same seed makes the same items; 1 when left out.
	 */
	readonly seed?: string;
	/**
	 * Whether to keep the items in the bank; otherwise they are only shown.
	 */
	readonly keep?: boolean;
	/**
	 * Whether kept items are approved at once; otherwise they are drafts.
	 */
	readonly approve?: boolean;
}
/**
 * Names one version.
 */
export interface VersionChoice {
	readonly version: number;
}
