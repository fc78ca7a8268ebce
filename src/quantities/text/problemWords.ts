import type { PlanProblem } from "../../cutplan/plan.ts";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { FurnishedItem } from "../../room/furnishRoom.ts";
import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { RoomCut } from "../cutPieces.ts";
import { lengthOfGrains } from "../grains.ts";

/** Says at the item why one of its pieces can be cut nowhere on its cloth, and the widest that could be. */
export function problemDiagnostic(
  problem: PlanProblem & { readonly from: RoomCut },
  item: FurnishedItem,
  clothName: string,
  units: UnitSystem,
  longest: Length | null,
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
          hint: `${widest ? `Make it ${widest} wide or less as cut` : "Make the piece smaller"}, give it as two pieces with a join at a named place, ${cut.mayTurn ? "" : "run the cloth sideways if pattern and pile look right so, "}or choose a wider cloth.`,
        },
      );
    case "motif-cannot-be-centred":
      return diagnostic(
        place,
        "motif-does-not-fit",
        `${left} finds no whole motif on ${clothName} to stand where it should.`,
        {
          expected,
          hint: `${widest ? `Make it ${widest} wide or less as cut` : "Make it smaller"}, let the pattern fall as it will, choose a cloth with its motif nearer the middle, or correct from-selvedge on the cloth's card.`,
        },
      );
    case "longer-than-length":
      return diagnostic(
        place,
        "piece-longer-than-bolt",
        `${left} is longer than a single length of ${clothName}, once a repeat is lost at its beginning.`,
        {
          expected: longest ? `at most ${printLength(longest, units)} long as cut` : null,
          hint: `Make it shorter${longest ? ` (${printLength(longest, units)} as cut would do)` : ""}, give it as two with a join at a named place, choose a cloth with longer bolts, or correct the bolt's length on the cloth's card.`,
        },
      );
    default:
      return diagnostic(place, "piece-without-size", `${left} has no size.`, {
        hint: "Check the item's measures.",
      });
  }
}
