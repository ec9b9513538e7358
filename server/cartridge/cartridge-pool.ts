import { availableParallelism } from 'node:os';
import { ValidationBrokenError } from '../qti/validate/pool.ts';
import { makePool } from '../worker-pool.ts';
import type { CartridgeAnswers, CartridgeJob } from './cartridge-worker.ts';

/** How many jobs run at once. */
export const cartridgePoolSize: number = Math.max(1, Math.min(2, availableParallelism()));

const pool = makePool<CartridgeJob>(
	'cartridge/cartridge-worker',
	cartridgePoolSize,
	(cause: unknown) => new ValidationBrokenError(cause),
);

/** Has a job of one kind done by a worker. Throws ValidationBrokenError. */
export function runCartridgeJob<K extends CartridgeJob['kind']>(
	_kind: K,
	job: Extract<CartridgeJob, { kind: K }>,
): Promise<CartridgeAnswers[K]> {
	return pool.run<CartridgeAnswers[K]>(job);
}

/** Ends the workers; the next job starts new ones. */
export function closeCartridges(): Promise<void> {
	return pool.close();
}
