import Fraction from "fraction.js";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";
import { clothFault } from "../clothFault.ts";
import { centredAcross } from "../join/centredMotif.ts";
import { selvedgeMatch } from "../join/selvedgeMatch.ts";
import type { Notes } from "../notes.ts";
import type { SkirtAsk } from "./skirtRun.ts";
import { flatLength, sideBySide, stripLengths } from "./stripLengths.ts";

/** How a skirt lies on its cloth. */
export interface SkirtLay {
  readonly cloth: ClothFacts;
  readonly usable: Length;
  readonly words: NonNullable<SkirtAsk["words"]>;
  /** Drop, hem and top. */
  readonly cut: Length;
  readonly because: string;
  /** Flat cloth for each length of run; one where it is tailored. */
  readonly fullness: Fraction;
  readonly sideways: boolean;
  /** Strips side by side across the cloth where it is run sideways; else 0. */
  readonly across: number;
  /** Null on a cloth that need not match along its length. */
  readonly repeatUp: Length | null;
  /** Whether neighbouring widths hang half a repeat lower. */
  readonly shifts: boolean;
}

/** Without joins a skirt may take so much more cloth than in widths, whose joins lie in its gathers or pleats (common practice, no source). */
const FOR_NO_JOINS = new Fraction(5, 4);

/**
 * True where the cloth runs sideways without being told to: it may turn, has no pattern, and what is left over beside the strips, of
 * which only whole ones lie across it, is worth the joins that are saved. Of a tailored skirt, whose strips are as long as its sides,
 * rows of strips are held against its widths.
 */
function sidewaysPays(ask: SkirtAsk, cloth: ClothFacts, usable: Length, cut: Length): boolean {
  if (!cloth.mayTurn || cloth.repeat !== null || cut.isMoreThan(usable)) return false;
  const strips = usable.over(cut);
  if (ask.style !== "tailored") return strips.div(strips.floor()).compare(FOR_NO_JOINS) <= 0;
  const across = Number(strips.floor().valueOf());
  const flats = ask.runs.map((run) => flatLength(ask, new Fraction(1), run).flat);
  const lengths = ask.runs.flatMap((run, at) =>
    stripLengths(ask, across, run, flats[at] as Length, Length.mm(1)),
  );
  const twice = ask.join.times(2);
  const widths = flats.map((flat) =>
    Math.max(1, Number(flat.minus(twice).over(usable.minus(twice)).ceil().valueOf())),
  );
  const inWidths = cut.times(widths.reduce((n, w) => n + w, 0) * ask.count);
  const all = Array.from({ length: ask.count }, () => lengths).flat();
  return !sideBySide(all, across).isMoreThan(inWidths.times(FOR_NO_JOINS));
}

/** Sideways where it is said, or, where nothing is, on a cloth where that pays. */
export function layOf(
  ask: SkirtAsk,
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
): SkirtLay | null {
  const p = (l: Length) => printLength(l, context.units);
  const words = ask.words ?? { piece: "skirt", drop: "drop", hem: "hem", top: "top" };
  const cut = ask.drop.plus(ask.hem).plus(ask.top);
  const usable = wideEnough(ask, cloth, context, notes);
  if (!usable) return null;
  const sideways = ask.railroad ?? sidewaysPays(ask, cloth, usable, cut);
  if (sideways && cut.isMoreThan(usable)) {
    clothFault(ask.keyPath, cloth, context, notes, {
      code: "skirt-deeper-than-cloth",
      message: `Run sideways ${cloth.name} gives ${p(usable)} of depth; this ${words.piece} is cut ${p(cut)} deep.`,
      hint: "Write railroad: no, or choose a wider cloth.",
    });
    return null;
  }
  const matched = cloth.repeat !== null && cloth.repeat.match !== "free";
  return {
    cloth,
    usable,
    words,
    cut,
    because: `${p(ask.drop)} ${words.drop} + ${p(ask.hem)} ${words.hem} + ${p(ask.top)} ${words.top}`,
    fullness: ask.style === "tailored" ? new Fraction(1) : ask.fullness,
    sideways,
    across: sideways ? Math.max(1, centredAcross(cloth, cut)) : 0,
    repeatUp: matched ? (cloth.repeat?.up ?? null) : null,
    shifts: selvedgeMatch(cloth).shifts,
  };
}

/** The usable width; null, with a diagnostic, where it is not known or the turnings of joins use it up. */
function wideEnough(
  ask: SkirtAsk,
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const p = (l: Length) => printLength(l, context.units);
  const usable = cloth.usableWidth;
  if (!usable) {
    clothFault(ask.keyPath, cloth, context, notes, {
      code: "cloth-without-width",
      message: `${cloth.name} has no width, so its widths cannot be counted.`,
      hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
    });
    return null;
  }
  if (usable.isMoreThan(ask.join.times(2))) return usable;
  clothFault(ask.keyPath, cloth, context, notes, {
    code: "cloth-narrower-than-joins",
    message: `${cloth.name} is ${p(usable)} wide, which two join turnings of ${p(ask.join)} use up.`,
    hint: "Look at the width on the cloth's card and at the allowance join.",
  });
  return null;
}
