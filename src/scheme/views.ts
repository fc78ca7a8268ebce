import { colourName, spellColourName } from "../colour/colourName.ts";
import { isPlain } from "../swatches/swatch.ts";
import type { RoleOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";

/** The hand: where a cloth is touched and looked at, in metres. */
export const HAND_M = 0.5;

/** From how far a patterned cloth is looked at, and what it then is. */
export interface ClothView {
  readonly cloth: string;
  readonly name: string;
  /** From the door to the nearest thing that is made of it; null where the room has no plan or no door. */
  readonly doorM: number | null;
  /** From the nearest seat. */
  readonly seatM: number | null;
  /** Null where it reads as a pattern from every distance that a room has. */
  readonly readsPlainFromM: number | null;
  /** True where it reads as a plain from there; null where the distance is not known. */
  readonly plainFromDoor: boolean | null;
  readonly plainFromSeat: boolean | null;
  readonly plainInHand: boolean;
  /** Its average colour: what it is from further away. */
  readonly colour: string | null;
  readonly colourName: string | null;
}

function least(all: readonly (number | null)[]): number | null {
  const known = all.filter((n): n is number => n !== null);
  return known.length > 0 ? Math.min(...known) : null;
}

/** The patterned cloths of a room that were photographed, as they are seen from the door, from the seats and in the hand. */
export function clothViews(input: SchemeInput, roles: readonly RoleOf[]): ClothView[] {
  return roles.flatMap((role): ClothView[] => {
    const swatch = input.swatches.get(role.cloth);
    if (!swatch || isPlain(swatch) || (!swatch.photo && swatch.readsPlainFromM === null)) return [];
    const items = new Set(
      input.seen.flatMap((s) =>
        s.cloth === role.cloth && s.item && s.surface !== "welt" ? [s.item] : [],
      ),
    );
    const mine = input.items.filter((i) => items.has(i.item));
    const doorM = least(mine.map((i) => i.views.doorM));
    const seatM = least(mine.map((i) => i.views.seatM));
    const from = swatch.readsPlainFromM;
    const reads = (m: number | null): boolean | null =>
      m === null ? null : from !== null && m >= from;
    return [
      {
        cloth: role.cloth,
        name: role.name,
        doorM,
        seatM,
        readsPlainFromM: from,
        plainFromDoor: reads(doorM),
        plainFromSeat: reads(seatM),
        plainInHand: from !== null && HAND_M >= from,
        colour: swatch.average,
        colourName: swatch.average
          ? spellColourName(colourName(swatch.average).nearest, input.language)
          : null,
      },
    ];
  });
}
