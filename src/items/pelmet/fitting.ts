import { boardFitting } from "../common/board/boardFitting.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetFields } from "./schema.ts";

/** What the fitter of a pelmet reads. */
export function pelmetFitting(
  fields: PelmetFields,
  { plan }: PelmetMade,
  context: FittingContext,
): FittingLine | null {
  if (plan === null) return null;
  const { board, edge, count } = plan;
  const what = context.language === "en-US" ? "cornice" : "pelmet";
  return boardFitting({ what, board, edge, count, hardware: fields.hardware }, fields, context);
}
