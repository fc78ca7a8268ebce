import type { ClothRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import type { PatternKind } from "./swatch.ts";

/** A repeat as a card has it, its defaults filled in. */
export interface DeclaredRepeat {
  readonly up: Length;
  readonly across: Length | null;
  readonly match: "straight" | "half-drop" | "free";
  readonly fromSelvedge: Length | null;
}

/**
 * The repeat that a card declares, or null where it declares none that can be cut by. A stripe along the cloth has a repeat across and
 * none up: nothing has to meet along it, and `up` then only stands in for a step that any length is a whole number of. Of any other
 * kind (`kind`: the card's, else the photograph's, null where nobody knows) a repeat across alone is too little.
 */
export function declaredRepeat(card: ClothRecord, kind: PatternKind | null): DeclaredRepeat | null {
  const declared = card.fields.repeat;
  if (!declared) return null;
  const across = declared.across ?? null;
  const fromSelvedge = declared["from-selvedge"] ?? null;
  if (declared.up)
    return { up: declared.up, across, match: declared.match ?? "straight", fromSelvedge };
  if (!across || (kind !== null && kind !== "stripe")) return null;
  return { up: across, across, match: "free", fromSelvedge };
}
