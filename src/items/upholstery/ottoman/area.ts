import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { OttomanMade } from "./pieces.ts";
import type { OttomanFields } from "./schema.ts";

/** Cloth seen of the ottomans: the finished pieces but the back, or, while it is an estimate, top, front and two sides of its box. */
export function ottomanSeen(_: OttomanFields, made: OttomanMade): SeenSurface[] {
  const [width, depth] = made.size.map((l) => l.toMm()) as [number, number, number];
  const high = Math.max(0, made.sideHeight.toMm());
  return coverSeen(made, width * depth + (width + 2 * depth) * high);
}
