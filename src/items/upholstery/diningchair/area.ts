import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { DiningChairMade } from "./pieces.ts";
import type { DiningChairFields } from "./schema.ts";

/** Cloth seen of the chairs: the finished pieces, or, while none are measured, the seat and, where it is covered, half of the back. */
export function diningChairSeen(_: DiningChairFields, made: DiningChairMade): SeenSurface[] {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  return coverSeen(made, width * depth * 0.9 + (made.padBack ? width * height * 0.3 : 0));
}
