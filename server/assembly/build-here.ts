import { checkTogether } from '../../item-bank/forms/check-against-blueprint.ts';
import { checkBlueprint } from '../../item-bank/forms/check-blueprint.ts';
import { compareForms, type FindItem } from '../../item-bank/forms/compare-forms.ts';
import { createRandom } from '../../item-bank/random/random.ts';
import type { BuildAnswer, ConflictEntry, Form } from '../../item-bank/types.ts';
import { type BuildProgress, type BuildRequest, BuildRequestError, defaultLimits } from './build-request.ts';
import { describeConflict, findConflict } from './explain-conflict.ts';
import { makeInstance } from './instance.ts';
import { findMissing } from './missing-items.ts';
import { findNearest } from './nearest-forms.ts';
import { type PoolItem, readPool } from './pool.ts';
import { type SearchTools, searchForms } from './search-forms.ts';
import type { Solver } from './solver.ts';
import { writeForms } from './write-forms.ts';

/** Forms came out of a build that do not keep their blueprint: a fault of the builder. */
export class BuildUnsoundError extends Error {
	readonly code = 'build-unsound';
	/** What the forms fall short of. */
	readonly shortfalls: readonly string[];

	constructor(shortfalls: readonly string[]) {
		super(`the built forms do not keep the blueprint: ${shortfalls.join('; ')}`);
		this.name = 'BuildUnsoundError';
		this.shortfalls = shortfalls;
	}
}

/**
 * Builds forms in this thread: searches, checks every form against the blueprint without the solver, or explains why there
 * are none. Throws {@link BuildRequestError} for a blueprint with problems, a count outside 1 to 4 or days without a today.
 */
export function buildHere(
	request: BuildRequest,
	solver: Solver,
	report: (progress: BuildProgress) => void,
): BuildAnswer {
	checkRequest(request);
	const tools: SearchTools = { solver, limits: { ...defaultLimits, ...request.limits }, seed: request.seed, report };
	report({ phase: 'reading' });
	const pool = readPool(request);
	const findItem = finderOf(request);
	const unusable = checkNamed(request, pool);
	if (unusable.length > 0)
		return { kind: 'impossible', conflict: unusable, isIrreducible: unusable.length === 1, missing: [] };
	const instance = makeInstance(request, pool, createRandom(request.seed));
	const result = searchForms(instance, tools);
	switch (result.kind) {
		case 'found': {
			report({ phase: 'checking' });
			const forms = writeForms(request.blueprint, result.arrangement.forms);
			const shortfalls = checkTogether(forms, findItem, request.blueprint);
			const departures = shortfalls.filter(({ path }) => path.startsWith('/order'));
			if (departures.length < shortfalls.length) {
				throw new BuildUnsoundError(
					shortfalls
						.filter(({ path }) => !path.startsWith('/order'))
						.map(({ requirement, found }) => `${requirement}; found ${found}`),
				);
			}
			return { kind: 'built', forms, proof: result.proof, balance: balanceOf(forms, request, findItem), departures };
		}
		case 'none': {
			report({ phase: 'explaining' });
			const conflict = findConflict(request, pool, result.isFine, tools);
			const nearest = findNearest(instance, result.isFine, findItem, tools);
			return {
				kind: 'impossible',
				conflict: describeConflict(conflict, request, pool),
				isIrreducible: conflict.isIrreducible,
				...(nearest === undefined ? {} : { nearest }),
				missing: findMissing(instance, result.isFine, tools),
			};
		}
		case 'undecided': {
			const { nodes, iterations } = tools.limits;
			const message = `within ${nodes} nodes and ${iterations} iterations neither forms nor a proof that there are none was found; raise the limits or loosen the blueprint`;
			return { kind: 'undecided', message, nodes: result.nodes };
		}
		default:
			return result satisfies never;
	}
}

function checkRequest(request: BuildRequest): void {
	const problems = checkBlueprint(request.blueprint);
	if (problems.length > 0) {
		throw new BuildRequestError(
			`expected a blueprint without problems, found: ${problems.map(({ message }) => message).join('; ')}`,
		);
	}
	if (!Number.isInteger(request.count) || request.count < 1 || request.count > 4) {
		throw new BuildRequestError(`expected 1 to 4 forms, found ${request.count}`);
	}
	if (request.blueprint.exclusions?.usedWithinDays !== undefined && request.today === undefined) {
		throw new BuildRequestError(
			'expected the day of the build, because the blueprint excludes items by days since use; found none',
		);
	}
	const named = request.blueprint.exclusions?.notOnForms ?? [];
	const unknown = named.filter((id) => !(request.otherForms ?? []).some((form) => form.id === id));
	if (unknown.length > 0)
		throw new BuildRequestError(`expected the forms the blueprint excludes, found no "${unknown.join('", "')}"`);
	const beyond = (request.blueprint.forced ?? []).find(({ form }) => form !== undefined && form > request.count);
	if (beyond)
		throw new BuildRequestError(
			`expected "${beyond.item}" to be forced on form 1 to ${request.count}, found form ${beyond.form}`,
		);
}

/** Anchors and forced items that cannot be used at all, each a conflict by itself. */
function checkNamed({ blueprint }: BuildRequest, pool: readonly PoolItem[]): readonly ConflictEntry[] {
	const byId = new Map(pool.map((item) => [item.traits.id, item]));
	const named = (['anchors', 'forced'] as const).flatMap((list) =>
		(blueprint[list] ?? []).map((entry, index) => ({
			path: `/${list}/${index}`,
			id: entry.item,
			section: 'section' in entry ? entry.section : undefined,
		})),
	);
	return named.flatMap(({ path, id, section }): readonly ConflictEntry[] => {
		const found = byId.get(id);
		const words = path.startsWith('/anchors') ? 'as an anchor' : 'on a form';
		const reason = !found
			? 'there is no approved item of that id'
			: found.exclusions.length > 0
				? found.exclusions.map((one) => one.reason).join('; ')
				: found.sections.length === 0 || (section !== undefined && !found.sections.includes(section - 1))
					? `no section${section === undefined ? '' : ` ${section}`} admits it`
					: undefined;
		if (reason === undefined) return [];
		return [
			{
				path,
				requirement: `needs "${id}" ${words}`,
				inBank: found ? 1 : 0,
				usable: 0,
				excluded: [{ item: id, reason }],
			},
		];
	});
}

function balanceOf(forms: readonly Form[], request: BuildRequest, findItem: FindItem): ReturnType<typeof compareForms> {
	return compareForms(request.like ? [request.like, ...forms] : forms, findItem, request.blueprint, request.blueprint);
}

function finderOf(request: BuildRequest): FindItem {
	const items = new Map(request.pool.map(({ id, version, item }) => [`${id} ${version}`, item]));
	return (id, version) => items.get(`${id} ${version}`);
}
