import type { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { ClothPlan } from "../quantityTypes.ts";
import { clothText } from "./clothText.ts";

/**
 * What the handbook's figure is worth beside the plan: too short to cut in register, as is proved or as far as is known; or what the
 * joint plan saves against it. Null without a figure or without a plan.
 */
export function handbookWords(
  handbook: Length | null,
  plan: Pick<ClothPlan, "length" | "lowerBound" | "itemByItem"> & {
    readonly pieces: readonly unknown[];
  },
  units: UnitSystem,
): string | null {
  if (handbook === null || plan.pieces.length === 0) return null;
  const says = `The handbook's rule gives ${clothText(handbook, units)}`;
  if (handbook.isLessThan(plan.lowerBound)) {
    return `${says}, which is too short to cut these pieces in register: no plan can need less than ${clothText(plan.lowerBound, units, "down")}.`;
  }
  if (handbook.isLessThan(plan.length)) {
    const inOrder = plan.itemByItem ?? plan.length;
    return `${says}, which is shorter than any plan found: together these pieces need ${clothText(plan.length, units)}, and cut item by item in register ${clothText(inOrder, units)}; do not buy by it.`;
  }
  const saved = handbook.minus(plan.length);
  return saved.isZero()
    ? `${says}, as the plan does.`
    : `${says}; the plan, which lays the pieces together, needs ${clothText(saved, units, "down")} less.`;
}
