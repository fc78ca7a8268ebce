import type { HangsOn } from "../itemKind.ts";

const SIDES = {
  head: "at its head",
  foot: "at its foot",
  left: "at its left side",
  right: "at its right side",
} as const;

/** `Walnut bed, at its foot`; where no side is said `Walnut bed`. */
export function hangsOnWords({ title, side }: HangsOn): string {
  return side ? `${title}, ${SIDES[side]}` : title;
}

/** What the fitter looks at of a piece that carries hangings (common practice, no source). */
export const FRAME_CHECKS = [
  "Frame looked at: sound and firm; fixings chosen and rated by the fitter",
  "Clear of lamps and heaters; no hangings on a cot or a small child's bed",
] as const;
