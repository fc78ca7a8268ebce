import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { type FlatPanel, flatPanel, handbookOf } from "../common/flat/flatPanel.ts";
import { type BedSize, bedOf } from "../common/flat/lyingOn.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import type { Skirt } from "../common/skirt/skirtRun.ts";
import { styledSkirt } from "../common/skirt/styledSkirt.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import { runsOf, type Side } from "./runs.ts";
import type { BedSkirtFields } from "./schema.ts";

export interface BedSkirtPlan {
  readonly bed: BedSize;
  readonly skirt: Skirt;
  readonly split: boolean;
  readonly sides: readonly Side[];
  readonly platform: FlatPanel | null;
  readonly platformCut: readonly [Length, Length];
}
export interface BedSkirtMade extends Made {
  readonly plan: BedSkirtPlan | null;
}

/** A bed skirt: two sides and the foot times fullness, or with a pleat at each corner, on a platform under the mattress. */
export function makeBedSkirt(fields: BedSkirtFields, context: ItemContext): BedSkirtMade {
  const notes = newNotes();
  const bed = bedOf(fields, context, notes);
  const count = fields.count ?? 1;
  const shared = noted(notes, ["fire", "long-cloths"]);
  const split = fields["split-corners"] ?? false;
  const sides = fields.sides ?? ["left", "foot", "right"];
  const hem = context.length("side-hem");
  if (!bed) return { ...NOTHING_CUT, ...shared, plan: null };
  const place = {
    runs: runsOf(bed, sides, split),
    ends: hem.times(2),
    endsWord: "side hems",
    drop: () => fields.drop,
  };
  const skirt = styledSkirt(fields, place, context, notes);
  if (!skirt) return { ...NOTHING_CUT, ...shared, plan: null };
  if (!fields.drop.isLessThan(bed.height)) beginsAboveMattress(fields, bed, context, notes);
  const { platform, platformCut } = platformOf(fields, bed, count, context, notes);
  if (!fields.platform)
    notes.questions.push("Of which plain cloth is the platform under the mattress?");
  if (!fields["split-corners"] && !fields.style)
    notes.questions.push("Has the bed posts, so that the corners must be open?");
  return {
    figures: {
      runMm: skirt.finishedRun.toMm(),
      flatMm: skirt.flat.toMm(),
      gatheredRunMm: skirt.finishedRun.times(skirt.fullness).toMm(),
      cutLengthMm: skirt.cut.toMm(),
      dropMm: skirt.drop.toMm(),
      widths: skirt.widths,
      hemAboveFloorMm: context.length("clearance").toMm(),
    },
    cuts: [...skirt.cuts, ...(platform?.cuts ?? [])],
    materials: [],
    handbook: handbookOf([
      { cloth: skirt.cloth.id, length: skirt.handbook },
      ...(platform ? [{ cloth: platform.cloth.id, length: platform.handbook }] : []),
    ]),
    makingCounts: {
      item: new Fraction(count),
      width: new Fraction(skirt.widths),
      drop: new Fraction(skirt.widths),
    },
    ...shared,
    plan: { bed, skirt, split, sides, platform, platformCut },
  };
}

/** Says that the skirt is as high as the made bed, so that it would show above the mattress. */
function beginsAboveMattress(
  { drop }: BedSkirtFields,
  bed: BedSize,
  context: ItemContext,
  notes: Notes,
): void {
  const p = (l: Length) => printLength(l, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place(["drop"]),
      "skirt-above-mattress",
      `A skirt of ${p(drop)} would begin above the top of the bed, at ${p(bed.height)}.`,
      {
        severity: "warning",
        actual: p(drop),
        hint: "Measure the drop from the top of the base, under the mattress, to the floor.",
      },
    ),
  );
}

/** The plain cloth under the mattress that the skirt is sewn to: the bed's size and a turning all round. */
function platformOf(
  fields: BedSkirtFields,
  bed: BedSize,
  count: number,
  context: ItemContext,
  notes: Notes,
): Pick<BedSkirtPlan, "platform" | "platformCut"> {
  const { units } = context;
  const seam = context.length("platform-seam");
  const platformCut = [bed.width.plus(seam.times(2)), bed.length.plus(seam.times(2))] as const;
  const because = `${printSize([bed.width, bed.length], units)} + 2 × ${printLength(seam, units)} turnings each way`;
  const platform = fields.platform
    ? flatPanel(
        {
          piece: "platform",
          surface: "platform",
          cloth: fields.platform,
          width: platformCut[0],
          height: platformCut[1],
          count,
          join: context.length("join"),
          motifAboveFoot: null,
          motifAsked: false,
          railroad: undefined,
          because,
          keyPath: ["platform"],
        },
        context,
        notes,
      )
    : null;
  notes.working.push({
    what: "Platform, cut",
    sum: because,
    result: printSize(platformCut, units),
    rounded: null,
  });
  return { platform, platformCut };
}
