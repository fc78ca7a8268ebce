import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { TiebackFields } from "./schema.ts";

/** A tie-back as it is finished, laid flat. */
export interface TiebackSizes {
  readonly shape: "straight" | "shaped";
  readonly length: Length;
  /** In its middle, and at its ends. */
  readonly depth: Length;
  readonly endDepth: Length;
  /** How far the middle of its upper edge hangs below its ends. */
  readonly sag: Length;
  /** The same of its lower edge. */
  readonly lowerRise: Length;
}

/** Its sizes as written or usual; null, with a diagnostic, where they make no tie-back. */
export function tiebackSizes(
  fields: TiebackFields,
  context: ItemContext,
  notes: Notes,
): TiebackSizes | null {
  const shape = fields.shape ?? "shaped";
  const shaped = shape === "shaped";
  const length = fields.length ?? context.length("length");
  if (!fields.length)
    notes.questions.push(
      `How far is it round the curtain where it is held? ${printLength(length, context.units)} is assumed until it is measured with a tape.`,
    );
  if (context.window) withoutCurtains(context.window.name, context, notes);
  const depth = fields.depth ?? context.length("depth");
  const endDepth = shaped ? (fields["end-depth"] ?? context.length("end-depth")) : depth;
  const sag = shaped ? (fields.sag ?? context.length("sag")) : Length.zero;
  if (!shaped) saysNothing(fields, context, notes);
  const lowerRise = sag.plus(depth).minus(endDepth);
  const sizes: TiebackSizes = { shape, length, depth, endDepth, sag, lowerRise };
  if (shaped && impossible(sizes, fields, context, notes)) return null;
  if (shaped) deepAtEnds(sizes, context, notes);
  return sizes;
}

/** Its ends are deeper than its middle: the two have changed places. A shaped tie-back narrows to its rings (common practice, no source). */
function deepAtEnds({ depth, endDepth }: TiebackSizes, context: ItemContext, notes: Notes): void {
  if (!endDepth.isMoreThan(depth)) return;
  const p = (l: Length) => printLength(l, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place(["end-depth"]),
      "tieback-deep-at-ends",
      `The tie-back is ${p(endDepth)} deep at its ends and only ${p(depth)} in its middle.`,
      {
        severity: "warning",
        actual: p(endDepth),
        expected: `${p(depth)} or less`,
        hint: "A shaped tie-back narrows towards its rings: look whether depth and end-depth have changed places.",
      },
    ),
  );
}

/** It hangs at a window, and nobody says which curtains it holds. */
function withoutCurtains(window: string, context: ItemContext, notes: Notes): void {
  notes.diagnostics.push(
    diagnostic(
      context.place(["at"]),
      "tieback-without-curtains",
      `It is said at which window this tie-back is, not which curtains it holds, so it is drawn by itself in the middle of ${window}.`,
      {
        severity: "warning",
        actual: window,
        expected: "the curtains that it holds",
        hint: "Write at: { on: … } with the curtains’ name, for example at: { on: curtains-garden-window }.",
      },
    ),
  );
}

/** What only a shaped one has. */
function saysNothing(fields: TiebackFields, context: ItemContext, notes: Notes): void {
  for (const key of ["end-depth", "sag"] as const) {
    if (fields[key] === undefined) continue;
    notes.diagnostics.push(
      diagnostic(
        context.place([key]),
        "tieback-is-straight",
        `${key} says nothing of a straight tie-back.`,
        { severity: "warning", hint: "Take the line out, or write shape: shaped." },
      ),
    );
  }
}

/** True, with a diagnostic, where its lower edge would rise to its middle, or hang deeper than half its length. */
function impossible(
  sizes: TiebackSizes,
  fields: TiebackFields,
  context: ItemContext,
  notes: Notes,
): boolean {
  const { length, depth, endDepth, sag, lowerRise } = sizes;
  const deep = lowerRise.isNegative();
  if (!deep && !lowerRise.times(2).isMoreThan(length)) return false;
  const p = (l: Length) => printLength(l, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place(deep ? ["end-depth"] : fields.sag ? ["sag"] : []),
      "tieback-impossible",
      deep
        ? `At its ends the tie-back is ${p(endDepth)} deep, more than its sag and its depth in the middle together.`
        : `A tie-back ${p(length)} long cannot hang ${p(lowerRise)} in its middle.`,
      {
        actual: p(deep ? endDepth : lowerRise),
        expected: deep ? `${p(sag.plus(depth))} or less` : `${p(length.dividedBy(2))} or less`,
        hint: "Look at its length, depth, end-depth and sag.",
      },
    ),
  );
  return true;
}
