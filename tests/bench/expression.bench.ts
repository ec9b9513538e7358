import { findRewritings } from '../../item-bank/expression/equivalent.ts';
import { evaluate } from '../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../item-bank/expression/parse.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import { stepRows } from '../../item-bank/expression/steps.ts';

const texts = ['3 - -8', '-12 ÷ 4 × -3', '2(3 - 8) + |-4 - 5|', '5 - -(3 + 4) × 2', '-2 × (3 - 8 × 2) + 7 - 9 + 1 - 4'];

/** Prints how many expressions a second are parsed, printed, evaluated, worked in steps and compared. */
export async function run(): Promise<void> {
	const trees = texts.map(parseExpression);
	measure('parse', () => texts.map(parseExpression));
	measure('print', () => trees.map((tree) => printMathematics(tree)));
	measure('evaluate', () => trees.map(evaluate));
	measure('worked steps as rows', () => trees.map(stepRows));
	measure('rewritings that link an expression with its shortened form', () =>
		trees.map((tree) => findRewritings(tree, parseExpression(printMathematics(tree, 'shortened')))),
	);
}

function measure(name: string, work: () => readonly unknown[]): void {
	const end = performance.now() + 300;
	const start = performance.now();
	let done = 0;
	while (performance.now() < end) done += work().length;
	const rate = Math.round(done / ((performance.now() - start) / 1000));
	console.log(`${name}: ${rate.toLocaleString('en')} a second`);
}
