import { html, type TemplateResult } from 'lit';
import type { CountersFigure, Figure, NumberLineFigure } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import type { Editor } from './editor.ts';
import { renderNumber, renderSelect, renderSwitch, renderText } from './fields.ts';
import './zp-number-list.ts';

/** A figure of a kind, to be changed from. */
export const firstFigures: Readonly<Record<Figure['kind'], Figure>> = {
	counters: { kind: 'counters', plus: 5, minus: 3 },
	'counter-groups': { kind: 'counter-groups', groups: 3, each: 4, sign: 'minus' },
	'number-line': { kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, labels: 'ends-and-zero' },
};

/** The numbers a figure is drawn from. */
export function renderFigureFields(editor: Editor, path: Path, figure: Figure, isKindOpen = true): TemplateResult {
	const kind = renderSelect({
		editor,
		path: [...path, 'kind'],
		label: words.figureKind,
		value: figure.kind,
		names: words.figureKinds,
		choose: (chosen) => editor.change(path, firstFigures[chosen as Figure['kind']]),
	});
	return html`<div class="grid">${isKindOpen ? kind : ''}${renderModel(editor, path, figure)}</div>`;
}

function renderModel(editor: Editor, path: Path, figure: Figure): TemplateResult {
	switch (figure.kind) {
		case 'counters':
			return renderCounters(editor, path, figure);
		case 'counter-groups':
			return html`
				${renderNumber({ editor, path: [...path, 'groups'], label: words.groups, value: figure.groups, min: 1, max: 10 })}
				${renderNumber({ editor, path: [...path, 'each'], label: words.each, value: figure.each, min: 1, max: 10 })}
				${renderSelect({ editor, path: [...path, 'sign'], label: words.sign, value: figure.sign, names: words.signs })}`;
		case 'number-line':
			return renderLine(editor, path, figure);
	}
}

function renderCounters(editor: Editor, path: Path, figure: CountersFigure): TemplateResult {
	const count = (field: 'plus' | 'minus' | 'ringedPairs' | 'addedPairs', isOptional: boolean): TemplateResult =>
		renderNumber({
			editor,
			path: [...path, field],
			label: words[field],
			value: figure[field],
			min: 0,
			max: 24,
			isOptional,
		});
	const { removed } = figure;
	const chooseRemoved = (sign: string): void =>
		editor.change([...path, 'removed'], sign === 'none' ? undefined : { sign, count: removed?.count ?? 1 });
	return html`
		${count('plus', false)}${count('minus', false)}${count('ringedPairs', true)}${count('addedPairs', true)}
		${renderSelect({ editor, path: [...path, 'removed', 'sign'], label: words.removedSign, value: removed?.sign ?? 'none', names: words.removedSigns, choose: chooseRemoved })}
		${removed ? renderNumber({ editor, path: [...path, 'removed', 'count'], label: words.removedCount, value: removed.count, min: 1, max: 48 }) : ''}`;
}

function renderLine(editor: Editor, path: Path, figure: NumberLineFigure): TemplateResult {
	const { labels = 'every-tick', arrows, points = [] } = figure;
	const number = (field: 'from' | 'to' | 'tickEvery' | 'start', min: number): TemplateResult =>
		renderNumber({
			editor,
			path: [...path, field],
			label: words[field],
			value: figure[field],
			isOptional: true,
			min,
			max: 1000,
		});
	const list = (label: string, numbers: readonly number[], take: (taken: readonly number[]) => void): TemplateResult =>
		html`<zp-number-list class="wide" label=${label} .numbers=${numbers} @numbers-changed=${({ detail }: CustomEvent<readonly number[]>) => take(detail)}></zp-number-list>`;
	const chooseLabels = (chosen: string): void => editor.change([...path, 'labels'], chosen === 'list' ? [0] : chosen);
	const takeArrows = (taken: readonly number[]): void => {
		if (taken.length > 0) editor.change([...path, 'arrows'], taken);
		else {
			// Without arrows there is nothing to start or to label.
			const { arrows: _arrows, start: _start, arrowLabels: _labels, ...bare } = figure;
			editor.change(path, bare);
		}
	};
	const takePoints = (taken: readonly number[]): void =>
		editor.change(
			[...path, 'points'],
			taken.length === 0 ? undefined : taken.map((at, index) => ({ ...points[index], at })),
		);
	return html`
		${renderSelect({ editor, path: [...path, 'orientation'], label: words.orientation, value: figure.orientation, names: words.orientations })}
		${number('from', -1000)}${number('to', -1000)}${number('tickEvery', 1)}
		${renderSelect({ editor, path: [...path, 'labels'], label: words.labels, value: typeof labels === 'string' ? labels : 'list', names: words.labelChoices, choose: chooseLabels })}
		${typeof labels === 'string' ? '' : list(words.labelList, labels, (taken) => editor.change([...path, 'labels'], taken))}
		${list(words.arrows, arrows ?? [], takeArrows)}
		${arrows === undefined ? '' : html`${number('start', -1000)}${renderSwitch({ editor, path: [...path, 'arrowLabels'], label: words.arrowLabels, value: figure.arrowLabels ?? false })}`}
		${list(
			words.points,
			points.map(({ at }) => at),
			takePoints,
		)}
		${points.length === 0 ? '' : renderPointLabels(editor, path, figure)}`;
}

function renderPointLabels(editor: Editor, path: Path, { points = [] }: NumberLineFigure): TemplateResult {
	return html`${points.map(({ at, label }, index) =>
		renderText({
			editor,
			path: [...path, 'points', index, 'label'],
			label: `${words.pointLabel} ${String(at).replace('-', '−')}`,
			value: label,
			isOptional: true,
		}),
	)}`;
}
