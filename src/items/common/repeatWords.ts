import type { Length } from "../../units/length.ts";
import type { ClothFacts } from "../itemKind.ts";

/**
 * A repeat as a maker reads it: `Repeat 21″ up, 10 1/4″ across, straight match`. Where nothing meets along the length only the step
 * across is said, as of a stripe: `Repeat 9″ across, nothing to match along it`.
 */
export function repeatWords(
  { up, across, match }: NonNullable<ClothFacts["repeat"]>,
  p: (length: Length) => string,
): string {
  if (match === "free")
    return `Repeat ${across ? `${p(across)} across, nothing to match along it` : `${p(up)}, no match`}`;
  return `Repeat ${p(up)}${across ? ` up, ${p(across)} across` : ""}, ${match} match`;
}
