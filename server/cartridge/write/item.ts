import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { printRichText } from '../../../item-bank/markup/rich-text.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Figure, OptionContent } from '../../../item-bank/types.ts';
import { optionIdentifier } from '../../qti/identifiers.ts';
import { writeBlocks, writeMathematics } from '../../qti/write/blocks.ts';
import { noSupport } from '../../qti/write/catalogs.ts';
import type { ImageFormat } from '../../qti/write/images.ts';
import { writeShapedXml } from '../../qti/write/shaped-xml.ts';
import type { Asked, Question } from '../question.ts';
import { questionTypes, questionVariables, wholeScore } from './names.ts';
import { fileAddress, imagePath } from './paths.ts';

/** A question as QTI 1.2.1, with the figures it shows. */
export interface WrittenQuestion {
	readonly root: MarkupElement;
	readonly images: readonly { readonly path: string; readonly root: MarkupElement }[];
}

const { response, score } = questionVariables;

/**
 * Writes a question as an item of an assessment. What stands above the answer is HTML in one text, because the profile knows
 * no pictures of its own. Throws XmlError for characters that XML cannot hold.
 */
export function writeQuestion(question: Question, weight: number, format: ImageFormat): WrittenQuestion {
	const images: { readonly path: string; readonly root: MarkupElement }[] = [];
	const writeFigure = (figure: Figure): MarkupElement => {
		const { root, width, height } = drawFigure(figure);
		const path = imagePath(question.stem, images.length + 1, format);
		images.push({ path, root });
		const size = { width: Math.ceil(width), height: Math.ceil(height) };
		return element('img', { src: fileAddress(path), alt: describeFigure(figure), ...size });
	};
	const above = writeBlocks(question.blocks, { writeFigure, support: noSupport }).map((block) => writeShapedXml(block));
	const presentation = element('presentation', {}, [
		element('material', {}, [writeHtml(above.join(''))]),
		writeResponse(question, writeFigure),
	]);
	const processing = writeProcessing(question);
	const root = element('item', { ident: question.identifier, title: question.title }, [
		element('itemmetadata', {}, [
			writeFields([
				['cc_profile', questionTypes[question.asks]],
				['cc_weighting', String(weight)],
				['qmd_scoringpermitted', 'Yes'],
				['qmd_computerscored', question.asks === 'text' ? 'No' : 'Yes'],
			]),
		]),
		presentation,
		...processing,
	]);
	return { root, images };
}

/** Metadata as labels with entries, in order. */
export function writeFields(fields: readonly (readonly [label: string, entry: string])[]): MarkupElement {
	return element(
		'qtimetadata',
		{},
		fields.map(([label, entry]) =>
			element('qtimetadatafield', {}, [element('fieldlabel', {}, [label]), element('fieldentry', {}, [entry])]),
		),
	);
}

function writeHtml(html: string): MarkupElement {
	return element('mattext', { texttype: 'text/html' }, [html]);
}

function writeResponse(question: Question, writeFigure: (figure: Figure) => MarkupElement): MarkupElement {
	switch (question.asks) {
		case 'choice':
		case 'several': {
			const labels = question.options.map(({ content }, index) =>
				element('response_label', { ident: optionIdentifier(index), rshuffle: 'No' }, [
					element('material', {}, [writeOption(content, writeFigure)]),
				]),
			);
			const rcardinality = question.asks === 'choice' ? 'Single' : 'Multiple';
			return element('response_lid', { ident: response, rcardinality }, [
				element('render_choice', { shuffle: 'No' }, labels),
			]);
		}
		case 'entry':
			return element('response_str', { ident: response, rcardinality: 'Single' }, [
				element('render_fib', { fibtype: 'String', prompt: 'Box', rows: 1, columns: question.columns }),
			]);
		case 'text':
			return element('response_str', { ident: response, rcardinality: 'Single' }, [
				element('render_fib', { fibtype: 'String', prompt: 'Box', rows: question.lines, columns: 80 }),
			]);
	}
}

function writeOption(content: OptionContent, writeFigure: (figure: Figure) => MarkupElement): MarkupElement {
	switch (content.kind) {
		case 'mathematics':
			return element('mattext', { texttype: 'text/plain' }, [writeMathematics(content.math)]);
		case 'text':
			return element('mattext', { texttype: 'text/plain' }, [printRichText(content.text)]);
		case 'figure':
			return writeHtml(writeShapedXml(element('p', {}, [writeFigure(content.figure)])));
	}
}

/** Nothing where a person scores. */
function writeProcessing(asked: Asked): readonly MarkupElement[] {
	if (asked.asks === 'text') return [];
	const bounds = { varname: score, vartype: 'Decimal', minvalue: 0, maxvalue: wholeScore };
	return [
		element('resprocessing', {}, [
			element('outcomes', {}, [element('decvar', bounds)]),
			...listConditions(asked).map((condition) =>
				element('respcondition', { continue: 'No' }, [
					element('conditionvar', {}, [condition]),
					element('setvar', { varname: score, action: 'Set' }, [String(wholeScore)]),
				]),
			),
		]),
	];
}

/**
 * One test a condition: what several tests in one condition mean together is read in two ways, and this leaves nothing to read.
 * Of the spellings the plainest stands first.
 */
function listConditions(asked: Exclude<Asked, { readonly asks: 'text' }>): readonly MarkupElement[] {
	const equal = (value: string): MarkupElement => element('varequal', { respident: response }, [value]);
	switch (asked.asks) {
		case 'choice':
			return asked.right.map((index) => equal(optionIdentifier(index)));
		case 'several': {
			const tests = asked.options.map((_, index) => {
				const test = equal(optionIdentifier(index));
				return asked.right.includes(index) ? test : element('not', {}, [test]);
			});
			return [element('and', {}, tests)];
		}
		case 'entry':
			return asked.spellings.map(equal);
	}
}
