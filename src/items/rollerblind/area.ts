import type { SeenSurface } from "../itemKind.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindFields } from "./schema.ts";

/** How much of a roller blind hangs when it is raised as far as it goes: its bar, a hand's breadth. */
const RAISED_MM = 100;

/** How far down it hangs when it is raised about half-way, as in the elevation. */
export function loweredTo(drop: number): number {
  return Math.min(drop, Math.max(RAISED_MM, drop * 0.55));
}

/** What is seen of a roller blind: let down, all of it; raised, hardly anything. Half raised, as it is drawn, is taken for a room. */
export function rollerBlindSeen(
  fields: RollerBlindFields,
  { plan }: RollerBlindMade,
  hung: "half" | "open" | "closed" = "half",
): SeenSurface[] {
  if (plan === null) return [];
  const drop = plan.size.drop.toMm();
  const high =
    hung === "closed" ? drop : hung === "open" ? Math.min(drop, RAISED_MM) : loweredTo(drop);
  const areaMm2 = plan.clothWide.toMm() * high * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
