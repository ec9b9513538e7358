import { css } from 'lit';

/** The page that reads a file: the place to drop it, what was understood of cells, what came of it. */
export const readingStyles = css`
	h4 { font-size: 15px; line-height: 28px; margin-top: 10px; }
	.drop { display: flex; flex-wrap: wrap; gap: 7px 21px; align-items: end; padding: 14px; background: var(--sheet); border: 1px dashed var(--rule); margin-bottom: 7px; }
	.drop.over { border: 2px solid var(--pencil); padding: 13px; }
	input[type='file'] { font: 400 15px/24px var(--sans); color: var(--ink); max-width: 100%; }
	input[type='file']::file-selector-button { font: 600 15px/24px var(--sans); color: var(--ink); background: transparent; border: 1px solid var(--rule); border-radius: 0; padding: 3px 12px; margin-right: 10px; cursor: pointer; }
	.mark { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; }
	textarea { max-width: 100%; }
	details { margin: 7px 0; }
	summary { font-weight: 600; min-height: 28px; }
	td select { min-height: 28px; padding: 0 6px; border-bottom-width: 1px; font-size: 15px; }
	td .reads { color: var(--ink-soft); font-size: 13px; }
	td { white-space: nowrap; }
	td .fault { font-size: 13px; }
	.outcome { border-left: 4px solid var(--rule); padding-left: 14px; margin-top: 14px; }
	.outcome.done { border-left-color: var(--ink); }
	.outcome td { white-space: normal; }
	@media (pointer: coarse) { td select { min-height: 44px; } }
`;
