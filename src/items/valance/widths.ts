import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { Board } from "../common/board/boardAtWindow.ts";
import type { Strips } from "../common/join/joinStrips.ts";
import { oneWidthLess } from "../common/join/oneWidthLess.ts";
import { stripSum, wholesWords } from "../common/join/sideStrips.ts";
import type { ClothFacts, WorkingLine } from "../itemKind.ts";
import type { ValanceFields } from "./schema.ts";

/** The working of whole widths and the strips at the ends; nothing where one width is enough. */
export function widthsWorking(
  strips: Strips,
  cutWidth: Length,
  usableWidth: Length,
  join: Length,
  units: UnitSystem,
): WorkingLine[] {
  if (!strips.strip) return [];
  return [
    {
      what: "Widths",
      sum: `${wholesWords(strips, usableWidth, units)} in the middle; ${stripSum(strips, cutWidth, usableWidth, join, units)} at each end`,
      result: `${strips.widths} widths of cloth; 2 end strips of ${printLength(strips.strip, units)}`,
      rounded: "up to whole widths of cloth",
    },
  ];
}

/** Asked where one width of cloth less would nearly do: whole widths in the middle, of an even number one split for both ends. */
export function valanceLess(
  fields: ValanceFields,
  board: Board,
  cloth: ClothFacts,
  by: { cutWidth: Length; fullness: Fraction; usableWidth: Length; join: Length },
  { widths }: Strips,
): string | null {
  const n = widths - 1;
  const joins = n % 2 === 0 ? n : n - 1;
  return oneWidthLess({
    piece: "valance",
    cloth: cloth.name,
    widths,
    joined: by.usableWidth.times(n).minus(by.join.times(2 * joins)),
    flat: by.cutWidth,
    run: fields.heading === "box-pleat" ? board.length : board.span,
    fullness: by.fullness,
  });
}
