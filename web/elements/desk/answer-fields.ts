import { html, nothing, type TemplateResult } from 'lit';
import { gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import type {
	ChoiceItem,
	ChoiceRule,
	ExplanationItem,
	InlineChoiceItem,
	MultipleChoiceItem,
	PartItem,
} from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import type { Editor } from './editor.ts';
import { renderListButtons, renderNumber, renderProse, renderSelect, renderText } from './fields.ts';
import { renderFigureFields } from './figure-fields.ts';
import { renderOptionFields } from './option-fields.ts';
import './zp-distractor-offer.ts';

/** A thing to answer, where it stands in the item, and its right options. */
export interface AnswerPart {
	readonly editor: Editor;
	readonly part: PartItem;
	/** Empty for an item that is no set. */
	readonly path: Path;
	readonly keys: readonly string[];
}

/** How an item is answered, by its kind. */
export function renderAnswerFields(answer: AnswerPart): TemplateResult {
	const { editor, part, path } = answer;
	const expression = (value: string): TemplateResult =>
		renderText({ editor, path: [...path, 'expression'], label: words.expression, value, isMath: true });
	switch (part.kind) {
		case 'gridded':
			return html`${expression(part.expression)}
				<div class="grid">
					${renderSelect({ editor, path: [...path, 'grid'], label: words.grid, value: part.grid, names: Object.fromEntries(gridProfiles.map(({ id, name }) => [id, name])) })}
					${renderText({ editor, path: [...path, 'unit'], label: words.unit, value: part.unit, isOptional: true })}
					${renderTypedKey(answer, part.key)}
				</div>`;
		case 'point':
			return html`${expression(part.expression)}<div class="grid">${renderTypedKey(answer, part.key)}</div>
				${renderFigureFields(editor, [...path, 'line'], part.line, false)}`;
		case 'choice':
		case 'multiple-choice':
			return renderChoiceFields(answer, part);
		case 'order':
			return html`${renderSelect({ editor, path: [...path, 'direction'], label: words.direction, value: part.direction, names: words.directions })}
				${renderOptionFields(editor, { path: [...path, 'entries'], options: part.entries, keys: [], name: words.entry, addName: words.addEntry, least: 3, most: 6 })}`;
		case 'match':
			return html`<div class="grid">
					${renderSelect({ editor, path: [...path, 'partners'], label: words.partners, value: part.partners, names: words.partnerRules })}
					${renderCredit(answer, part.credit)}
				</div>
				<h4 class="side">${words.leftEntries}</h4>
				${renderOptionFields(editor, { path: [...path, 'left'], options: part.left, keys: [], name: words.entry, addName: words.addEntry, least: 2, most: 6 })}
				<h4 class="side">${words.rightEntries}</h4>
				${renderOptionFields(editor, { path: [...path, 'right'], options: part.right, keys: [], name: words.entry, addName: words.addEntry, least: 2, most: 8 })}`;
		case 'inline-choice':
			return renderGapFields(answer, part);
		case 'explanation':
			return renderRubricFields(answer, part);
	}
}

function renderTypedKey({ editor, path }: AnswerPart, value: number | undefined): TemplateResult {
	return renderNumber({
		editor,
		path: [...path, 'key'],
		label: words.expectedKey,
		hint: words.optional,
		value,
		isOptional: true,
	});
}

function renderCredit({ editor, path }: AnswerPart, credit: 'whole' | 'parts' | undefined): TemplateResult {
	return renderSelect({
		editor,
		path: [...path, 'credit'],
		label: words.credit,
		value: credit ?? 'whole',
		names: words.credits,
		choose: (chosen) => editor.change([...path, 'credit'], chosen === 'whole' ? undefined : chosen),
	});
}

function renderChoiceFields(answer: AnswerPart, part: ChoiceItem | MultipleChoiceItem): TemplateResult {
	const { editor, path, keys } = answer;
	const { rule } = part;
	const rulePath = [...path, 'rule'];
	const chooseRule = (kind: string): void => editor.change(rulePath, turnRule(rule, kind as ChoiceRule['kind'], keys));
	const stateKeys = (typed: string): void =>
		editor.change([...rulePath, 'options'], [...new Set(typed.toLowerCase().match(/[a-h]/g) ?? [])]);
	return html`
		${renderSelect({ editor, path: [...rulePath, 'kind'], label: words.rule, value: rule.kind, names: words.rules, choose: chooseRule })}
		${'expression' in rule ? renderText({ editor, path: [...rulePath, 'expression'], label: words.expression, value: rule.expression, isMath: true }) : nothing}
		${
			rule.kind === 'stated'
				? html`<div class="field" data-path=${`/${rulePath.join('/')}/options`}><label for="stated">${words.statedKey}</label>
					<input type="text" id="stated" .value=${rule.options.join(', ').toUpperCase()} @change=${({ target }: Event) => target instanceof HTMLInputElement && stateKeys(target.value)} /></div>
					${renderProse({ editor, path: [...rulePath, 'reason'], label: words.reason, value: rule.reason })}`
				: nothing
		}
		${part.kind === 'multiple-choice' ? renderCredit(answer, part.credit) : nothing}
		${renderOptionFields(editor, { path: [...path, 'options'], options: part.options, keys, name: words.option, addName: words.addOption, least: 2, most: 8 })}
		${rule.kind === 'same-value' ? html`<zp-distractor-offer .asked=${part} @options-taken=${({ detail }: CustomEvent<PartItem>) => editor.change(path, detail)}></zp-distractor-offer>` : nothing}`;
}

/** What was written goes along where it can. */
function turnRule(rule: ChoiceRule, kind: ChoiceRule['kind'], keys: readonly string[]): ChoiceRule {
	const expression = 'expression' in rule ? rule.expression : '-3 + 8';
	switch (kind) {
		case 'same-value':
		case 'shows':
			return { kind, expression };
		case 'shown':
		case 'true-statement':
			return { kind };
		case 'stated':
			return { kind, options: keys.length > 0 ? keys : ['a'], reason: 'It is the only option that says why.' };
	}
}

function renderGapFields({ editor, path, keys }: AnswerPart, part: InlineChoiceItem): TemplateResult {
	const list = [...path, 'choices'];
	const { choices } = part;
	const add = (): void => editor.insert(list, choices.length, { id: 'abcdefgh'.charAt(choices.length), math: '≤' });
	return html`
		${renderText({ editor, path: [...path, 'statement'], label: words.statement, value: part.statement, isMath: true })}
		<ol class="list">
			${choices.map(({ id, math }, index) => {
				const name = words.choice(id.toUpperCase());
				return html`<li class="entry flat">
					${renderText({ editor, path: [...list, index, 'math'], label: keys.includes(id) ? `${name}, ${words.isKey}` : name, value: math, isMath: true })}
					${renderListButtons(editor, list, index, choices.length, name, 2)}
				</li>`;
			})}
		</ol>
		<div class="add"><button type="button" data-add=${`/${list.join('/')}`} ?disabled=${choices.length >= 6} @click=${add}>${words.addChoice}</button></div>`;
}

function renderRubricFields({ editor, path }: AnswerPart, part: ExplanationItem): TemplateResult {
	const list = [...path, 'rubric'];
	const { rubric } = part;
	const add = (): void =>
		editor.insert(list, 0, { points: (rubric[0]?.points ?? 0) + 1, descriptor: 'Says all of it.' });
	return html`
		${renderNumber({ editor, path: [...path, 'lines'], label: words.lines, value: part.lines, min: 1, max: 20 })}
		<ol class="list">
			${rubric.map(
				({ points, descriptor, sample }, index) => html`<li class="entry">
					<div class="entry-head"><h4>${words.level(points)}</h4>${renderListButtons(editor, list, index, rubric.length, words.level(points), 2)}</div>
					${renderNumber({ editor, path: [...list, index, 'points'], label: words.levelPoints, value: points, min: 0, max: 10 })}
					${renderProse({ editor, path: [...list, index, 'descriptor'], label: words.text, value: descriptor })}
					${renderProse({ editor, path: [...list, index, 'sample'], label: words.sample, value: sample, isOptional: true })}
				</li>`,
			)}
		</ol>
		<div class="add"><button type="button" data-add=${`/${list.join('/')}`} ?disabled=${rubric.length >= 11} @click=${add}>${words.addLevel}</button></div>`;
}
