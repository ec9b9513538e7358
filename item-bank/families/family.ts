import type { PatternId } from '../patterns/pattern.ts';
import type { Random } from '../random/random.ts';
import type { Alignment, Item, KindName, ModelType } from '../types.ts';
import type { FeatureName } from './features.ts';
import { findObstacle, type NumberPlan } from './numbers.ts';
import type { ParameterRules, Parameters, ValuesOf } from './parameters.ts';

/** What an item is drawn with. */
export interface Draw {
	readonly random: Random;
	/** Number of the item in its batch: items in turn ask for key places in turn. */
	readonly turn: number;
	/** A random whole number that stays the same over all attempts, for what must not depend on how drafts fail. */
	readonly lot: number;
	/** Drafts of this item that came to nothing before, 0 at first. */
	readonly attempt: number;
}

/** A seeded maker of items of one sort. */
export interface Family {
	/** Kebab-case and permanent. */
	readonly id: string;
	/** Raised whenever any seed would come to another item. */
	readonly version: number;
	readonly name: string;
	/** What it makes, for a person. */
	readonly sentence: string;
	readonly parameters: ParameterRules;
	/** Every alignment an item of the family may carry. */
	readonly standards: readonly Alignment[];
	readonly given: readonly ModelType[];
	readonly kinds: readonly KindName[];
	readonly dok: readonly number[];
	/** Error patterns its wrong answers are there to show. */
	readonly targets: readonly PatternId[];
	/** What makes some of its items harder than others. */
	readonly features: readonly FeatureName[];
	/** In words, what leaves no item for parameters that fit their rules; undefined when there are items. */
	readonly findObstacle: (parameters: Parameters) => string | undefined;
	/** One item without its origin, or undefined when the numbers drawn make none; the parameters are filled and checked. */
	readonly make: (draw: Draw, parameters: Parameters) => Item | undefined;
}

/** A family as it is written down, with parameters of their own types. */
export interface FamilyPlan<Rules extends ParameterRules> extends Omit<Family, 'parameters' | 'findObstacle' | 'make'> {
	readonly parameters: Rules;
	/** What numbers are drawn from: one plan, or several of which one is enough. */
	readonly plans: (values: ValuesOf<Rules>) => readonly NumberPlan[];
	readonly make: (draw: Draw, values: ValuesOf<Rules>) => Item | undefined;
}

/** A family of a plan. */
export function defineFamily<const Rules extends ParameterRules>(plan: FamilyPlan<Rules>): Family {
	const { plans, make, ...facts } = plan;
	// Parameters reach a family only through fillParameters and checkValues, which give them the types of the rules.
	const typed = (parameters: Parameters): ValuesOf<Rules> => parameters as ValuesOf<Rules>;
	return {
		...facts,
		findObstacle: (parameters) => {
			const obstacles = plans(typed(parameters)).map(findObstacle);
			return obstacles.some((obstacle) => obstacle === undefined) ? undefined : obstacles[0];
		},
		make: (draw, parameters) => make(draw, typed(parameters)),
	};
}
