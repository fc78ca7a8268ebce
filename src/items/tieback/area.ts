import type { SeenSurface } from "../itemKind.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackFields } from "./schema.ts";

/** What is seen of tie-backs: half of each front; the rest is round the curtain. */
export function tiebackSeen(fields: TiebackFields, made: TiebackMade): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const areaMm2 = (plan.faceAreaMm2 / 2) * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
