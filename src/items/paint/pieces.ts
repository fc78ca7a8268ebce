import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { printLength } from "../../units/printLength.ts";
import { US_GALLON } from "../../units/volume.ts";
import type { ItemContext, Made, MaterialNeed, WallRun, WorkingLine } from "../itemKind.ts";
import { printArea, printCoverage, printVolume } from "./printAmount.ts";
import type { PaintFields } from "./schema.ts";
import {
  type Area,
  areaOf,
  doorWords,
  openingWords,
  type WoodworkArea,
  wallArea,
  woodworkArea,
} from "./surface.ts";
import { type TinCount, tinsFor } from "./tins.ts";
import { parseCoverage, parseTin, SQUARE_FOOT, type Tin } from "./volume.ts";

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

/** Sizes that paint is sold in where nothing is said (common practice, no source). */
const USUAL_TINS = { inches: ["1 gal", "1 qt"], centimetres: ["2.5 l", "5 l"] } as const;

/**
 * Paint for walls, ceiling or woodwork: net area x coats / coverage, up to tins. The coverage is the tin's own; without it the
 * studio's; without it the custom of the studio's units (two customs, not one figure in two units), and it is said which.
 */
export function makePaint(fields: PaintFields, context: ItemContext): PaintMade {
  const { units } = context;
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const where = Array.isArray(fields.on) ? fields.on.join(", ") : (fields.on as string);
  const runs = where === "ceiling" ? null : context.runs(fields.on);
  let woodwork: WoodworkArea | null = null;
  const area = areaToPaint();
  const coats = fields.coats ?? context.count("coats");
  const { m2PerLitre, from } = coverage();
  const litres = area === null ? null : area.div(1_000_000).mul(coats).div(m2PerLitre);
  const tins = litres === null ? [] : tinsFor(litres, sizes());
  const bought = tins.reduce((sum, t) => sum.add(t.tin.litres.mul(t.count)), new Fraction(0));
  if (litres !== null && area !== null) {
    working.push(
      {
        what: "Paint",
        sum: `${printArea(area, units)} × ${coats} ${coats === 1 ? "coat" : "coats"} ÷ ${printCoverage(m2PerLitre, units)}, ${from}`,
        result: printVolume(litres, units),
        rounded: null,
      },
      {
        what: "Tins",
        sum: printVolume(litres, units),
        result: tins.map((t) => `${t.count} × ${t.tin.text}`).join(" + ") || "none",
        rounded: "up to whole tins",
      },
    );
  }
  const materials: MaterialNeed[] = tins.map((t) => ({
    what: `${fields.name ?? fields.paint} paint${fields.finish ? `, ${fields.finish}` : ""}`,
    cloth: null,
    amount: t.tin.amount.mul(t.count),
    unit: t.tin.unit,
    tins: t.count,
    text: `${t.count} ${t.count === 1 ? "tin" : "tins"} of ${t.tin.text}`,
    by: "studio",
  }));
  const estimate = woodwork
    ? "Woodwork is an estimate: casings are taken at their usual width, and each door's room side is counted."
    : null;
  const m2 = area === null ? 0 : area.div(1_000_000).valueOf();
  return {
    figures: {
      areaM2: m2,
      litres: litres?.valueOf() ?? 0,
      coats,
      coverageM2PerLitre: m2PerLitre.valueOf(),
      boughtLitres: bought.valueOf(),
      tins: tins.reduce((n, t) => n + t.count, 0),
    },
    cuts: [],
    materials,
    working,
    handbook: [],
    makingCounts: {
      item: new Fraction(1),
      "square-metre": upToHundredth(area?.div(1_000_000) ?? null),
      "square-foot": upToHundredth(area?.div(1_000_000).div(SQUARE_FOOT) ?? null),
    },
    questions,
    cautions: ["lead-paint"],
    estimate,
    diagnostics,
    where,
    runs: runs ?? [],
    area,
    coats,
    m2PerLitre,
    coverageFrom: from,
    litres,
    tins,
    woodwork,
  };

  function areaToPaint(): Area | null {
    if (where === "ceiling") {
      const floor = context.floor;
      if (!floor)
        return noRoom("The room has neither floor nor walls, so its ceiling has no size.");
      const ceiling = areaOf(floor.length, floor.width);
      working.push({
        what: "Ceiling",
        sum: `${printLength(floor.length, units)} × ${printLength(floor.width, units)}, as the floor`,
        result: printArea(ceiling, units),
        rounded: null,
      });
      return ceiling;
    }
    if (runs === null)
      return noRoom(
        "The room's walls or its height are not given, so there is nothing to reckon paint by.",
      );
    if (runs.length === 0) {
      if (Array.isArray(fields.on)) {
        diagnostics.push(
          diagnostic(
            context.place(["on"]),
            "wall-not-found",
            `"${where}" is no wall of this room.`,
            {
              actual: where,
              expected: "walls that the room file lists",
              hint: "Write the walls' names as under walls, or on: walls for all of them.",
            },
          ),
        );
        return null;
      }
      questions.push("Every wall is papered: nothing is left to paint.");
      return new Fraction(0);
    }
    if (where === "woodwork") {
      const casing = context.length("casing");
      const skirting = fields.skirting ?? context.length("skirting");
      const wood = woodworkArea(runs, skirting, casing);
      woodwork = wood;
      if (!fields.skirting)
        questions.push(
          `The skirting's height is not measured: ${printLength(skirting, units)} is taken.`,
        );
      if (runs.some((r) => r.openings.some((o) => o.what === "window")))
        questions.push("Are the window sashes painted too? They are not counted.");
      working.push(
        {
          what: "Skirting",
          sum: `${printLength(wood.skirtingLength, units)}, the walls' faces less the doors with their casings, × ${printLength(skirting, units)}`,
          result: printArea(wood.skirting, units),
          rounded: null,
        },
        {
          what: "Casings, an estimate",
          sum: `round ${openingWords(runs, units)}: three sides of a door, four of a window, × ${printLength(casing, units)}`,
          result: printArea(wood.casings, units),
          rounded: null,
        },
        {
          what: "Doors, room side, an estimate",
          sum: doorWords(runs, units),
          result: printArea(wood.doors, units),
          rounded: null,
        },
      );
      return wood.total;
    }
    const walls = wallArea(runs, context.length("small-opening"));
    working.push({
      what: "Wall faces",
      sum: runs
        .map((run) => `${printLength(run.width, units)} × ${printLength(run.height, units)}`)
        .join(" + "),
      result: printArea(walls.gross, units),
      rounded: null,
    });
    working.push({
      what: "Walls",
      sum: `${printArea(walls.gross, units)} − ${printArea(walls.openings, units)} openings${walls.keptIn ? `; ${walls.keptIn} small ${walls.keptIn === 1 ? "one" : "ones"} not taken off` : ""}`,
      result: printArea(walls.net, units),
      rounded: null,
    });
    return walls.net;
  }

  function noRoom(message: string): null {
    diagnostics.push(
      diagnostic(context.place(["on"]), "room-without-walls", message, {
        expected: "floor or walls, and height, in the room file",
        hint: `Write floor: 16' 6" x 12' 4" and height: 8' 9".`,
      }),
    );
    return null;
  }

  function coverage(): { m2PerLitre: Fraction; from: string } {
    const custom = (name: string) => {
      const value = context.ratio(name);
      return units === "inches" ? value.mul(SQUARE_FOOT).div(US_GALLON) : value;
    };
    const poor = fields.surface === "rough" || fields.surface === "bare";
    const less = poor ? custom("covers-rough").div(custom("covers")) : new Fraction(1);
    const on = poor ? `, less on a ${fields.surface} surface` : "";
    if (fields.coverage)
      return { m2PerLitre: fields.coverage.m2PerLitre.mul(less), from: `the tin's own${on}` };
    const studio = context.paint?.coverage ?? null;
    const read = studio === null ? null : parseCoverage(studio);
    if (read) return { m2PerLitre: read.m2PerLitre.mul(less), from: `the studio's${on}` };
    if (studio !== null) unreadable("coverage", studio, "12 m2/l or 400 sq ft/gal");
    const said =
      units === "inches" ? "the custom of feet and gallons" : "the custom of metres and litres";
    return {
      m2PerLitre: custom(poor ? "covers-rough" : "covers"),
      from: `${said}${poor ? ` on a ${fields.surface} surface` : ", smooth wall"}`,
    };
  }

  function sizes(): Tin[] {
    if (fields.tins && fields.tins.length > 0) return fields.tins;
    const said = context.paint?.tins ?? [];
    const read = said.flatMap((text) => {
      const tin = parseTin(text);
      if (!tin) unreadable("tins", text, "1 gal, 1 qt, 2.5 l");
      return tin ? [tin] : [];
    });
    return read.length > 0 ? read : USUAL_TINS[units].map((text) => parseTin(text) as Tin);
  }

  function unreadable(what: string, text: string, example: string): void {
    diagnostics.push(
      diagnostic(
        context.place([]),
        "studio-paint-unreadable",
        `The ${what} "${text}" under paint in studio.md cannot be read.`,
        {
          severity: "warning",
          actual: text,
          expected: example,
          hint: `Write for example ${example}; until then the usual figure is taken.`,
        },
      ),
    );
  }
}

/** What a painter is paid by area: two decimals, up. */
function upToHundredth(value: Fraction | null): Fraction {
  return (value ?? new Fraction(0)).mul(100).ceil().div(100);
}
