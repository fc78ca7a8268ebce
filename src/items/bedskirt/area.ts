import type { SeenSurface } from "../itemKind.ts";
import type { BedSkirtMade } from "./pieces.ts";
import type { BedSkirtFields } from "./schema.ts";

/** What is seen of a bed skirt: its run by its drop, gathered as it is. */
export function bedSkirtSeen(fields: BedSkirtFields, made: BedSkirtMade): SeenSurface[] {
  if (!made.plan) return [];
  const { skirt } = made.plan;
  const areaMm2 = skirt.finishedRun.toMm() * skirt.drop.toMm() * (fields.count ?? 1);
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}

/** From the front it hides the foot of its base. */
export function bedSkirtHides(_: BedSkirtFields, made: BedSkirtMade): number {
  const { plan } = made;
  return plan?.sides.includes("foot") ? plan.bed.width.toMm() * plan.skirt.drop.toMm() : 0;
}
