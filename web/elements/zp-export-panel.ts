import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { ExportOrder } from '../../item-bank/types.ts';
import type { ExportNotes } from '../../server/api.ts';
import { ApiError, exportForm, fetchAnswerMap, type HandedFile } from '../api-client.ts';
import { panelStyles } from './panel-styles.ts';
import './zp-carrying.ts';

interface Outcome {
	readonly files: readonly { readonly name: string; readonly address: string; readonly note: string }[];
	readonly told: ExportNotes;
}

const choices = {
	stop: {},
	convert: { convert: true, leaveOut: true },
	'leave-out': { leaveOut: true },
} as const;

/** Takes a form out to a learning platform: which QTI version, which pictures, then the files and what was checked. */
export class ZpExportPanel extends LitElement {
	static override properties = {
		form: { type: String },
		version: { type: Number },
		as: { state: true },
		images: { state: true },
		uncarried: { state: true },
		grid: { state: true },
		feedback: { state: true },
		isBusy: { state: true },
		outcome: { state: true },
		failure: { state: true },
	};
	/** Id of the form. */
	declare form: string;
	declare version: number;
	declare private as: ExportOrder['as'];
	declare private images: 'png' | 'svg';
	/** What to do with items that the version does not carry; nothing said yet at first. */
	declare private uncarried: 'stop' | 'convert' | 'leave-out';
	declare private grid: 'number' | 'columns';
	declare private feedback: boolean;
	declare private isBusy: boolean;
	declare private outcome: Outcome | undefined;
	declare private failure: ApiError | undefined;

	constructor() {
		super();
		this.as = 'qti-2.2';
		this.images = 'png';
		this.uncarried = 'stop';
		this.grid = 'number';
		this.feedback = false;
		this.isBusy = false;
	}

	static override styles = panelStyles;

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('form') && changed.get('form') !== undefined) this.forget();
	}

	private forget(): void {
		for (const { address } of this.outcome?.files ?? []) URL.revokeObjectURL(address);
		this.outcome = undefined;
		this.failure = undefined;
	}

	private async write(): Promise<void> {
		this.forget();
		this.isBusy = true;
		try {
			const { as, images, grid, feedback, version } = this;
			const choice = as === 'cc-1.1' ? choices[this.uncarried] : { grid, feedback };
			const order = { as, images, version, ...choice };
			const { file, told } = await exportForm(this.form, order);
			const answerMap = await fetchAnswerMap(this.form, version, order);
			const offer = ({ name, content }: HandedFile, note: string) => ({
				name,
				note,
				address: URL.createObjectURL(content),
			});
			const size = `${Math.ceil(file.content.size / 1024)} kB, for the platform`;
			const files = [offer(file, size), offer(answerMap, 'holds the keys: keep it with the department')];
			this.outcome = { files, told };
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error;
		} finally {
			this.isBusy = false;
		}
	}

	protected override render(): TemplateResult {
		return html`<details>
			<summary>Take this form to a learning platform</summary>
			<div class="choices">
				<fieldset>
					<legend>Version the platform takes</legend>
					${this.renderRadio('as', 'qti-2.2', 'QTI 2.2')} ${this.renderRadio('as', 'qti-2.1', 'QTI 2.1')} ${this.renderRadio('as', 'qti-3.0', 'QTI 3.0')}
					${this.renderRadio('as', 'cc-1.1', 'QTI 1.2.1 in a Common Cartridge 1.1, not for every kind')}
				</fieldset>
				<fieldset>
					<legend>Figures as</legend>
					${this.renderRadio('images', 'png', 'PNG, for every platform')} ${this.renderRadio('images', 'svg', 'SVG, sharper, not for every platform')}
				</fieldset>
				${this.as === 'cc-1.1' ? this.renderUncarried() : this.renderStyles()}
			</div>
			${this.as === 'cc-1.1' ? html`<zp-carrying form=${this.form} version=${this.version} as=${this.as}></zp-carrying>` : nothing}
			<button ?disabled=${this.isBusy} @click=${() => void this.write()}>${this.isBusy ? 'Writing and checking…' : 'Write the package'}</button>
			<div role="status">${this.renderOutcome()}</div>
			<div role="alert">${this.renderFailure()}</div>
		</details>`;
	}

	/** What only QTI 2.x and 3.0 can do. */
	private renderStyles(): TemplateResult {
		return html`<fieldset>
				<legend>Gridded items</legend>
				${this.renderRadio('grid', 'number', 'A number to type')} ${this.renderRadio('grid', 'columns', 'Column by column, as on paper')}
			</fieldset>
			<fieldset>
				<legend>After answering</legend>
				<label><input type="checkbox" .checked=${this.feedback} aria-describedby="keys" @change=${this.toggleFeedback} /> Tell students what is right, what a wrong answer is consistent with, and the worked steps</label>
				<p class="soft" id="keys">This puts the keys into the package, and the rubrics of explanations. Not for an assessment that is still to be given.</p>
			</fieldset>`;
	}

	private toggleFeedback(event: Event): void {
		this.feedback = (event.target as HTMLInputElement).checked;
	}

	private renderUncarried(): TemplateResult {
		return html`<fieldset>
			<legend>Items it does not carry</legend>
			${this.renderRadio('uncarried', 'stop', 'Write nothing and list them')}
			${this.renderRadio('uncarried', 'convert', 'Convert them, and leave out what cannot be')}
			${this.renderRadio('uncarried', 'leave-out', 'Leave them out')}
		</fieldset>`;
	}

	private renderRadio(group: 'as' | 'images' | 'uncarried' | 'grid', value: string, words: string): TemplateResult {
		const choose = (): void => {
			if (group === 'as') this.as = value as ExportOrder['as'];
			else if (group === 'images') this.images = value as 'png' | 'svg';
			else if (group === 'grid') this.grid = value as 'number' | 'columns';
			else this.uncarried = value as 'stop' | 'convert' | 'leave-out';
		};
		return html`<label><input type="radio" name=${group} value=${value} .checked=${this[group] === value} @change=${choose} /> ${words}</label>`;
	}

	private renderOutcome(): TemplateResult | typeof nothing {
		if (!this.outcome) return nothing;
		const { files, told } = this.outcome;
		return html`
			<ul class="files">${files.map(({ name, address, note }) => html`<li><a href=${address} download=${name}>Save ${name}</a> <span class="soft">${note}</span></li>`)}</ul>
			<p class="soft">Before it was handed over: ${told.validated.map(({ schema, checked }) => `${schema} ${checked ? 'checked' : 'not installed, so not checked'}`).join('; ')}.</p>
			<ul>${[...told.warnings, ...moreWarnings(told), ...told.notes].map((note) => html`<li>${note}</li>`)}</ul>
		`;
	}

	private renderFailure(): TemplateResult | typeof nothing {
		if (!this.failure) return nothing;
		return html`<div class="failure">
			<p>No package was written. ${this.failure.code === 'export-not-carried' ? 'Some items are of kinds it does not carry. Choose above to convert them or to leave them out.' : this.failure.message}</p>
			<ul>${this.failure.problems.map(({ path, message }) => html`<li>${path} ${message}</li>`)}</ul>
		</div>`;
	}
}

function moreWarnings({ warnings, warningCount }: ExportNotes): readonly string[] {
	return warningCount > warnings.length ? [`and ${warningCount - warnings.length} more warnings`] : [];
}

customElements.define('zp-export-panel', ZpExportPanel);
