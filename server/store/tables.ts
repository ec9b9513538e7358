import type { Generated } from 'kysely';
import type { ItemStatus } from '../../item-bank/items/record.ts';
import type { AnswerScore } from '../../item-bank/types.ts';

/** Columns of every table as kysely sees them; migrations/ holds the meaning. */
export interface Tables {
	readonly items: {
		id: string;
		newest_version: number;
		approved_version: number | null;
		created_at: string;
	};
	readonly item_versions: {
		item_id: string;
		version: number;
		status: ItemStatus;
		document: string;
		created_at: string;
		created_by: string | null;
	};
	readonly traits: {
		id: Generated<number>;
		given: string;
		kind: string;
		dok: number;
		points: number;
		setting: string;
		role: string;
		status: string;
	};
	readonly standards: { id: Generated<number>; framework: string; edition: string; code: string };
	readonly standing_versions: {
		id: number;
		item_id: string;
		version: number;
		traits: number;
		name: string;
		changed_at: string;
	};
	readonly alignments: {
		standing: number;
		standard: number;
		lead: number;
		is_primary: number;
		grade: string;
		extent: string;
		traits: number;
	};
	readonly words: { rowid: number; name: string; body: string; tags: string; codes: string };
	readonly forms: { id: string; newest_version: number; title: string; created_at: string };
	readonly form_versions: {
		form_id: string;
		version: number;
		document: string;
		created_at: string;
		created_by: string | null;
	};
	readonly form_items: {
		form_id: string;
		form_version: number;
		position: number;
		item_id: string;
		item_version: number;
	};
	readonly blueprints: { id: string; newest_version: number; title: string; created_at: string };
	readonly blueprint_versions: {
		blueprint_id: string;
		version: number;
		document: string;
		created_at: string;
		created_by: string | null;
	};
	readonly groups: { id: string; name: string; grade: string | null; created_at: string };
	readonly group_students: { group_id: string; position: number; code: string };
	readonly givings: { form_id: string; form_version: number; group_id: string; given_on: string };
	readonly sittings: {
		id: string;
		form_id: string;
		form_version: number;
		group_id: string;
		sat_on: string;
		mode: 'paper' | 'platform' | 'hand';
		simulated: number;
		keep_until: string | null;
		created_at: string;
	};
	readonly scorings: { sitting_id: string; number: number; form_version: number; why: string; at: string };
	readonly sitting_students: { id: Generated<number>; sitting_id: string; code: string };
	readonly responses: {
		student: number;
		position: number;
		part: number;
		raw: string;
		came_as: 'response' | 'points' | 'omitted' | 'not-reached' | 'invalid';
		response: string | null;
		points: number | null;
	};
	readonly scores: {
		student: number;
		position: number;
		part: number;
		scoring: number;
		state: AnswerScore['state'];
		points: number;
		maximum: number;
		reason: string | null;
	};
	readonly ratings: {
		student: number;
		position: number;
		part: number;
		reader: 'first' | 'second' | 'agreed';
		points: number;
		at: string;
	};
	readonly backups: { file: string; written_at: string };
	readonly happenings: {
		id: Generated<number>;
		subject: string;
		subject_id: string;
		version: number | null;
		what: string;
		at: string;
		by: string | null;
	};
}
