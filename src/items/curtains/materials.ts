import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { boughtLength, boughtPieces } from "../common/boughtLength.ts";
import { trimNeed } from "../common/trim.ts";
import type { ItemContext, MaterialNeed } from "../itemKind.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** What is bought beside the cloth: stiffening, tape, hooks, eyelets, weights, trim. Lengths go up to the buying step. */
export function curtainsMaterials(
  fields: CurtainsFields,
  plan: CurtainsPlan,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const { coverage, panel, heading, hung, count, widthsEach } = plan;
  const curtains = coverage.curtains * count;
  const depth = printLength(heading.depth, units);
  const needs: MaterialNeed[] = [];
  if (heading.heading === "pinch-pleat") {
    needs.push(
      boughtLength(`buckram, ${depth} deep`, panel.flat.times(curtains), units),
      boughtPieces("pin hooks", heading.hooks * curtains),
    );
  } else if (heading.heading === "pencil-pleat") {
    needs.push(
      boughtLength(`pencil-pleat tape, ${depth} deep`, heading.tape.times(curtains), units),
      boughtPieces("curtain hooks", heading.hooks * curtains),
    );
  } else if (heading.heading === "goblet") {
    needs.push(
      boughtLength(`buckram, ${depth} deep`, panel.flat.times(curtains), units),
      boughtPieces("pin hooks", heading.hooks * curtains),
      boughtPieces("rolls of wadding to hold the goblets open", heading.pleats * curtains),
    );
  } else if (heading.heading === "s-fold") {
    needs.push(
      boughtLength(`s-fold tape, ${depth} deep`, heading.tape.times(curtains), units),
      boughtPieces("carriers on their cord", heading.carriers * curtains),
    );
  } else if (heading.heading === "tab") {
    needs.push(boughtLength(`buckram, ${depth} deep`, panel.flat.times(curtains), units));
  } else if (heading.heading === "eyelet") {
    needs.push(
      boughtLength(`buckram, ${depth} deep`, panel.flat.times(curtains), units),
      boughtPieces("eyelets", heading.eyelets * curtains),
    );
  }
  if (fields["door-rod"] === "rising" && context.window?.isDoor)
    needs.push(
      boughtPieces(
        `rising portière rod of ${printLength(hung.pole, units)}, with its brackets for the door`,
        count,
        "studio",
      ),
    );
  // One in each lower corner and one at each seam.
  needs.push(boughtPieces("covered hem weights", (widthsEach.ceil().valueOf() + 1) * curtains));
  const trim = fields.edge?.trim;
  if (trim) {
    const { run, how } = trimmedEdge(fields, plan, units);
    needs.push(trimNeed(trim, run, curtains, context, how));
  }
  return needs;
}

/** The edge of one curtain that is trimmed, and in words how it is come by: all round is both sides and the hem. */
function trimmedEdge(
  { edge }: CurtainsFields,
  { hung, panel }: CurtainsPlan,
  units: UnitSystem,
): { run: Length; how: string } {
  const p = (length: Length) => printLength(length, units);
  const where = edge?.where ?? "leading";
  if (where === "leading") return { run: hung.drop, how: `${p(hung.drop)} leading edge` };
  if (where === "hem") return { run: panel.flat, how: `${p(panel.flat)} hem` };
  return {
    run: hung.drop.times(2).plus(panel.flat),
    how: `2 × ${p(hung.drop)} sides + ${p(panel.flat)} hem`,
  };
}
