import { en } from './en.ts';

/** What scoring a sitting anew says, in English. */
export const rescoringText = {
	title: 'Score anew by a corrected key',
	lead: (scoring: number, scoredAs: number): string =>
		`Scored ${scoring === 1 ? 'once' : `${en.figure(scoring)} times`}, last by version ${scoredAs} of the form. Correct the key of an item, save the form with it as a new version, then choose that version here. Earlier scores are kept beside the new ones.`,
	version: 'Version of the form',
	versionName: (version: number, isUsed: boolean): string => `version ${version}${isUsed ? ' (used now)' : ''}`,
	why: 'Why',
	whyHelp: 'Such as: the key of item 7 was corrected.',
	noReason: 'expected a reason, found none',
	submit: 'Score anew',
	changed: (count: number, kept: number): string =>
		`${count === 0 ? 'No score changed' : `${en.figure(count)} ${count === 1 ? 'score changed' : 'scores changed'}`}.${kept > 0 ? ` ${en.figure(kept)} that came as points stay as they are.` : ''}`,
	table: 'Scores that changed',
	student: 'Student',
	place: 'Place',
	before: 'Before',
	after: 'Now',
	points: (points: number, maximum: number): string => `${en.figure(points)} of ${en.figure(maximum)}`,
};
