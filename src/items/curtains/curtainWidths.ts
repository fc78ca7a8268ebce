import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { hasMotif } from "../common/join/centredMotif.ts";
import { narrowerThanJoins } from "../common/join/clothWidth.ts";
import { sidewaysQuestion, tooLongForSideways } from "../common/join/sideways.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { Coverage } from "./coverage.ts";
import { joinedWidth, leastWidths, widthsText } from "./widths.ts";

/** The face's cloth, and how it is joined. */
export interface FaceCloth {
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  /** Turning on each piece of a join. */
  readonly join: Length;
  /** Run sideways: the curtain's length lies across the cloth, without a join. */
  readonly railroaded: boolean;
  /** Half widths are allowed. */
  readonly halves: boolean;
}

/** Widths of one curtain, and what they measure joined, before the side hems are turned. */
export interface CurtainWidths {
  readonly each: Fraction;
  readonly joinedEach: Length;
}

/** Least widths that reach the flat width of one curtain; null, with a diagnostic, where the cloth cannot do it. */
export function curtainWidths(
  face: FaceCloth,
  coverage: Coverage,
  cutLength: Length,
  context: ItemContext,
  notes: Notes,
): CurtainWidths | null {
  const flatEach = coverage.flat.dividedBy(coverage.curtains);
  return face.railroaded
    ? sideways(face, coverage, flatEach, cutLength, context, notes)
    : joined(face, coverage, flatEach, context, notes);
}

function sideways(
  { cloth, usableWidth }: FaceCloth,
  coverage: Coverage,
  flatEach: Length,
  cutLength: Length,
  context: ItemContext,
  notes: Notes,
): CurtainWidths | null {
  const p = (length: Length) => printLength(length, context.units);
  if (cutLength.isMoreThan(usableWidth)) {
    const cut = { length: cutLength, words: "long, these curtains do" };
    notes.diagnostics.push(tooLongForSideways(cut, cloth, usableWidth, context));
    return null;
  }
  notes.working.push({
    what: "Length a curtain, cloth run sideways",
    sum: `${p(coverage.flat)} ÷ ${coverage.curtains}`,
    result: p(flatEach),
    rounded: null,
  });
  const question = sidewaysQuestion(cloth);
  if (question) notes.questions.push(question);
  if (hasMotif(cloth))
    notes.questions.push(
      `Run sideways, each curtain begins at the selvedge, so that all are level: where a motif of ${cloth.name} stands above the hem follows from that. Is it as wished?`,
    );
  return { each: new Fraction(1), joinedEach: flatEach };
}

function joined(
  { cloth, usableWidth, join, halves }: FaceCloth,
  coverage: Coverage,
  flatEach: Length,
  context: ItemContext,
  notes: Notes,
): CurtainWidths | null {
  const p = (length: Length) => printLength(length, context.units);
  const least = leastWidths(flatEach, usableWidth, join, halves);
  if (least === null) {
    narrowerThanJoins(cloth, usableWidth, join, context, notes);
    return null;
  }
  const joinedEach = joinedWidth(least, usableWidth, join);
  const pair = coverage.curtains === 2;
  const joins = least.ceil().sub(1);
  const joinWords = joins.compare(1) === 0 ? "join" : "joins";
  const less =
    joins.compare(0) === 0 ? "" : ` − ${joins.toFraction()} ${joinWords} × 2 × ${p(join)}`;
  notes.working.push({
    what: "Widths",
    sum: `${pair ? `${p(coverage.flat)} ÷ 2 = ` : ""}${p(flatEach)} a curtain; ${widthsText(least)} × ${p(usableWidth)}${less} = ${p(joinedEach)}`,
    result: pair
      ? `${widthsText(least)} a curtain, ${widthsText(least.mul(2))} in all`
      : widthsText(least),
    rounded: halves ? "up to the half width" : "up to the whole width",
  });
  return { each: least, joinedEach };
}
