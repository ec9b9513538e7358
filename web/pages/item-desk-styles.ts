import { css } from 'lit';

/** The desk: the item as a student meets it, what an author decides, and in the right margin what the bank computes. */
export const itemDeskStyles = css`
	:host { display: block; font: 400 16px/24px var(--sans); }
	.told { padding: 0 28px; }
	.told:not(:empty) { padding: 10px 28px; }
	.told .failure { background: var(--pencil-wash); padding: 10px 14px; }
	.told .failure p { margin: 0 0 4px; }
	.told .failure ul { margin: 0; padding-left: 20px; }
	.desk { display: grid; grid-template-columns: minmax(0, 1.06fr) minmax(0, 1fr) 330px; }
	.jumps { display: none; }
	.desk > section { padding: 14px 18px 28px; min-width: 0; }
	.desk > section > h3 { font-size: 14px; line-height: 20px; color: var(--ink-soft); margin-bottom: 10px; font-weight: 400; }
	.desk > .sheet { background: var(--sheet); border-right: 1px solid var(--paper-line); padding-left: 28px; }
	.bank { border-left: 2px solid var(--paper-line); }
	.sheet, .bank { position: sticky; top: 53px; align-self: start; max-height: calc(100vh - 53px); overflow: auto; min-height: calc(100vh - 53px); }
	.group { border-top: 1px solid var(--rule); padding: 7px 0 14px; }
	.group:first-of-type { border-top: 0; }
	.group > h3 { font-size: 17px; line-height: 28px; }
	.part { border-left: 2px solid var(--rule); padding-left: 14px; margin-top: 14px; }
	.part > h3 { font-size: 17px; line-height: 28px; }

	.list { list-style: none; margin: 0; padding: 0; }
	.entry { border-bottom: 1px solid var(--paper-line); padding: 7px 0; }
	.entry.flat { display: flex; gap: 8px; align-items: end; }
	.entry.flat .field { flex: 1; }
	.entry-head { display: flex; gap: 8px; align-items: center; justify-content: space-between; min-height: 28px; }
	h4 { font-size: 15px; line-height: 24px; }
	h4.side { margin-top: 10px; }
	.key { font-weight: 400; border-bottom: 2px solid var(--ink); margin-left: 6px; }
	.buttons { display: inline-flex; gap: 4px; flex: none; }
	button.small { min-width: 28px; min-height: 28px; padding: 0 6px; justify-content: center; }
	.add { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; padding: 8px 0 0; font-size: 14px; }
	.add button { font-size: 14px; min-height: 28px; padding: 1px 10px; font-weight: 400; }
	.field { display: grid; grid-template-columns: minmax(0, 1fr); margin: 4px 0; min-width: 0; }
	.field > label { font-size: 14px; line-height: 20px; color: var(--ink-soft); }
	.field > input, .field > textarea, .field > select { width: 100%; }
	.field > textarea { resize: vertical; field-sizing: content; min-height: 34px; }
	input.math { font-family: var(--serif); font-size: 17px; }
	.grid { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 0 14px; align-items: start; }
	.grid > .wide { grid-column: 1 / -1; }
	.hint { margin: 0; font-size: 13px; line-height: 18px; color: var(--ink-soft); }
	.stops { color: var(--pencil); font-size: 14px; line-height: 19px; }
	.stops p { margin: 2px 0; }
	.switch { display: inline-flex; gap: 8px; align-items: center; min-height: 32px; }
	.statement { margin: 2px 0 0; font-size: 14px; line-height: 19px; color: var(--ink-soft); }
	.patterns { list-style: none; margin: 2px 0 0; padding: 0; font-size: 14px; line-height: 19px; color: var(--ink-soft); display: flex; flex-wrap: wrap; gap: 0 6px; }
	.patterns li + li::before { content: '· '; }
	.scroll { overflow-x: auto; }
	.scroll table { border-collapse: collapse; }
	.scroll td { padding: 2px 4px 2px 0; }
	.scroll input { width: 110px; }
	.plain { padding: 28px; }
	.try { max-width: 800px; margin: 0 auto; padding: 14px 28px 56px; }
	.try nav { display: flex; justify-content: space-between; gap: 14px; border-bottom: 1px solid var(--paper-line); margin-bottom: 28px; padding-bottom: 7px; font-size: 15px; }
	.try nav a { min-height: 44px; display: inline-flex; align-items: center; }

	@media (max-width: 1180px) {
		.desk { grid-template-columns: minmax(0, 1fr) 290px; }
		.desk > .sheet { grid-column: 1 / -1; border-right: 0; border-bottom: 2px solid var(--paper-line); }
		.sheet, .bank { position: static; max-height: none; min-height: 0; }
	}
	@media (max-width: 760px) {
		.desk { grid-template-columns: minmax(0, 1fr); }
		.jumps { display: flex; flex-wrap: wrap; gap: 0 14px; padding: 7px 14px 0; }
		.desk > section, .desk > .sheet { padding: 14px; }
		.bank { border-left: 0; border-top: 2px solid var(--paper-line); }
		.told, .told:not(:empty) { padding-left: 14px; padding-right: 14px; }
		.try { padding: 7px 14px 42px; }
	}
`;
