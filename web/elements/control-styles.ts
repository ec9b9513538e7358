import { css } from 'lit';

/**
 * What every page and panel draws alike: buttons, fields written on a ruled line, links, focus, words for screen readers
 * alone, and what falls short. `.primary` is the one button a page is for, `.plain` looks like a link.
 */
export const controlStyles = css`
	*, ::before, ::after { box-sizing: border-box; }
	:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; }
	a { color: var(--ink); text-underline-offset: 3px; }
	h1, h2, h3, h4 { font-family: var(--sans); font-weight: 600; margin: 0; }
	button, .button {
		font: 600 15px/24px var(--sans); color: var(--ink); background: transparent; border: 1px solid var(--rule);
		padding: 3px 12px; min-height: 32px; cursor: pointer; text-decoration: none; display: inline-flex; gap: 6px; align-items: center;
	}
	button:hover, .button:hover { background: var(--ink-wash); border-color: var(--ink); }
	button.primary, .button.primary { color: var(--paper); background: var(--ink); border-color: var(--ink); }
	button.primary:hover, .button.primary:hover { text-decoration: underline; text-underline-offset: 3px; }
	button.plain { border-color: transparent; padding: 3px 4px; text-decoration: underline; text-underline-offset: 3px; }
	button:disabled { color: var(--ink-soft); border-color: var(--paper-line); background: transparent; cursor: not-allowed; }
	input[type='text'], input[type='search'], input[type='number'], input:not([type]), textarea, select {
		font: 400 16px/24px var(--sans); color: var(--ink); background: var(--sheet); border: 1px solid var(--paper-line);
		border-bottom: 2px solid var(--rule); border-radius: 0; padding: 3px 8px; min-height: 32px; max-width: 100%;
	}
	input[aria-invalid='true'], textarea[aria-invalid='true'], select[aria-invalid='true'] { border-bottom-color: var(--pencil); }
	input[type='checkbox'], input[type='radio'] { accent-color: var(--ink); width: 18px; height: 18px; margin: 0; flex: none; }
	label { cursor: pointer; }
	fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
	legend { padding: 0; }
	summary { cursor: pointer; }
	.soft { color: var(--ink-soft); }
	.short { color: var(--pencil); font-weight: 600; }
	.failure { border-left: 4px solid var(--pencil); padding-left: 12px; }
	.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
	@media (pointer: coarse) {
		button, .button, select, input[type='text'], input[type='search'], input[type='number'] { min-height: 44px; }
	}
	@media print { button, .button { display: none; } }
`;
