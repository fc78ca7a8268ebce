declare module "fft.js" {
  /** Radix-4 FFT of a power of two; complex arrays interleave real and imaginary parts. */
  export default class FFT {
    constructor(size: number);
    transform(out: Float64Array | number[], data: Float64Array | number[]): void;
    /** Of real numbers; only the first half of the spectrum, and the middle, is filled. */
    realTransform(out: Float64Array | number[], data: Float64Array | number[]): void;
    inverseTransform(out: Float64Array | number[], data: Float64Array | number[]): void;
  }
}
