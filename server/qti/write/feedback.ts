import { computeKey } from '../../../item-bank/items/key.ts';
import { printRichText } from '../../../item-bank/markup/rich-text.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { ExplanationItem } from '../../../item-bank/types.ts';
import { listWorkedLines, type WorkedLine } from '../../../item-bank/worked/worked-lines.ts';
import { variables } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import { getTemplateRules } from '../scoring/templates.ts';
import { type SupportWriter, writeSpokenText } from './catalogs.ts';
import type { WrittenInteraction } from './interaction.ts';
import { listOptionRemarks, type OptionRemark } from './option-remarks.ts';
import { nameVariable, setOutcome, when, writeValue } from './processing.ts';

/** An interaction with what is said once it is answered. */
export interface WrittenFeedback {
	readonly written: WrittenInteraction;
	/** The modalFeedback elements. */
	readonly modal: readonly MarkupElement[];
	/** Levels of a rubric, for whoever scores the item. */
	readonly rubric: readonly MarkupElement[];
}

const shown = 'SHOWN';
/** Notes that name options by letters, which platforms need not show. */
const lettered = /^(?:(?:Option|Entry|Partner) [A-H]|[A-H] goes with [A-H])\.$/;
const verdicts: readonly OptionRemark[] = [
	{ identifier: 'RIGHT', text: 'This is the right answer.' },
	{ identifier: 'WRONG', text: 'This is not the right answer.' },
];

/**
 * Adds feedback where the placement asks for it: what is said of each option, or of the whole answer where there are no options,
 * then the worked steps; once there is an answer. Response processing is then written out, because the standard templates set
 * SCORE alone. For explanations, the rubric for whoever scores, and nothing for students.
 */
export function writeFeedback(
	placement: Placement,
	interaction: WrittenInteraction,
	support: SupportWriter,
): WrittenFeedback {
	if (!placement.hasFeedback) return { written: interaction, modal: [], rubric: [] };
	const { item } = placement.record;
	const { declarations, scoring } = interaction;
	if (item.kind === 'explanation' || scoring === 'person') {
		const rubric = item.kind === 'explanation' ? writeLevels(item, support) : [];
		return { written: interaction, modal: [], rubric };
	}
	const remarks = listOptionRemarks(placement);
	const lines = listWorkedLines(item, computeKey(item));
	const cardinality = remarks ? (declarations[0]?.attributes.cardinality ?? 'single') : 'single';
	const own = typeof scoring === 'string' ? { outcomes: [], rules: getTemplateRules(scoring) } : scoring;
	const responses = declarations.map(({ attributes }) => attributes.identifier ?? '');
	const said = remarks ? [setOutcome(variables.feedback, nameVariable(variables.response))] : [judge()];
	const stepped = lines.length === 0 ? [] : [setOutcome(variables.steps, writeValue('identifier', shown))];
	const outcomes = [
		...own.outcomes,
		declare(variables.feedback, cardinality),
		...(lines.length === 0 ? [] : [declare(variables.steps, 'single')]),
	];
	const rules = [...own.rules, when(isAnswered(responses), [...said, ...stepped])];
	const modal = [
		...(remarks ?? verdicts).map((remark) => writeRemark(remark, support)),
		...(lines.length === 0 ? [] : [writeSteps(lines, support)]),
	];
	return { written: { ...interaction, scoring: { outcomes, rules } }, modal, rubric: [] };
}

function declare(identifier: string, cardinality: string): MarkupElement {
	return element('outcomeDeclaration', { identifier, cardinality, baseType: 'identifier' });
}

function isAnswered(responses: readonly string[]): MarkupElement {
	const [first, ...more] = responses.map((identifier) =>
		element('not', {}, [element('isNull', {}, [nameVariable(identifier)])]),
	);
	return first && more.length === 0 ? first : element('or', {}, first ? [first, ...more] : []);
}

/** Right is what earned the whole score, whatever shares come to. */
function judge(): MarkupElement {
	const isRight = element('gte', {}, [nameVariable(variables.score), writeValue('float', '1')]);
	const say = (verdict: string): MarkupElement => setOutcome(variables.feedback, writeValue('identifier', verdict));
	return when(isRight, [say('RIGHT')], [say('WRONG')]);
}

function writeRemark({ identifier, text }: OptionRemark, support: SupportWriter): MarkupElement {
	const attributes = { outcomeIdentifier: variables.feedback, identifier, showHide: 'show', title: 'Your answer' };
	return element('modalFeedback', attributes, [element('p', ...writeSpokenText(text, support))]);
}

function writeSteps(lines: readonly WorkedLine[], support: SupportWriter): MarkupElement {
	const attributes = { outcomeIdentifier: variables.steps, identifier: shown, showHide: 'show', title: 'Worked steps' };
	return element(
		'modalFeedback',
		attributes,
		lines.map(({ line, note, spoken, isStart }) => {
			const tail = note === '' || lettered.test(note) ? '' : ` (${note})`;
			const text = `${isStart ? '' : '= '}${line}${tail}`;
			return element(
				'p',
				support('spoken', () => `${isStart ? '' : 'equals '}${spoken}${tail}`, text),
				[text],
			);
		}),
	);
}

function writeLevels({ rubric, points: most }: ExplanationItem, support: SupportWriter): readonly MarkupElement[] {
	return rubric.map(({ points, descriptor }) => {
		const [spoken] = writeSpokenText(descriptor, support);
		return element('p', spoken, [`${points} of ${most}: ${printRichText(descriptor)}`]);
	});
}
