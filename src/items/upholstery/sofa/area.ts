import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { SofaMade } from "./pieces.ts";
import type { SofaFields } from "./schema.ts";

/** Cloth seen of the sofas: the finished pieces, or, while none are measured, front, seat and two sides of the overall box. */
export function sofaSeen(_: SofaFields, made: SofaMade): SeenSurface[] {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  return coverSeen(made, width * height + width * depth * 0.6 + 2 * depth * height * 0.7);
}
