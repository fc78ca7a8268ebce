import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemRecord, ObjectRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";
import { HANG, type Hung, sideOf } from "./hangsOn.ts";

/** Items that stand for a bed, beside an object whose card says so or says nothing. */
const OF_A_BED: ReadonlySet<string> = new Set(["headboard", "coverlet", "bed-skirt"]);
/** Shapes of a card that may be a bed's: a box is what nothing was said of. */
const BED_SHAPES: ReadonlySet<string> = new Set(["bed", "box"]);

interface Placed extends Hung {
  readonly objects: ReadonlyMap<string, ObjectRecord>;
}

/** What a host is, where it is no bed: `Settle is a seat by its card`, `Bay is no bed`; null where it may be one. */
function otherThanBed(on: string, { room, objects }: Placed): string | null {
  const host = room.items.find((each) => each.id === on);
  const card = host ? commonFields(host).object : on;
  if (host && card === undefined) return OF_A_BED.has(host.kind) ? null : `${host.title} is no bed`;
  const { object, shape } = objects.get(card ?? on)?.fields ?? {};
  return shape === undefined || BED_SHAPES.has(shape)
    ? null
    : `${object} is a ${shape} by its card`;
}

/**
 * Warnings for what hangs on a piece: that the piece is no bed, so that no window, no wall and no return is taken where one was meant; and
 * that `mount` is written, which is said of a window alone. And a side that is said of what hangs on none.
 */
export function hangsOnFaults(item: ItemRecord, placed: Placed): Diagnostic[] {
  return [...sideFaults(item, placed), ...ofHost(item, placed)];
}

function ofHost(item: ItemRecord, placed: Placed): Diagnostic[] {
  const at = placed.placements.get(item.id);
  if (!HANG.includes(item.kind) || at?.how !== "on" || at.on === null) return [];
  if (placed.windows.has(at.on)) return [];
  const other = otherThanBed(at.on, placed);
  const { mount } = item.fields as { readonly mount?: string };
  return [
    ...(other === null
      ? []
      : [
          diagnostic(
            item.place(["at", "on"]),
            "hangs-on-no-bed",
            `${other}; what hangs on it is taken to hang on a bed, with no window, no wall and no return.`,
            {
              severity: "warning",
              actual: at.on,
              hint: "Write at: and the name of its window, or at: { wall: … }; where it is a bed, write shape: bed on its card.",
            },
          ),
        ]),
    ...(mount === undefined
      ? []
      : [
          diagnostic(
            item.place(["mount"]),
            "mount-of-no-window",
            "mount says nothing here: what hangs on a bed hangs in no opening.",
            { severity: "warning", actual: mount, hint: "Take mount out." },
          ),
        ]),
  ];
}

/** A side that is said of what does not hang on a bed. */
function sideFaults(item: ItemRecord, { windows, placements }: Hung): Diagnostic[] {
  const side = sideOf(item);
  if (side === null) return [];
  const on = placements.get(item.id)?.on;
  if (HANG.includes(item.kind) && on && !windows.has(on)) return [];
  return [
    diagnostic(
      item.place(["at", "side"]),
      "side-of-no-bed",
      "side says nothing here: only curtains, a valance or a pelmet that hang on a bed have one.",
      { severity: "warning", actual: side, hint: "Take side out." },
    ),
  ];
}
