import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import { dropAndTo } from "../common/dropAndTo.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { onTrack, railPoint } from "./onTrack.ts";
import type { CurtainsFields } from "./schema.ts";

/** The pole, and where the curtains' heading stands beside it. */
export interface AtPole {
  /** The pole's middle over the floor; null where nothing says it. */
  readonly height: Length | null;
  /** The heading's top under the pole's middle; negative where it stands above. */
  readonly headBelow: Length;
}

/**
 * The drop as it is written, else from the heading to the floor, the sill or below it, a clearance off. Null, with a diagnostic,
 * where it cannot be found.
 */
export function finishedDrop(
  fields: CurtainsFields,
  { height, headBelow }: AtPole,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const { window } = context;
  if (fields.drop) {
    if (fields.to) notes.diagnostics.push(dropAndTo(context));
    return fields.drop;
  }
  const to = fields.to ?? (window?.isDoor ? "floor" : undefined);
  const lacking = withoutEnd(to, height, context);
  if (lacking || !to || height === null) {
    if (lacking) notes.diagnostics.push(lacking);
    return null;
  }
  const foot = footOf(to, context);
  const drop = height.minus(headBelow).minus(foot.height);
  if (drop.compare(Length.zero) <= 0) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["to"]),
        "drop-is-nothing",
        "The pole stands no higher than where the hem should end.",
        { actual: to, hint: "Look at the pole's height and the window's sill." },
      ),
    );
    return null;
  }
  const p = (length: Length) => printLength(length, context.units);
  const head = onTrack(fields)
    ? []
    : headBelow.isNegative()
      ? [`+ ${p(Length.zero.minus(headBelow))} heading above the pole`]
      : [`− ${p(headBelow)} from the pole to the heading`];
  notes.working.push({
    what: "Finished drop",
    sum: [
      `${printMeasured(height, context.units)} to the ${railPoint(fields)}`,
      ...head,
      foot.words,
    ].join(" "),
    result: p(drop),
    rounded: null,
  });
  return drop;
}

type DropTo = NonNullable<CurtainsFields["to"]>;

/** Where the hem ends over the floor, and how that is said in the sum of the drop. */
function footOf(
  to: DropTo,
  context: ItemContext,
): { readonly height: Length; readonly words: string } {
  const { window, units } = context;
  const p = (length: Length) => printLength(length, units);
  if (to === "floor" || !window) {
    const clear = context.length(window?.isDoor ? "door-clearance" : "floor-clearance");
    return { height: clear, words: `− ${p(clear)} floor clearance` };
  }
  const { sill } = window;
  const sillWords = `− ${printMeasured(sill, units)} sill`;
  if (to === "sill") {
    const clear = context.length("sill-clearance");
    return { height: sill.plus(clear), words: `${sillWords} − ${p(clear)} clearance` };
  }
  const below = context.length("below-sill");
  const foot = sill.minus(below);
  return {
    height: foot.isNegative() ? context.length("floor-clearance") : foot,
    words: `${sillWords} + ${p(below)} below the sill`,
  };
}

/** What is missing to find the drop by; null where nothing is. */
function withoutEnd(
  to: DropTo | undefined,
  height: Length | null,
  context: ItemContext,
): Diagnostic | null {
  const { window, hangsOn } = context;
  if (!to)
    return diagnostic(
      context.place([]),
      "curtains-without-drop",
      "Nothing says how long these curtains are.",
      {
        expected: "drop, or to",
        hint: `Write for example drop: 92" or 234 cm, or to: floor (or sill, or below-sill) and the pole's height.`,
      },
    );
  if (window?.isDoor && to !== "floor")
    return diagnostic(
      context.place(["to"]),
      "door-without-sill",
      `${window.name} is a door and has no sill.`,
      { actual: to, expected: "floor", hint: "Write to: floor, or the drop itself." },
    );
  if (height !== null && (to === "floor" || window)) return null;
  return diagnostic(
    context.place(["to"]),
    "drop-cannot-be-found",
    to === "floor"
      ? `The drop to the floor cannot be found, since ${hangsOn ? "the pole's height is not" : "neither a window nor the pole's height is"} known.`
      : `The drop to the sill cannot be found, since these curtains hang ${hangsOn ? `on ${hangsOn.title}, which has none` : "at no window of this room"}.`,
    {
      actual: to,
      hint: hangsOn
        ? `Write ${to === "floor" ? "pole-height" : "to: floor"}, or the drop itself.`
        : `Write at: and the window's name, or ${to === "floor" ? "pole-height, or " : ""}the drop itself.`,
    },
  );
}
