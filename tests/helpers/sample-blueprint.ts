import type { Blueprint } from '../../item-bank/types.ts';

/** A plan for forms of two items on 6.3(D), one gridded; give what the test is about. */
export function makeBlueprint(changes: Partial<Blueprint> = {}): Blueprint {
	return {
		title: 'Two items',
		framework: 'teks-math',
		edition: '2012',
		gridProfile: 'plain-sign-first',
		items: { min: 2, max: 2 },
		cells: [{ standard: '6.3(D)', items: { min: 2, max: 2 } }],
		kinds: [{ kind: 'gridded', items: { min: 1, max: 1 } }],
		sections: [{ title: 'All of it', items: { min: 2, max: 2 } }],
		...changes,
	};
}
