import { openStore, type Store, type StoreOptions } from '../../server/store/open-store.ts';

/** Ids test-0001, test-0002, … */
export function countingIds(): () => string {
	let last = 0;
	return () => {
		last += 1;
		return `test-${String(last).padStart(4, '0')}`;
	};
}

/** A clock that starts on 14 September 2026, 08:00 UTC, and is one second later at each look. */
export function tickingClock(): () => Date {
	let time = Date.UTC(2026, 8, 14, 8);
	return () => {
		time += 1000;
		return new Date(time - 1000);
	};
}

/** An empty bank in memory with counted ids and a clock of its own. */
export function openTestStore(options: StoreOptions = {}): Promise<Store> {
	return openStore(':memory:', { clock: tickingClock(), newId: countingIds(), ...options });
}
