import type { SeenSurface } from "../itemKind.ts";
import type { BlindMade } from "./pieces.ts";
import type { BlindFields } from "./schema.ts";

/** What is seen of a blind: let down, all of it; raised, its stack of folds. Half raised, as it is drawn, is taken for a room. */
export function blindSeen(
  fields: BlindFields,
  made: BlindMade,
  hung: "half" | "open" | "closed" = "half",
): SeenSurface[] {
  const { plan } = made;
  if (plan === null) return [];
  const drop = plan.size.drop.toMm();
  const stack = plan.sections.stackDepth.toMm();
  const high = hung === "closed" ? drop : hung === "open" ? stack : raisedTo(drop, stack);
  const areaMm2 = plan.size.width.toMm() * high * plan.count;
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}

/** How far down a blind hangs that is raised about half-way, as in the elevation. */
export function raisedTo(drop: number, stack: number): number {
  return Math.min(drop, Math.max(stack, drop * 0.55));
}
