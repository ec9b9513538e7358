import { css } from 'lit';

/** Rows of 28 px: what the bank calls an item in sans, what students read in serif. On narrow screens the facts go below. */
export const hitTableStyles = css`
	:host { display: block; min-width: 0; }
	table { border-collapse: collapse; table-layout: fixed; width: 100%; }
	th, td { text-align: left; font-weight: 400; padding: 0 8px 0 0; height: var(--row); line-height: 27px; border-bottom: 1px solid var(--paper-line); overflow: hidden; text-overflow: ellipsis; white-space: nowrap; font-size: 15px; }
	thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); height: 32px; }
	tbody tr:hover { background: var(--ink-wash); }
	td { color: var(--ink-soft); }
	.code { width: 104px; }
	.model { width: 100px; }
	.kind { width: 124px; }
	.count { width: 62px; text-align: right; padding-right: 14px; }
	.add { width: 100px; padding-right: 3px; text-align: right; }
	.line { display: flex; gap: 14px; align-items: baseline; min-width: 0; }
	.name { flex: 0 1 auto; max-width: 24em; overflow: hidden; text-overflow: ellipsis; text-decoration-color: var(--rule); }
	.name:hover { text-decoration-color: currentColor; }
	.name:focus-visible { outline-offset: -3px; }
	.status { color: var(--pencil); flex: none; }
	.words { flex: 1 1 0; min-width: 0; font-family: var(--serif); font-size: 16px; color: var(--ink-soft); overflow: hidden; text-overflow: ellipsis; position: relative; }
	.facts { display: none; }
	.add button { min-height: 24px; padding: 0 10px; line-height: 20px; font-size: 14px; }
	.add button:focus-visible { outline-offset: -2px; }
	.add .taken { border-color: transparent; font-weight: 400; color: var(--ink-soft); cursor: default; background: transparent; }
	@media (max-width: 1100px) { .kind { display: none; } }
	@media (max-width: 900px) { .model { display: none; } }
	@media (max-width: 720px) {
		table { table-layout: auto; }
		thead { display: none; }
		tbody th { width: 100%; }
		td.code, td.count { display: none; }
		th { padding: 7px 8px 7px 0; white-space: normal; }
		.line { display: block; line-height: 24px; }
		.name { display: block; max-width: none; white-space: normal; font-size: 16px; line-height: 24px; padding: 7px 0; }
		.words { display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; white-space: normal; line-height: 22px; }
		.facts { display: block; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
		.add { width: 84px; vertical-align: top; padding-top: 7px; }
		.add button { min-height: 44px; }
	}
	@media (pointer: coarse) { .name { padding: 10px 0; } .add button { min-height: 44px; } }
	@media print { .add { display: none; } }
`;
