import type { Records } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printCloth, type UnitSystem } from "../units/printLength.ts";
import { buyOf } from "./buy.ts";
import { materialLength } from "./materialLength.ts";
import type { RoomMaterial, TrimBuy } from "./quantityTypes.ts";

/** True of what is sewn on by the length from a card of its own: braid, fringe, gimp. */
export function isTrim(material: RoomMaterial): material is RoomMaterial & { cloth: string } {
  return material.cloth !== null && (material.unit === "yard" || material.unit === "metre");
}

/**
 * What to buy of each trim: what all items of the project need of it, together, as its card says that it is sold. All comes from one
 * lot, so the supplier's minimum and step count once, and not for each item.
 */
export function trimBuys(
  materials: readonly RoomMaterial[],
  records: Pick<Records, "cloths">,
  units: UnitSystem,
): TrimBuy[] {
  const trims = materials.filter(isTrim);
  return [...new Set(trims.map(({ cloth }) => cloth))].map((cloth): TrimBuy => {
    const own = trims.filter((each) => each.cloth === cloth);
    const uses = own.map((each) => ({
      room: each.room,
      item: each.item,
      length: materialLength(each, null),
    }));
    const need = Length.sum(uses.map(({ length }) => length));
    const buy = buyOf(need, records.cloths.get(cloth) ?? null, units);
    const name = (own[0] as RoomMaterial).what;
    return { cloth, name, need, buy, uses, working: trimWorking(name, need, buy, units) };
  });
}

function trimWorking(
  name: string,
  need: Length,
  buy: TrimBuy["buy"],
  units: UnitSystem,
): TrimBuy["working"] {
  const why = buy.minimum ? `the supplier's minimum, up to ${buy.step}` : `up to ${buy.step}`;
  return {
    what: `${name}, to buy`,
    sum: `${printCloth(need, units)} for all that is trimmed with it`,
    result: buy.text,
    rounded: buy.length.equals(need) ? null : why,
  };
}
