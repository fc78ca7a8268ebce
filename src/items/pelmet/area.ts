import type { SeenSurface } from "../itemKind.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetFields } from "./schema.ts";

/** A line of welt shows about this much of itself (common practice, no source). */
const WELT_SHOWS_MM = 8;

/** What is seen of a pelmet from the room: its front by its true outline, and its welt. The returns are seen from aside only. */
export function pelmetSeen(fields: PelmetFields, made: PelmetMade): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const plain = { colour: null, object: null };
  const seen: SeenSurface[] = [
    { surface: "face", cloth: fields.cloth, ...plain, areaMm2: plan.edge.areaMm2 * plan.count },
  ];
  if (plan.welt) {
    const edges = plan.edge.runMm + (fields.edge?.where === "both" ? plan.board.length.toMm() : 0);
    seen.push({
      surface: "welt",
      cloth: plan.welt.cloth,
      ...plain,
      areaMm2: edges * WELT_SHOWS_MM * plan.count,
    });
  }
  return seen;
}
