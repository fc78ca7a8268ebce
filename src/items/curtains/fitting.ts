import { capital } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import {
  acrossLines,
  acrossOf,
  comesLines,
  fixingChecks,
  hemLine,
  markOf,
  mountLine,
  openingLines,
  overOpening,
} from "../common/fittingWords.ts";
import { hangsOnWords } from "../common/hangsOnWords.ts";
import { blankUnit, filledGroups, linesOf, weightUnit } from "../common/sheetWords.ts";
import type { FittingContext, FittingLine, SheetCheck } from "../itemDrawing.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** A hem under this height is meant to clear the floor. */
const FLOOR_LENGTH = Length.mm(100);

/** What the curtains hang from: a pole, a track, or a rod that rises with its door. */
function railOf(fields: CurtainsFields): string {
  if (fields["door-rod"] === "rising") return "portière rod";
  return onTrack(fields) ? "track" : "pole";
}

/** What the fitter of curtains reads: the pole or track with its place and height, what hangs from it, and where it stacks. */
export function curtainsFitting(
  fields: CurtainsFields,
  made: CurtainsMade,
  context: FittingContext,
): FittingLine | null {
  const { plan } = made;
  if (plan === null) return null;
  const { units, hangsOn } = context;
  const p = (length: Length) => printLength(length, units);
  const rail = railOf(fields);
  const { pole, poleHeight } = plan.hung;
  const across = hangsOn ? null : acrossOf(pole, context);
  const length = fields.pole ? printMeasured(fields.pole, units) : p(pole);
  const ends = rail === "pole" ? " between its finials" : "";
  const height = poleHeight
    ? `${rail === "track" ? "The track" : "Its middle"} ${p(poleHeight)} above the floor${overOpening(poleHeight, context)}.`
    : null;
  const rising = rail === "portière rod";
  return {
    groups: filledGroups([
      {
        heading: "Opening",
        lines: linesOf([
          ...openingLines(context),
          rising
            ? "On the door itself: it lifts the curtain as the door opens."
            : mountLine(fields.mount === "inside", context),
        ]),
      },
      { heading: "Piece", lines: hangsOn ? [`On ${hangsOnWords(hangsOn)}.`] : [] },
      {
        heading: capital(rail),
        lines: linesOf([
          `${length} long${ends}.`,
          ...acrossLines(across, context),
          height,
          plan.coverage.returnEach.isZero()
            ? !hangsOn && "No return to the wall."
            : `Returns ${p(plan.coverage.returnEach)}${hangsOn ? "" : " to the wall"} at each end.`,
        ]),
      },
      { heading: "What hangs", lines: hangingLines(fields, plan, context) },
      {
        heading: "Comes with it",
        lines: comesLines(
          fields.hardware,
          `No ${rail} is on the order: ${hangsOn ? "the bed's own" : "what is there"} is used, or ask who brings it.`,
        ),
      },
    ]),
    checks: checksOf(rail, plan, context),
    questions: linesOf([
      !fields.pole && `The ${rail} is not yet measured: ${p(pole)} is assumed.`,
      poleHeight === null
        ? `How high above the floor is the ${rail}?`
        : !fields["pole-height"] &&
          `The height of the ${rail} is not said: ${p(poleHeight)} is assumed.`,
      across?.left.isNegative() && `The ${rail} is longer than the wall lets it be there.`,
      across === null && !hangsOn && `Where on the wall is the ${rail}?`,
    ]),
    mark: hangsOn ? null : markOf("pole", poleHeight, across),
  };
}

function hangingLines(
  fields: CurtainsFields,
  plan: CurtainsPlan,
  context: FittingContext,
): string[] {
  const p = (length: Length) => printLength(length, context.units);
  const { coverage, hung, count } = plan;
  const headBelow = hung.headBelowPole;
  const many = coverage.curtains * count;
  return linesOf([
    `${many === 1 ? "One curtain" : many === 2 && count === 1 ? "A pair of curtains" : `${many} curtains`}, ${p(hung.drop)} from the heading's top to the hem.`,
    headBelow.isZero()
      ? null
      : headBelow.isNegative()
        ? `The heading stands ${p(headBelow.times(-1))} above the pole's middle.`
        : `The heading hangs ${p(headBelow)} under the pole's middle.`,
    hemLine(hung.hemHeight, context),
    "hooks" in plan.heading && `${plan.heading.hooks * many} hooks in all.`,
    plan.heading.heading === "s-fold" && `${plan.heading.carriers * many} carriers in all.`,
    context.hangsOn?.side === "head" ? "Drawn together." : stackLine(fields, plan, context),
  ]);
}

/** An estimate of the stack is said in whole inches or centimetres: nobody can know it nearer. */
function stackLine(fields: CurtainsFields, plan: CurtainsPlan, context: FittingContext): string {
  const step = context.units === "inches" ? Length.inches(1) : Length.mm(10);
  const stack = fields["stack-back"]
    ? printLength(plan.stackEach, context.units)
    : `about ${printLength(plan.stackEach.upTo(step), context.units)}`;
  const hinge = fields["door-hinge"];
  const side =
    plan.coverage.hangs === "pair"
      ? "at each side"
      : `at the ${plan.coverage.hangs}${hinge === plan.coverage.hangs ? ", where the hinges are" : ""}`;
  return `Drawn back it takes ${stack} ${side}.`;
}

function checksOf(rail: string, plan: CurtainsPlan, context: FittingContext): SheetCheck[] {
  const blank = blankUnit(context.units);
  const { hemHeight } = plan.hung;
  const hem = hemHeight.isZero()
    ? "Lies on the floor as wanted, all along"
    : hemHeight.isLessThan(FLOOR_LENGTH)
      ? "Clear of the floor, all along"
      : "Hem above the floor, all along";
  return [
    ...fixingChecks(rail === "track" ? "track" : `${rail}'s middle`, context),
    { text: "Weighed before fixings are chosen", blank: weightUnit(context.units) },
    { text: `${hem}; measured`, blank },
    { text: "Draws freely, hangs square, folds dressed; clear of heaters", blank: null },
    { text: "Cord or chain, if any: held fast, no free loop", blank: null },
  ];
}
