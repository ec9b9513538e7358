import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type ItemOrder, makeItems } from '../item-bank/families/make-items.ts';
import { invariant } from '../item-bank/invariant.ts';
import { idOf } from './making.ts';
import { projectRoot } from './project-root.ts';
import type { NewBlueprint } from './store/blueprint-store.ts';
import type { NewForm } from './store/form-store.ts';
import type { NewGroup } from './store/group-store.ts';
import type { NewItem } from './store/item-store.ts';
import type { Store } from './store/open-store.ts';

/** What the demo department brought into a bank. */
export interface DemoReport {
	readonly items: number;
	readonly forms: number;
	readonly groups: number;
	readonly blueprints: number;
}

/** The demo department is already in the bank. */
export class DemoPresentError extends Error {
	readonly code = 'demo-present';
	/** An id of the demo that was found. */
	readonly id: string;

	constructor(id: string) {
		super(`expected a bank without the demo department, found its "${id}"`);
		this.name = 'DemoPresentError';
		this.id = id;
	}
}

/** The demo department of Saltmarsh Ridge as it stands in a folder of JSON files. */
export interface Demo {
	/** Written by hand. */
	readonly items: readonly NewItem[];
	/** Made by families, from the orders in made-items.json. */
	readonly made: readonly NewItem[];
	readonly forms: readonly NewForm[];
	readonly groups: readonly NewGroup[];
	readonly blueprints: readonly NewBlueprint[];
}

/** Reads the demo department; forms name items at version 1. */
export function readDemo(folder: string = join(projectRoot, 'item-bank/demo')): Demo {
	const files = readdirSync(join(folder, 'items'))
		.filter((name) => name.endsWith('.json'))
		.sort();
	const read = (path: string): unknown => JSON.parse(readFileSync(join(folder, path), 'utf8'));
	return {
		items: files.flatMap((name) => read(join('items', name)) as readonly NewItem[]),
		made: makeDemoItems(read('made-items.json') as readonly ItemOrder[]),
		forms: read('forms.json') as readonly NewForm[],
		groups: read('groups.json') as readonly NewGroup[],
		blueprints: read('blueprints.json') as readonly NewBlueprint[],
	};
}

/** The items that orders to families come to. Throws where an order does not come to as many as it says: the demo is at fault. */
function makeDemoItems(orders: readonly ItemOrder[]): readonly NewItem[] {
	return orders.flatMap((order) => {
		const { items, problems } = makeItems(order);
		invariant(problems.length === 0, `the demo's order of "${order.family}" cannot be filled: ${problems[0]?.message}`);
		return items.map((item) => ({ id: idOf(item), item }));
	});
}

/**
 * Brings the demo department into a bank: items approved, forms, groups, blueprints. All is checked as anything else that comes in. What
 * an interrupted run left out is made up for. Throws {@link DemoPresentError} when all of it is there, and
 * ContentRefusedError for a fault in the demo.
 */
export async function fillDemo(store: Store, demo: Demo = readDemo()): Promise<DemoReport> {
	const present = await listPresent(store, demo);
	const isMissing = ({ id }: { readonly id?: string }): boolean => id === undefined || !present.has(id);
	const items = [...demo.items, ...demo.made].filter(isMissing);
	const groups = demo.groups.filter(isMissing);
	const forms = demo.forms.filter(isMissing);
	const blueprints = demo.blueprints.filter(isMissing);
	if (items.length + groups.length + forms.length + blueprints.length === 0)
		throw new DemoPresentError([...present][0] ?? '');
	await store.items.createMany(items, 'approved');
	for (const group of groups) await store.groups.add(group);
	for (const form of forms) await store.forms.create(form);
	for (const blueprint of blueprints) await store.blueprints.create(blueprint);
	return { items: items.length, forms: forms.length, groups: groups.length, blueprints: blueprints.length };
}

/** Ids of the demo, and of anything else that is no item, that the bank has. */
async function listPresent(store: Store, demo: Demo): Promise<ReadonlySet<string>> {
	const wanted = [...demo.items, ...demo.made].flatMap(({ id }) => (id === undefined ? [] : [{ id, version: 1 }]));
	const present = [
		...(await store.items.getMany(wanted)),
		...(await store.forms.list()),
		...(await store.groups.list()),
		...(await store.blueprints.list()),
	];
	return new Set(present.map(({ id }) => id));
}
