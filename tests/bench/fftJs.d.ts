/** The part of the general library that the bench uses; it brings no types of its own. */
declare module 'fft.js' {
  export default class Fft {
    constructor(size: number);
    createComplexArray(): number[];
    realTransform(out: number[], data: ArrayLike<number>): void;
  }
}
