import { css } from 'lit';

/** The right margin: beside the board where there is room, else over the page. */
export const cellDrawerStyles = css`
	:host { display: block; }
	dialog { display: block; color: var(--ink); background: var(--paper); border: 0; border-left: 2px solid var(--paper-line); margin: 0; padding: 14px 28px 28px 20px; width: 100%; max-width: none; max-height: none; position: static; inset: auto; }
	dialog:modal { position: fixed; inset: 0 0 0 auto; width: min(460px, 100vw); height: 100dvh; overflow-y: auto; border-left: 2px solid var(--ink); }
	dialog::backdrop { background: rgb(0 0 0 / 35%); }
	.head { display: flex; gap: 14px; justify-content: space-between; align-items: start; }
	h2 { font-size: 20px; line-height: 28px; }
	h2:focus { outline: 0; }
	h2:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; }
	h3 { font-size: 16px; line-height: 28px; border-bottom: 1.5px solid var(--ink); margin-top: 14px; }
	p { margin: 0; }
	.statement { line-height: 24px; margin: 7px 0; }
	.ways { display: flex; flex-wrap: wrap; gap: 8px; margin: 7px 0; }
	.more { margin-top: 7px; }
	label { display: grid; gap: 2px; font-size: 14px; margin-top: 7px; }
`;
