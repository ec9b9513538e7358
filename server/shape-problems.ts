import type { ErrorObject } from 'ajv/dist/2020.js';
import type { Problem } from '../item-bank/problem.ts';

/** Turns what ajv found into problems, at most 100, each place once. */
export function describeErrors(errors: readonly ErrorObject[], document: unknown): readonly Problem[] {
	const first = errors.slice(0, 1000);
	const problems = first
		.filter(({ keyword }) => keyword !== 'oneOf' && keyword !== 'not')
		.map((error) => describe(error, document));
	const all = problems.length > 0 ? problems : first.map((error) => describe(error, document));
	const seen = new Set<string>();
	return all
		.filter(({ path, message }) => {
			const key = `${path} ${message}`;
			if (seen.has(key)) return false;
			seen.add(key);
			return true;
		})
		.slice(0, 100);
}

function describe(error: ErrorObject, document: unknown): Problem {
	const { keyword, instancePath: path, params } = error;
	const found = quote(valueAt(document, path));
	switch (keyword) {
		case 'additionalProperties':
			return {
				code: 'field-unknown',
				path: `${path}/${params.additionalProperty}`,
				message: `expected no field "${params.additionalProperty}" ${place(path)}`,
			};
		case 'required':
			return {
				code: 'field-missing',
				path: `${path}/${params.missingProperty}`,
				message: `expected a field "${params.missingProperty}" ${place(path)}, found none`,
			};
		case 'type':
			return {
				code: 'type-wrong',
				path,
				message: `expected ${[params.type].flat().join(' or ')} ${place(path)}, found ${found}`,
			};
		case 'enum':
			return {
				code: 'value-not-allowed',
				path,
				message: `expected one of ${(params.allowedValues as unknown[]).join(', ')} ${place(path)}, found ${found}`,
			};
		case 'const':
			return {
				code: 'value-not-allowed',
				path,
				message: `expected ${quote(params.allowedValue)} ${place(path)}, found ${found}`,
			};
		case 'discriminator':
			return {
				code: 'kind-unknown',
				path: `${path}/kind`,
				message: `expected a known kind ${place(path)}, found ${quote(params.tagValue)}`,
			};
		case 'minimum':
		case 'maximum':
			return {
				code: 'value-out-of-range',
				path,
				message: `expected a number ${params.comparison} ${params.limit} ${place(path)}, found ${found}`,
			};
		case 'minLength':
		case 'maxLength':
			return {
				code: 'text-length',
				path,
				message: `expected text of at ${keyword === 'minLength' ? 'least' : 'most'} ${params.limit} characters ${place(path)}, found ${found}`,
			};
		case 'minItems':
		case 'maxItems':
			return {
				code: 'list-length',
				path,
				message: `expected at ${keyword === 'minItems' ? 'least' : 'most'} ${params.limit} entries ${place(path)}`,
			};
		case 'uniqueItems':
			return {
				code: 'list-repeats',
				path,
				message: `expected every entry once ${place(path)}, but entries ${params.j} and ${params.i} are the same`,
			};
		case 'pattern':
			return {
				code: 'spelling-wrong',
				path,
				message: `expected text like ${params.pattern} ${place(path)}, found ${found}`,
			};
		default:
			return { code: 'shape-wrong', path, message: `${error.message ?? keyword} ${place(path)}, found ${found}` };
	}
}

function place(path: string): string {
	return path === '' ? 'at the top' : `at ${path}`;
}

function valueAt(document: unknown, path: string): unknown {
	return path
		.split('/')
		.slice(1)
		.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'))
		.reduce<unknown>((node, step) => (node as Record<string, unknown> | undefined)?.[step], document);
}

/** A value as messages show it; lists and objects by their kind alone, since they may be of any size and depth. */
function quote(value: unknown): string {
	if (value === undefined) return 'nothing';
	if (Array.isArray(value)) return `a list of ${value.length}`;
	if (typeof value === 'object' && value !== null) return 'an object';
	const isLong = typeof value === 'string' && value.length > 80;
	return isLong ? `${JSON.stringify(value.slice(0, 76))}...` : JSON.stringify(value);
}
