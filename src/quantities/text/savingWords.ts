import { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { ClothQuantity } from "../quantityTypes.ts";
import { clothText } from "./clothText.ts";

/**
 * What planning the pieces together saves against laying them item by item, each in register, over all cloths that are still to
 * come: both lengths before rounding to how the cloth is sold. Null where there is no such cloth.
 */
export function savingOf(
  cloths: readonly Pick<ClothQuantity, "plan">[],
): { readonly together: Length; readonly itemByItem: Length } | null {
  const compared = cloths.flatMap(({ plan }) =>
    plan.pieces.length > 0 && plan.itemByItem ? [{ plan, apart: plan.itemByItem }] : [],
  );
  if (compared.length === 0) return null;
  return {
    together: Length.sum(compared.map(({ plan }) => plan.length)),
    itemByItem: Length.sum(compared.map(({ apart }) => apart)),
  };
}

/** The same in a sentence; null where nothing can be said. */
export function savingWords(
  cloths: readonly Pick<ClothQuantity, "plan">[],
  units: UnitSystem,
): string | null {
  const found = savingOf(cloths);
  if (!found) return null;
  const { together, itemByItem } = found;
  const saved = itemByItem.minus(together);
  // What came is planned on what came: there is nothing to be saved.
  const some = cloths.some(({ plan }) => plan.pieces.length > 0 && !plan.itemByItem);
  const laid = some ? "Of the cloth still to come: laid" : "Laid";
  const apart = `${laid} item by item, each in register, the pieces would take ${clothText(itemByItem, units)}`;
  // DOWN: what is saved is not to be overstated.
  return saved.isMoreThan(Length.zero)
    ? `${apart}; cut together they take ${clothText(together, units)}, which saves ${clothText(saved, units, "down")}.`
    : `${apart}; cut together they take as much.`;
}
