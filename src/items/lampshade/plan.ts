import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { frameOf, slantAgrees } from "./frame.ts";
import { FITTING_UNKNOWN, MOST_THE_LAMP_DRAWS } from "./lampQuestions.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import { planPleated } from "./pleated.ts";
import type { LampshadeFields } from "./schema.ts";
import { planSmooth } from "./smooth.ts";

/** Plans a lampshade; null, with a diagnostic, where it cannot be cut. */
export function planLampshade(
  fields: LampshadeFields,
  context: ItemContext,
  notes: Notes,
): LampshadePlan | null {
  const fault = (key: string, code: string, message: string, more: object) => {
    notes.diagnostics.push(diagnostic(context.place([key]), code, message, more));
    return null;
  };
  const count = fields.count ?? 1;
  const frame = frameOf(fields, context, notes);
  if (!frame) return null;
  const cloth = context.cloth(fields.cloth);
  if (cloth && cloth.usableWidth === null)
    return fault(
      "cloth",
      "cloth-without-width",
      `${cloth.name} has no width, so it cannot be said whether this shade needs a join.`,
      {
        actual: cloth.id,
        expected: "a usable width",
        hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
      },
    );
  if (!cloth?.usableWidth) return null;
  const usableWidth = cloth.usableWidth;
  if (!slantAgrees(fields, frame, context, notes)) return null;
  if (fields.style && fields.style !== "smooth") {
    const pleated = planPleated(fields, frame, context, notes);
    if (!pleated) return null;
    askOfSoft(fields, context, notes);
    const { strip } = pleated;
    return {
      ...{ ...frame, net: null, cloth, usableWidth, count, pleated },
      ...{ panel: null, panels: 1, lap: context.length("join"), turn: strip.top },
      cutWidth: strip.runs[0]?.joined ?? strip.flat,
      cutHeight: strip.cut,
      railroaded: strip.sideways,
      motifCentred: false,
      frontX: Length.zero,
      frontAboveFoot: Length.zero,
      handbook: strip.handbook,
    };
  }
  return planSmooth(fields, frame, cloth, usableWidth, context, notes);
}

/** What is still to be asked of a shade on a frame. */
function askOfSoft(fields: LampshadeFields, context: ItemContext, notes: Notes): void {
  if (fields.motif === "centred")
    notes.diagnostics.push(
      diagnostic(
        context.place(["motif"]),
        "pleats-hide-the-motif",
        "Pleats and gathers hide most of a motif, so none stands in the middle of this shade.",
        { severity: "warning", hint: "Take the line out, or write style: smooth." },
      ),
    );
  notes.questions.push(
    "Is the frame there, with how many struts, and is the shade lined? Neither lining nor frame tape is reckoned.",
    MOST_THE_LAMP_DRAWS,
  );
  if (!fields.fitting) notes.questions.push(FITTING_UNKNOWN);
}
