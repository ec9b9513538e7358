import { css } from 'lit';

/** The frame: one line of pages across the top, the page below, what was done at the foot. */
export const frameStyles = css`
	:host { display: block; }
	.skip { position: absolute; left: 14px; top: -60px; background: var(--paper); z-index: 5; }
	.skip:focus { top: 7px; }
	header { display: flex; gap: 7px 42px; align-items: center; padding: 7px 28px; min-height: 56px; border-bottom: 1px solid var(--ink); }
	.name { font: 600 20px/28px var(--sans); display: flex; gap: 10px; align-items: center; text-decoration: none; }
	nav ol { list-style: none; margin: 0; padding: 0; display: flex; position: relative; }
	nav ol::before { content: ''; position: absolute; left: 0; right: 0; bottom: 6px; border-top: 1px solid var(--rule); }
	nav a { display: block; position: relative; padding: 0 18px 14px; min-width: 84px; text-align: center; text-decoration: none; line-height: 24px; }
	nav a::after { content: ''; position: absolute; left: 50%; bottom: 2px; height: 9px; border-left: 1px solid var(--rule); }
	nav a:hover { text-decoration: underline; text-underline-offset: 3px; }
	nav a[aria-current='page'] { font-weight: 600; }
	nav a[aria-current='page']::after { width: 11px; height: 11px; margin-left: -5px; bottom: 1px; border: 0; border-radius: 50%; background: var(--ink); }
	.ink { margin-left: auto; display: flex; gap: 8px; align-items: center; font-size: 14px; color: var(--ink-soft); }
	.ink select { font-size: 14px; min-height: 28px; padding: 0 4px; }
	main { display: block; min-height: 60vh; }
	main:focus { outline: 0; }
	.plain { padding: 28px; }
	.lost { padding: 7px 28px; margin: 0; background: var(--pencil-wash); border-bottom: 1px solid var(--pencil); border-left: 4px solid var(--pencil); }
	.told { position: fixed; left: 28px; bottom: 21px; z-index: 4; max-width: calc(100vw - 56px); }
	.told div { display: flex; gap: 14px; align-items: center; background: var(--ink); color: var(--paper); padding: 7px 14px; }
	.told button { color: var(--paper); border-color: var(--paper); }
	.told button:hover { background: transparent; text-decoration: underline; }
	.told :focus-visible { outline-color: var(--paper); outline-offset: -4px; }
	footer { padding: 21px 28px; color: var(--ink-soft); font-size: 14px; }
	@media (max-width: 720px) {
		header { padding: 7px 14px; flex-wrap: wrap; gap: 0 14px; }
		nav { order: 3; width: 100%; }
		nav ol { justify-content: space-between; }
		nav a { padding: 10px 4px 16px; min-width: 64px; }
		.told { left: 14px; bottom: 14px; max-width: calc(100vw - 28px); }
		.plain, footer { padding: 14px; }
	}
	@media print { header, footer, .told, .lost, .skip { display: none; } }
`;
