import Fraction from "fraction.js";
import type { UnitSystem } from "../../units/printLength.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, Made, MaterialNeed, WallRun, WorkingLine } from "../itemKind.ts";
import { countedArea } from "./countedArea.ts";
import { type Coverage, coverageOf } from "./coverage.ts";
import { printArea, printCoverage, printVolume } from "./printAmount.ts";
import type { PaintFields } from "./schema.ts";
import { tinSizes } from "./studioPaint.ts";
import type { Area, WoodworkArea } from "./surface.ts";
import { tinsToBuy } from "./tinPrices.ts";
import type { TinCount } from "./tins.ts";
import { toPaint } from "./toPaint.ts";
import { SQUARE_FOOT } from "./volume.ts";

export interface PaintMade extends Made {
  /** What is painted, in words: walls, ceiling, woodwork, or walls by name. */
  readonly where: string;
  readonly runs: readonly WallRun[];
  /** Square millimetres, exact; null where the room has no walls or floor. */
  readonly area: Area | null;
  readonly coats: number;
  readonly m2PerLitre: Fraction;
  /** Whose coverage it is, in words. */
  readonly coverageFrom: string;
  readonly litres: Fraction | null;
  readonly tins: readonly TinCount[];
  readonly woodwork: WoodworkArea | null;
}

/**
 * Paint for walls, ceiling or woodwork: net area x coats / coverage, up to tins. The coverage is the tin's own; without it the
 * studio's; without it the custom of the studio's units (two customs, not one figure in two units), and it is said which.
 */
export function makePaint(fields: PaintFields, context: ItemContext): PaintMade {
  const notes = newNotes();
  const painted = toPaint(fields, context, notes);
  const { area, woodwork } = painted;
  const coats = fields.coats ?? context.count("coats");
  const coverage = coverageOf(fields, context, notes);
  const { m2PerLitre } = coverage;
  const litres = area === null ? null : area.div(1_000_000).mul(coats).div(m2PerLitre);
  const tins =
    litres === null ? [] : tinsToBuy(litres, tinSizes(fields, context, notes), fields, context);
  if (area !== null && litres !== null)
    notes.working.push(...paintWorking({ area, coats, coverage, litres, tins }, context.units));
  const bought = tins.reduce((sum, t) => sum.add(t.tin.litres.mul(t.count)), new Fraction(0));
  // As the painter's sheet has it, whichever of the two the rate is for.
  const counted = countedArea(area ?? new Fraction(0), context.units).div(1_000_000);
  return {
    figures: {
      areaM2: area === null ? 0 : area.div(1_000_000).valueOf(),
      litres: litres?.valueOf() ?? 0,
      coats,
      coverageM2PerLitre: m2PerLitre.valueOf(),
      boughtLitres: bought.valueOf(),
      tins: tins.reduce((n, t) => n + t.count, 0),
    },
    cuts: [],
    materials: tins.map((t) => tinNeed(fields, t)),
    working: notes.working,
    handbook: [],
    makingCounts: {
      item: new Fraction(1),
      "square-metre": counted,
      "square-foot": counted.div(SQUARE_FOOT),
    },
    questions: notes.questions,
    cautions: ["lead-paint"],
    estimate: woodwork
      ? "Woodwork is an estimate: casings are taken at their usual width, and each door's room side is counted."
      : null,
    diagnostics: notes.diagnostics,
    where: painted.where,
    runs: painted.runs,
    area,
    coats,
    m2PerLitre,
    coverageFrom: coverage.from,
    litres,
    tins,
    woodwork,
  };
}

/** How the paint and its tins come about. */
function paintWorking(
  paint: {
    readonly area: Area;
    readonly coats: number;
    readonly coverage: Coverage;
    readonly litres: Fraction;
    readonly tins: readonly TinCount[];
  },
  units: UnitSystem,
): WorkingLine[] {
  const { area, coats, coverage, litres, tins } = paint;
  return [
    {
      what: "Paint",
      sum: `${printArea(area, units)} × ${coats} ${coats === 1 ? "coat" : "coats"} ÷ ${printCoverage(coverage.m2PerLitre, units)}, ${coverage.from}`,
      result: printVolume(litres, units),
      rounded: null,
    },
    {
      what: "Tins",
      sum: printVolume(litres, units),
      result: tins.map((t) => `${t.count} × ${t.tin.text}`).join(" + ") || "none",
      rounded: "up to whole tins",
    },
  ];
}

/** Tins of one size to buy. */
function tinNeed(fields: PaintFields, { tin, count }: TinCount): MaterialNeed {
  return {
    what: `${fields.name ?? fields.paint} paint${fields.finish ? `, ${fields.finish}` : ""}`,
    cloth: null,
    amount: tin.amount.mul(count),
    unit: tin.unit,
    tins: count,
    text: `${count} ${count === 1 ? "tin" : "tins"} of ${tin.text}`,
    by: "studio",
  };
}
