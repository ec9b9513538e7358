import { checkTogether } from '../../item-bank/forms/check-against-blueprint.ts';
import type { FindItem } from '../../item-bank/forms/compare-forms.ts';
import { createRandom } from '../../item-bank/random/random.ts';
import type { NearestForms } from '../../item-bank/types.ts';
import { arrangeItems } from './arrange-items.ts';
import { classesOf } from './classes.ts';
import { writeFormProgram } from './form-program.ts';
import { openLedger } from './group-ledger.ts';
import type { Instance } from './instance.ts';
import { pickItems } from './pick-items.ts';
import { countsOf, solverSeed } from './program-counts.ts';
import type { SearchTools } from './search-forms.ts';
import { writeForms } from './write-forms.ts';

/**
 * The forms that fall short by least: missing items cost most, then cells, then the rest. Exclusions, anchors and "no item on
 * two forms" still hold. Undefined when nothing was found within the limits. Each shortfall is counted from the forms.
 */
export function findNearest(
	instance: Instance,
	isFine: boolean,
	findItem: FindItem,
	tools: SearchTools,
): NearestForms | undefined {
	const classes = classesOf(instance, isFine ? 'fine' : 'coarse');
	const plan = {
		instance,
		classes,
		forms: instance.count,
		copies: 1,
		grain: isFine ? 'fine' : 'coarse',
		goal: 'nearest',
	} as const;
	const written = writeFormProgram(plan);
	const solution = tools.solver.solve(written.program, { limits: tools.limits, seed: solverSeed(tools.seed) });
	if (!('values' in solution)) return undefined;
	const counts = countsOf(written, solution.values, plan);
	const random = createRandom(`${tools.seed} nearest`);
	const { picked } = pickItems(openLedger(instance), classes, counts, random);
	const forms = writeForms(instance.blueprint, arrangeItems(instance, picked, random).forms);
	return { forms, shortfalls: checkTogether(forms, findItem, instance.blueprint) };
}
