import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type BlindSize, measureBlind } from "../common/blindSize.ts";
import { finestStep } from "../common/finestStep.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import type { Strips } from "../common/join/joinStrips.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import { centredAcross } from "../common/join/motifFaults.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import { sideStripsWorking } from "../common/join/sideStrips.ts";
import { stripsCentred } from "../common/join/stripsCentred.ts";
import { widthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { type BlindLayer, layersOf } from "./layers.ts";
import type { BlindFields } from "./schema.ts";
import { chooseSections, type Sections } from "./sections.ts";

/** Every size that the drawing and the sheet of a Roman blind need. */
export interface BlindPlan {
  readonly size: BlindSize;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly sideTurn: Length;
  readonly top: Length;
  readonly bottom: Length;
  /** Turning on each piece of a join of the face, and of what lies behind it. */
  readonly join: Length;
  readonly seam: Length;
  readonly headrail: Length;
  readonly cutWidth: Length;
  readonly plainCut: Length;
  /** Face cloth under each section of a hobbled blind, loop and all; null where it hangs flat. */
  readonly hobble: { readonly fullness: Fraction; readonly faceSection: Length } | null;
  readonly handbook: HandbookCut;
  readonly strips: Strips;
  readonly sections: Sections;
  readonly rodLength: Length;
  readonly layers: readonly BlindLayer[];
  readonly motifCentred: boolean;
  readonly shifts: boolean;
  readonly operation: "cordless" | "cord" | "chain" | "motor";
  readonly count: number;
}

/** Plans a blind from its fields; null, with a diagnostic, where something essential is not known. */
export function planBlind(
  fields: BlindFields,
  context: ItemContext,
  notes: Notes,
): BlindPlan | null {
  const { units } = context;
  const count = fields.count ?? 1;
  const cloth = context.cloth(fields.cloth);
  const size = sizeOf(fields, context, notes);
  const unknown = "it cannot be said whether this blind needs a join";
  const usableWidth = clothWidth(cloth, "cloth", unknown, context, notes);
  if (cloth === null || usableWidth === null || size === null) return null;
  const seam = context.length("join");
  const turnings: Turnings = {
    sideTurn: context.length("side-turn"),
    top: context.length("top"),
    bottom: context.length("bottom"),
    join: matchedTurning(cloth, seam),
  };
  const { join } = turnings;
  if (!usableWidth.isMoreThan(join.times(2))) {
    narrowerThanJoins(cloth, usableWidth, join, context, notes);
    return null;
  }
  const fullness = fields.type === "hobbled" ? context.ratio("hobble-fullness") : null;
  const { cutWidth, plainCut } = faceCut(size, turnings, fullness, context, notes);
  const strips = stripsCentred(cutWidth, usableWidth, join, cloth);
  notes.working.push(...sideStripsWorking(strips, cutWidth, usableWidth, join, units));
  askOfStrips(strips, turnings, context, notes);
  const cuts = strips.widths * count;
  const ask = { plain: plainCut, called: "Cut length", cuts, joined: strips.joins > 0 };
  const { handbook, shifts, repeatUp } = widthsByHandbook(ask, cloth, units, notes);

  const headrail = context.length("headrail");
  if (shorterThanHeadrail(size, headrail, context, notes)) return null;
  const { sections, rodLength } = sectionsOf(size, headrail, context, notes);
  const motifCentred = isCentred(cloth, strips, [cutWidth, plainCut], context, notes);
  askOfPattern(cloth, repeatUp, notes);
  const operation = operationOf(fields, notes);
  return {
    size,
    cloth,
    usableWidth,
    ...turnings,
    seam,
    headrail,
    cutWidth,
    plainCut,
    hobble: fullness ? { fullness, faceSection: sections.section.times(fullness) } : null,
    handbook,
    strips,
    sections,
    rodLength,
    layers: layersOf(fields, { size, sections, top: turnings.top, join: seam }, context, notes),
    motifCentred,
    shifts,
    operation,
    count,
  };
}

function sizeOf(fields: BlindFields, context: ItemContext, notes: Notes): BlindSize | null {
  const { blind, mount, width, drop } = fields;
  const depth = context.length("headrail");
  const what = `the headrail, with ${printLength(depth, context.units)} of blind gathered under it,`;
  return measureBlind({ title: blind, mount, width, drop, needs: { depth, what } }, context, notes);
}

/** What is turned in at each edge, and at each piece of a join. */
type Turnings = Pick<BlindPlan, "sideTurn" | "top" | "bottom" | "join">;

/** The face as cut, before any repeat: finished size and turnings; a hobbled blind's drop times its fullness. */
function faceCut(
  size: BlindSize,
  { sideTurn, top, bottom }: Turnings,
  fullness: Fraction | null,
  context: ItemContext,
  notes: Notes,
): Pick<BlindPlan, "cutWidth" | "plainCut"> {
  const p = (length: Length) => printLength(length, context.units);
  const cutWidth = size.width.plus(sideTurn.times(2));
  const plainCut = size.drop
    .times(fullness ?? 1)
    .plus(top)
    .plus(bottom);
  notes.working.push(
    {
      what: "Cut width",
      sum: `${p(size.width)} finished + 2 × ${p(sideTurn)} side turnings`,
      result: p(cutWidth),
      rounded: null,
    },
    {
      what: "Cut, without repeat",
      sum: `${p(size.drop)} drop${fullness ? ` × ${fullness.toString()}, folds that stay` : ""} + ${p(top)} top + ${p(bottom)} bottom`,
      result: p(plainCut),
      rounded: null,
    },
  );
  return { cutWidth, plainCut };
}

/** Asks of side strips of which hardly anything would be seen. */
function askOfStrips(
  { strip }: Strips,
  { join, sideTurn }: Turnings,
  context: ItemContext,
  notes: Notes,
): void {
  const shows = strip?.minus(join).minus(sideTurn);
  if (!shows?.isLessThan(join.times(2))) return;
  notes.questions.push(
    `Of each side strip only ${printLength(Length.max(Length.zero, shows), context.units)} would be seen: is a narrower middle, or a narrower blind, better?`,
  );
}

/** True, with a diagnostic, where the headrail takes the whole drop. */
function shorterThanHeadrail(
  { drop }: BlindSize,
  headrail: Length,
  context: ItemContext,
  notes: Notes,
): boolean {
  if (drop.isMoreThan(headrail)) return false;
  const p = (length: Length) => printLength(length, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place(["drop"]),
      "blind-shorter-than-headrail",
      `A drop of ${p(drop)} leaves nothing under the headrail's ${p(headrail)}.`,
      { actual: p(drop), hint: "Look at the drop, or at the allowance headrail." },
    ),
  );
  return true;
}

