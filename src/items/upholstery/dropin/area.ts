import type { SeenSurface } from "../../itemKind.ts";
import { coverSeen } from "../coverSeen.ts";
import type { DropInMade } from "./pieces.ts";
import type { DropInFields } from "./schema.ts";

/** Cloth seen of the seats: their tops. */
export function dropInSeen(_: DropInFields, made: DropInMade): SeenSurface[] {
  return coverSeen(made, 0);
}
