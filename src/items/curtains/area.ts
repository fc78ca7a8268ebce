import type { SeenSurface } from "../itemKind.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsFields } from "./schema.ts";
import { staysClosed } from "./staysClosed.ts";

/**
 * What is seen of curtains from the room: drawn back, the two stacks, as they are by day but where they stay closed; closed, the whole width of the pole; both from heading to
 * hem. The folds hide the rest.
 */
export function curtainsSeen(
  fields: CurtainsFields,
  made: CurtainsMade,
  hung: "open" | "closed" = staysClosed(fields) ? "closed" : "open",
): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const wide = hung === "open" ? plan.stackEach.times(plan.coverage.curtains) : plan.hung.pole;
  const areaMm2 = wide.toMm() * plan.hung.drop.toMm() * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
