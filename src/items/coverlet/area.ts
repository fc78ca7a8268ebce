import type { SeenSurface } from "../itemKind.ts";
import type { CoverletMade } from "./pieces.ts";
import type { CoverletFields } from "./schema.ts";

/** What is seen of a bed cover: its top and its drops; what is tucked at the pillows is not. */
export function coverletSeen(fields: CoverletFields, made: CoverletMade): SeenSurface[] {
  const { plan } = made;
  if (!plan) return [];
  const areaMm2 = plan.finished[0].toMm() * plan.finished[1].minus(plan.tuck).toMm();
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}

/** From the front it hides the foot of its bed as far down as it hangs. */
export function coverletHides(_: CoverletFields, made: CoverletMade): number {
  return made.plan ? made.plan.bed.width.toMm() * made.plan.footDrop.toMm() : 0;
}
