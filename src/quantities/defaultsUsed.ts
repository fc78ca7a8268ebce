import type { ClothFacts } from "../items/itemKind.ts";
import type { FurnishedItem } from "../room/furnishRoom.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { PlannedCloth, RoomCut } from "./cutPieces.ts";
import type { UsedDefault } from "./quantityTypes.ts";

/** The usual values that an item's arithmetic took since nobody said them. */
export function itemDefaults(room: string, item: FurnishedItem): UsedDefault[] {
  return item.allowances
    .filter((each) => each.from === "usual")
    .map((each) => ({
      room,
      item: item.record.id,
      what: `${each.allowance}: ${each.description}`,
      value: each.text,
      source: each.source,
    }));
}

/** What the plan took for granted of the cloth itself, since its card is silent. */
export function clothDefaults(
  facts: ClothFacts,
  declared: { readonly match: boolean; readonly repeat: boolean },
  cloth: PlannedCloth,
  cuts: readonly RoomCut[],
  units: UnitSystem,
): UsedDefault[] {
  const own = (what: string, value: string, source: string): UsedDefault => ({
    room: null,
    item: null,
    what,
    value,
    source,
  });
  const found: UsedDefault[] = [];
  const { repeat } = facts;
  if (!repeat || cloth.pattern === null) return found;
  const inRegister = cuts.some(
    (each) => each.cut.across.how === "motif-at" || each.cut.along.how !== "free",
  );
  if (!inRegister) return found;
  if (!declared.repeat) {
    found.push(
      own(
        "repeat",
        printLength(repeat.up, units),
        "measured on the photograph, to be confirmed: the card gives none",
      ),
    );
  } else if (!declared.match) {
    found.push(
      own(
        "match: how neighbouring widths meet",
        repeat.match,
        "common practice, no source: the card does not say",
      ),
    );
  }
  const centred = cuts.some((each) => each.cut.across.how === "motif-at");
  if (centred && repeat.fromSelvedge === null && cloth.pattern.horizontal > 0) {
    found.push(
      own(
        "from-selvedge: from the left selvedge to the first motif's middle",
        printLength(cloth.motifX, units),
        "half the repeat across: the card does not say",
      ),
    );
  }
  const joined = cuts.some(
    (each) => each.cut.along.how !== "free" && each.cut.along.joined % 2 === 1,
  );
  if (joined && repeat.match === "half-drop" && repeat.across === null) {
    found.push(
      own(
        "half-drop: where it falls",
        "at the selvedge",
        "the safe side: the card gives no repeat across",
      ),
    );
  }
  return found;
}
