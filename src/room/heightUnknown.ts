import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Made } from "../items/itemKind.ts";
import type { ItemRecord } from "../records/records.ts";
import type { ItemPlacement } from "./placements.ts";

/** Kinds that hang from a board, whose own upper edge says how high. */
const BOARDS: ReadonlySet<string> = new Set(["pelmet", "valance"]);
/** Kinds whose height their place on a wall says. */
const BLINDS: ReadonlySet<string> = new Set(["blind", "roller-blind"]);

/**
 * A warning for what hangs on a wall or on a bed at a height that nobody has said: it is priced and made, and stands in no drawing of the
 * room. At a window the height follows from the opening. `hangsOnBed` is what the room knows of the item.
 */
export function heightUnknown(
  item: ItemRecord,
  placement: ItemPlacement,
  { figures }: Made,
  hangsOnBed: boolean,
): Diagnostic[] {
  const isBoard = BOARDS.has(item.kind);
  const isOnWall = placement.how === "wall" && placement.wallBox === null;
  // Without its width it is not made either, and that is said at its own line.
  const isMade = figures.widthMm !== undefined;
  const isHung = isBoard ? isOnWall || hangsOnBed : BLINDS.has(item.kind) && isOnWall;
  if (!isHung || !isMade || figures.hemAboveFloorMm !== undefined) return [];
  return [
    diagnostic(
      item.place(["at"]),
      "hangs-at-no-height",
      `Nothing says how high ${item.title} hangs, so no drawing of the room shows it.`,
      {
        severity: "warning",
        expected: isBoard ? "top-height" : "height in at",
        hint: isBoard
          ? 'Write top-height, from the floor to its upper edge: top-height: 84" or top-height: 214 cm.'
          : 'Write the height of its foot above the floor into at: height: 30" or height: 76 cm.',
      },
    ),
  ];
}
