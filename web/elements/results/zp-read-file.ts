import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormDetails, FormSummary, GroupEntry, ReadingPreview, ReadingReport } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { ApiError, bankChangedEvent } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { readingText as text } from '../../messages/reading.ts';
import { words } from '../../messages/words.ts';
import { readCodePairs } from '../../results/code-pairs.ts';
import { cutBeginning, largestFile, readBase64 } from '../../results/file-content.ts';
import { lookAtFile, takeBackSittings } from '../../results/look-at-file.ts';
import {
	firstChoices,
	listMissing,
	mappingOf,
	type ReadingChoices,
	takeColumns,
} from '../../results/reading-choices.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import {
	type Onto,
	renderCodeFields,
	renderFileFields,
	renderReadingFields,
	renderSittingFields,
	type SittingChoice,
} from './reading-fields.ts';
import { renderFailure, renderOutcome } from './reading-outcome.ts';
import { listPlaceNames, type PlaceName, renderMapping, renderPreview } from './reading-settings.ts';
import { readingStyles } from './reading-styles.ts';
import { resultsStyles } from './results-styles.ts';

/** A file of responses on its way into the bank: chosen, understood, mapped, tried, read, and taken back where it made sittings. */
export class ZpReadFile extends LitElement {
	static override properties = {
		query: { attribute: false },
		known: { state: true },
		sitting: { state: true },
		file: { state: true },
		answerMap: { state: true },
		codes: { state: true },
		choices: { state: true },
		preview: { state: true },
		isStudentKnown: { state: true },
		onto: { state: true },
		report: { state: true },
		failure: { state: true },
		fault: { state: true },
		busy: { state: true },
		isOver: { state: true },
	};
	/** May name a form and a class to begin with. */
	declare query: URLSearchParams;
	declare private known: { readonly forms: readonly FormSummary[]; readonly groups: readonly GroupEntry[] } | undefined;
	declare private sitting: SittingChoice;
	declare private file: File | undefined;
	declare private answerMap: { readonly name: string; readonly text: string } | undefined;
	declare private codes: string;
	declare private choices: ReadingChoices;
	declare private preview: ReadingPreview | undefined;
	declare private isStudentKnown: boolean;
	declare private onto: Onto;
	declare private report: ReadingReport | undefined;
	declare private failure: { readonly message: string; readonly command?: string } | undefined;
	/** The field that is not filled in. */
	declare private fault: 'group' | 'date' | undefined;
	declare private busy: string | undefined;
	/** A file is held over the page. */
	declare private isOver: boolean;
	private details: FormDetails | undefined;
	private places: readonly PlaceName[] = [];
	/** Sittings read since the page was opened. */
	private readHere: readonly string[] = [];
	/** Counts looks at the file, so that an answer that comes late is dropped. */
	private looks = 0;

	constructor() {
		super();
		this.query = new URLSearchParams();
		this.sitting = { form: '', group: '', date: '', mode: 'paper' };
		this.codes = '';
		this.choices = firstChoices;
		this.isStudentKnown = true;
		this.onto = 'nothing';
		this.isOver = false;
	}

	static override styles = [controlStyles, resultsStyles, readingStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		void this.attempt(words.frame.reading, async () => {
			const [forms, groups] = await Promise.all([callApi('GET /api/forms'), callApi('GET /api/groups')]);
			this.known = { forms, groups };
			const wanted = this.query.get('form') ?? (forms.length === 1 ? (forms[0]?.id ?? '') : '');
			this.sitting = { ...this.sitting, form: wanted, group: this.query.get('group') ?? '' };
			await this.loadForm();
		});
	}

	/** Does something that may be refused, and says what was wrong. */
	private async attempt(label: string, work: () => Promise<void>): Promise<void> {
		this.busy = label;
		this.failure = undefined;
		try {
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = { message: error.message };
		} finally {
			this.busy = undefined;
		}
	}

	private async loadForm(): Promise<void> {
		const { form } = this.sitting;
		this.details = form === '' ? undefined : await callApi('GET /api/forms/{id}', { path: { id: form } });
		this.places = this.details ? listPlaceNames(this.details) : [];
	}

	private setSitting(part: Partial<SittingChoice>): void {
		this.sitting = { ...this.sitting, ...part };
		this.fault = undefined;
		this.report = undefined;
		if (part.form !== undefined) void this.changeForm();
	}

	private async changeForm(): Promise<void> {
		await this.attempt(text.looking, () => this.loadForm());
		await this.look();
	}

	private takeFile(file: File | undefined): void {
		if (!file) return;
		const nothingYet = { report: undefined, preview: undefined, failure: undefined, file: undefined };
		Object.assign(this, { ...nothingYet, choices: firstChoices });
		if (file.size === 0) this.failure = { message: text.empty };
		else if (file.size > largestFile) {
			const command = text.command(file.name, this.sitting);
			this.failure = { message: text.tooLarge(file.size), command };
		} else {
			this.file = file;
			void this.look();
		}
	}

	/** Looks at the beginning of the file: as the bank understands it, or by the choices where there are some. */
	private async look(choices?: ReadingChoices): Promise<void> {
		const { file, details } = this;
		if (!file || !details) return;
		const look = ++this.looks;
		await this.attempt(text.looking, async () => {
			const order = {
				form: details.record.id,
				version: details.record.version,
				content: await readBase64(await cutBeginning(file)),
				...(this.answerMap ? { answerMap: this.answerMap.text } : {}),
			};
			const { preview, isStudentKnown } = await lookAtFile(order, choices && mappingOf(choices));
			if (look !== this.looks) return;
			this.preview = preview;
			if (!choices) {
				this.isStudentKnown = isStudentKnown;
				this.choices = takeColumns(this.choices, preview, isStudentKnown);
			} else if (preview.columns.length !== choices.uses.length) {
				this.choices = takeColumns(choices, preview, choices.uses.includes('student'));
			}
		});
	}

