import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsFields } from "./schema.ts";
import { type SFold, sFoldOf } from "./sFold.ts";

/** What the closed curtains span, and the flat cloth that this takes. */
export interface Coverage {
  readonly curtains: 1 | 2;
  /** One curtain's side: where it stacks. */
  readonly hangs: "pair" | "left" | "right";
  /** Back to the wall at each end. */
  readonly returnEach: Length;
  /** Crossing in the middle, in all. */
  readonly overlap: Length;
  readonly coverage: Length;
  readonly fullness: Fraction;
  readonly sideHem: Length;
  /** Before joins: coverage times fullness, and the side hems of all curtains. */
  readonly flat: Length;
  /** The carriers that set the flat width, with an s-fold heading. */
  readonly sFold: SFold | null;
}

/**
 * What a door changes: one curtain that stacks at the hinges, on a fixed pole or on a rod that rises with the door. Elsewhere a pair
 * where nothing is said.
 */
export function atDoor(
  fields: CurtainsFields,
  context: ItemContext,
  notes: Notes,
): {
  readonly door: "fixed" | "rising" | null;
  readonly panels: NonNullable<CurtainsFields["panels"]>;
} {
  const { window } = context;
  if (!window?.isDoor) {
    for (const key of ["door-rod", "door-hinge"] as const) {
      if (fields[key] === undefined) continue;
      notes.diagnostics.push(
        diagnostic(
          context.place([key]),
          "curtains-at-no-door",
          `${key} says nothing of curtains that hang at no door.`,
          { severity: "warning", hint: "Take the line out, or write at: and the name of a door." },
        ),
      );
    }
    return { door: null, panels: fields.panels ?? "pair" };
  }
  const door = fields["door-rod"] ?? "fixed";
  if (!fields["door-rod"])
    notes.questions.push(
      `Does the curtain at ${window.name} hang from a fixed pole or from a portière rod that rises with the door? A fixed pole is assumed.`,
    );
  notes.questions.push(
    `Which way does ${window.name} open, and does the curtain clear its handle, its frame and what lies on the floor?`,
  );
  if (fields.panels) return { door, panels: fields.panels };
  const hinge = fields["door-hinge"];
  if (!hinge)
    notes.questions.push(
      `At which side are the hinges of ${window.name}? One curtain that stacks at the left is assumed.`,
    );
  return { door, panels: hinge === "right" ? "single-right" : "single-left" };
}

/**
 * Coverage = pole + 2 returns + overlap; flat = coverage × fullness + side hems, or with `returns-in-fullness` 0 the returns added
 * flat. Eyelets, tabs and slots run on the pole itself, s-folds on
 * a track, curtains inside a recess between its walls, and round a bed there is none: they return only where it is written.
 */
export function coverageOf(
  fields: CurtainsFields,
  pole: Length,
  context: ItemContext,
  notes: Notes,
): Coverage {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const { door, panels } = atDoor(fields, context, notes);
  const curtains = panels === "pair" ? 2 : 1;
  const flush = ["eyelet", "tab", "slot", "s-fold"].includes(fields.heading);
  const returnEach =
    fields.return ??
    (flush || fields.mount === "inside" || door === "rising" || context.hangsOn
      ? Length.zero
      : context.length("return"));
  const overlap =
    fields.overlap ?? (flush || curtains === 1 ? Length.zero : context.length("overlap"));
  if (!fields.return && !returnEach.isZero()) {
    notes.questions.push(
      `How far do the curtains return to the wall at each side? ${p(returnEach)} is assumed until the bracket is measured.`,
    );
  }
  const coverage = pole.plus(returnEach.times(2)).plus(overlap);
  const sFold =
    fields.heading === "s-fold"
      ? sFoldOf(coverage.dividedBy(curtains), fields.fullness, context, notes)
      : null;
  const fullness = sFold
    ? sFold.clothPerCarrier.over(sFold.spacing)
    : (fields.fullness ?? context.ratio(`fullness-${fields.heading}`));
  const sideHem = context.length("side-hem");
  const edges = curtains * 2;
  const gathered = returnEach.isZero() || context.count("returns-in-fullness") !== 0;
  const returns = returnEach.times(2);
  const full = gathered
    ? coverage.times(fullness)
    : coverage.minus(returns).times(fullness).plus(returns);
  const flat = (sFold ? sFold.flat.times(curtains) : full).plus(sideHem.times(edges));
  const parts = [`${printMeasured(pole, units)} ${onTrack(fields) ? "track" : "pole"}`];
  if (!returnEach.isZero()) parts.push(`2 × ${p(returnEach)} returns`);
  if (!overlap.isZero()) parts.push(`${p(overlap)} overlap`);
  const hems = `${edges} × ${p(sideHem)} side hems`;
  notes.working.push(
    { what: "Coverage", sum: parts.join(" + "), result: p(coverage), rounded: null },
    {
      what: "Flat width",
      sum: sFold
        ? `${curtains} × ${p(sFold.flat)} + ${hems}`
        : gathered
          ? `${p(coverage)} × ${fullness.toString()} fullness + ${hems}`
          : `${p(coverage.minus(returns))} × ${fullness.toString()} fullness + ${p(returns)} returns, flat + ${hems}`,
      result: p(flat),
      rounded: null,
    },
  );
  const hangs = panels === "pair" ? "pair" : panels === "single-right" ? "right" : "left";
  return { curtains, hangs, returnEach, overlap, coverage, fullness, sideHem, flat, sFold };
}
