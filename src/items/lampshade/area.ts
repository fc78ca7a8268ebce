import type { SeenSurface } from "../itemKind.ts";
import type { LampshadeMade } from "./pieces.ts";
import type { LampshadeFields } from "./schema.ts";

/** What is seen of a lampshade from one side: its outline, foot and top by its height. */
export function lampshadeSeen(fields: LampshadeFields, made: LampshadeMade): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const areaMm2 = ((plan.foot.toMm() + plan.top.toMm()) / 2) * plan.height.toMm() * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