	private change(choices: ReadingChoices): void {
		this.choices = choices;
		this.report = undefined;
		void this.look(choices);
	}

	private async takeMap(file: File | undefined): Promise<void> {
		this.answerMap = file && { name: file.name, text: await file.text() };
		if (file) this.sitting = { ...this.sitting, mode: 'platform' };
		await this.look();
	}

	private async read(dryRun: boolean): Promise<void> {
		const { file, details, sitting, choices } = this;
		const hasGroup = choices.uses.includes('group');
		this.fault = !hasGroup && sitting.group === '' ? 'group' : sitting.date === '' ? 'date' : undefined;
		if (!file || !details || this.fault) {
			await this.updateComplete;
			this.renderRoot.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
			return;
		}
		await this.attempt(text.reading, async () => {
			const before = new Set((await callApi('GET /api/sittings')).map(({ id }) => id));
			const { pairs } = readCodePairs(this.codes);
			const report = await callApi('POST /api/responses/read', {
				body: {
					form: details.record.id,
					version: details.record.version,
					...(hasGroup ? {} : { group: sitting.group }),
					date: sitting.date,
					mode: sitting.mode,
					content: await readBase64(file),
					mapping: mappingOf(choices),
					...(this.answerMap ? { answerMap: this.answerMap.text } : {}),
					...(pairs.length > 0 ? { codes: pairs } : {}),
					onto: this.onto,
					dryRun,
				},
			});
			this.report = report;
			if (!dryRun) this.tellRead(report, before);
		});
		await this.updateComplete;
		this.renderRoot.querySelector('.result')?.scrollIntoView({ block: 'nearest' });
	}

	/** Sittings that were not there before go again with undo. */
	private tellRead({ students, sittings }: ReadingReport, before: ReadonlySet<string>): void {
		window.dispatchEvent(new Event(bankChangedEvent));
		const ids = sittings.flatMap(({ id }) => id ?? []);
		const made = ids.filter((id) => !before.has(id));
		this.readHere = [...new Set([...this.readHere, ...ids])];
		if (made.length < sittings.length) {
			tell(`${text.told(students)} ${text.undoSome}`);
			return;
		}
		tell(text.told(students), async () => {
			await takeBackSittings(made);
			this.readHere = this.readHere.filter((id) => !made.includes(id));
			this.report = undefined;
			window.dispatchEvent(new Event(bankChangedEvent));
		});
	}

	protected override render(): TemplateResult {
		const { known } = this;
		return html`
			<a class="back" href=${printAddress('sittings')}>${text.back}</a>
			<h2 tabindex="-1">${text.title}</h2>
			<p>${text.lead}</p>
			${known ? this.renderSteps(known) : this.busy ? html`<zp-wait></zp-wait>` : renderFailure(this.failure)}
		`;
	}

	private renderSteps({ forms, groups }: NonNullable<ZpReadFile['known']>): TemplateResult {
		if (forms.length === 0) return html`<p>${text.noForms}</p>`;
		if (groups.length === 0) return html`<p>${text.noGroups} <code>npm run zeropair -- groups add FILE</code></p>`;
		const { preview, choices } = this;
		const canBeRead = preview?.problems.length === 0 && preview.rows.length > 0 && listMissing(choices).length === 0;
		return html`
			<h3>${text.steps.sitting}</h3>
			${renderSittingFields({ forms, groups }, { sitting: this.sitting, groupColumn: choices.uses.indexOf('group') + 1, fault: this.fault }, (part) => this.setSitting(part))}
			<h3>${text.steps.file}</h3>
			${renderFileFields(
				{
					needsForm: this.file !== undefined && this.details === undefined,
					isOver: this.isOver,
				},
				{
					take: (file) => this.takeFile(file),
					takeMap: (file) => void this.takeMap(file),
					hover: (isOver) => Object.assign(this, { isOver }),
				},
			)}
			${
				preview
					? html`${renderMapping(preview, { choices, places: this.places, isStudentKnown: this.isStudentKnown }, (next) => this.change(next))}
						${renderCodeFields(this.codes, !this.isStudentKnown, (codes) => Object.assign(this, { codes, report: undefined }))}
						${canBeRead ? renderPreview(preview.rows) : nothing}
						${
							canBeRead
								? renderReadingFields(
										{
											onto: this.onto,
											isBusy: this.busy !== undefined,
											came: !this.report ? 'nothing' : this.report.dryRun ? 'tried' : 'read',
										},
										{
											setOnto: (onto) => Object.assign(this, { onto, report: undefined }),
											read: (dryRun) => void this.read(dryRun),
										},
									)
								: nothing
						}`
					: nothing
			}
			<div class="result" aria-live="polite">
				${this.busy === undefined ? nothing : html`<zp-wait label=${this.busy}></zp-wait>`}
				${renderFailure(this.failure)}
				${this.report ? renderOutcome(this.report, (id) => groups.find((each) => each.id === id)?.group.name ?? id, this.readHere) : nothing}
			</div>
		`;
	}
}

customElements.define('zp-read-file', ZpReadFile);
