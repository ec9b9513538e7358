/** How a response stands before points are counted. A share is a proper fraction of the points. */
export type Outcome =
	| { readonly state: 'correct' | 'incorrect' | 'omitted' | 'unrated' }
	| { readonly state: 'partly'; readonly share: number }
	| { readonly state: 'invalid'; readonly reason: string };
