import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type BlindSize, measureBlind } from "../common/blindSize.ts";
import { clothWidth } from "../common/join/clothWidth.ts";
import { centredAcross } from "../common/join/motifFaults.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import { sidewaysAsItFalls } from "../common/join/sideways.ts";
import { widthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { isWideEnough } from "./fitsOnCloth.ts";
import type { RollerBlindFields } from "./schema.ts";

/** Every size that the drawing and the sheet of a roller blind need. */
export interface RollerBlindPlan {
  readonly size: BlindSize;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  /** Its cloth as it hangs, between the brackets. */
  readonly clothWide: Length;
  readonly sideTrim: Length;
  readonly onRoller: Length;
  readonly bottom: Length;
  /** Before it is stiffened. */
  readonly cutWidth: Length;
  readonly cutLength: Length;
  readonly railroaded: boolean;
  readonly motifCentred: boolean;
  readonly handbook: HandbookCut;
  readonly operation: "spring" | "chain" | "motor";
  readonly rollDepth: Length;
  readonly count: number;
}

/** Plans a roller blind; null, with a diagnostic, where something essential is not known or its cloth does not reach. */
export function planRollerBlind(
  fields: RollerBlindFields,
  context: ItemContext,
  notes: Notes,
): RollerBlindPlan | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const cloth = context.cloth(fields.cloth);
  const rollDepth = context.length("roll-depth");
  const { mount, width, drop } = fields;
  const needs = { depth: rollDepth, what: `the roller, which takes about ${p(rollDepth)},` };
  const title = fields["roller-blind"];
  const size = measureBlind({ title, mount, width, drop, needs }, context, notes);
  const usableWidth = clothWidth(
    cloth,
    "cloth",
    "it cannot be said whether this blind fits on it",
    context,
    notes,
  );
  if (cloth === null || usableWidth === null || size === null) return null;
  const brackets = context.length("brackets");
  const clothWide = size.width.minus(brackets);
  if (!clothWide.isMoreThan(brackets)) {
    notes.diagnostics.push(tooNarrow(size.width, context));
    return null;
  }
  const cut = cutOf(size, clothWide, context, notes);
  const railroaded = fields.railroad === true;
  if (!isWideEnough(cut, { cloth, usableWidth, railroaded }, context, notes)) return null;
  const count = fields.count ?? 1;
  const { handbook } = handbookOf(cut, { cloth, railroaded, count }, context, notes);
  return {
    size,
    cloth,
    usableWidth,
    clothWide,
    ...cut,
    railroaded,
    motifCentred: isCentred(cut, cloth, railroaded, context, notes),
    handbook,
    operation: operationOf(fields, notes),
    rollDepth,
    count,
  };
}

type Cut = Pick<RollerBlindPlan, "sideTrim" | "onRoller" | "bottom" | "cutWidth" | "cutLength">;

/** The cloth as it goes to be stiffened: as it hangs, and what is trimmed off, stays on the roller and makes the bar's pocket. */
function cutOf(size: BlindSize, clothWide: Length, context: ItemContext, notes: Notes): Cut {
  const p = (length: Length) => printLength(length, context.units);
  const sideTrim = context.length("side-trim");
  const onRoller = context.length("on-roller");
  const bottom = context.length("bottom");
  const cutWidth = clothWide.plus(sideTrim.times(2));
  const cutLength = size.drop.plus(onRoller).plus(bottom);
  notes.working.push(
    {
      what: "Cloth, as it hangs",
      sum: `${p(size.width)} in all − ${p(size.width.minus(clothWide))} brackets`,
      result: p(clothWide),
      rounded: null,
    },
    {
      what: "Cut width",
      sum: `${p(clothWide)} + 2 × ${p(sideTrim)} to trim`,
      result: p(cutWidth),
      rounded: null,
    },
    {
      what: "Cut, without repeat",
      sum: `${p(size.drop)} drop + ${p(onRoller)} on the roller + ${p(bottom)} for the bar`,
      result: p(cutLength),
      rounded: null,
    },
  );
  notes.questions.push(
    "Who stiffens the cloth, and what does it lose in width and length by it? Send a piece of it first.",
  );
  return { sideTrim, onRoller, bottom, cutWidth, cutLength };
}

function tooNarrow(width: Length, context: ItemContext) {
  const p = (length: Length) => printLength(length, context.units);
  return diagnostic(
    context.place(["width"]),
    "roller-blind-too-narrow",
    `A roller blind ${p(width)} wide leaves hardly any cloth between its brackets.`,
    { actual: p(width), hint: "Look at the width, or at the allowance brackets." },
  );
}

/** What the handbook makes of it: each cut up to whole repeats; sideways its width runs along the cloth, as it falls. */
function handbookOf(
  { cutWidth, cutLength }: Cut,
  { cloth, railroaded, count }: { cloth: ClothFacts; railroaded: boolean; count: number },
  context: ItemContext,
  notes: Notes,
) {
  const plain = railroaded ? cutWidth : cutLength;
  const along = railroaded ? { ...cloth, repeat: null } : cloth;
  const ask = { plain, called: "Cut length", cuts: count, joined: false };
  const found = widthsByHandbook(ask, along, context.units, notes);
  if (found.repeatUp)
    notes.questions.push(
      "Where does the motif stand on the blind, counted from its head? Blinds of one drop are cut alike.",
    );
  return found;
}

/** Whether a motif stands in the middle across; asked where none has room. */
function isCentred(
  { cutWidth, cutLength }: Cut,
  cloth: ClothFacts,
  railroaded: boolean,
  context: ItemContext,
  notes: Notes,
): boolean {
  if (railroaded) {
    const asks = sidewaysAsItFalls(cloth);
    if (asks) notes.questions.push(asks);
    return false;
  }
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the blind?`);
  return centredAcross(cloth, [cutWidth, cutLength], "across the blind", context, notes);
}

/** How it is worked: by a spring where nothing is said; a side that is not named becomes a question. */
function operationOf(
  { operation, side }: RollerBlindFields,
  notes: Notes,
): RollerBlindPlan["operation"] {
  if (operation && operation !== "spring" && !side)
    notes.questions.push(`At which side is the ${operation}: left or right?`);
  return operation ?? "spring";
}
