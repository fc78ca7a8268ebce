import type { SeenSurface } from "../itemKind.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValanceFields } from "./schema.ts";

/** What is seen of a valance: its front. The folds hide the rest. */
export function valanceSeen(fields: ValanceFields, made: ValanceMade): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const areaMm2 = plan.edge.areaMm2 * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
