import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { boughtAs } from "../common/boughtLength.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import type { ClothFacts, ItemContext, Made, MaterialNeed, WallRun } from "../itemKind.ts";
import { type HungBorder, readBorders } from "./border.ts";
import { type CeilingWay, ceilingFaults, ceilingQuestions, paperedCeiling } from "./ceiling.ts";
import { rollFaults, shortRollFault, wallFaults } from "./faults.ts";
import { type HungPaper, hangPaper } from "./hung.ts";
import { type Paper, paperOf } from "./paper.ts";
import type { WallpaperFields } from "./schema.ts";
import { type HungStretch, netArea, wallGroups } from "./stretches.ts";
import { paperWorking } from "./working.ts";

export interface WallpaperMade extends Made {
  readonly stretches: readonly HungStretch[];
  readonly height: Length;
  readonly cut: Length;
  readonly rollWidth: Length | null;
  readonly rollLength: Length | null;
  readonly repeat: ClothFacts["repeat"];
  readonly hanging: "in-turn" | "two-stocks";
  readonly strips: number;
  readonly spacing: Length | null;
  readonly perRoll: number | null;
  readonly perRollBest: number | null;
  /** Rolls that are hung, by the worst start; null where they cannot be reckoned. */
  readonly rollsHung: number | null;
  readonly rollsBest: number | null;
  readonly spare: number;
  readonly borders: readonly HungBorder[];
  readonly areaMm2: number;
  /** Which way the strips of a ceiling run; null of walls. */
  readonly ceiling: CeilingWay | null;
}

/**
 * Rolls of paper: strips over each stretch of wall, up; strips per roll by the worst start (the buying rule) with the best start
 * beside it; and spare rolls, all of one batch. Strips inside large openings are left out, less what their heads and feet take. A ceiling is
 * hung as one wall without openings.
 */
export function makeWallpaper(fields: WallpaperFields, context: ItemContext): WallpaperMade {
  const notes = newNotes();
  const paper = paperOf(fields, context);
  notes.diagnostics.push(...rollFaults(fields, paper, context));
  const ceiling = paperedCeiling(fields, context);
  notes.diagnostics.push(...ceilingFaults(fields, context));
  const runs = ceiling ? [ceiling.run] : wallRuns(fields, context, notes);

  const hung = hangPaper(fields, paper, runs, context);
  const { cut, height, perRoll, rollsBest, rollsHung, strips } = hung;
  if (perRoll?.worst === 0) notes.diagnostics.push(...shortRollFault(paper, cut, context));
  notes.working.push(...paperWorking(paper, hung, context));
  if (hung.ask?.repeat?.match === "half-drop" && !fields.hanging)
    notes.questions.push(
      "The half-drop is reckoned cut in turn from one roll; odd and even strips from two stocks of rolls may need fewer rolls.",
    );

  if (ceiling) notes.questions.push(...ceilingQuestions(ceiling));
  if (fields.on === "walls" && runs.length > 1)
    notes.questions.push(
      "Where does the first strip hang, and in which corner do the first and the last meet? The strips are numbered from the left end of the first wall.",
    );

  if (paper.dropInside && paper.card)
    notes.questions.push(
      `By its repeat across the half-drop of ${paper.card.name} falls inside the roll's width, so its strips are hung level: is that so on the roll?`,
    );

  // Walls hung as one are one stretch for a border too.
  const bordered = readBorders(fields, wallGroups(fields.on, runs), height, context);
  notes.diagnostics.push(...bordered.diagnostics);
  notes.working.push(...bordered.working);
  notes.questions.push(...bordered.questions);

  const areaMm2 = runs.reduce((sum, run) => sum + netArea(run, height), 0);
  return {
    figures: figuresOf(paper, hung, bordered.borders, areaMm2),
    cuts: [],
    materials: [
      ...rollsNeed(fields, paper, hung),
      ...bordered.materials,
      ...pasteNeed(fields, hung),
    ],
    working: notes.working,
    handbook: [],
    makingCounts: {
      item: new Fraction(1),
      roll: new Fraction(rollsHung ?? 0),
      drop: new Fraction(strips),
      "square-metre": round2(areaMm2 / 1e6),
      "square-foot": round2(areaMm2 / 92903.04),
    },
    questions: notes.questions,
    cautions: ["lead-paint"],
    estimate: null,
    diagnostics: notes.diagnostics,
    stretches: hung.stretches,
    height,
    cut,
    rollWidth: paper.roll?.width ?? null,
    rollLength: paper.roll?.length ?? null,
    repeat: paper.repeat,
    hanging: paper.hanging,
    strips,
    spacing: perRoll?.spacing ?? null,
    perRoll: perRoll?.worst ?? null,
    perRollBest: perRoll?.best ?? null,
    rollsHung,
    rollsBest,
    spare: paper.spare,
    borders: bordered.borders,
    areaMm2,
    ceiling: ceiling?.way ?? null,
  };
}

/** The walls that are papered; none, with what is wrong, where they cannot be known. */
function wallRuns(fields: WallpaperFields, context: ItemContext, notes: Notes): readonly WallRun[] {
  if (fields.on === "ceiling") return [];
  const walls = context.runs(fields.on);
  notes.diagnostics.push(...wallFaults(fields, walls, context));
  return walls ?? [];
}

/** The rolls to buy, spare ones with them. */
function rollsNeed(
  fields: WallpaperFields,
  paper: Paper,
  { rollsHung }: HungPaper,
): MaterialNeed[] {
  if (rollsHung === null) return [];
  const rolls = rollsHung + paper.spare;
  return [
    {
      what: paper.card?.name ?? fields.cloth,
      cloth: fields.cloth,
      amount: new Fraction(rolls),
      unit: "roll",
      text: `${rolls} rolls of one batch${paper.spare > 0 ? `, ${paper.spare} of them spare` : ""}`,
      by: "studio",
    },
  ];
}

/** Paste, and adhesive for borders; none without rolls. */
function pasteNeed(fields: WallpaperFields, { rollsHung }: HungPaper): MaterialNeed[] {
  if (!rollsHung) return [];
  const borders = (fields.borders ?? []).length > 0 ? ", and border adhesive" : "";
  const text = `paste for ${rollsHung} rolls, of the kind that the paper's maker names${borders}`;
  return [boughtAs("paste", text, 1)];
}

/** The machine figures of wallpaper, lengths in millimetres. */
function figuresOf(
  paper: Paper,
  { cut, perRoll, rollsBest, rollsHung, strips }: HungPaper,
  borders: readonly HungBorder[],
  areaMm2: number,
): Record<string, number> {
  return {
    strips,
    stripsPerRoll: perRoll?.worst ?? 0,
    stripsPerRollBestStart: perRoll?.best ?? 0,
    rolls: rollsHung === null ? 0 : rollsHung + paper.spare,
    rollsHung: rollsHung ?? 0,
    rollsBestStart: rollsBest ?? 0,
    spareRolls: paper.spare,
    borderRolls: borders.reduce((n, b) => n + (b.rolls ?? 0) + b.spare, 0),
    borderMm: borders.reduce((n, b) => n + b.run.toMm(), 0),
    stripSpacingMm: perRoll?.spacing.toMm() ?? 0,
    cutLengthMm: cut.toMm(),
    areaM2: areaMm2 / 1e6,
  };
}

/** Two decimals, up: what a hanger is paid by area. */
function round2(value: number): Fraction {
  return new Fraction(Math.ceil(Math.round(value * 1e6) / 1e4), 100);
}
