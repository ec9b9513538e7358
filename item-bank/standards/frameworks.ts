import { auCurriculum9 } from './au-curriculum-9.ts';
import { ccssM2010 } from './ccss-m-2010.ts';
import { englandNc2013 } from './england-nc-2013.ts';
import type { Framework } from './framework.ts';
import { nswMath2022 } from './nsw-math-2022.ts';
import { teksMath2012 } from './teks-math-2012.ts';
import { vaSolMath2009 } from './va-sol-math-2009.ts';
import { vaSolMath2016 } from './va-sol-math-2016.ts';
import { vaSolMath2023 } from './va-sol-math-2023.ts';

/** Every framework and edition the bank knows, in the order lists show them. */
export const frameworks: readonly Framework[] = [
	ccssM2010,
	teksMath2012,
	vaSolMath2023,
	vaSolMath2016,
	vaSolMath2009,
	auCurriculum9,
	englandNc2013,
	nswMath2022,
];
