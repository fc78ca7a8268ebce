import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { HeadboardFields } from "./schema.ts";

/** What its border, its arch and its buttons need and do not have; where one is told, no pieces follow from its size. */
export function headboardFaults(fields: HeadboardFields, context: ItemContext): Diagnostic[] {
  return [
    ...sizeFaults(fields, context),
    ...borderFaults(fields, context),
    ...archFaults(fields, context),
    ...buttonFaults(fields, context),
  ];
}

/** A board deeper than it is high: its last two measures have changed places. */
function sizeFaults(fields: HeadboardFields, context: ItemContext): Diagnostic[] {
  const p = (l: Length) => printLength(l, context.units);
  const [width, depth, height] = fields.size as [Length, Length, Length];
  if (!depth.isMoreThan(height)) return [];
  return [
    diagnostic(
      context.place(["size"]),
      "headboard-deeper-than-high",
      `This headboard is ${p(depth)} deep and only ${p(height)} high: size is width x depth x height.`,
      { actual: p(depth), hint: `Write size: ${[width, height, depth].map(p).join(" x ")}.` },
    ),
  ];
}

function borderFaults(fields: HeadboardFields, context: ItemContext): Diagnostic[] {
  const p = (l: Length) => printLength(l, context.units);
  const [width, , height] = fields.size as [Length, Length, Length];
  const { border } = fields;
  if (!border) {
    if (!fields["border-cloth"]) return [];
    return [
      diagnostic(
        context.place(["border-cloth"]),
        "border-not-measured",
        "A border's cloth is named and no width of a border.",
        { hint: `Write for example border: 4" or 10 cm, or take border-cloth out.` },
      ),
    ];
  }
  const most = Length.min(width.dividedBy(2), height);
  if (border.isLessThan(most)) return [];
  return [
    diagnostic(
      context.place(["border"]),
      "border-too-wide",
      `Borders of ${p(border)} leave no panel on a headboard ${p(width)} wide and ${p(height)} high.`,
      {
        actual: p(border),
        expected: `less than ${p(most)}`,
        hint: 'Write the width of the border alone, for example border: 4" or 10 cm.',
      },
    ),
  ];
}

function archFaults(fields: HeadboardFields, context: ItemContext): Diagnostic[] {
  const p = (l: Length) => printLength(l, context.units);
  const [, , height] = fields.size as [Length, Length, Length];
  const { rise } = fields;
  if (rise && fields.shape !== "arched") {
    return [
      diagnostic(
        context.place(["rise"]),
        "rise-without-arch",
        "A rise is written, and the head is straight: it changes nothing.",
        { hint: "Write shape: arched, or take rise out.", severity: "warning" },
      ),
    ];
  }
  if (fields.shape !== "arched" || (rise && !rise.isZero() && rise.isLessThan(height))) return [];
  return [
    diagnostic(
      context.place([rise ? "rise" : "shape"]),
      "arch-not-measured",
      rise
        ? `A rise of ${p(rise)} is no less than the whole height of ${p(height)}.`
        : "An arched head needs its rise, and none is written.",
      {
        expected: `rise, less than ${p(height)}`,
        hint: `Write how far the middle of the head stands above its ends, for example rise: 6" or 15 cm.`,
      },
    ),
  ];
}

function buttonFaults(fields: HeadboardFields, context: ItemContext): Diagnostic[] {
  if (!fields.buttoning || fields.buttons !== undefined) return [];
  return [
    diagnostic(
      context.place(["buttoning"]),
      "buttons-not-counted",
      `It is said how it is buttoned, and not with how many buttons.`,
      { hint: "Write buttons: and their number, or take buttoning out." },
    ),
  ];
}

/** A headboard stands behind its bed: said to be on it, it would be drawn nowhere. */
export function liesOnBed(context: ItemContext): Diagnostic[] {
  if (!context.host) return [];
  return [
    diagnostic(
      context.place(["at"]),
      "headboard-on-bed",
      `A headboard stands behind ${context.host.name}, not on it; so placed it is drawn on no wall.`,
      {
        severity: "warning",
        expected: "its wall, with from-left and the height of its foot",
        hint: 'Write for example at: { wall: north, from-left: 4\' 8", height: 18" } (or 142 cm, 46 cm) and touches: with the bed’s name.',
      },
    ),
  ];
}