/** Whether a motif stands in the middle across; asked where the blind is one piece and none has room. */
function isCentred(
  cloth: ClothFacts,
  strips: Strips,
  cut: readonly [Length, Length],
  context: ItemContext,
  notes: Notes,
): boolean {
  if (strips.motif !== null) return true;
  return strips.joins === 0 && centredAcross(cloth, cut, "across the blind", context, notes);
}

/** What is still to be asked of a cloth with a pattern or a pile. */
function askOfPattern(cloth: ClothFacts, repeatUp: Length | null, notes: Notes): void {
  if (repeatUp)
    notes.questions.push(
      "Where does the motif stand on the blind, counted from the top? Blinds of one drop are cut alike.",
    );
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the blind?`);
}

/** The sections it folds in and the rods between them, with their working; sizes outside what is wanted become a question. */
function sectionsOf(
  size: BlindSize,
  headrail: Length,
  context: ItemContext,
  notes: Notes,
): Pick<BlindPlan, "sections" | "rodLength"> {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const least = context.length("flap-least");
  const most = context.length("flap-most");
  const sections = chooseSections(size.drop, headrail, least, most);
  notes.working.push(
    {
      what: "Sections",
      sum: `(${p(size.drop)} drop − ${p(headrail)} headrail) ÷ ${sections.sections}`,
      result: p(sections.section),
      rounded: "to an odd number of sections",
    },
    {
      what: "Rods",
      sum: `(${sections.sections} − 1) ÷ 2`,
      result: `${sections.rods}`,
      rounded: null,
    },
  );
  if (!sections.wanted) {
    notes.questions.push(
      `Each section is ${p(sections.section)}, outside the ${p(least)} to ${p(most)} that is wanted: is that right for this window?`,
    );
  }
  const short = context.length("rod-short");
  const rodLength = size.width.minus(short.times(2)).downTo(finestStep(units));
  notes.working.push({
    what: "Rod",
    sum: `${p(size.width)} − 2 × ${p(short)}`,
    result: p(rodLength),
    rounded: units === "inches" ? "down to 1/8″" : "down to 1 mm",
  });
  return { sections, rodLength };
}

/** How it is worked: cordless where nothing is said; a side that is not named becomes a question. */
function operationOf(fields: BlindFields, notes: Notes): BlindPlan["operation"] {
  const operation = fields.operation ?? "cordless";
  if (!fields.operation)
    notes.working.push({
      what: "Operation",
      sum: "nothing was said",
      result: "cordless",
      rounded: null,
    });
  if (operation !== "cordless" && !fields.side)
    notes.questions.push(
      `At which side is the ${operation === "motor" ? "motor" : operation}: left or right?`,
    );
  return operation;
}
