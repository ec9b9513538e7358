import { css } from 'lit';

/** Three columns: where you are, the board, what stands in a cell. On narrow screens the margins fold to the top and over the page. */
export const boardPageStyles = css`
	:host { display: block; }
	.page { display: grid; grid-template-columns: var(--margin) minmax(0, 1fr); }
	.page.opened { grid-template-columns: var(--margin) minmax(0, 1fr) var(--answer-margin); }
	.margin { padding: 21px 20px 21px 28px; border-right: 2px solid var(--paper-line); }
	.margin > summary { display: none; }
	.middle { padding: 14px 28px 28px; min-width: 0; }
	.opened .middle { padding-right: 14px; padding-left: 14px; }
	.top { display: flex; flex-wrap: wrap; gap: 7px 28px; align-items: end; justify-content: space-between; margin-bottom: 7px; min-height: 48px; }
	.top p { margin: 0; flex: 1 1 260px; color: var(--ink-soft); line-height: 24px; min-height: 48px; display: flex; align-items: end; }
	.ways { display: flex; gap: 8px; }
	.note { margin: 0 0 7px; min-height: 28px; line-height: 24px; display: flex; align-items: end; }
	.note p { margin: 0; max-width: 70em; }
	.foot { color: var(--ink-soft); font-size: 14px; margin: 7px 0 0; }
	.printed { display: none; }
	zp-cell-drawer { min-width: 0; }
	@media (min-width: 1200px) and (max-width: 1599px) { .opened .top p { display: none; } }
	@media (max-width: 1199px) {
		.page, .page.opened { grid-template-columns: var(--margin) minmax(0, 1fr); }
	}
	@media (max-width: 900px) {
		.page, .page.opened { grid-template-columns: minmax(0, 1fr); }
		.margin { border-right: 0; border-bottom: 2px solid var(--paper-line); padding: 7px 14px; }
		.margin > summary { display: list-item; list-style-position: inside; font-weight: 600; padding: 8px 0; line-height: 28px; }
		.middle, .opened .middle { padding: 14px; }
	}
	@media print {
		.margin, .ways, zp-cell-drawer, .keys { display: none; }
		.page, .page.opened { display: block; }
		.middle, .opened .middle { padding: 0; }
		.printed { display: block; margin: 0 0 7px; }
	}
`;
