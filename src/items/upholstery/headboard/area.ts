import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { HeadboardMade } from "./pieces.ts";
import type { HeadboardFields } from "./schema.ts";

/** Cloth seen of the headboards: the face; with a border, panel and strips. */
export function headboardSeen(_: HeadboardFields, made: HeadboardMade): SeenSurface[] {
  return coverSeen(made, made.size[0].toMm() * made.size[2].toMm());
}
