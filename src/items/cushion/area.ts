import type { SeenSurface } from "../itemKind.ts";
import type { CushionMade } from "./pieces.ts";
import type { CushionFields } from "./schema.ts";

/** A line of welt shows about this much of itself (common practice, no source). */
const WELT_SHOWS_MM = 8;

/** What is seen of the cushions: their faces and the line of their welt. A back lies against the seat. */
export function cushionSeen(fields: CushionFields, made: CushionMade): SeenSurface[] {
  const [width, height] = made.finished;
  const plain = { colour: null, object: null };
  const seen: SeenSurface[] = [
    {
      surface: "face",
      cloth: fields.cloth,
      ...plain,
      areaMm2: width.toMm() * height.toMm() * made.count,
    },
  ];
  if (made.boxing) {
    // Its front and two sides; the back of the boxing lies against something.
    seen.push({
      surface: "boxing",
      cloth: made.boxing.cloth,
      ...plain,
      areaMm2: (width.toMm() + 2 * height.toMm()) * made.boxing.thickness.toMm() * made.count,
    });
  }
  if (made.welt) {
    const perimeter = made.welt.perimeter.toMm();
    seen.push({
      surface: "welt",
      cloth: made.welt.cloth,
      ...plain,
      areaMm2: perimeter * WELT_SHOWS_MM * made.count,
    });
  }
  return seen;
}
