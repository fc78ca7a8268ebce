import type { RoomFields } from "../../records/schema/roomSchema.ts";
import type { Pin } from "./hangPinned.ts";

/** The pins of a room's file, which are measured from the sheet's edges, as places on the board's field; of two for one piece the first. */
export function roomPins(
  pins: NonNullable<RoomFields["pins"]>,
  margin: { readonly left: number; readonly top: number },
): Pin[] {
  const first = pins.filter((p, at) => pins.findIndex((q) => q.pin === p.pin) === at);
  return first.map((p) => {
    const [width, height] = p.size ?? [];
    return {
      id: p.pin,
      x: p["from-left"].toMm() - margin.left,
      y: p["from-top"].toMm() - margin.top,
      size: width && height ? { width: width.toMm(), height: height.toMm() } : null,
    };
  });
}
