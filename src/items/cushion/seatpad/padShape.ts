import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { finestStep } from "../../common/finestStep.ts";
import { girth } from "../../common/skirt/girth.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { PlateEdges } from "../boxing.ts";
import type { SeatPadFields } from "./schema.ts";

export type PadShape = "rectangle" | "tapered" | "round";

export function padShape(fields: SeatPadFields): PadShape {
  return fields.shape ?? (fields["back-width"] ? "tapered" : "rectangle");
}

/** Least whole multiple of `step` that is not shorter than the slant over `run` and `rise`: root of (run² + rise²), up. */
export function slantUp(run: Length, rise: Length, step: Length): Length {
  const [a, b] = [run.over(step), rise.over(step)];
  const square = a.mul(a).add(b.mul(b));
  let steps = Math.max(0, Math.floor(Math.sqrt(square.valueOf())) - 1);
  while (new Fraction(steps).mul(steps).compare(square) < 0) steps += 1;
  return step.times(steps);
}

/** The edges that boxing and welt run along; slants and rounds up to an eighth of an inch or a millimetre. */
export function padEdges(fields: SeatPadFields, context: ItemContext): PlateEdges {
  const [width, depth] = fields.size as [Length, Length];
  const step = finestStep(context.units);
  const shape = padShape(fields);
  if (shape === "round")
    return { front: girth(width).upTo(step), side: depth, back: width, round: true };
  const back = shape === "tapered" ? (fields["back-width"] ?? width) : width;
  const slant = back.equals(width) ? depth : slantUp(width.minus(back).dividedBy(2), depth, step);
  return { front: width, side: slant, back, round: false };
}

/** What its shape needs and does not have, each at its line. */
export function padFaults(fields: SeatPadFields, context: ItemContext): Diagnostic[] {
  const p = (l: Length) => printLength(l, context.units);
  const [width, depth] = fields.size as [Length, Length];
  const shape = padShape(fields);
  const back = fields["back-width"];
  const found: Diagnostic[] = [];
  const say = (
    key: string,
    code: string,
    message: string,
    more: { actual?: string; expected?: string; hint: string; severity?: "warning" },
  ) => found.push(diagnostic(context.place([key]), code, message, more));
  if (shape === "tapered" && !back)
    say(
      "shape",
      "pad-not-measured",
      "A tapered pad needs its width at the back, and none is written.",
      {
        expected: "back-width",
        hint: `Write back-width: ${p(width.times(new Fraction(5, 6)))}, or take shape out.`,
      },
    );
  if (shape !== "tapered" && back)
    say("back-width", "not-of-this-shape", `A ${shape} pad has no other width at the back.`, {
      severity: "warning",
      hint: "Take it out, or write shape: tapered.",
    });
  if (shape === "tapered" && back?.isMoreThan(width))
    say(
      "back-width",
      "back-wider-than-front",
      `At the back the pad is ${p(back)} wide, more than the ${p(width)} of its size.`,
      {
        actual: p(back),
        expected: `${p(width)} or less`,
        hint: "Write the widest measure first in size, wherever it is: the cloth is cut to it.",
      },
    );
  if (shape === "round" && !width.equals(depth))
    say(
      "size",
      "round-not-round",
      `A round pad is as deep as it is wide; this one is ${p(width)} by ${p(depth)}.`,
      {
        actual: p(depth),
        expected: p(width),
        hint: "Write its diameter twice, or take shape: round out.",
      },
    );
  if (fields.boxing && !fields.thickness)
    say(
      "boxing",
      "not-of-this-form",
      "A pad without thickness has no boxing, so this line says nothing.",
      {
        severity: "warning",
        hint: `Take it out, or write its thickness, for example thickness: 2" or 5 cm.`,
      },
    );
  if (fields.ties !== undefined && fields.fastening && fields.fastening !== "ties")
    say("ties", "ties-not-asked", `Ties are counted, and the fastening is ${fields.fastening}.`, {
      severity: "warning",
      actual: String(fields.ties),
      hint: "Write fastening: ties, or take ties out.",
    });
  return found;
}
