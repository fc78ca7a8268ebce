import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { clothWidth } from "../common/join/clothWidth.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import { type HandbookCut, handbookCut, selvedgeMatch } from "../common/join/selvedgeMatch.ts";
import type { Notes } from "../common/notes.ts";
import { forShrinkage } from "../common/shrinkage.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { leastWidths, widthsText } from "./widths.ts";

/** What lies behind the face, from it to the glass. */
export type Layer = "interlining" | "blackout" | "lining";

/** A lining, a blackout or an interlining of one curtain. */
export interface LayerPlan {
  readonly layer: Layer;
  /** A blackout counts among the linings wherever surfaces are told apart. */
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly widthsEach: Fraction;
  readonly cutLength: Length;
  /** How many times longer the cut is than what it shrinks to; 1 without shrinkage. */
  readonly lengthening: Fraction;
  readonly finishedWidth: Length;
  readonly finishedLength: Length;
  /** Neighbouring widths hang half a repeat lower. */
  readonly shifts: boolean;
  /** By the handbook for all curtains: a layer with a repeat is cut to whole repeats too. */
  readonly handbook: HandbookCut;
  /** Above its own cut foot, a middle of its motif that is level with one of the face; null where nothing ties the two together. */
  readonly motifAboveFoot: Length | null;
  readonly because: string;
}

export interface LayerInput {
  readonly layer: Layer;
  readonly cloth: ClothFacts;
  readonly panelFlat: Length;
  readonly drop: Length;
  readonly join: Length;
  readonly halves: boolean;
  /** Curtains at one window, and windows alike. */
  readonly curtains: number;
  readonly count: number;
  /** Of the face: its repeat up, and the lowest motif above the finished hem. */
  readonly face: { readonly up: Length | null; readonly lowestMotif: Length | null };
  /** It hangs at a door, where the back is seen from the other room. */
  readonly atDoor: boolean;
}

/**
 * A lining finishes in from each side and up from the hem; its widths are the least that reach its own flat width. Interlining lies
 * edge to edge inside the turnings: as wide as the panel and as long as the drop. A blackout lies between the two, as large as the
 * lining finishes, its raw edges loose but for the heading, which catches it (common practice, no source).
 */
export function planLayer(input: LayerInput, context: ItemContext, notes: Notes): LayerPlan | null {
  const { layer, cloth, panelFlat, drop } = input;
  const join = matchedTurning(cloth, input.join);
  const p = (length: Length) => printLength(length, context.units);
  const usableWidth = clothWidth(cloth, layer, "its widths cannot be counted", context, notes);
  if (usableWidth === null) return null;
  const within = layer !== "interlining";
  const hemmed = layer === "lining";
  // Only what is used is asked for, since a default that was used is listed.
  const allowance = (name: string, used: boolean) => (used ? context.length(name) : Length.zero);
  const inside = allowance("lining-in", within);
  const up = allowance("lining-up", within);
  const finishedWidth = panelFlat.minus(inside.times(2));
  const finishedLength = drop.minus(up);
  const turn = allowance("lining-side-turn", hemmed);
  const hem = allowance("lining-hem", hemmed);
  const heading = allowance("lining-heading", within);
  const flat = finishedWidth.plus(turn.times(2));
  const widthsEach = leastWidths(flat, usableWidth, join, input.halves);
  if (widthsEach === null) return null;
  const name = { lining: "Lining", blackout: "Blackout", interlining: "Interlining" }[layer];
  const sum = {
    lining: `${p(finishedLength)} finished + ${p(hem)} hem + ${p(heading)} heading`,
    blackout: `${p(finishedLength)} finished, raw edges + ${p(heading)} heading`,
    interlining: `${p(drop)} drop`,
  }[layer];
  const shrunk = (words: string) =>
    forShrinkage(
      finishedLength.plus(hem).plus(heading),
      words,
      cloth.shrinkage ?? new Fraction(0),
      context.units,
    );
  const { length: cutLength, lengthening, because } = shrunk(sum);
  const cut = shrunk(
    within
      ? `${p(drop)} drop − ${p(up)}${hemmed ? ` + ${p(hem)} hem` : ""} + ${p(heading)} heading`
      : sum,
  );
  notes.working.push(
    {
      what: `${name}, widths a curtain`,
      sum: within
        ? `(${p(panelFlat)} panel − 2 × ${p(inside)}${hemmed ? ` + 2 × ${p(turn)} turnings` : ""}) on ${p(usableWidth)}, ${p(join)} a join on each piece`
        : `${p(panelFlat)} panel on ${p(usableWidth)}, ${p(join)} a join on each piece`,
      result: widthsText(widthsEach),
      rounded: input.halves ? "up to the half width" : "up to the whole width",
    },
    {
      what: `${name}, cut length`,
      sum: cut.because,
      result: p(cutLength),
      rounded: cut.rounded,
    },
  );
  const repeatUp = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const match = selvedgeMatch(cloth);
  const cuts = Math.ceil(widthsEach.mul(input.curtains).valueOf()) * input.count;
  const handbook = handbookCut(cutLength, cuts, repeatUp, match.shifts);
  if (repeatUp) {
    if (match.question && widthsEach.compare(1) > 0) notes.questions.push(match.question);
    notes.working.push({
      what: `${name}, cut to whole repeats`,
      sum: `${p(cutLength)} ÷ ${p(repeatUp)} repeat of ${cloth.name}`,
      result: p(handbook.cutLength),
      rounded: "up to whole repeats",
    });
  }
  return {
    layer,
    shifts: match.shifts,
    handbook,
    motifAboveFoot: repeatUp
      ? (levelWithFace(input, repeatUp, up.minus(hem), p, notes)?.times(lengthening) ?? null)
      : null,
    surface: layer === "interlining" ? "interlining" : "lining",
    cloth,
    usableWidth,
    widthsEach,
    cutLength,
    lengthening,
    finishedWidth,
    finishedLength,
    because,
  };
}

/**
 * A lining whose pattern repeats with the face's is hung level with it, so that a curtain seen from both sides has its motifs at one
 * height: its finished hem stands `raised` less its own hem above the face's. Else it is level in itself, and at a door, where it shows,
 * its height is asked (common practice, no source).
 */
function levelWithFace(
  { face, cloth, atDoor }: LayerInput,
  repeatUp: Length,
  raised: Length,
  p: (length: Length) => string,
  notes: Notes,
): Length | null {
  if (face.lowestMotif && face.up?.equals(repeatUp)) return face.lowestMotif.minus(raised);
  if (atDoor)
    notes.questions.push(
      `At a door ${cloth.name} is seen from the other room: how high above the hem does the middle of its lowest whole motif stand? Its repeat is ${p(repeatUp)}; level in itself is all that is known.`,
    );
  return null;
}
