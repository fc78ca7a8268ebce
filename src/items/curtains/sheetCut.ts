import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { linesOf } from "../common/sheetWords.ts";
import { percentWords } from "../common/shrinkage.ts";
import type { PlainCut } from "./cutLength.ts";
import type { LayerPlan } from "./liningPlan.ts";
import type { CurtainsPlan } from "./plan.ts";
import { widthsText } from "./widths.ts";

/** `3 %`: what a cloth loses that is cut so many times longer. */
function lost(lengthening: Fraction): string {
  return percentWords(new Fraction(1).sub(lengthening.inverse()));
}

/** What of the cut is for shrinkage, and where that goes which the cloth keeps: drop, heading and hem alone do not add up to it. */
function shrinkLines(cut: PlainCut, p: (length: Length) => string): string[] {
  if (cut.lengthening.compare(1) === 0) return [];
  const more = cut.length.minus(cut.length.times(cut.lengthening.inverse()));
  return [
    `${p(more)} of the cut is for ${lost(cut.lengthening)} shrinkage: what is not lost is turned in.`,
  ];
}

function layerShrinks({ lengthening }: LayerPlan): string {
  return lengthening.compare(1) === 0 ? "" : `, ${lost(lengthening)} shrinkage included`;
}

/** How the face is cut, on the sheet. */
export function cutLines(plan: CurtainsPlan, p: (length: Length) => string): string[] {
  const { cut, coverage, count, join, widthsEach } = plan;
  if (plan.railroaded) {
    return [
      `${coverage.curtains * count} of ${p(coverage.flat.dividedBy(coverage.curtains))}, ${p(cut.length)} across the cloth.`,
      `${p(cut.heading)} heading, ${p(cut.hem)} hem.`,
      ...shrinkLines(cut, p),
    ];
  }
  const inAll = plan.widthsInAll.mul(count);
  // On a bed and between two walls there is no return.
  const outer = coverage.returnEach.isZero() ? "outer edge" : "return side";
  const halves = widthsEach.mul(2).mod(2).compare(0) !== 0;
  return linesOf([
    `${wholeText(inAll)} at ${p(cut.length)}, ${widthsText(widthsEach)} a curtain.`,
    !plan.trimmed.isZero() && `Trim ${p(plan.trimmed)} off each at the ${outer} after joining.`,
    halves && `The half widths join at the ${outer}, the whole ones lead.`,
    cut.lengthening.compare(1) === 0
      ? `${p(cut.heading)} heading, ${p(cut.hem)} hem, nothing to trim.`
      : `${p(cut.heading)} heading, ${p(cut.hem)} hem.`,
    ...shrinkLines(cut, p),
    `Side hems ${p(coverage.sideHem)}${widthsEach.compare(1) > 0 ? `; joins ${p(join)} on each piece` : ""}.`,
  ]);
}

function wholeText(widths: Fraction): string {
  const text = widthsText(widths);
  return `${text} ${widths.compare(1) === 0 ? "width" : "widths"}`;
}

/** The layers behind the face, on the sheet. */
export function liningLines(plan: CurtainsPlan, p: (length: Length) => string): string[] {
  if (plan.layers.length === 0) return ["Unlined."];
  return plan.layers.flatMap((layer) => {
    const widths = wholeText(layer.widthsEach.mul(plan.coverage.curtains).mul(plan.count));
    const name = { lining: "", blackout: "Blackout: ", interlining: "Interlining: " }[layer.layer];
    return [
      `${name}${layer.cloth.name}, ${p(layer.usableWidth)} wide: ${widths} at ${p(layer.cutLength)}${layerShrinks(layer)}.`,
      {
        lining: `Finishes ${p(layer.finishedWidth)} × ${p(layer.finishedLength)} a curtain.`,
        blackout: `${p(layer.finishedWidth)} × ${p(layer.finishedLength)} a curtain, raw edges; joins lapped. Held at the heading and sides only: every stitch through it lets light in.`,
        interlining: "Edge to edge, inside the turnings; joins lapped, locked to the face.",
      }[layer.layer],
      ...(layer.cloth.repeat && layer.cloth.repeat.match !== "free"
        ? [
            `Patterned: widths matched and level${layer.motifAboveFoot ? ", its motifs level with those of the face" : ""}.`,
          ]
        : []),
    ];
  });
}

/** How the pattern meets, on the sheet. */
export function matchLines(plan: CurtainsPlan, p: (length: Length) => string): string[] {
  const { repeat, name } = plan.cloth;
  if (!repeat || repeat.match === "free") return [];
  return linesOf([
    plan.coverage.curtains * plan.count > 1
      ? "Level across the curtains; both begin alike at the leading edge."
      : "Level across all its widths.",
    plan.lowestMotif
      ? `Lowest motif ${p(plan.lowestMotif)} above the hem edge, ${p(plan.lowestMotif.plus(plan.cut.hem).times(plan.cut.lengthening))} above the cut.`
      : `Height of the lowest motif of ${name}: ask.`,
    plan.shifts && "Each next width from the leading edge falls half a repeat.",
  ]);
}
