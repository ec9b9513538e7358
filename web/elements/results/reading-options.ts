import { html, type TemplateResult } from 'lit';
import type { ResponseMapping } from '../../../item-bank/types.ts';
import { inText } from '../../messages/results-in.ts';
import { readWords } from '../../results-in/column-choices.ts';
import { optionLine } from './option-line.ts';

const text = inText.file;
type Options = Partial<ResponseMapping>;
type CodeName = 'omitted' | 'notReached' | 'invalid';

/** What a mapping says beside its columns: codes, blanks, repeats, and the list of codes of students. */
export function renderReadingOptions(options: Options, choose: (change: Options) => void): TemplateResult {
	const { blanksAtEnd = 'omitted', repeats = 'refuse', newStudents = 'refuse' } = options;
	const keepNew = (event: Event): void => {
		const isKept = event.target instanceof HTMLInputElement && event.target.checked;
		choose({ newStudents: isKept ? 'keep' : 'refuse' });
	};
	return html`<details><summary>${text.more}</summary>
			<div class="asked">${(['omitted', 'notReached', 'invalid'] as const).map((name) => renderWords(name, options, choose))}<p class="soft" id="words-help">${text.wordsHelp}</p></div>
			${optionLine(text.blanksAtEnd, text.blanks, blanksAtEnd, (value) => choose({ blanksAtEnd: value }))}
			${optionLine(text.repeats, text.repeatChoices, repeats, (value) => choose({ repeats: value }))}
			<label class="line"><input type="checkbox" .checked=${newStudents === 'keep'} @change=${keepNew}>${text.newStudents}</label>
		</details>
		<details><summary>${text.codes}</summary><p class="soft" id="codes-help">${text.codesHelp}</p>
			<textarea id="codes" rows="4" cols="40" aria-label=${text.codes} aria-describedby="codes-help"></textarea></details>`;
}

function renderWords(name: CodeName, { codes = {} }: Options, choose: (change: Options) => void): TemplateResult {
	const hear = (event: Event): void => {
		const words = event.target instanceof HTMLInputElement ? readWords(event.target.value) : [];
		const { [name]: _before, ...others } = codes;
		const all = { ...others, ...(words.length > 0 ? { [name]: words } : {}) };
		choose({ codes: all as NonNullable<ResponseMapping['codes']> });
	};
	return html`<label>${text[name]}
		<input type="text" .value=${(codes[name] ?? []).join(', ')} aria-describedby="words-help" @change=${hear}></label>`;
}
