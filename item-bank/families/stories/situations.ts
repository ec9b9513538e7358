import { word } from '../parameters.ts';
import { batteryCharge, robotTrack } from './battery-bench.ts';
import { roomTemperature, stockPlan } from './cold-storage.ts';
import { fundPlan, seedlingGoal } from './garden-fund.ts';
import { basinLevel, liftLevel } from './mine-lift.ts';
import { railHeight, railTimetable } from './mountain-rail.ts';
import type { Situation } from './situation.ts';
import { floatDepth, tideLevel } from './tide-gauge.ts';

/** Two situations in each of the six settings of the demo world. */
export const situations: readonly Situation[] = [
	railHeight,
	railTimetable,
	tideLevel,
	floatDepth,
	roomTemperature,
	stockPlan,
	liftLevel,
	basinLevel,
	fundPlan,
	seedlingGoal,
	batteryCharge,
	robotTrack,
];

/** The parameter for the setting of a story. */
export const settingAsked = word('Where the story plays.', [
	'any',
	'mountain-rail',
	'tide-gauge',
	'cold-storage',
	'mine-lift',
	'garden-fund',
	'battery-bench',
]);

/** The situations of a setting, or all of them. */
export function situationsIn(setting: string): readonly Situation[] {
	return setting === 'any' ? situations : situations.filter((situation) => situation.setting === setting);
}
