import { css } from 'lit';

/** What the pages around responses draw alike: steps on a line, fields in a row, tables that scroll inside themselves. */
export const resultsStyles = css`
	:host { display: block; padding: 21px 28px 56px; max-width: 1180px; }
	h2 { font-size: 20px; line-height: 28px; margin-bottom: 7px; }
	h2:focus { outline: none; }
	h3 { font-size: 16px; line-height: 28px; margin: 21px 0 7px; padding-top: 7px; border-top: 1px solid var(--paper-line); }
	p { margin: 0 0 7px; max-width: 76ch; }
	.back { display: inline-block; margin-bottom: 7px; }
	.fields { display: flex; flex-wrap: wrap; gap: 10px 21px; align-items: start; }
	.field { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; cursor: default; }
	div.field > label { display: grid; cursor: default; }
	.field select, .field input { justify-self: start; }
	input[type='date'] { font: inherit; font-size: 16px; color: var(--ink); background: var(--sheet); border: 1px solid var(--paper-line); border-bottom: 2px solid var(--rule); min-height: 32px; padding: 3px 8px; }
	.fault { color: var(--pencil); font-size: 14px; line-height: 21px; margin: 0; }
	.wide { overflow-x: auto; max-height: 420px; position: relative; border-bottom: 1px solid var(--paper-line); margin-bottom: 10px; }
	table { border-collapse: collapse; }
	th, td { text-align: left; font-weight: 400; padding: 2px 14px 2px 0; border-bottom: 1px solid var(--paper-line); vertical-align: baseline; }
	thead th { font-weight: 600; background: var(--paper); position: sticky; top: 0; box-shadow: inset 0 -1.5px var(--ink); z-index: 1; }
	.count { text-align: right; }
	.acts { display: flex; flex-wrap: wrap; gap: 10px 14px; align-items: center; margin: 10px 0; }
	code { font-size: 15px; overflow-wrap: anywhere; }
	ul { margin: 0 0 7px; padding-left: 20px; }
	@media (max-width: 720px) { :host { padding: 14px 14px 56px; } }
	@media (pointer: coarse) { .acts a, .back { padding: 8px 0; } input[type='date'] { min-height: 44px; } }
`;
