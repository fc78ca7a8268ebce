import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";

/** What is gathered or pleated, and what one width of cloth less would come to. */
export interface WidthLess {
  /** `skirt`, `valance`: for the question. */
  readonly piece: string;
  readonly cloth: string;
  /** Widths that are taken now. */
  readonly widths: number;
  /** What one less measures joined. */
  readonly joined: Length;
  /** Flat cloth that is needed, its ends with it. */
  readonly flat: Length;
  /** What is covered at that fullness. */
  readonly run: Length;
  readonly fullness: Fraction;
}

/** So little of the fullness may be missing that one would rather not buy a width for it (common practice, no source). */
const LITTLE = new Fraction(1, 20);

/** Asked where one width less would miss the fullness that is wanted by no more than a twentieth of it; null where it would not do. */
export function oneWidthLess(ask: WidthLess): string | null {
  const { piece, cloth, widths, joined, flat, run, fullness } = ask;
  if (widths < 2) return null;
  const reached = fullness.sub(flat.minus(joined).over(run));
  if (reached.compare(fullness.mul(new Fraction(1).sub(LITTLE))) < 0) return null;
  const n = widths - 1;
  // Down, so that it is not called as full as is wanted.
  const words = reached.floor(2).toString();
  return `With ${n} ${n === 1 ? "width" : "widths"} of ${cloth} the ${piece} is ${words} times full, where ${fullness.toString()} is wanted: is one width less better?`;
}
