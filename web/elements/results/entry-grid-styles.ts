import { css } from 'lit';

/** How a class grid looks: a ruled sheet, places across, a row a student. */
export const entryGridStyles = css`
	p { margin: 0 0 7px; max-width: 90ch; }
	.state { display: flex; flex-wrap: wrap; gap: 14px; align-items: center; min-height: 40px; }
	.state p { margin: 0; }
	.at { min-height: 28px; font-weight: 600; }
	.failure { margin: 7px 0; }
	.failure ul { margin: 0; padding-left: 21px; }
	.wide { overflow: auto; max-height: 70vh; border: 1px solid var(--paper-line); background: var(--sheet); position: relative; }
	table { border-collapse: separate; border-spacing: 0; font-variant-numeric: tabular-nums; }
	th, td { padding: 0; border-bottom: 1px solid var(--paper-line); border-right: 1px solid var(--paper-line); font-weight: 400; text-align: center; }
	thead th { position: sticky; top: 0; background: var(--paper); z-index: 2; border-bottom: 1.5px solid var(--ink); padding: 3px 7px; font-weight: 600; }
	tbody th, thead th:first-child { position: sticky; left: 0; background: var(--paper); text-align: left; padding: 3px 10px; z-index: 1; white-space: nowrap; }
	thead th:first-child { z-index: 3; }
	td input[type='text'] { width: 52px; min-height: 30px; padding: 2px 4px; border: 0; text-align: center; background: transparent; }
	td input.long { width: 160px; text-align: left; }
	td input:focus-visible { outline-offset: -3px; }
	td input.waits { background: var(--ink-wash); }
	td input[aria-invalid='true'] { background: var(--pencil-wash); box-shadow: inset 0 -3px 0 var(--pencil); }
	.count { padding: 3px 10px; white-space: nowrap; }
	@media (pointer: coarse) { td input[type='text'] { min-height: 44px; } }
	@media print { .wide { max-height: none; overflow: visible; } .state, .keys { display: none; } }
`;
