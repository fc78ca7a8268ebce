import type { ItemKind } from "../../itemKind.ts";
import { seatPadAllowances } from "./allowances.ts";
import { seatPadSeen } from "./area.ts";
import { makeSeatPad, type SeatPadMade } from "./pieces.ts";
import { type SeatPadFields, seatPadSchema } from "./schema.ts";

/** Seat pads and bench pads. */
export const seatPadKind: ItemKind<SeatPadFields, SeatPadMade> = {
  kind: "seat-pad",
  synonyms: ["seat-pads", "bench-pad", "bench-pads", "squab", "squabs", "window-seat"],
  words: {
    "en-US": { one: "seat pad", many: "seat pads" },
    "en-GB": { one: "squab", many: "squabs" },
  },
  schema: seatPadSchema,
  allowances: seatPadAllowances,
  phase: 1,
  zone: () => "seat",
  trade: "seat-pad",
  alsoMadeAs: ["cushion", "cushions"],
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    fields.back
      ? { surface: "back", cloth: fields.back, keyPath: ["back"] }
      : { surface: "back", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.thickness
      ? [
          fields.boxing
            ? { surface: "boxing", cloth: fields.boxing, keyPath: ["boxing"] }
            : { surface: "boxing", cloth: fields.cloth, keyPath: ["cloth"] },
        ]
      : []),
    ...(fields.edge !== undefined && typeof fields.edge !== "string"
      ? [{ surface: "welt", cloth: fields.edge.welt, keyPath: ["edge", "welt"] }]
      : []),
  ],
  make: makeSeatPad,
  seen: seatPadSeen,
};
