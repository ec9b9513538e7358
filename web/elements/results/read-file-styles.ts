import { css } from 'lit';

/** How reading a file is laid out: fields on a line where there is room, tables that scroll by themselves. */
export const readFileStyles = css`
	section { margin-bottom: 21px; }
	h3 { font-size: 17px; line-height: 28px; border-bottom: 1px solid var(--rule); margin-bottom: 7px; }
	p { margin: 0 0 7px; max-width: 90ch; }
	.asked { display: flex; flex-wrap: wrap; gap: 14px; align-items: end; }
	.asked > label { display: grid; gap: 3px; font-weight: 600; max-width: 46ch; }
	.asked > p, .whole { flex-basis: 100%; }
	input[type='file'], input[type='date'] { font: 400 16px/24px var(--sans); color: var(--ink); max-width: 100%; }
	input[type='file']::file-selector-button { font: 600 15px/24px var(--sans); color: var(--ink); background: transparent; border: 1px solid var(--rule); padding: 3px 12px; margin-right: 8px; cursor: pointer; }
	input[type='date'] { background: var(--sheet); border: 1px solid var(--paper-line); border-bottom: 2px solid var(--rule); padding: 3px 8px; min-height: 32px; }
	.options { display: flex; flex-wrap: wrap; gap: 0 14px; margin: 0 0 7px; }
	.options legend { font-weight: 600; float: left; margin-right: 14px; padding-top: 3px; }
	.line { display: inline-flex; gap: 8px; align-items: center; padding: 3px 0; }
	.wide { overflow: auto; max-height: 420px; border: 1px solid var(--paper-line); background: var(--sheet); margin: 7px 0; position: relative; width: fit-content; max-width: 100%; }
	table { border-collapse: collapse; font-size: 15px; line-height: 21px; }
	th, td { text-align: left; font-weight: 400; padding: 3px 14px 3px 10px; border-bottom: 1px solid var(--paper-line); vertical-align: top; }
	thead th { font-weight: 600; position: sticky; top: 0; background: var(--paper); border-bottom: 1.5px solid var(--ink); z-index: 1; }
	.discarded th { color: var(--ink-soft); text-decoration: line-through; }
	.rows td { white-space: nowrap; }
	.rows .fault { white-space: normal; min-width: 26ch; max-width: 36ch; background: var(--pencil-wash); }
	details { margin: 7px 0; }
	summary { font-weight: 600; }
	.ways { display: flex; flex-wrap: wrap; gap: 7px; align-items: center; }
	textarea { font: 400 16px/24px var(--sans); }
`;
