import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { ArmchairMade } from "./pieces.ts";
import type { ArmchairFields } from "./schema.ts";

/** Cloth seen of the chairs: the finished pieces, or, while none are measured, front, seat and two sides of the overall box. */
export function armchairSeen(_: ArmchairFields, made: ArmchairMade): SeenSurface[] {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  // Arms and back fill about seven tenths of the sides' box (common practice, no source).
  return coverSeen(made, width * height + width * depth * 0.6 + 2 * depth * height * 0.7);
}
