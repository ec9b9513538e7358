import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { analyseForm } from '../../item-bank/analysis/analyse-form.ts';
import { gatherEvidence } from '../../item-bank/analysis/evidence/evidence.ts';
import {
	buildScoreTable,
	type ScoreRow,
	type ScoreTable,
	type TableItem,
} from '../../item-bank/analysis/score-table.ts';
import { createRandom } from '../../item-bank/random/random.ts';

const items = 40;
const sizes = [250, 2500, 25_000];
const rounds = 3;
const options = ['1', '2', '3', '4'];

/**
 * Prints the processor time and memory of a full analysis of 40 choice items for up to 25,000 students, how the time grows with the
 * responses, and the time of the same statistics in R with psych, which is asked for in the same run. Bars: five times faster
 * than R, under 500 MB, exponent at most 1.1.
 */
export async function run(): Promise<void> {
	const form = Array.from({ length: items }, (_, at): TableItem => {
		return { id: `item-${at}`, version: 1, maximum: 1, key: [options[at % 4] ?? '1'], options };
	});
	analyseForm(buildScoreTable(form, makeRows(form, 500)).table);
	const times: number[] = [];
	let largest: ScoreTable | undefined;
	for (const students of sizes) {
		let table: ScoreTable | undefined;
		const building = time(() => {
			table = buildScoreTable(form, makeRows(form, students)).table;
		});
		if (table === undefined) throw new Error('no table');
		const built: ScoreTable = table;
		const analysis = Math.min(...Array.from({ length: rounds }, () => time(() => analyseForm(built))));
		times.push(analysis);
		largest = built;
		console.log(
			`${(students * items).toLocaleString('en')} responses: drawn and put into a table in ${building.toFixed(0)} ms, ` +
				`analysed in ${analysis.toFixed(0)} ms (best of ${rounds})`,
		);
	}
	const [small = 1, , large = 1] = times;
	console.log(`exponent from 10,000 to 1,000,000 responses: ${(Math.log10(large / small) / 2).toFixed(2)} (bar 1.1)`);
	if (largest === undefined) return;
	const table = largest;
	const evidence = time(() =>
		gatherEvidence([table], ({ id }) => ({ standard: `S${Number(id.slice(5)) % 4}`, model: 'symbols' })),
	);
	console.log(`evidence of four cells: ${evidence.toFixed(0)} ms`);
	const megabytes = process.resourceUsage().maxRSS / 1024;
	console.log(`largest memory of the process: ${megabytes.toFixed(0)} MB (bar 500)`);
	compareWithR(table, large);
}

/** Rasch-like answers: wrong ones among the other options, the weak more often at the first of them. */
function* makeRows(form: readonly TableItem[], students: number): Generator<ScoreRow> {
	const random = createRandom(`analysis ${students}`);
	const draw = (): number => random.nextWord() / 2 ** 32;
	for (let student = 0; student < students; student += 1) {
		const ability = (draw() + draw() + draw() + draw() - 2) * 1.7;
		for (const [at, item] of form.entries()) {
			const right = 1 / (1 + Math.exp((at - 20) / 10 - ability));
			const key = item.key?.[0] ?? '1';
			const others = options.filter((option) => option !== key);
			const isRight = draw() < right;
			const answer = isRight ? key : (others[draw() < 0.5 ? 0 : 1 + Math.floor(draw() * 2)] ?? '1');
			yield { student: `s${student}`, item: item.id, points: isRight ? 1 : 0, state: 'answered', answer };
		}
	}
}

/** Milliseconds of processor time, which a busy machine changes less than the time on the clock. */
function time(work: () => unknown): number {
	const start = process.cpuUsage();
	work();
	const { user, system } = process.cpuUsage(start);
	return (user + system) / 1000;
}

/** The same statistics, vectorised; Rasch difficulties are left out, which base R and psych do not have. */
const script = `
suppressMessages(library(psych))
chosen <- as.matrix(read.csv(commandArgs(TRUE)[1], header = FALSE))
k <- ncol(chosen); n <- nrow(chosen)
key <- ((seq_len(k) - 1) %% 4) + 1
analyse <- function(withPsych) {
  x <- (chosen == rep(key, each = n)) * 1
  total <- rowSums(x); p <- colMeans(x)
  z <- qnorm(.975); centre <- (p + z^2 / (2 * n)) / (1 + z^2 / n)
  reach <- z * sqrt(p * (1 - p) / n + z^2 / (4 * n^2)) / (1 + z^2 / n)
  if (withPsych) a <- suppressWarnings(alpha(x, check.keys = FALSE))
  else {
    v <- cov(x); s <- sum(v); d <- diag(v); a <- k / (k - 1) * (1 - sum(d) / s)
    without <- sapply(seq_len(k), function(j) (k - 1) / (k - 2) * (1 - sum(d[-j]) / sum(v[-j, -j])))
  }
  corrected <- sapply(seq_len(k), function(j) cor(x[, j], total - x[, j]))
  g <- (27 * n + 50) %/% 100; ordered <- sort(total)
  upper <- total >= ordered[n - g + 1]; lower <- total <= ordered[g]
  D <- colMeans(x[upper, ]) - colMeans(x[lower, ])
  options <- lapply(seq_len(k), function(j) {
    rest <- total - x[, j]
    lapply(1:4, function(o) {
      m <- chosen[, j] == o
      c(mean(m), mean(m[upper]), mean(m[lower]), mean(rest[m]), cor(m, rest))
    })
  })
  odd <- rowSums(x[, seq(1, k, 2)]); even <- total - odd
  half <- cor(odd, even); counts <- tabulate(total + 1, k + 1); ranks <- 100 * (cumsum(counts) - counts / 2) / n
  list(p, centre, reach, corrected, D, options, half, ranks)
}
for (how in c(TRUE, FALSE)) { analyse(how); cat(min(replicate(2, sum(system.time(analyse(how))[1:2]))), "\\n") }
`;

function compareWithR({ columns, students }: ScoreTable, ours: number): void {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-analysis-'));
	try {
		const lines = students.map((_, at) =>
			columns.map(({ answers, distinctAnswers }) => distinctAnswers[answers[at] ?? 0]).join(','),
		);
		writeFileSync(join(folder, 'chosen.csv'), lines.join('\n'));
		writeFileSync(join(folder, 'analyse.R'), script);
		const done = spawnSync('Rscript', [join(folder, 'analyse.R'), join(folder, 'chosen.csv')], { encoding: 'utf8' });
		const [withPsych, base] = (done.stdout ?? '').trim().split(/\s+/).map(Number);
		if (done.status !== 0 || withPsych === undefined || base === undefined) {
			console.log('R with psych is missing here: install r-base-core and r-cran-psych to compare');
			return;
		}
		const ratio = (seconds: number): string => ((seconds * 1000) / ours).toFixed(1);
		console.log(
			`R with psych ${(withPsych * 1000).toFixed(0)} ms, ${ratio(withPsych)} times ours (bar 5); ` +
				`base R alone ${(base * 1000).toFixed(0)} ms, ${ratio(base)} times ours; ours computes the Rasch scale as well`,
		);
	} finally {
		rmSync(folder, { recursive: true });
	}
}
