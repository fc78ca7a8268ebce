import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Coverage } from "./coverage.ts";
import type { Panel } from "./panel.ts";

/** One curtain flat and finished: its joined widths with the side hems turned, its half of the coverage, and its face between the ends. */
export function panelOf(
  coverage: Coverage,
  joinedEach: Length,
  context: ItemContext,
  notes: Notes,
): Panel {
  const p = (length: Length) => printLength(length, context.units);
  const pair = coverage.curtains === 2;
  const flat = coverage.sFold?.flat ?? hemmed(joinedEach, coverage);
  const overlapEach = pair ? coverage.overlap.dividedBy(2) : coverage.overlap;
  const finished = coverage.coverage.dividedBy(coverage.curtains);
  const returns = coverage.returnEach.times(pair ? 1 : 2);
  const face = finished.minus(returns).minus(overlapEach);
  if (!coverage.sFold)
    notes.working.push({
      what: "Flat panel, hemmed",
      sum: `${p(joinedEach)} − 2 × ${p(coverage.sideHem)} side hems`,
      result: p(flat),
      rounded: null,
    });
  if (pair)
    notes.working.push({
      what: "Finished, a curtain",
      sum: `${p(coverage.coverage)} coverage ÷ 2`,
      result: p(finished),
      rounded: null,
    });
  const ends = [
    ...(returns.isZero() ? [] : [` − ${p(returns)} return`]),
    ...(overlapEach.isZero() ? [] : [` − ${p(overlapEach)} overlap`]),
  ];
  if (ends.length > 0)
    notes.working.push({
      what: "Face of a curtain",
      sum: `${p(finished)} finished${ends.join("")}`,
      result: p(face),
      rounded: null,
    });
  return { flat, finished, face };
}

/** The joined widths with both side hems turned. */
export function hemmed(joinedEach: Length, coverage: Coverage): Length {
  return joinedEach.minus(coverage.sideHem.times(2));
}
