import { css } from 'lit';

/** Ruled paper with two margins: where you are on the left, what the bank computed on the right. */
export const pageStyles = css`
	.page { display: grid; grid-template-columns: 240px minmax(0, 1fr); }
	nav { padding: 28px 20px 28px 28px; border-right: 2px solid var(--paper-line); }
	nav h2 { font: 600 16px/28px var(--sans); margin: 0; }
	nav ul { list-style: none; margin: 0; padding: 0; }
	nav li { padding: 7px 0; border-bottom: 1px solid var(--paper-line); }
	nav small { display: block; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
	a { color: var(--ink); }
	a[aria-current='page'] { font-weight: 600; text-decoration: none; border-left: 4px solid var(--ink); padding-left: 8px; margin-left: -12px; }
	.middle { padding: 28px; min-width: 0; }
	.title h2 { font: 600 24px/28px var(--sans); margin: 0; }
	.title p { margin: 0 0 14px; color: var(--ink-soft); }
	label { display: inline-flex; gap: 8px; align-items: center; min-height: 28px; cursor: pointer; }
	input { accent-color: var(--ink); width: 18px; height: 18px; }
	section { margin-top: 28px; }
	h3 { font: 600 18px/28px var(--sans); margin: 0; border-bottom: 2px solid var(--ink); }
	article { display: grid; grid-template-columns: 44px minmax(0, 1fr) 300px; gap: 0 14px; padding: 21px 0; border-bottom: 1px solid var(--paper-line); }
	.number { font: 600 18px/28px var(--sans); text-align: right; padding-right: 8px; }
	zp-item-facts { border-left: 1px solid var(--paper-line); padding-left: 18px; }
	.failure { border-left: 4px solid var(--pencil); padding-left: 12px; }
	:focus-visible { outline: 3px solid var(--pencil); outline-offset: 2px; }
	@media (max-width: 1000px) {
		article { grid-template-columns: 36px minmax(0, 1fr); }
		zp-item-facts { grid-column: 2; border-left: 0; padding: 14px 0 0; }
	}
	@media (max-width: 720px) {
		.page { grid-template-columns: minmax(0, 1fr); }
		nav { border-right: 0; border-bottom: 2px solid var(--paper-line); padding: 14px; }
		.middle { padding: 14px; }
	}
	@media print {
		nav, zp-export-panel, zp-item-facts, label { display: none; }
		.page, article { display: block; }
		article { break-inside: avoid; }
	}
`;
