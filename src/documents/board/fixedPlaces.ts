import type { RoomFields } from "../../records/schema/roomSchema.ts";
import type { FixedPlace } from "./hangFixed.ts";

/** The places that a room's file fixes, which are measured from the sheet's edges, as places on the board's field; of two for one piece the first. */
export function fixedPlaces(
  fixed: NonNullable<RoomFields["hang-at"]>,
  margin: { readonly left: number; readonly top: number },
): FixedPlace[] {
  const first = fixed.filter((p, at) => fixed.findIndex((q) => q.piece === p.piece) === at);
  return first.map((p) => {
    const [width, height] = p.size ?? [];
    return {
      id: p.piece,
      x: p["from-left"].toMm() - margin.left,
      y: p["from-top"].toMm() - margin.top,
      size: width && height ? { width: width.toMm(), height: height.toMm() } : null,
    };
  });
}
