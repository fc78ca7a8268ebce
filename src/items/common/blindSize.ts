import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ItemContext, WindowFacts } from "../itemKind.ts";
import { finestStep } from "./finestStep.ts";
import { largerThanRoom } from "./likelySizes.ts";
import type { Notes } from "./notes.ts";

/** What every blind leaves free above its sill, and how far it goes beyond an opening; the recess's sides are each kind's own. */
export const placeAllowances = {
  "drop-clearance": {
    is: "length",
    description: "left free above the sill inside the recess",
    usual: { inches: `1/8"`, centimetres: "0.3 cm" },
    source: PRACTICE,
  },
  "beyond-opening": {
    is: "length",
    description: "past the opening at each side, outside the recess",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "above-opening": {
    is: "length",
    description: "above the opening, outside the recess",
    usual: { inches: `4"`, centimetres: "10 cm" },
    source: PRACTICE,
  },
  "below-opening": {
    is: "length",
    description: "below the sill, outside the recess",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

/** What a blind's file says of its size and place. */
export interface SizedBlind {
  readonly title: string;
  readonly mount: "inside" | "outside" | undefined;
  readonly width: Length | undefined;
  readonly drop: Length | undefined;
  /** What it needs of the recess's depth, and in words what needs it. */
  readonly needs: { readonly depth: Length; readonly what: string };
}

/** A blind's finished size, and where it hangs. */
export interface BlindSize {
  readonly inside: boolean;
  readonly width: Length;
  readonly drop: Length;
  /** Its hem over the floor; null without a window. */
  readonly hemHeight: Length | null;
  /** How the size was come by, for the sheet: recess or blind size. */
  readonly measured: string;
}

/** The finished width and drop from what is written or from the window; null, with a diagnostic, where neither says. */
export function measureBlind(
  fields: SizedBlind,
  context: ItemContext,
  notes: Notes,
): BlindSize | null {
  const { window } = context;
  const inside = fields.mount ? fields.mount === "inside" : window?.recess != null;
  if (fields.mount === undefined && window) {
    notes.questions.push(
      inside
        ? `Does the blind hang inside the recess of ${window.name}? Inside is assumed.`
        : `Does the blind hang outside the opening of ${window.name}? Outside is assumed, since no recess is given.`,
    );
  }
  const width = inside ? insideWidth(fields, context, notes) : outsideWidth(fields, context, notes);
  const drop = inside ? insideDrop(fields, context, notes) : outsideDrop(fields, context, notes);
  const { drop: upright, width: along } = fields;
  notes.diagnostics.push(
    ...largerThanRoom({ upright: { drop: upright }, along: { width: along } }, context),
  );
  if (width === null || drop === null) return null;
  const recess = window?.recess;
  if (inside && recess?.isLessThan(fields.needs.depth)) {
    notes.questions.push(
      `The recess is ${printMeasured(recess, context.units)} deep: does ${fields.needs.what} clear the frame?`,
    );
  }
  return {
    inside,
    width,
    drop,
    hemHeight: window ? hem(window, inside, drop, context) : null,
    measured: measuredText(fields, context, inside),
  };
}

function hem(window: WindowFacts, inside: boolean, drop: Length, context: ItemContext): Length {
  const top = window.sill.plus(window.height);
  const head = inside ? top : top.plus(context.length("above-opening"));
  return Length.max(Length.zero, head.minus(drop));
}

function measuredText(fields: SizedBlind, context: ItemContext, inside: boolean): string {
  const { window, units } = context;
  if (!inside) return "Blind size, outside the recess.";
  if (!window) return "Blind size, inside the recess.";
  const recess = `${printMeasured(window.width, units)} × ${printMeasured(window.height, units)}`;
  return fields.width && fields.drop
    ? `Blind size; recess measured ${recess}.`
    : `Recess size ${recess}, narrowest of three; the blind is made smaller as below.`;
}

function insideWidth(fields: SizedBlind, context: ItemContext, notes: Notes): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  const clearance = context.length("recess-clearance");
  if (!fields.width && !window) return missing("width", fields, context, notes);
  if (fields.width) {
    if (!window) return fields.width;
    const most = window.width.minus(clearance.times(2)).downTo(finestStep(context.units));
    if (fields.width.isMoreThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["width"]),
          "blind-wider-than-recess",
          `The blind is ${printMeasured(fields.width, units)} wide, the recess of ${window.name} ${printMeasured(window.width, units)}.`,
          {
            actual: fields.width.typed,
            expected: `${p(most)} or less`,
            hint: "Write the width that goes inside, or mount: outside.",
          },
        ),
      );
    } else if (fields.width.isMoreThan(most)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["width"]),
          "blind-without-clearance",
          `The blind is ${printMeasured(fields.width, units)} wide; with ${p(clearance)} free at each side the recess takes ${p(most)}.`,
          {
            severity: "warning",
            actual: fields.width.typed,
            expected: `${p(most)} or less`,
            hint: "Make it narrower, or take the line out to have it reckoned from the recess.",
          },
        ),
      );
    }
    return fields.width;
  }
  const recess = (window as WindowFacts).width;
  const width = recess.minus(clearance.times(2)).downTo(finestStep(context.units));
  notes.working.push({
    what: "Finished width",
    sum: `${printMeasured(recess, units)} recess − 2 × ${p(clearance)} clearance`,
    result: p(width),
    rounded: units === "inches" ? "down to 1/8″" : "down to 1 mm",
  });
  return positive(width, "width", context, notes);
}

