import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { handbookCut, selvedgeMatch } from "../common/join/selvedgeMatch.ts";
import { handbookWorking, type WidthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Coverage } from "./coverage.ts";
import type { FaceCloth } from "./curtainWidths.ts";

/**
 * What the handbook makes of the face: widths cut to whole repeats, or, run sideways, the flat width alone. Both curtains of a pair
 * are cut from one length, so that on half-drop cloth every second width shifts, joined or not.
 */
export function faceHandbook(
  face: FaceCloth,
  coverage: Coverage,
  cut: { readonly length: Length; readonly widthsEach: Fraction; readonly count: number },
  context: ItemContext,
  notes: Notes,
): WidthsByHandbook {
  const { cloth, railroaded } = face;
  if (railroaded) return sidewaysHandbook(coverage, cut.length, cut.count, context, notes);
  const match = selvedgeMatch(cloth);
  if (match.question !== null && cut.widthsEach.compare(1) > 0)
    notes.questions.push(match.question);
  const repeatUp = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const cuts = cut.widthsEach.mul(coverage.curtains).ceil().valueOf() * cut.count;
  const handbook = handbookCut(cut.length, cuts, repeatUp, match.shifts);
  const found = { handbook, shifts: match.shifts, repeatUp };
  const ask = { plain: cut.length, called: "Cut length", cuts };
  notes.working.push(...handbookWorking(ask, found, context.units));
  return found;
}

function sidewaysHandbook(
  { flat }: Coverage,
  cutLength: Length,
  count: number,
  context: ItemContext,
  notes: Notes,
): WidthsByHandbook {
  const p = (length: Length) => printLength(length, context.units);
  const total = flat.times(count);
  notes.working.push({
    what: "By the handbook",
    sum: `${count} × ${p(flat)}`,
    result: p(total),
    rounded: null,
  });
  return { handbook: { cutLength, repeats: null, total }, shifts: false, repeatUp: null };
}
