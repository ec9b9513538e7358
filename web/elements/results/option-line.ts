import { html, type TemplateResult } from 'lit';

/** A choice of a few, as radio buttons on a line. */
export function optionLine<Value extends string>(
	legend: string,
	names: Readonly<Record<Value, string>>,
	now: Value,
	choose: (value: Value) => void,
): TemplateResult {
	const group = legend.toLowerCase().replace(/\W+/g, '-');
	return html`<fieldset class="options"><legend>${legend}</legend>
		${(Object.entries(names) as [Value, string][]).map(
			([value, name]) =>
				html`<label class="line"><input type="radio" name=${group} .checked=${value === now} @change=${() => choose(value)}>${name}</label>`,
		)}
	</fieldset>`;
}
