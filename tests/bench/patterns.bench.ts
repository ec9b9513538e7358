import { chooseDistractors } from '../../item-bank/distractors/choose-distractors.ts';
import { evaluate } from '../../item-bank/expression/evaluate.ts';
import {
	absoluteNode,
	type Expression,
	groupNode,
	numberNode,
	operationNode,
} from '../../item-bank/expression/tree.ts';
import { explainAnswer } from '../../item-bank/patterns/explain-answer.ts';
import { patterns, sumPatternIds } from '../../item-bank/patterns/index.ts';
import { findWrongAnswer } from '../../item-bank/patterns/pattern.ts';
import { findProbes } from '../../item-bank/patterns/probes.ts';
import { type Subject, subjectOf } from '../../item-bank/patterns/subject.ts';
import { createRandom } from '../../item-bank/random/random.ts';

const rounds = 5;
const expressionsPerRound = 20_000;
/** One pass of evaluating takes a few milliseconds, too little to time. */
const passes = 40;

interface Work {
	readonly expressions: readonly Expression[];
	readonly subjects: readonly Subject[];
}

/** Prints pattern outputs and chosen distractors a second, beside a loop that only evaluates the same expressions. */
export async function run(): Promise<void> {
	// The first rounds run while code is still being compiled; they are made and forgotten.
	for (const seed of ['warm 1', 'warm 2']) warmUp(makeWork(seed));
	const ratios: { readonly outputs: number; readonly choices: number }[] = [];
	for (let round = 0; round < rounds; round += 1) {
		const work = makeWork(`patterns ${round}`);
		const plain =
			time(() => {
				for (let pass = 0; pass < passes; pass += 1) work.expressions.forEach(evaluate);
			}) / passes;
		let applying = 0;
		const all = time(() => {
			for (const subject of work.subjects) {
				for (const pattern of patterns) if (findWrongAnswer(pattern, subject) !== undefined) applying += 1;
			}
		});
		const keys = work.expressions.map(evaluate);
		let options = 0;
		const chosen = time(() => {
			for (const [index, subject] of work.subjects.entries()) {
				options += chooseDistractors(subject, keys[index] ?? 0, { count: 3 }).options.length;
			}
		});
		const outputs = expressionsPerRound * patterns.length;
		const perOutput = all / outputs / (plain / expressionsPerRound);
		const perChoice = chosen / plain;
		ratios.push({ outputs: perOutput, choices: perChoice });
		console.log(
			`${rate(expressionsPerRound, plain)} evaluations, ${rate(outputs, all)} pattern outputs (${applying} of ${outputs} apply), ` +
				`${rate(expressionsPerRound, chosen)} sets of options (${options} options) a second`,
		);
		console.log(
			`  time of an output to an evaluation ${perOutput.toFixed(2)}, of a set of options ${perChoice.toFixed(1)}`,
		);
	}
	const median = (values: readonly number[]): string =>
		[...values].sort((a, b) => a - b)[rounds >> 1]?.toFixed(2) ?? '';
	console.log(
		`median of ${rounds}: output to evaluation ${median(ratios.map(({ outputs }) => outputs))}, set of options to evaluation ${median(ratios.map(({ choices }) => choices))}`,
	);
	const subjects = makeWork('explained').subjects.slice(0, 2000);
	const explained = time(() => subjects.forEach((subject) => explainAnswer(subject, 7)));
	console.log(`${rate(subjects.length, explained)} explanations a second, pairs of patterns among them`);
	console.log(`probes for the fifteen patterns of sums: ${time(() => findProbes(sumPatternIds, 6)).toFixed(1)} ms`);
}

function warmUp({ expressions, subjects }: Work): void {
	for (const [index, subject] of subjects.entries()) {
		const key = evaluate(expressions[index] ?? numberNode(0));
		for (const pattern of patterns) findWrongAnswer(pattern, subject);
		chooseDistractors(subject, key, { count: 3 });
	}
	for (let again = 0; again < 5; again += 1) expressions.forEach(evaluate);
}

/** Distinct expressions: two numbers, three terms, a product within a sum, an absolute value, in turn. */
function makeWork(seed: string): Work {
	const random = createRandom(seed);
	const draw = (): Expression => numberNode(random.nextInteger(3, 99) * random.pick([1, -1]));
	const sum = (left: Expression, right: Expression): Expression =>
		operationNode(random.pick(['add', 'subtract']), left, right);
	const product = (): Expression => operationNode('multiply', draw(), draw());
	const shapes = [
		() => sum(draw(), draw()),
		() => product(),
		() => sum(sum(draw(), draw()), draw()),
		() => sum(draw(), product()),
		() => sum(draw(), groupNode(sum(draw(), draw()))),
		() => absoluteNode(sum(draw(), draw())),
	];
	const seen = new Map<string, Expression>();
	for (let index = 0; seen.size < expressionsPerRound; index += 1) {
		const expression = (shapes[index % shapes.length] ?? draw)();
		seen.set(JSON.stringify(expression), expression);
	}
	const expressions = [...seen.values()];
	return { expressions, subjects: expressions.map(subjectOf) };
}

function time(work: () => unknown): number {
	const start = performance.now();
	work();
	return performance.now() - start;
}

function rate(count: number, milliseconds: number): string {
	return Math.round(count / (milliseconds / 1000)).toLocaleString('en');
}
