/** A label of a table at the head of a line. @example sentenceCase('outside diameter') //=> 'Outside diameter' */
export const sentenceCase = (words: string): string => words.charAt(0).toLocaleUpperCase() + words.slice(1);
