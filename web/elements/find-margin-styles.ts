import { css } from 'lit';

/** The left margin of the page that finds items: fields, then values with a tally each. */
export const findMarginStyles = css`
	:host { display: block; font-size: 15px; line-height: 21px; }
	section { padding: 14px 0; border-bottom: 1px solid var(--paper-line); display: grid; gap: 7px; }
	section:first-child { padding-top: 0; }
	.field { display: grid; gap: 2px; font-weight: 600; }
	.field.plain { font-weight: 400; font-size: 14px; }
	select { width: 100%; font-size: 15px; }
	p { margin: 0; font-size: 14px; }
	fieldset { padding: 10px 0; border-bottom: 1px solid var(--paper-line); }
	fieldset:last-child { border-bottom: 0; }
	legend { font-weight: 600; line-height: 28px; float: left; width: 100%; }
	.check { clear: both; display: flex; gap: 8px; align-items: center; min-height: 26px; }
	.check:hover .said { text-decoration: underline; text-underline-offset: 3px; }
	.said { flex: 1; min-width: 0; }
	.none { width: 8px; margin-right: 3px; border-top: 1px solid var(--rule); }
	zp-tally { flex: none; }
	@media (pointer: coarse) { .check { min-height: 44px; } }
	@media (min-width: 481px) and (max-width: 900px) {
		:host { columns: 2; column-gap: 28px; }
		section, fieldset { break-inside: avoid; }
	}
`;
