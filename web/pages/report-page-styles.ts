import { css } from 'lit';

/** How a report lies on its page: kinds above, what it is on at the left, the sheet at the right. */
export const reportPageStyles = css`
	h2 { font-size: 20px; line-height: 28px; margin-bottom: 7px; }
	.kinds { border-bottom: 1px solid var(--paper-line); padding: 0 28px; }
	.kinds ul { list-style: none; display: flex; flex-wrap: wrap; gap: 0 21px; margin: 0; padding: 0; }
	.kinds a { display: block; padding: 7px 0 4px; border-bottom: 3px solid transparent; text-decoration: none; }
	.kinds a:hover { text-decoration: underline; text-underline-offset: 3px; }
	.kinds a[aria-current] { border-bottom-color: var(--pencil); font-weight: 600; }
	.desk { display: grid; grid-template-columns: var(--margin) minmax(0, 1fr); }
	.margin { padding: 21px 14px 21px 28px; border-right: 1px solid var(--pencil); align-self: stretch; }
	.sheet { padding: 21px 28px; max-width: 1080px; }
	.sheet[aria-busy='true'] zp-report-section { opacity: 0.5; }
	zp-report-section { margin-top: 28px; }
	.margin fieldset, .margin details, .margin .field { margin-bottom: 14px; }
	.margin summary, .margin legend, .margin .field { font-weight: 600; }
	.line { display: flex; gap: 8px; align-items: flex-start; padding: 3px 0; font-weight: 400; }
	.field { display: grid; gap: 3px; }
	.margin p { margin: 0 0 14px; font-size: 15px; }
	.ways { display: flex; flex-wrap: wrap; gap: 7px; }
	.cautions { margin: 0; padding: 0 0 0 14px; border-left: 3px solid var(--rule); list-style: none; font-size: 15px; line-height: 21px; color: var(--ink-soft); max-width: 90ch; }
	.cautions li + li { margin-top: 3px; }
	.contents { position: sticky; top: 14px; max-height: calc(100vh - 28px); overflow-y: auto; }
	.contents ol { margin: 3px 0 0; padding-left: 21px; font-size: 15px; }
	.contents button { text-align: left; font-size: 15px; line-height: 21px; font-weight: 400; padding: 3px 0; }
	@media (max-width: 900px) {
		.desk { display: block; }
		.margin { border-right: 0; border-bottom: 1px solid var(--pencil); padding: 14px; }
		.sheet { padding: 14px; }
		.kinds { padding: 0 14px; }
		.contents { position: static; max-height: none; }
	}
	@media print { .kinds, .margin { display: none; } .desk { display: block; } .sheet { padding: 0; max-width: none; } }
`;
