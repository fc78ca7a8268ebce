import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import type { Coverage } from "./coverage.ts";
import type { FaceCloth } from "./curtainWidths.ts";
import { joinedWidth, widthsText } from "./widths.ts";

/** From so many times the fullness that is wanted it is asked, since the next lower number of widths may do (common practice, no source). */
const MUCH_FULLER = new Fraction(13, 10);

/**
 * Asked where whole or half widths come out much fuller than is wanted: every lining then follows the full width too. Null where they do
 * not, where the cloth runs sideways, and with an s-fold, which is trimmed to its carriers.
 */
export function fullerQuestion(
  face: FaceCloth,
  coverage: Coverage,
  widthsEach: Fraction,
  reached: Fraction,
  finished: Length,
): string | null {
  const { fullness, sFold } = coverage;
  if (face.railroaded || sFold || reached.compare(fullness.mul(MUCH_FULLER)) <= 0) return null;
  const words = (share: Fraction) => share.round(2).toString();
  const of =
    widthsEach.compare(1) > 0
      ? `${widthsText(widthsEach)} widths`
      : `${widthsText(widthsEach)} width`;
  const less = widthsEach.sub(face.halves ? new Fraction(1, 2) : 1);
  const fewer =
    less.compare(0) > 0
      ? ` With ${widthsText(less)} it is ${words(joinedWidth(less, face.usableWidth, face.join).minus(coverage.sideHem.times(2)).over(finished))}.`
      : "";
  return `At ${of} a curtain the fullness is ${words(reached)}, where ${fullness.toString()} is wanted, and every layer behind it follows.${fewer} Is it to be so full, or cut down to the flat width after joining?`;
}
