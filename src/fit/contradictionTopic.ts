/** How the topics of findings about one face begin; the size follows, so that each keeps an id of its own. */
export const CONTRADICTION = 'contradiction-';
