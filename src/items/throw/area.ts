import type { SeenSurface } from "../itemKind.ts";
import type { ThrowMade } from "./pieces.ts";
import type { ThrowFields } from "./schema.ts";

/** A throw lies folded once: half of it is seen (common practice, no source). */
export function throwSeen(fields: ThrowFields, made: ThrowMade): SeenSurface[] {
  const [width, length] = made.plan.finished;
  const areaMm2 = (width.toMm() * length.toMm() * (fields.count ?? 1)) / 2;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
