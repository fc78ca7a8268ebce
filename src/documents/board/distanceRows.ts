import type { Swatch } from "../../swatches/swatch.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { shortened } from "../words/phrases.ts";
import { plainFrom } from "./acrossTheRoom.ts";

/** The words below a row of patches. */
export interface DistanceRow {
  readonly y: number;
  readonly name: string;
  readonly words: string;
  /** True where the words stand below the name, both in the smaller type. */
  readonly isFolded: boolean;
}

/** From row to row, millimetres: eight rows stand closer. */
const PITCH = { usual: 24, close: 22.4 };
const CLOSE_FROM = 8;
/** How wide the words may run: as far as the layout's caption, a little beyond the four patches. */
const WIDE_MM = 66;
/** A letter of a name, of a name in the smaller type, and of the words, on average and a little more, measured on the printed page. */
const LETTER_MM = { name: 1.95, small: 1.55, words: 1.45 };

export const pitchOf = (rows: number): number => (rows >= CLOSE_FROM ? PITCH.close : PITCH.usual);

/** Name and words below each row of patches: on one line where they fit, on two where these have the room, else the name is cut short. */
export function distanceRows(
  swatches: readonly Swatch[],
  top: number,
  units: UnitSystem,
): DistanceRow[] {
  const pitch = pitchOf(swatches.length);
  return swatches.map((swatch, at) => {
    const words = plainFrom(swatch, units);
    const left = WIDE_MM - (words.length + 1) * LETTER_MM.words;
    const fits = Math.floor(left / LETTER_MM.name);
    const isFolded = swatch.name.length > fits && pitch === PITCH.usual;
    const letters = isFolded ? Math.floor(WIDE_MM / LETTER_MM.small) : fits;
    return { y: top + at * pitch, name: shortened(swatch.name, letters), words, isFolded };
  });
}
