import type { SeenSurface } from "../itemKind.ts";
import type { RunnerMade } from "./pieces.ts";
import type { RunnerFields } from "./schema.ts";

/** All of a runner is seen. */
export function runnerSeen(fields: RunnerFields, made: RunnerMade): SeenSurface[] {
  if (!made.plan) return [];
  const [width, depth] = made.plan.finished;
  const areaMm2 = width.toMm() * depth.toMm() * (fields.count ?? 1);
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
