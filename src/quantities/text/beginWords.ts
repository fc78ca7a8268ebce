import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ClothPlan } from "../quantityTypes.ts";

/**
 * Where in the pattern the first cut is made, once for each length that begins elsewhere: every height of the plan counts from that
 * cut. Nothing where the pattern does not matter, or any point of it serves as well.
 */
export function beginWords(plan: ClothPlan, units: UnitSystem): string[] {
  const { pattern } = plan;
  const fixed = plan.levels.every((level) => level.motifAboveFoot !== null);
  if (!pattern || !fixed || !plan.pieces.some((piece) => piece.register?.y)) return [];
  const above = (start: Length) =>
    printLength(start.isZero() ? start : pattern.vertical.minus(start), units);
  const used = plan.starts.flatMap((start, i) =>
    plan.lengths[i]?.isZero() ? [] : [{ start, name: `length ${i + 1} ` }],
  );
  const differ = used.some((each) => !each.start.equals(plan.start));
  return (differ ? used : [{ start: plan.start, name: "" }]).map(
    ({ start, name }) =>
      `Begin ${name}so that the first motif's middle stands ${above(start)} above the first cut.`,
  );
}
