import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { type FlatPanel, flatPanel, handbookOf } from "../common/flat/flatPanel.ts";
import { type BedSize, bedOf } from "../common/flat/lyingOn.ts";
import { newNotes } from "../common/notes.ts";
import { type Skirt, type SkirtRun, skirtOf } from "../common/skirt/skirtRun.ts";
import type { ItemContext, Made } from "../itemKind.ts";
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

type Side = "left" | "foot" | "right" | "head";
/** Round the bed from the head's left corner. */
const ROUND: readonly Side[] = ["left", "foot", "right", "head"];

/** The runs of a skirt: one for neighbouring sides, with a corner between each two, or one a side where the corners are split. */
export function runsOf(bed: BedSize, sides: readonly Side[], split: boolean): SkirtRun[] {
  const lengthOf = (side: Side) => (side === "left" || side === "right" ? bed.length : bed.width);
  const asked = ROUND.filter((side) => sides.includes(side));
  if (split)
    return asked.map((side) => ({
      name: side,
      length: lengthOf(side),
      sides: [lengthOf(side)],
      corners: 0,
    }));
  // Begin after a side that is left out, so that neighbours are not parted at the list's ends.
  const gap = ROUND.findIndex((side) => !asked.includes(side));
  const turned = gap < 0 ? ROUND : [...ROUND.slice(gap + 1), ...ROUND.slice(0, gap + 1)];
  const groups: Side[][] = [[]];
  for (const side of turned) {
    if (asked.includes(side)) (groups.at(-1) as Side[]).push(side);
    else if ((groups.at(-1) as Side[]).length > 0) groups.push([]);
  }
  return groups
    .filter((group) => group.length > 0)
    .map((group) => ({
      name: group.length > 1 ? group.join(", ") : (group[0] as Side),
      length: group.map(lengthOf).reduce((a, b) => a.plus(b)),
      sides: group.map(lengthOf),
      corners: group.length - 1,
    }));
}

/** A bed skirt: two sides and the foot times fullness, or with a pleat at each corner, on a platform under the mattress. */
export function makeBedSkirt(fields: BedSkirtFields, context: ItemContext): BedSkirtMade {
  const notes = newNotes();
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const bed = bedOf(fields, context, notes);
  const count = fields.count ?? 1;
  const shared = {
    working: notes.working,
    questions: notes.questions,
    cautions: ["fire", "long-cloths"],
    estimate: null,
    diagnostics: notes.diagnostics,
  };
  const style = fields.style ?? "gathered";
  const split = fields["split-corners"] ?? false;
  const sides = fields.sides ?? ["left", "foot", "right"];
  const hem = context.length("side-hem");
  const skirt = bed
    ? skirtOf(
        {
          cloth: fields.cloth,
          runs: runsOf(bed, sides, split),
          style,
          fullness: context.ratio(style === "box-pleat" ? "pleat-fullness" : "fullness"),
          cornerPleat: context.length("corner-pleat"),
          ends: hem.times(2),
          endsWord: "side hems",
          drop: fields.drop,
          hem: context.length("hem"),
          top: context.length("top"),
          join: context.length("join"),
          count,
          railroad: fields.railroad,
          keyPath: ["cloth"],
        },
        context,
        notes,
      )
    : null;
  if (!bed || !skirt) {
    return {
      figures: {},
      cuts: [],
      materials: [],
      handbook: [],
      makingCounts: {},
      ...shared,
      plan: null,
    };
  }
  if (!fields.drop.isLessThan(bed.height))
    notes.diagnostics.push(
      diagnostic(
        context.place(["drop"]),
        "skirt-above-mattress",
        `A skirt of ${p(fields.drop)} would begin above the top of the bed, at ${p(bed.height)}.`,
        {
          severity: "warning",
          actual: p(fields.drop),
          hint: "Measure the drop from the top of the base, under the mattress, to the floor.",
        },
      ),
    );
  const seam = context.length("platform-seam");
  const platformCut = [bed.width.plus(seam.times(2)), bed.length.plus(seam.times(2))] as const;
  const because = `${printSize([bed.width, bed.length], units)} + 2 × ${p(seam)} turnings each way`;
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
