import { html, nothing, type TemplateResult } from 'lit';
import type {
	BlueprintEntry,
	Evidence,
	FormDetails,
	FormSummary,
	FrameworkList,
	Supply,
} from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';
import type { Plan } from '../board/board-plan.ts';
import { totalCounts } from '../board/board-rows.ts';
import { type BoardState, printBoardState } from '../board/board-state.ts';
import { words } from '../messages/words.ts';

/** What notes on the board are made of; what has not been read is undefined. */
export interface NoteParts {
	readonly state: BoardState;
	readonly supply: Supply;
	/** Items that fit but have no standard in the framework. */
	readonly unseen: number;
	readonly frameworks: FrameworkList | undefined;
	readonly blueprints: readonly BlueprintEntry[] | undefined;
	readonly forms: readonly FormSummary[] | undefined;
	readonly form: FormDetails | undefined;
	readonly plan: Plan | undefined;
	readonly evidence: Evidence | undefined;
}

/** What a lens has to say before there is anything to see, and what it found. */
export function renderBoardNote(parts: NoteParts): TemplateResult | typeof nothing {
	switch (parts.state.lens) {
		case 'supply':
			return renderSupplyNote(parts);
		case 'plan':
			return renderPlanNote(parts);
		case 'evidence':
			return renderEvidenceNote(parts);
	}
}

function renderSupplyNote({ supply, unseen, forms }: NoteParts): TemplateResult | typeof nothing {
	const hasNone = totalCounts(supply).total === 0 && unseen === 0 && forms?.length === 0;
	return hasNone ? html`<p><strong>${words.board.bankEmpty}.</strong> ${words.board.bankEmptyAdvice}</p>` : nothing;
}

function renderPlanNote({ state, frameworks, blueprints, form, plan }: NoteParts): TemplateResult {
	if (state.blueprint === undefined && state.form === undefined) {
		return html`<p>${blueprints?.length === 0 ? words.board.planNoBlueprint : words.board.planEmpty}</p>`;
	}
	const blueprint = blueprints?.find(({ id }) => id === state.blueprint)?.blueprint;
	if (blueprint && plan?.isElsewhere) {
		const { framework: id, edition } = blueprint;
		const name = frameworks?.find((each) => each.framework === id && each.edition === edition)?.name ?? id;
		const address = printBoardState({ ...state, framework: { id, edition }, cell: undefined, closed: [] });
		return html`<p>${words.board.planElsewhere(`${name}, ${edition}`)} <a href=${address}>${words.board.planThere}</a></p>`;
	}
	const { unplaced = 0, missed = 0 } = plan ?? {};
	return html`<p>
		${blueprint && form ? html`<span class=${missed > 0 ? 'short' : ''}>${missed > 0 ? words.board.planMissed(missed) : words.board.planMet}</span>` : nothing}
		${unplaced > 0 ? words.board.unplaced(unplaced) : nothing}
	</p>`;
}

function renderEvidenceNote({ evidence }: NoteParts): TemplateResult | typeof nothing {
	if (!evidence) return nothing;
	if (evidence.sittings.length === 0) {
		return html`<p><strong>${words.board.evidenceEmpty}.</strong> ${words.board.evidenceAdvice} <a href=${printAddress('forms')}>${words.board.evidenceStart}</a></p>`;
	}
	if (evidence.cells.length === 0) return html`<p>${words.board.evidenceElsewhere}</p>`;
	return html`<p>
		${words.board.evidenceFound(evidence.students, evidence.sittings.length)}
		${evidence.simulated ? html`<strong>${words.board.simulated}</strong>` : nothing} ${words.board.weighty} <span class="soft">${words.board.notSummed}</span>
	</p>`;
}
