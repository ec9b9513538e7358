import { css } from 'lit';

/** Two columns: what narrows, what is found. On narrow screens the margin folds to the top. */
export const findPageStyles = css`
	:host { display: block; }
	.page { display: grid; grid-template-columns: 264px minmax(0, 1fr); }
	.margin { padding: 21px 20px 21px 28px; border-right: 2px solid var(--paper-line); }
	.margin > summary { display: none; }
	.middle { padding: 14px 28px 28px; min-width: 0; }
	.top { display: flex; flex-wrap: wrap; gap: 7px 14px; align-items: start; }
	zp-word-field { flex: 1 1 300px; }
	.sort { display: grid; gap: 2px; font-size: 14px; color: var(--ink-soft); }
	.line { display: flex; flex-wrap: wrap; gap: 0 28px; align-items: center; justify-content: space-between; margin: 10px 0 3px; min-height: 32px; }
	.line p { margin: 0; }
	.line [role='status'] { font-weight: 600; }
	.found { opacity: 1; }
	.found[aria-busy='true'] { opacity: 0.6; transition: opacity 0s 0.3s; }
	.more { margin-top: 14px; }
	.keys { color: var(--ink-soft); font-size: 14px; margin: 7px 0 0; }
	.empty { max-width: 44em; }
	.empty h2 { font-size: 20px; line-height: 28px; margin-top: 14px; }
	.empty p { margin: 0 0 7px; }
	.empty ul { list-style: none; margin: 0 0 14px; padding: 0; }
	.empty li { border-bottom: 1px solid var(--paper-line); line-height: 32px; }
	@media (pointer: coarse) { .empty li a { display: inline-block; min-height: 44px; line-height: 44px; } .keys { display: none; } }
	@media (max-width: 900px) {
		.page { grid-template-columns: minmax(0, 1fr); }
		.margin { border-right: 0; border-bottom: 2px solid var(--paper-line); padding: 7px 14px; }
		.margin > summary { display: list-item; list-style-position: inside; font-weight: 600; padding: 8px 0; line-height: 28px; }
		.middle { padding: 14px; }
	}
	@media print { .margin, zp-word-field, .sort, .keys, .more { display: none; } .page { display: block; } .middle { padding: 0; } }
`;
