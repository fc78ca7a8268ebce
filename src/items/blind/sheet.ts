import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { repeatWords } from "../common/repeatWords.ts";
import { blankUnit, filledGroups, hardwareLines, linesOf } from "../common/sheetWords.ts";
import { wayLine } from "../common/wayLine.ts";
import type { DrawingContext, ItemSheet, SheetCheck, SheetGroup } from "../itemDrawing.ts";
import type { BlindMade } from "./pieces.ts";
import type { BlindPlan } from "./plan.ts";
import type { BlindFields } from "./schema.ts";

/** Whether a length is printed as it is: sections that are not whole sixteenths or millimetres do not add up as printed. */
function isMarked(length: Length, units: DrawingContext["units"]): boolean {
  const step = units === "inches" ? Length.inches(new Fraction(1, 16)) : Length.mm(1);
  return length.over(step).mod(1).equals(0);
}

/** The words beside a blind's drawing: what a workroom must know to cut and make without a call. No price, no client. */
export function blindSheet(
  fields: BlindFields,
  made: BlindMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const { cloth, sections, strips } = plan;
  const repeat = cloth.repeat;
  const groups: SheetGroup[] = [
    {
      heading: "Cloth",
      lines: linesOf([
        `${cloth.name}, ${p(plan.usableWidth)} between the selvedges.`,
        repeat && `${repeatWords(repeat, p)}.`,
        wayLine(cloth),
      ]),
    },
    {
      heading: "Finished",
      lines: [
        `${plan.count === 1 ? "One blind" : `${plan.count} blinds`}, ${printSize([plan.size.width, plan.size.drop], context.units)}.`,
        plan.size.measured,
      ],
    },
    { heading: "Cut", lines: cutLines(plan, p) },
    {
      heading: "Folds",
      lines: [
        ...(plan.hobble
          ? [
              `Hobbled: ${p(plan.hobble.faceSection)} of face to each ${p(sections.section)} section; tapes at the back hold the folds. Lining flat.`,
            ]
          : []),
        `${sections.sections} ${sections.sections === 1 ? "section" : "sections"} of ${isMarked(sections.section, context.units) ? "" : "about "}${p(sections.section)} under ${p(plan.headrail)} of headrail${isMarked(sections.section, context.units) ? "" : "; set rods out by the drawing"}.`,
        rodLine(plan, p),
        `Raised, it hangs ${p(sections.stackDepth)}.`,
      ],
    },
    {
      heading: "Lining",
      lines:
        plan.layers.length === 0
          ? ["Unlined."]
          : plan.layers.flatMap((layer) => [
              `${{ lining: "", blackout: "Blackout: ", interlining: "Interlining: " }[layer.layer]}${layer.cloth.name}, cut ${printSize([layer.width, layer.height], context.units)}.`,
              ...(layer.layer === "lining" ? [`Its length: ${layer.because}.`] : []),
            ]),
    },
    {
      heading: "Match",
      lines: repeat
        ? linesOf([
            plan.motifCentred && "Motif in the middle of the width.",
            plan.count > 1 && "All blinds show the same part of the pattern at the same height.",
            strips.joins > 0 &&
              (strips.motif
                ? "Pattern matched at the joins; the middle is cut so that a motif stands in its middle."
                : "Pattern matched at the joins; whole width in the middle."),
          ])
        : [],
    },
    {
      heading: "Operation",
      lines: linesOf([
        `${plan.operation === "cordless" ? "Cordless" : plan.operation === "motor" ? "Motor; wiring by a licensed electrician" : plan.operation === "chain" ? "Chain" : "Cord"}${fields.side ? `, ${fields.side}` : ""}.`,
        plan.operation === "cord" || plan.operation === "chain"
          ? "Safety device fitted to the wall, no free loop; cordless is safer."
          : null,
        "Inner cords at the back shrouded or restrained.",
        ...hardwareLines(fields.hardware),
      ]),
    },
  ];
  if (fields.note) groups.push({ heading: "Note", lines: [fields.note] });
  const checks: SheetCheck[] = [
    { text: "Cloth checked for flaws; length received", blank },
    ...(repeat ? [{ text: "Repeat measured", blank }] : []),
    { text: "Recess or opening measured in three places; narrowest", blank },
    { text: "Corners square, rods level", blank: null },
    { text: "Inner cords shrouded or restrained; no free loop", blank: null },
    { text: "Raised and let down before packing", blank: null },
  ];
  const signs = linesOf([
    "Dashed: rod, at the back.",
    strips.joins > 0 && "Long line with two dots: seam.",
    repeat && "Long and short: middle of the width. Arrow: up the cloth.",
  ]);
  return { groups: filledGroups(groups), checks, signs };
}

function rodLine({ sections, rodLength }: BlindPlan, p: (length: Length) => string): string {
  if (sections.rods === 0) return "No rod: too short to fold.";
  const first = `${p(sections.section)} above the hem`;
  if (sections.rods === 1) return `One rod of ${p(rodLength)}, ${first}.`;
  return `${sections.rods} rods of ${p(rodLength)}, the first ${first}, then ${p(sections.section.times(2))} apart.`;
}

function cutLines(plan: BlindPlan, p: (length: Length) => string): string[] {
  const { strips, count } = plan;
  const turns = `Side turnings ${p(plan.sideTurn)}, top ${p(plan.top)}, bottom ${p(plan.bottom)}.`;
  if (strips.strip === null)
    return [`${count} of ${p(plan.cutWidth)} × ${p(plan.plainCut)}.`, turns];
  const whole = strips.motif
    ? `A width of ${p(strips.middle)}`
    : strips.wholes === 1
      ? "One whole width"
      : `${strips.wholes} whole widths`;
  return [
    `${whole} in the middle, a strip of ${p(strips.strip)} at each side, ${p(plan.plainCut)} long${count > 1 ? `; ${count} blinds` : ""}.`,
    `Joins ${p(plan.join)} on each piece; ${p(plan.cutWidth)} joined.`,
    turns,
  ];
}
