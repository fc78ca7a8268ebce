import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";

/** Carriers on a fixed cord, and the flat cloth that hangs from them. */
export interface SFold {
  readonly carriers: number;
  readonly spacing: Length;
  readonly clothPerCarrier: Length;
  /** One curtain between its side hems. */
  readonly flat: Length;
}

export interface SFoldHeading {
  readonly heading: "s-fold";
  readonly carriers: number;
  readonly spacing: Length;
  readonly clothPerCarrier: Length;
  readonly tape: Length;
  readonly depth: Length;
}

/**
 * Spaces = up(finished ÷ spacing); carriers = spaces + 1, made even; flat = (carriers − 1) × cloth per carrier (common practice, no
 * source). Carriers on a cord stand no further apart than its spacing, so that fewer spaces would leave the closed curtain short.
 * Spacing and cloth per carrier belong to the chosen track; a written fullness sets the cloth per carrier from the spacing.
 */
export function sFoldOf(
  finished: Length,
  fullness: Fraction | undefined,
  context: ItemContext,
  notes: Notes,
): SFold {
  const p = (length: Length) => printLength(length, context.units);
  const spacing = context.length("carrier-spacing");
  const clothPerCarrier = fullness ? spacing.times(fullness) : context.length("cloth-per-carrier");
  const spaces = Math.max(1, finished.over(spacing).ceil().valueOf());
  const least = spaces + 1;
  const carriers = least % 2 === 0 ? least : least + 1;
  const flat = clothPerCarrier.times(carriers - 1);
  notes.working.push(
    {
      what: "Carriers a curtain",
      sum: `${p(finished)} closed ÷ ${p(spacing)} between carriers → ${spaces} spaces; ${spaces} + 1`,
      result: `${carriers}`,
      rounded: "up to an even number",
    },
    {
      what: "Flat cloth a curtain, before side hems",
      sum: `(${carriers} carriers − 1) × ${p(clothPerCarrier)}`,
      result: p(flat),
      rounded: null,
    },
  );
  notes.questions.push(
    `Which track is it? Carriers ${p(spacing)} apart with ${p(clothPerCarrier)} of cloth each are assumed until its figures are known.`,
  );
  return { carriers, spacing, clothPerCarrier, flat };
}
