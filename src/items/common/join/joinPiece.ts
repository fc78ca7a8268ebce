import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { AlongMatch, ClothFacts, ItemCut } from "../../itemKind.ts";
import { centredJoin } from "./centredJoin.ts";
import type { JoinedPart, JoinWay } from "./joinedPart.ts";
import { planStrips } from "./joinStrips.ts";
import { selvedgeMatch } from "./selvedgeMatch.ts";

/**
 * A piece wider than its cloth, as parts. Both pieces of a join give up their turning. Both sides: whole widths with one in the middle
 * and equal strips, never a join in the middle. One side: a whole width and one strip, the least number of joins; null where that
 * strip would itself be wider than the cloth. With `centredOn`, the cloth whose motif is to stand in the piece's middle, the middle is
 * narrower than the cloth where no motif stands in the middle of its width.
 */
export function joinPiece(
  cutWidth: Length,
  usable: Length,
  turning: Length,
  way: JoinWay,
  centredOn: ClothFacts | null = null,
): readonly JoinedPart[] | null {
  if (centredOn && (way === "one-side" || !middleOfWidth(centredOn).motif)) {
    const centred = centredJoin(cutWidth, centredOn, turning, way);
    if (centred) return centred;
  }
  const whole = (name: string, step: number): JoinedPart => ({
    name,
    width: usable,
    selvedge: null,
    step,
  });
  if (way === "one-side") {
    const strip = cutWidth.minus(usable).plus(turning.times(2));
    if (strip.isMoreThan(usable)) return null;
    return [
      whole("whole width", 0),
      { name: "right strip", width: strip, selvedge: "left", step: 1 },
    ];
  }
  if (!usable.isMoreThan(turning.times(2))) return null;
  const { wholes, strip } = planStrips(cutWidth, usable, turning);
  if (strip === null) return null;
  const side = (wholes - 1) / 2;
  return [
    { name: "left strip", width: strip, selvedge: "right", step: side + 1 },
    ...Array.from({ length: wholes }, (_, at) =>
      whole(
        wholes === 1 ? "whole width" : `whole width ${at + 1} of ${wholes}`,
        Math.abs(at - side),
      ),
    ),
    { name: "right strip", width: strip, selvedge: "left", step: side + 1 },
  ];
}

/**
 * What stands in the middle of a whole width: a motif (to a twentieth of the repeat across) or the gap between two, and whether that
 * column of a half-drop hangs half a repeat off the one that the card names.
 */
export function middleOfWidth(facts: ClothFacts | null): {
  readonly motif: boolean;
  readonly shift: 0 | 1;
} {
  const across = facts?.repeat?.across ?? null;
  if (!facts?.usableWidth || !across) return { motif: true, shift: 0 };
  const first = facts.repeat?.fromSelvedge ?? across.dividedBy(2);
  const columns = facts.usableWidth.dividedBy(2).minus(first).over(across);
  const nearest = columns.add(new Fraction(1, 2)).floor();
  const motif = columns.sub(nearest).abs().compare(new Fraction(1, 20)) <= 0;
  const odd = nearest.mod(2).compare(0) !== 0;
  return { motif, shift: facts.repeat?.match === "half-drop" && odd ? 1 : 0 };
}

/** Whether a joined piece was cut so that a motif stands in its middle, by a middle narrower than the cloth. */
export function hasMotifInMiddle(parts: readonly JoinedPart[]): boolean {
  return parts.some((part) => part.motifFromLeft !== undefined);
}

/**
 * What a piece that was to have a motif in its middle has there: the motif; where a whole width without one in its middle stands there,
 * the gap between two; where a whole width and one strip are joined, what falls there.
 */
export function shownInMiddle(
  facts: ClothFacts | null,
  parts: readonly JoinedPart[] | null,
): "motif" | "gap" | "as-it-falls" {
  if (!facts?.repeat?.across || !parts || hasMotifInMiddle(parts)) return "motif";
  if (parts.length % 2 === 0) return "as-it-falls";
  return middleOfWidth(facts).motif ? "motif" : "gap";
}

/** Asked of a joined piece that was to have its motif in the middle and has none there; null where it has. */
export function gapQuestion(
  facts: ClothFacts | null,
  words: string,
  parts: readonly JoinedPart[],
): string | null {
  const shown = shownInMiddle(facts, parts);
  if (!facts || shown === "motif") return null;
  if (shown === "as-it-falls")
    return `Of ${facts.name} the ${words} is a whole width and one strip, and no motif stands in its middle: is that so wished, or are strips at both sides (join: both-sides) better?`;
  return `On ${facts.name} no motif stands in the middle of the width, so the joined ${words} has the gap between two there: is that so wished?`;
}

/**
 * The cuts of a joined piece: the whole width selvedge to selvedge, strips cut against the selvedge that joins, all in register, so
 * that the pattern runs on across the joins. `centred` puts a motif's middle at half the height, or at `aboveFoot`; else the parts are level with each
 * other. Cloth without a match lies as it will.
 */
export function joinedCuts(
  parts: readonly JoinedPart[],
  cut: Omit<ItemCut, "across" | "along" | "mayTurn">,
  facts: ClothFacts | null,
  centred: boolean,
  series: string,
  aboveFoot: Length = cut.height.dividedBy(2),
): ItemCut[] {
  const matched = facts?.repeat != null && facts.repeat.match !== "free";
  const shifts = facts ? selvedgeMatch(facts).shifts : false;
  const middle = centred ? middleOfWidth(facts).shift : 0;
  return parts.map((part): ItemCut => {
    const joined = (middle + (shifts ? part.step : 0)) % 2;
    const middleAt = part.motifFromLeft;
    const along: AlongMatch = !matched
      ? { how: "free" }
      : centred
        ? {
            how: "motif-at",
            aboveFoot,
            joined: middleAt ? 0 : joined,
          }
        : { how: "level", series, joined: middleAt ? 0 : joined };
    return {
      ...cut,
      piece: `${cut.piece}, ${part.name}`,
      width: part.width,
      mayTurn: false,
      across: middleAt
        ? { how: "motif-at", fromLeft: middleAt }
        : part.selvedge === null
          ? { how: "whole-width" }
          : matched
            ? { how: "selvedge", side: part.selvedge }
            : { how: "free" },
      along,
    };
  });
}
