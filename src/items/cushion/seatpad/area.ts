import type { SeenSurface } from "../../itemKind.ts";
import { cushionSeen } from "../area.ts";
import type { SeatPadMade } from "./pieces.ts";
import type { SeatPadFields } from "./schema.ts";

/** How much of its rectangle a shape fills. */
function filled(made: SeatPadMade): number {
  if (made.shape === "round") return Math.PI / 4;
  return (1 + made.backWidth.over(made.finished[0]).valueOf()) / 2;
}

/** What is seen of the pads: tops, the front of the boxing, a line of welt. */
export function seatPadSeen(fields: SeatPadFields, made: SeatPadMade): SeenSurface[] {
  const share = filled(made);
  return cushionSeen({ ...fields, cushion: fields["seat-pad"] } as never, made).map((seen) =>
    seen.surface === "face" ? { ...seen, areaMm2: seen.areaMm2 * share } : seen,
  );
}
