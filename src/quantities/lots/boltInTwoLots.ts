import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import type { ClothQuantity, SharedBuy } from "../quantityTypes.ts";

/**
 * Where one bolt serves several makers and their receipts name different lots, it is said at the first receipt of another lot: all that is
 * cut from one bolt is one dyeing, so either a lot is written wrong or the makers' cloth was bought apart.
 */
export function boltInTwoLots(
  project: ProjectRecord,
  together: readonly SharedBuy[],
  cloths: readonly ClothQuantity[],
): Diagnostic[] {
  const receipts = project.fields.receipts ?? [];
  return together.flatMap((shared): Diagnostic[] => {
    if (shared.bolts?.count !== 1) return [];
    const makers = shared.parts.map(({ maker }) => maker);
    const own = cloths.filter((c) => c.cloth === shared.cloth && makers.includes(c.maker));
    const lots = [...new Set(own.flatMap((c) => c.lots.map(({ lot }) => lot)))];
    const [first, second] = lots;
    if (first === undefined || second === undefined) return [];
    const at = receipts.findIndex(
      (each) => each.cloth === shared.cloth && each.lot === second && !each.returned,
    );
    return [
      diagnostic(
        project.place(["receipts", at, "lot"]),
        "bolt-in-two-lots",
        `One bolt of ${shared.name} serves all its makers, but their receipts name ${lots.length} lots: ${lots.join(" and ")}.`,
        {
          severity: "warning",
          actual: second,
          hint: "What is cut from one bolt is of one lot: correct the lot that is written wrong. If the makers’ cloth did come from several bolts, lay cuttings of them side by side before anyone cuts.",
        },
      ),
    ];
  });
}
