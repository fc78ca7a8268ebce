import { capital } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import { hangsOnWords } from "../common/hangsOnWords.ts";
import { repeatWords } from "../common/repeatWords.ts";
import { blankUnit, filledGroups, hardwareLines, linesOf } from "../common/sheetWords.ts";
import { wayLine } from "../common/wayLine.ts";
import type { DrawingContext, ItemSheet, SheetCheck, SheetGroup } from "../itemDrawing.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";
import { cutLines, liningLines, matchLines } from "./sheetCut.ts";

/** The words beside the drawing: what a workroom must know to cut and make without a call. No price, no client. */
export function curtainsSheet(
  fields: CurtainsFields,
  made: CurtainsMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  const blank = blankUnit(context.units);
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(plan, p) },
    { heading: "Finished", lines: finishedLines(fields, plan, context) },
    { heading: "Cut", lines: cutLines(plan, p) },
    { heading: "Heading", lines: headingLines(plan, p) },
    { heading: "Lining", lines: liningLines(plan, p) },
    { heading: "Match", lines: matchLines(plan, p) },
    { heading: "Edges and hem", lines: edgeLines(fields, plan, context) },
    { heading: "Hardware", lines: hangingLines(fields, plan, context) },
  ];
  if (fields.note) groups.push({ heading: "Note", lines: [fields.note] });
  const repeat = plan.cloth.repeat;
  const checks: SheetCheck[] = [
    { text: "Cloth checked for flaws; length received", blank },
    ...(repeat ? [{ text: "Repeat measured", blank }] : []),
    {
      text: plan.lowestMotif
        ? `Widths level, lowest motif at ${p(plan.lowestMotif)}`
        : "Widths level across the curtains",
      blank: null,
    },
    { text: "Hem weights sewn into closed pockets", blank: null },
    { text: "Cord or chain, if any: child-safety device fitted", blank: null },
    { text: `Length checked at the ${plan.hangsOn ? "bed" : "window"}`, blank: null },
  ];
  const seams = plan.widthsEach.compare(1) > 0;
  const signs = linesOf([
    plan.lowestMotif && repeat && "Lozenge: middle of the motif. Dotted: level of the pattern.",
    `Dashed: hem, ${p(plan.cut.hem.dividedBy(2))} deep, turned twice.`,
    seams && "Long line with two dots: seam.",
  ]);
  return { groups: filledGroups(groups), checks, signs };
}

function clothLines(plan: CurtainsPlan, p: (length: Length) => string): string[] {
  const { cloth } = plan;
  const repeat = cloth.repeat;
  return linesOf([
    `${cloth.name}, ${p(plan.usableWidth)} between the selvedges.`,
    repeat && `${repeatWords(repeat, p)}.`,
    plan.railroaded && "Run sideways: the selvedge is the top.",
    wayLine(cloth, "widths"),
  ]);
}

function finishedLines(
  fields: CurtainsFields,
  plan: CurtainsPlan,
  context: DrawingContext,
): string[] {
  const p = (length: Length) => printLength(length, context.units);
  const { coverage, hung, count } = plan;
  const what =
    coverage.curtains === 2
      ? count === 1
        ? "One pair"
        : `${count} pairs`
      : `${count === 1 ? "One curtain" : `${count} curtains`}, drawn to the ${coverage.hangs}`;
  const drop = fields.drop ? printMeasured(fields.drop, context.units) : p(hung.drop);
  const ends =
    fields.to === "floor"
      ? "floor"
      : fields.to === "sill"
        ? "sill"
        : fields.to === "below-sill"
          ? "below the sill"
          : null;
  return linesOf([
    `${what}.`,
    plan.hangsOn && `On ${hangsOnWords(plan.hangsOn)}.`,
    `Drop ${drop}, from the heading's top to the hem${ends ? `, to the ${ends === "below the sill" ? "wall below the sill" : ends}` : ""}.`,
    `Each ${p(plan.panel.finished)} wide closed${coverage.returnEach.isZero() ? "" : `: return ${p(coverage.returnEach)}`}${coverage.overlap.isZero() ? "" : `, overlap ${p(coverage.curtains === 2 ? coverage.overlap.dividedBy(2) : coverage.overlap)}`}.`,
    `Fullness ${plan.fullnessReached.round(2).toString()}, ${coverage.fullness.toString()} wanted.`,
  ]);
}

