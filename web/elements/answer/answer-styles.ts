import { css } from 'lit';

/** Roomy places to answer: 44 px to touch, 18 px to read. */
export const answerStyles = css`
	*, ::before, ::after { box-sizing: border-box; }
	:host { display: block; font: 400 18px/28px var(--serif); color: var(--ink); }
	fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
	.hint { font: 400 16px/24px var(--sans); color: var(--ink-soft); margin: 0 0 8px; padding: 0; }
	.letter { font-family: var(--sans); font-weight: 600; }
	.math { white-space: nowrap; }
	.unread { text-decoration: underline wavy var(--pencil); }
	.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
	zp-figure svg { background: #fff; max-width: 100%; height: auto; display: block; }
	button { font: 400 18px/24px var(--sans); color: var(--ink); background: var(--sheet); border: 1.5px solid var(--ink-soft); border-radius: 0; min-height: 44px; min-width: 44px; padding: 8px 14px; cursor: pointer; touch-action: manipulation; }
	button:disabled { cursor: default; opacity: 0.6; }
	:focus-visible { outline: 3px solid var(--pencil); outline-offset: 2px; }

	/* A bubble as on an answer sheet: the letter stays readable, a mark fills it. */
	.bubble { position: relative; display: inline-grid; place-items: center; width: 44px; height: 44px; flex: none; cursor: pointer; }
	.bubble input { appearance: none; position: absolute; inset: 0; margin: 0; width: 44px; height: 44px; cursor: pointer; outline: none; }
	.bubble span { width: 32px; height: 32px; border: 1.5px solid var(--ink-soft); border-radius: 50%; display: grid; place-items: center; font: 600 18px/1 var(--sans); background: var(--sheet); pointer-events: none; }
	.bubble input:checked + span { background: var(--ink); color: var(--sheet); border-color: var(--ink); }
	.bubble input:focus-visible + span { outline: 3px solid var(--pencil); outline-offset: 2px; }
	.bubble input:disabled { cursor: default; }
	@media (forced-colors: active) {
		.bubble input:checked + span { forced-color-adjust: none; background: Highlight; color: HighlightText; }
	}
`;
