import { type Difficulty, measureDifficulty } from './difficulty.ts';
import { type DistractorTable, tabulateDistractors } from './distractors.ts';
import type { Finding } from './finding.ts';
import { measureOmitRates, type OmitRates } from './omit-rates.ts';
import { type ItemTotalCorrelation, measureCorrelations } from './point-biserial.ts';
import { type ItemPersonMap, mapItemsAndPersons } from './rasch/item-person-map.ts';
import { measureReliability, type Reliability } from './reliability.ts';
import { describeScores, type ScoreDistribution } from './score-distribution.ts';
import type { ScoreTable, TableItem } from './score-table.ts';
import { keepComplete } from './select-students.ts';
import { measureSplitHalf, type SplitHalf } from './split-half.ts';
import { measureUpperLower, type TieRule, type UpperLower } from './upper-lower.ts';

/** All figures of one item. */
export interface ItemAnalysis {
	readonly item: TableItem;
	/** Over every student with a score on the item. */
	readonly difficulty: Finding<Difficulty>;
	readonly omits: Finding<OmitRates>;
	/** The rest over students complete on the form. */
	readonly correlation: ItemTotalCorrelation;
	readonly upperLower: Finding<UpperLower>;
	readonly distractors: Finding<DistractorTable>;
	/** Reliability of the form without the item. */
	readonly alphaWithout: Finding<number>;
}

/** All figures of one form from one table of responses. */
export interface FormAnalysis {
	readonly students: number;
	/** Students left out of figures that need every item, because one was not given or is not rated yet. */
	readonly leftOut: number;
	readonly items: readonly ItemAnalysis[];
	readonly scores: Finding<ScoreDistribution>;
	readonly reliability: Finding<Reliability>;
	readonly splitHalf: Finding<SplitHalf>;
	/** For forms of right or wrong items. */
	readonly map: Finding<ItemPersonMap>;
	readonly rule: TieRule;
}

/**
 * The whole classical analysis of a form and its item-person map, each figure as its own function defines and refuses it.
 * Difficulty and omit rates use every response with points; figures made of totals leave out students who lack some (listwise).
 */
export function analyseForm(table: ScoreTable, rule: TieRule = 'shared'): FormAnalysis {
	const { table: complete, leftOut } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const upperLower = measureUpperLower(complete, rule);
	const distractors = tabulateDistractors(complete, rule);
	const reliability = measureReliability(complete);
	return {
		students: table.students.length,
		leftOut,
		items: table.columns.map((column, at) => ({
			item: column.item,
			difficulty: measureDifficulty(column),
			omits: measureOmitRates(column),
			correlation: correlations[at] as ItemTotalCorrelation,
			upperLower: upperLower[at] as Finding<UpperLower>,
			distractors: distractors[at] as Finding<DistractorTable>,
			alphaWithout:
				reliability.kind === 'refused' ? reliability : (reliability.value.withoutItem[at] as Finding<number>),
		})),
		scores: describeScores(complete),
		reliability,
		splitHalf: measureSplitHalf(complete),
		map: mapItemsAndPersons(complete),
		rule,
	};
}