function insideDrop(fields: SizedBlind, context: ItemContext, notes: Notes): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  if (!fields.drop && !window) return missing("drop", fields, context, notes);
  if (fields.drop) {
    if (window && fields.drop.isMoreThan(window.height)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["drop"]),
          "blind-longer-than-recess",
          `The blind is ${printMeasured(fields.drop, units)} long, the recess of ${window.name} ${printMeasured(window.height, units)} high.`,
          {
            actual: fields.drop.typed,
            expected: `${p(window.height)} or less`,
            hint: "Write the drop that ends above the sill, or mount: outside.",
          },
        ),
      );
    }
    return fields.drop;
  }
  const clearance = context.length("drop-clearance");
  const height = (window as WindowFacts).height;
  const drop = height.minus(clearance).downTo(finestStep(context.units));
  notes.working.push({
    what: "Finished drop",
    sum: `${printMeasured(height, units)} recess − ${p(clearance)} clearance`,
    result: p(drop),
    rounded: units === "inches" ? "down to 1/8″" : "down to 1 mm",
  });
  return positive(drop, "drop", context, notes);
}

function outsideWidth(fields: SizedBlind, context: ItemContext, notes: Notes): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  if (fields.width) {
    if (window && fields.width.isLessThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["width"]),
          "blind-narrower-than-opening",
          `Outside the recess the blind is ${printMeasured(fields.width, units)} wide, narrower than ${window.name} at ${printMeasured(window.width, units)}.`,
          {
            severity: "warning",
            actual: fields.width.typed,
            hint: "Make it wider than the opening, or write mount: inside.",
          },
        ),
      );
    }
    return fields.width;
  }
  if (!window) return missing("width", fields, context, notes);
  const beyond = context.length("beyond-opening");
  const width = window.width.plus(beyond.times(2));
  notes.working.push({
    what: "Finished width",
    sum: `${printMeasured(window.width, units)} opening + 2 × ${p(beyond)} beyond it`,
    result: p(width),
    rounded: null,
  });
  notes.questions.push(
    `How wide is the blind? ${p(width)} is assumed, ${p(beyond)} beyond the opening at each side.`,
  );
  return width;
}

function outsideDrop(fields: SizedBlind, context: ItemContext, notes: Notes): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  if (fields.drop) return fields.drop;
  if (!window) return missing("drop", fields, context, notes);
  const above = context.length("above-opening");
  const below = context.length("below-opening");
  const drop = window.height.plus(above).plus(below);
  notes.working.push({
    what: "Finished drop",
    sum: `${printMeasured(window.height, units)} opening + ${p(above)} above + ${p(below)} below`,
    result: p(drop),
    rounded: null,
  });
  notes.questions.push(
    `How long is the blind? ${p(drop)} is assumed, ${p(above)} above and ${p(below)} below the opening.`,
  );
  return drop;
}

function missing(
  what: "width" | "drop",
  fields: SizedBlind,
  context: ItemContext,
  notes: Notes,
): null {
  notes.diagnostics.push(
    diagnostic(
      context.place([]),
      `blind-without-${what}`,
      `Neither ${what} nor a window says how ${what === "width" ? "wide" : "long"} this blind is.`,
      {
        actual: fields.title,
        expected: `${what}, or at with a window of this room`,
        hint: `Write for example ${what}: ${what === "width" ? `47 1/2" or 121 cm` : `60" or 152 cm`}, or at: and the window's name.`,
      },
    ),
  );
  return null;
}

function positive(length: Length, what: string, context: ItemContext, notes: Notes): Length | null {
  if (length.compare(Length.zero) > 0) return length;
  notes.diagnostics.push(
    diagnostic(
      context.place([]),
      "blind-is-nothing",
      `The clearances take up the whole ${what} of the recess.`,
      {
        hint: "Look at the window's size and at the blind's allowances.",
      },
    ),
  );
  return null;
}
