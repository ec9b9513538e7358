import { css } from 'lit';

/** The desk: a head with title and state, the form in the middle, what the bank computed in the right margin. */
export const deskStyles = css`
	:host { display: block; }
	.desk { display: grid; grid-template-columns: minmax(0, 1fr) 328px; max-width: 1600px; }
	.middle { padding: 14px 28px 42px; min-width: 0; }
	aside { border-left: 2px solid var(--paper-line); padding: 14px 28px 42px 21px; min-width: 0; }
	aside .stick { position: sticky; top: 14px; max-height: calc(100dvh - 28px); overflow-y: auto; padding-right: 6px; }
	aside h2 { font-size: 15px; line-height: 28px; }
	.up { font-size: 14px; }
	h1 { margin: 0; }
	.title { display: block; }
	.title input { font: 600 24px/32px var(--sans); width: 100%; border: 0; border-bottom: 1px solid var(--rule); background: transparent; padding: 2px 0; }
	.fault { color: var(--pencil); font-size: 14px; line-height: 21px; margin: 0; }
	.state { display: flex; flex-wrap: wrap; gap: 8px 14px; align-items: center; margin: 10px 0; }
	.state label { display: inline-flex; gap: 8px; align-items: center; font-size: 15px; }
	button[aria-disabled='true'] { color: var(--ink-soft); background: transparent; border-color: var(--paper-line); cursor: default; }
	.unsaved { color: var(--pencil); font-weight: 600; }
	.bar { display: flex; flex-wrap: wrap; gap: 8px; align-items: center; border-top: 1px solid var(--paper-line); border-bottom: 1px solid var(--paper-line); padding: 7px 0; }
	.views { display: flex; flex-wrap: wrap; gap: 4px 21px; margin: 10px 0 0; font-size: 15px; }
	.views label { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; }
	.first { max-width: 44em; }
	.failure ul { margin: 0; padding-left: 20px; }
	.wait { margin: 7px 0; }
	@media (max-width: 1000px) {
		.desk { grid-template-columns: minmax(0, 1fr); }
		aside { border-left: 0; border-top: 2px solid var(--paper-line); padding: 14px 28px 42px; }
		aside .stick { position: static; max-height: none; overflow: visible; }
	}
	@media (max-width: 720px) {
		.middle, aside { padding-left: 14px; padding-right: 14px; }
		.title input { font-size: 20px; }
		.views .soft { display: none; }
	}
	@media (pointer: coarse) { .views label { min-height: 44px; } .views .soft { display: none; } }
	@media print { aside, .bar, .state, .views { display: none; } .desk { display: block; } }
`;
