import { boardFitting } from "../common/board/boardFitting.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValanceFields } from "./schema.ts";

/** What the fitter of a valance reads. */
export function valanceFitting(
  fields: ValanceFields,
  { plan }: ValanceMade,
  context: FittingContext,
): FittingLine | null {
  if (plan === null) return null;
  const { board, edge, count } = plan;
  return boardFitting(
    { what: "valance", board, edge, count, hardware: fields.hardware },
    fields,
    context,
  );
}
