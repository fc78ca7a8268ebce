import type { Length } from "../../units/length.ts";
import type { ClothFacts } from "../itemKind.ts";

/**
 * What is asked of a shade in several panels. Their pattern is always level; round a drum it meets where a panel is a whole number of
 * repeats, on sloping sides never. Run sideways nothing is said of it.
 */
export function seamsQuestion(
  { name, repeat }: ClothFacts,
  sloping: boolean,
  foot: Length,
  panels: number,
  railroaded: boolean,
): string {
  const column = railroaded ? null : (repeat?.across ?? null);
  // Of a half-drop the next column hangs lower: it is alike again after two.
  const across = repeat?.match === "half-drop" ? column?.times(2) : column;
  const apart = across != null && (sloping || !isWhole(foot, panels, across));
  const unmatched = apart ? ", at which its pattern is level but does not meet" : "";
  return `The shade is wider than ${name} and has ${panels} seams, spread evenly round it${unmatched}: may they show, or may the cloth be run sideways (railroad: yes)?`;
}

/** Whether a drum's panel holds a whole number of repeats, to the 2 mm that its seam can be eased by (common practice, no source). */
function isWhole(foot: Length, panels: number, across: Length): boolean {
  const repeats = (Math.PI * foot.toMm()) / panels / across.toMm();
  return Math.abs(repeats - Math.round(repeats)) * across.toMm() <= 2;
}
