/** How a side is laced. @example crossingWords(3) //=> '3-cross' */
export const crossingWords = (crosses: number): string => (crosses === 0 ? 'radial' : `${crosses}-cross`);
