import { css } from 'lit';

/** The board: hairlines, 28 px rows, columns of one width under every lens. */
export const boardGridStyles = css`
	:host { display: block; min-width: 0; overflow-x: auto; position: relative; container-type: inline-size; }
	table { border-collapse: separate; border-spacing: 0; table-layout: fixed; width: 100%; min-width: 640px; }
	col { width: 104px; }
	col.head { width: auto; }
	th, td { padding: 0 6px; height: var(--row); text-align: left; border-bottom: 1px solid var(--paper-line); font-weight: 400; overflow: hidden; white-space: nowrap; scroll-margin: 70px 0; }
	thead th { position: sticky; top: 0; z-index: 2; background: var(--paper); border-bottom: 1.5px solid var(--ink); font-weight: 600; font-size: 15px; height: 32px; }
	td { cursor: pointer; border-left: 1px solid var(--paper-line); }
	td:hover { background: var(--ink-wash); }
	td.total { border-left: 1.5px solid var(--rule); }
	td[aria-selected='true'] { background: var(--pencil-wash); box-shadow: inset 0 0 0 2px var(--pencil); }
	:focus-visible { outline-offset: -3px; }
	tbody th { position: sticky; left: 0; z-index: 1; background: var(--paper); padding-left: 0; }
	th.folds { cursor: pointer; }
	th.folds:hover .code { text-decoration: underline; text-underline-offset: 3px; }
	.line { display: flex; gap: 6px; align-items: center; height: 27px; min-width: 0; }
	.fold { flex: none; width: 18px; line-height: 0; padding-left: 2px; }
	.code { flex: none; font-weight: 600; }
	.statement { overflow: hidden; text-overflow: ellipsis; color: var(--ink-soft); font-size: 14px; }
	.level-2 { padding-left: 14px; }
	.level-3 { padding-left: 28px; }
	.level-4 { padding-left: 42px; }
	.level-5 { padding-left: 56px; }
	.heading th { padding-top: 7px; height: 36px; border-bottom-color: var(--rule); }
	.totals th, .totals td { border-top: 1.5px solid var(--ink); border-bottom: 0; }
	.totals th { font-weight: 600; padding-left: 26px; }
	.content { display: flex; gap: 4px; align-items: center; height: 27px; color: var(--ink-soft); }
	.content svg { flex: none; }
	.content .tally { flex: 0 1 auto; min-width: 0; }
	.figure { color: var(--ink); }
	small { font-size: 13px; line-height: 20px; color: var(--ink-soft); }
	small.short { color: var(--pencil); font-weight: 600; }
	.none { width: 8px; border-top: 1px solid var(--rule); }
	.unmarked { opacity: 0.75; line-height: 0; }
	@container (max-width: 860px) { td { padding: 0 4px; } .content { gap: 3px; } col { width: 88px; } }
	@container (max-width: 760px) { .statement { display: none; } }
	@media (max-width: 720px) {
		table { min-width: 0; width: max-content; }
		col { width: 92px; }
		col.head { width: 128px; }
		.statement { display: none; }
		.level-3, .level-4, .level-5 { padding-left: 14px; }
		th, td { height: 44px; }
	}
	@media print {
		:host { overflow: visible; }
		table { min-width: 0; font-size: 12px; }
		th, td { height: 22px; }
		thead th, tbody th { position: static; }
		.line, .content { height: 21px; }
		.statement { font-size: 11px; }
		tr { break-inside: avoid; }
		td[aria-selected='true'] { box-shadow: none; }
	}
`;
