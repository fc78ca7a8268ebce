import type { PlanProblem } from "../cutplan/plan.ts";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { FurnishedItem } from "../room/furnishRoom.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { RoomCut } from "./cutPieces.ts";
import { lengthOfGrains } from "./grains.ts";

/** Says at the item why one of its pieces can be cut nowhere on its cloth, and the widest that could be. */
export function problemDiagnostic(
  problem: PlanProblem & { readonly from: RoomCut },
  item: FurnishedItem,
  clothName: string,
  units: UnitSystem,
): Diagnostic {
  const { cut } = problem.from;
  const key = item.kind
    .cloths(item.record.fields as never)
    .find((each) => each.cloth === cut.cloth && each.surface === cut.surface)?.keyPath;
  const place = item.record.place(key ?? ["cloth"]);
  const widest =
    problem.widestThatWouldDo === null
      ? null
      : printLength(lengthOfGrains(problem.widestThatWouldDo), units);
  const size = `${printLength(cut.width, units)} × ${printLength(cut.height, units)}`;
  const expected = widest === null ? null : `at most ${widest} wide as cut`;
  const left = `${item.record.title}, ${cut.piece}: ${size} as cut`;
  switch (problem.reason) {
    case "wider-than-cloth":
      return diagnostic(
        place,
        "piece-wider-than-cloth",
        `${left} is wider than ${clothName} lets it be.`,
        {
          expected,
          hint: "Choose a wider cloth, make the piece smaller, or give it as two pieces with a join.",
        },
      );
    case "motif-cannot-be-centred":
      return diagnostic(
        place,
        "motif-does-not-fit",
        `${left} finds no whole motif on ${clothName} to stand where it should.`,
        {
          expected,
          hint: "Make it smaller, let the pattern fall as it will, or correct from-selvedge on the cloth's card.",
        },
      );
    case "longer-than-length":
      return diagnostic(
        place,
        "piece-longer-than-bolt",
        `${left} is longer than a single length of ${clothName}, once a repeat is lost at its beginning.`,
        {
          hint: "Correct the bolt's length on the cloth's card, or give the piece as two with a join.",
        },
      );
    default:
      return diagnostic(place, "piece-without-size", `${left} has no size.`, {
        hint: "Check the item's measures.",
      });
  }
}
