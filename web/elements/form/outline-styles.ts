import { css } from 'lit';

/** The form as ruled lines: one row an item, the opened one roomy. */
export const outlineStyles = css`
	:host { display: block; }
	section { margin-top: 21px; }
	.head { display: flex; gap: 8px; align-items: center; border-bottom: 2px solid var(--ink); }
	.head input { flex: 1; min-width: 0; font: 600 17px/24px var(--sans); background: transparent; border: 0; border-bottom: 1px dotted transparent; padding: 3px 0; }
	.head input:hover { border-bottom-color: var(--rule); }
	.head .soft { font-size: 14px; white-space: nowrap; }
	ol { list-style: none; margin: 0; padding: 0; }
	li { border-bottom: 1px solid var(--paper-line); position: relative; }
	.row { display: grid; grid-template-columns: 44px minmax(0, 1fr) 92px 92px 108px 44px 100px; align-items: center; min-height: var(--row, 28px); gap: 0 8px; font-size: 15px; line-height: 24px; }
	.grip { font-weight: 600; text-align: right; cursor: grab; touch-action: none; user-select: none; padding: 2px 8px 2px 0; display: flex; gap: 6px; justify-content: flex-end; align-items: center; }
	.grip svg { width: 8px; height: 14px; opacity: 0.55; }
	li:hover .grip svg { opacity: 1; }
	.name { all: unset; box-sizing: border-box; cursor: pointer; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; min-height: var(--row, 28px); line-height: 28px; width: 100%; }
	.name:hover { text-decoration: underline; text-underline-offset: 3px; }
	.name:focus-visible { outline: 3px solid var(--focus); outline-offset: -1px; }
	.cell { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; color: var(--ink-soft); }
	.points { text-align: right; }
	.tools { display: flex; justify-content: flex-end; }
	.tools button { border: 0; padding: 0; width: 28px; min-height: 26px; justify-content: center; color: var(--ink-soft); }
	.tools button:hover { color: var(--ink); }
	.tools svg, .head svg { width: 14px; height: 14px; stroke: currentColor; fill: none; stroke-width: 1.8; }
	.head button { border: 0; padding: 0 6px; min-height: 28px; color: var(--ink-soft); font-size: 14px; }
	.head button[aria-disabled='true'] { color: var(--paper-line); cursor: default; background: transparent; }
	.head button:hover { color: var(--ink); }
	.open { display: grid; grid-template-columns: minmax(0, 1fr) minmax(180px, 260px); gap: 0 21px; padding: 10px 8px 14px 52px; }
	.open zp-item-facts { border-left: 1px solid var(--paper-line); padding-left: 14px; }
	.acts { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: 8px; align-items: center; margin-top: 10px; }
	.acts label { display: inline-flex; gap: 8px; align-items: center; }
	.acts input { width: 4.5em; }
	li.chosen { background: var(--sheet); border-left: 4px solid var(--ink); margin-left: -4px; }
	li.dragged { opacity: 0.5; }
	.drop { height: 0; border-top: 3px solid var(--pencil); margin: -2px 0 -1px; }
	.fault { color: var(--pencil); font-size: 14px; line-height: 21px; padding: 0 0 4px 52px; margin: 0; }
	.empty { padding: 7px 0 7px 52px; color: var(--ink-soft); margin: 0; }
	.foot { padding: 7px 0 0; margin: 0; }
	.foot button { font-size: 14px; line-height: 20px; min-height: 28px; padding: 2px 10px; border-style: dashed; }
	.whole { margin-top: 28px; padding: 0; }
	.whole button { border-style: solid; }
	.landed { animation: land 160ms ease-out; }
	@keyframes land { from { background: var(--ink-wash); transform: translateY(10px); } }
	@media (prefers-reduced-motion: reduce) { .landed { animation: none; } }
	@media (max-width: 1180px) {
		.row { grid-template-columns: 44px minmax(0, 1fr) 84px 84px 40px 100px; }
		.kind { display: none; }
	}
	@media (max-width: 720px) {
		.row { grid-template-columns: 40px minmax(0, 1fr) 64px; min-height: 44px; }
		.name { min-height: 44px; line-height: 22px; white-space: normal; display: flex; align-items: center; }
		.model, .kind, .points, .tools { display: none; }
		.open { grid-template-columns: minmax(0, 1fr); padding: 7px 0 14px 14px; }
		.open zp-item-facts { border: 0; padding: 7px 0 0; }
		.head { flex-wrap: wrap; }
		.head input { flex: 1 0 100%; }
		.head .soft { flex: 1; }
		.grip { min-height: 44px; }
	}
	@media (pointer: coarse) {
		.row, .name { min-height: 44px; }
		.tools button { min-height: 44px; width: 32px; }
	}
	@media print { .tools, .acts, .foot, .head button { display: none; } }
`;