function headingLines(plan: CurtainsPlan, p: (length: Length) => string): string[] {
  const { heading } = plan;
  const depth = `${p(heading.depth)} deep`;
  if (heading.heading === "pinch-pleat") {
    return [
      `Pinch pleat, three fingers, ${depth}: ${heading.pleats} a curtain.`,
      `${heading.spaces} spaces of ${p(heading.space)}; each pleat takes up ${p(heading.takeUp)}.`,
    ];
  }
  if (heading.heading === "pencil-pleat") {
    return [
      `Pencil pleat, tape ${depth}, cut ${p(heading.tape)} a curtain.`,
      `${heading.hooks} hooks a curtain. Tie the cords off, do not cut them.`,
    ];
  }
  if (heading.heading === "goblet") {
    return [
      `Goblet, ${depth}, held open with wadding: ${heading.pleats} a curtain.`,
      `${p(heading.space)} between goblets, ${p(heading.end)} from each end of the front; each takes up ${p(heading.takeUp)}.`,
    ];
  }
  if (heading.heading === "tab") {
    return [
      `Tabs ${p(heading.tabWidth)} wide: ${heading.tabs} a curtain, ${p(heading.spacing)} between centres, one at each edge.`,
      `Cut each ${p(heading.stripWidth)} × ${p(heading.stripLength)}, folded double; the heading's top hangs ${p(plan.hung.headBelowPole)} under the pole's middle.`,
      ...(plan.tabsAlike
        ? ["All tabs alike: motif in the middle of each, half-way up its front."]
        : plan.cloth.repeat
          ? ["Tabs as the pattern falls."]
          : []),
    ];
  }
  if (heading.heading === "slot") {
    return [
      `Slot ${p(heading.pocket)} deep laid flat, both ends open; ${heading.frill.isZero() ? "no frill above it" : `frill ${p(heading.frill)} above it`}.`,
    ];
  }
  if (heading.heading === "s-fold") {
    return [
      `S-fold, tape ${depth}, cut ${p(heading.tape)} a curtain: ${heading.carriers} carriers, ${p(heading.spacing)} apart on their cord.`,
      `${p(heading.clothPerCarrier)} of cloth from carrier to carrier.`,
    ];
  }
  return [
    `Eyelets, buckram ${depth}: ${heading.eyelets} a curtain, ${p(heading.spacing)} between centres, ${p(heading.edge)} from each edge.`,
    `Both edges turn to the ${plan.hangsOn ? "bed" : "wall"}.`,
  ];
}

function edgeLines(fields: CurtainsFields, plan: CurtainsPlan, context: DrawingContext): string[] {
  const trim = fields.edge?.trim;
  const where = {
    leading: "on the leading edges",
    "all-round": "on both sides and the hem",
    hem: "along the hem",
  }[fields.edge?.where ?? "leading"];
  const weights = (plan.widthsEach.ceil().valueOf() + 1) * plan.coverage.curtains * plan.count;
  return linesOf([
    trim && `${context.cloth(trim)?.name ?? trim} ${where}.`,
    `${weights} covered hem weights, one in each lower corner and at each seam. Small parts: choking hazard for young children.`,
  ]);
}

/** An estimate of the stack is said in whole inches or centimetres: nobody can know it nearer. */
function usualStack({ units }: DrawingContext): Length {
  return units === "inches" ? Length.inches(1) : Length.mm(10);
}

function hangingLines(
  fields: CurtainsFields,
  plan: CurtainsPlan,
  context: DrawingContext,
): string[] {
  const p = (length: Length) => printLength(length, context.units);
  const pole = fields.pole ? printMeasured(fields.pole, context.units) : p(plan.hung.pole);
  const hooks = !("hooks" in plan.heading)
    ? null
    : `${plan.heading.hooks * plan.coverage.curtains * plan.count} hooks in all.`;
  const rod = fields["door-rod"];
  return linesOf([
    rod === "rising" && "Portière rod on the door itself: it lifts the curtain as the door opens.",
    rod === "fixed" && "Fixed pole over the door: the curtain is drawn back before it is opened.",
    fields["door-hinge"] && `Hinges at the ${fields["door-hinge"]}: the curtain stacks there.`,
    `${capital(onTrack(fields) ? "track" : "pole")}${fields.mount === "inside" ? " inside the recess" : ""} ${pole}; each curtain stacks back to ${fields["stack-back"] ? p(plan.stackEach) : `about ${p(plan.stackEach.upTo(usualStack(context)))}`}.`,
    hooks,
    ...hardwareLines(fields.hardware),
  ]);
}
