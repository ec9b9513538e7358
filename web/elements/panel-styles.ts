import { css } from 'lit';

/** Panels that fold open below a form's title: choices, one button, what came of it. */
export const panelStyles = css`
	:host { display: block; border-bottom: 1px solid var(--paper-line); padding: 14px 0; }
	summary { font-weight: 600; cursor: pointer; min-height: 28px; }
	.choices { display: flex; flex-wrap: wrap; gap: 0 40px; }
	fieldset { border: 0; margin: 7px 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0 20px; }
	legend { padding: 0; color: var(--ink-soft); }
	label { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; cursor: pointer; }
	input { accent-color: var(--ink); flex: none; width: 18px; height: 18px; margin: 0; }
	select { font: inherit; color: inherit; background: var(--sheet); border: 1px solid var(--ink-soft); min-height: 30px; padding: 0 8px; }
	button { font: 600 16px/28px var(--sans); color: var(--paper); background: var(--ink); border: 0; padding: 6px 18px; margin: 7px 0; cursor: pointer; }
	button:disabled { opacity: 0.6; cursor: progress; }
	a { color: var(--ink); font-weight: 600; }
	ul { margin: 0; padding-left: 20px; }
	ul.files { list-style: none; padding: 0; }
	.soft { color: var(--ink-soft); }
	.failure { border-left: 4px solid var(--pencil); padding-left: 12px; }
	:focus-visible { outline: 3px solid var(--pencil); outline-offset: 2px; }
`;
