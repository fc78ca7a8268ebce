import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import { largerThanRoom, longBesidePole } from "../common/likelySizes.ts";
import type { Notes } from "../common/notes.ts";
import { withoutLength } from "../common/withoutLength.ts";
import type { ItemContext } from "../itemKind.ts";
import { finishedDrop } from "./drop.ts";
import { checkHangsFrom, onTrack, railPoint } from "./onTrack.ts";
import { slotSizes } from "./poleHeadings.ts";
import type { CurtainsFields } from "./schema.ts";

/** Where the curtains hang and how long they are. */
export interface Hung {
  readonly pole: Length;
  readonly drop: Length;
  /** The pole's middle over the floor; null where nothing says it. */
  readonly poleHeight: Length | null;
  /** The heading's top under the pole's middle; negative where it stands above (eyelets). */
  readonly headBelowPole: Length;
  /** The hem over the floor. */
  readonly hemHeight: Length;
}

/**
 * Finds the pole's length and the finished drop from what is written or from the window; what had to be assumed becomes a
 * question. Null, with a diagnostic at its place, where there is too little to go on.
 */
export function measureCurtains(
  fields: CurtainsFields,
  context: ItemContext,
  notes: Notes,
): Hung | null {
  notes.diagnostics.push(...checkHangsFrom(fields, context));
  const pole = poleLength(fields, context, notes);
  const height = poleHeight(fields, context, notes);
  const headBelowPole = headUnderPole(fields, context);
  const headHeight = height?.minus(headBelowPole) ?? null;
  const drop = finishedDrop(fields, { height, headBelow: headBelowPole }, context, notes);
  notes.diagnostics.push(
    ...largerThanRoom({ upright: { drop: fields.drop }, along: { pole: fields.pole } }, context),
  );
  if (pole === null || drop === null) return null;
  notes.diagnostics.push(
    ...longBesidePole({ return: fields.return, overlap: fields.overlap }, pole, context),
  );
  let hemHeight = headHeight?.minus(drop) ?? context.length("floor-clearance");
  if (hemHeight.isNegative()) {
    notes.questions.push(
      `The drop is ${printLength(Length.zero.minus(hemHeight), context.units)} longer than from the heading to the floor: are the curtains to lie on the floor?`,
    );
    hemHeight = Length.zero;
  }
  return { pole, drop, poleHeight: height, headBelowPole, hemHeight };
}

function headUnderPole(fields: CurtainsFields, context: ItemContext): Length {
  if (fields.heading === "eyelet") return Length.zero.minus(context.length("above-pole"));
  if (fields.heading === "tab") return context.length("tab-drop");
  if (fields.heading === "slot") {
    const { frill, pocket } = slotSizes(context);
    return Length.zero.minus(frill.plus(pocket.dividedBy(2)));
  }
  // The heading covers a track.
  if (onTrack(fields)) return Length.zero;
  return context.length("below-pole");
}

function poleLength(fields: CurtainsFields, context: ItemContext, notes: Notes): Length | null {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  const inside = fields.mount === "inside";
  if (fields.pole) {
    if (window && inside && fields.pole.isMoreThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["pole"]),
          "pole-longer-than-recess",
          `The pole is ${printMeasured(fields.pole, units)}, but ${window.name} is ${printMeasured(window.width, units)} wide.`,
          {
            actual: fields.pole.typed,
            expected: `${p(window.width)} or less`,
            hint: "A pole or track inside the recess must be shorter than the opening; write its length, or mount: outside.",
          },
        ),
      );
    } else if (window && !inside && fields.pole.isLessThan(window.width)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["pole"]),
          "pole-shorter-than-opening",
          `The pole is ${printMeasured(fields.pole, units)}, shorter than ${window.name}, which is ${printMeasured(window.width, units)} wide.`,
          {
            severity: "warning",
            actual: fields.pole.typed,
            hint: "Measure the pole again, or write mount: inside.",
          },
        ),
      );
    }
    return fields.pole;
  }
  if (!window) {
    notes.diagnostics.push(
      withoutLength(context, {
        code: "curtains-without-pole",
        key: "pole",
        onBed: "how long the pole or track is",
        atWindow: "how wide these curtains are",
        usual: { bed: `60" or 152 cm`, window: `96" or 244 cm` },
      }),
    );
    return null;
  }
  if (inside) {
    const clearance = context.length("recess-clearance");
    const pole = window.width.minus(clearance.times(2)).downTo(finestStep(context.units));
    notes.working.push({
      what: "Track inside the recess",
      sum: `${printMeasured(window.width, units)} opening − 2 × ${p(clearance)} clearance`,
      result: p(pole),
      rounded: `down to ${units === "inches" ? "1/8″" : "1 mm"}`,
    });
    notes.questions.push(`How long is the track? ${p(pole)} is taken from the opening.`);
    return pole;
  }
  const rising = window.isDoor === true && fields["door-rod"] === "rising";
  const beyond = context.length(rising ? "beyond-door" : "beyond-opening");
  const pole = window.width.plus(beyond.times(2));
  notes.working.push({
    what: "Pole",
    sum: `${printMeasured(window.width, units)} opening + 2 × ${p(beyond)} beyond it`,
    result: p(pole),
    rounded: null,
  });
  notes.questions.push(
    `How long is the ${onTrack(fields) ? "track" : "pole between its finials"}? ${p(pole)} is assumed, ${p(beyond)} beyond the opening at each side.`,
  );
  return pole;
}

function poleHeight(fields: CurtainsFields, context: ItemContext, notes: Notes): Length | null {
  const { window, units, roomHeight } = context;
  const typed = fields["pole-height"];
  if (typed) {
    if (roomHeight && typed.isMoreThan(roomHeight)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["pole-height"]),
          "pole-above-ceiling",
          `The pole stands at ${printMeasured(typed, units)}, above the ceiling at ${printMeasured(roomHeight, units)}.`,
          {
            actual: typed.typed,
            expected: `${printLength(roomHeight, units)} or less`,
            hint: "Measure from the floor to the pole's middle.",
          },
        ),
      );
    }
    return typed;
  }
  if (!window) return null;
  const top = window.sill.plus(window.height);
  const wanted = fields.mount === "inside" ? top : top.plus(context.length("above-opening"));
  const height = roomHeight ? Length.min(wanted, roomHeight) : wanted;
  const rail = railPoint(fields);
  notes.questions.push(
    fields.drop
      ? `How high is the ${rail} above the floor? ${printLength(height, units)} is drawn.`
      : `How high is the ${rail} above the floor? ${printLength(height, units)} is assumed, and the drop rests on it.`,
  );
  return height;
}
