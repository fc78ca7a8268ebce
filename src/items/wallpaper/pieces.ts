import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type {
  ClothFacts,
  ItemContext,
  Made,
  MaterialNeed,
  WallRun,
  WorkingLine,
} from "../itemKind.ts";
import { type HungBorder, readBorders } from "./border.ts";
import type { WallpaperFields } from "./schema.ts";
import { rollsFor, type StripAsk, stripsOver, stripsPerRoll, stripsSaved } from "./strips.ts";

/** Walls that are hung without a break: strips run on round the corners. */
export interface HungStretch {
  readonly runs: readonly WallRun[];
  readonly width: Length;
  readonly strips: number;
  /** Strips left out at large openings. */
  readonly saved: number;
}

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
}

/**
 * Rolls of paper: strips over each stretch of wall, up; strips per roll by the worst start (the buying rule) with the best start
 * beside it; and spare rolls, all of one batch. Strips inside large openings are left out, less what their heads and feet take.
 */
export function makeWallpaper(fields: WallpaperFields, context: ItemContext): WallpaperMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const cloth = context.cloth(fields.cloth);
  const roll = cloth?.roll ?? null;
  const repeat = cloth?.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  const hanging = fields.hanging ?? "in-turn";
  const trim = context.length("trim");
  const spare = fields["spare-rolls"] ?? context.count("spare-rolls");
  const large = context.length("large-opening");

  if (cloth && !roll) {
    diagnostics.push(
      diagnostic(
        context.place(["cloth"]),
        "wallcovering-without-roll",
        `${cloth.name} has no roll size on its card, so no rolls can be counted.`,
        {
          actual: fields.cloth,
          expected: "a wallcovering's card with its roll",
          hint: `Write on the card, for example: roll: { width: 53 cm, length: 10.05 m }.`,
        },
      ),
    );
  }
  const runs = context.runs(fields.on);
  if (runs === null) {
    diagnostics.push(
      diagnostic(
        context.place(["on"]),
        "room-without-walls",
        "The room's walls or its height are not given, so there is nothing to reckon paper by.",
        {
          expected: "floor or walls, and height, in the room file",
          hint: `Write floor: 16' 6" x 12' 4" (or all walls with their lengths) and height: 8' 9".`,
        },
      ),
    );
  } else if (runs.length === 0) {
    diagnostics.push(
      diagnostic(
        context.place(["on"]),
        "wall-not-found",
        `"${wallsNamed(fields.on)}" is no wall of this room.`,
        {
          actual: wallsNamed(fields.on),
          expected: "a wall that the room file lists",
          hint: "Write the wall's name as under walls: north, east, south or west, or your own.",
        },
      ),
    );
  }
  const height =
    fields.height ??
    (runs?.length ? Length.max(...runs.map((r) => r.height)) : (context.roomHeight ?? Length.zero));
  const cut = height.plus(trim);
  const ask: StripAsk | null = roll
    ? {
        cut,
        rollLength: roll.length,
        repeat: repeat
          ? { up: repeat.up, match: repeat.match === "half-drop" ? "half-drop" : "straight" }
          : null,
        hanging,
      }
    : null;

  const stretches = ask && roll ? stretchesOf(runs ?? [], ask, roll.width) : [];
  const strips = stretches.reduce((n, s) => n + s.strips, 0);
  const perRoll = ask ? stripsPerRoll(ask) : null;
  const rollsHung = ask && strips > 0 ? rollsFor(strips, ask, "worst") : null;
  const rollsBest = ask && strips > 0 ? rollsFor(strips, ask, "best") : null;

  if (perRoll && roll && perRoll.worst === 0) {
    diagnostics.push(
      diagnostic(
        context.place(["cloth"]),
        "roll-too-short",
        `A roll of ${cloth?.name} is ${printMeasured(roll.length, units)} long; one strip is ${p(cut)}${repeat ? `, and up to ${p(repeat.up)} may be lost before the first motif` : ""}.`,
        {
          expected: "a roll that gives at least one strip",
          hint: "Choose a paper with longer rolls, or write the height that is papered.",
        },
      ),
    );
  }
  if (ask && perRoll && roll) {
    working.push(
      {
        what: "Strip",
        sum: `${p(height)} height + ${p(trim)} trim`,
        result: p(cut),
        rounded: null,
      },
      ...stretches.map((s) => ({
        what: `Strips, ${s.runs.map((r) => r.wall).join(", ")}`,
        sum: `${p(s.width)} ÷ ${p(roll.width)} roll width${s.saved ? `, less ${s.saved} inside large openings` : ""}`,
        result: String(s.strips),
        rounded: "up to whole strips",
      })),
    );
    if (repeat)
      working.push({
        what: "Spacing along the roll",
        sum: `${p(cut)} up to ${ask.repeat?.match === "half-drop" && hanging === "in-turn" ? "an odd number of half repeats" : "whole repeats"} of ${p(repeat.up)}`,
        result: p(perRoll.spacing),
        rounded: "up",
      });
    working.push({
      what: "Strips a roll",
      sum: repeat
        ? `1 + (${printMeasured(roll.length, units)} roll − ${p(repeat.up)} that may be lost − ${p(cut)}) ÷ ${p(perRoll.spacing)}`
        : `1 + (${printMeasured(roll.length, units)} roll − ${p(cut)}) ÷ ${p(perRoll.spacing)}`,
      result: String(perRoll.worst),
      rounded: "down to whole strips",
    });
    if (rollsHung !== null) {
      working.push({
        what: "Rolls",
        sum: `${strips} strips ÷ ${perRoll.worst} a roll${ask.repeat?.match === "half-drop" && hanging === "two-stocks" ? ", odd and even strips apart" : ""} + ${spare} spare`,
        result: String(rollsHung + spare),
        rounded: "up to whole rolls",
      });
      if (repeat && rollsBest !== null)
        working.push({
          what: "Were every roll to begin at the motif",
          sum: `${strips} strips ÷ ${perRoll.best} a roll; not to be bought by`,
          result: `${rollsBest} rolls, no spare`,
          rounded: "up to whole rolls",
        });
      materials.push({
        what: cloth?.name ?? fields.cloth,
        cloth: fields.cloth,
        amount: new Fraction(rollsHung + spare),
        unit: "roll",
        text: `${rollsHung + spare} rolls of one batch${spare > 0 ? `, ${spare} of them spare` : ""}`,
        by: "studio",
      });
    }
  }
  if (ask?.repeat?.match === "half-drop" && !fields.hanging)
    questions.push(
      "The half-drop is reckoned cut in turn from one roll; odd and even strips from two stocks of rolls may need fewer rolls.",
    );

  // Walls hung as one are one stretch for a border too.
  const borders = readBorders(
    fields,
    fields.on === "walls" ? [runs ?? []] : (runs ?? []).map((run) => [run]),
    height,
    context,
  );
  diagnostics.push(...borders.diagnostics);
  working.push(...borders.working);
  materials.push(...borders.materials);
  questions.push(...borders.questions);
  if (rollsHung !== null && rollsHung > 0)
    materials.push({
      what: "paste",
      cloth: null,
      amount: new Fraction(1),
      unit: "piece",
      text: `paste for ${rollsHung} rolls, of the kind that the paper's maker names${(fields.borders ?? []).length > 0 ? ", and border adhesive" : ""}`,
      by: "maker",
    });

  const areaMm2 = (runs ?? []).reduce((sum, run) => sum + netArea(run, height), 0);
  return {
    figures: {
      strips,
      stripsPerRoll: perRoll?.worst ?? 0,
      stripsPerRollBestStart: perRoll?.best ?? 0,
      rolls: rollsHung === null ? 0 : rollsHung + spare,
      rollsHung: rollsHung ?? 0,
      rollsBestStart: rollsBest ?? 0,
      spareRolls: spare,
      borderRolls: borders.borders.reduce((n, b) => n + (b.rolls ?? 0) + b.spare, 0),
      borderMm: borders.borders.reduce((n, b) => n + b.run.toMm(), 0),
      stripSpacingMm: perRoll?.spacing.toMm() ?? 0,
      cutLengthMm: cut.toMm(),
      areaM2: areaMm2 / 1e6,
    },
    cuts: [],
    materials,
    working,
    handbook: [],
    makingCounts: {
      item: new Fraction(1),
      roll: new Fraction(rollsHung ?? 0),
      drop: new Fraction(strips),
      "square-metre": round2(areaMm2 / 1e6),
      "square-foot": round2(areaMm2 / 92903.04),
    },
    questions,
    cautions: ["lead-paint"],
    estimate: null,
    diagnostics,
    stretches,
    height,
    cut,
    rollWidth: roll?.width ?? null,
    rollLength: roll?.length ?? null,
    repeat,
    hanging,
    strips,
    spacing: perRoll?.spacing ?? null,
    perRoll: perRoll?.worst ?? null,
    perRollBest: perRoll?.best ?? null,
    rollsHung,
    rollsBest,
    spare,
    borders: borders.borders,
    areaMm2,
  };

  /** All walls are hung round as one stretch; walls that are named one by one, or a part of one, begin anew each. */
  function stretchesOf(all: readonly WallRun[], how: StripAsk, rollWidth: Length): HungStretch[] {
    const groups = fields.on === "walls" ? [all] : all.map((run) => [run]);
    return groups
      .filter((g) => g.length > 0)
      .map((group) => {
        const width = Length.sum(group.map((r) => r.width));
        const whole = stripsOver(width, rollWidth);
        const saved = group
          .flatMap((run) => run.openings.map((o) => ({ run, o })))
          .filter(({ o }) => o.width.over(large).mul(o.height.over(large)).compare(1) > 0)
          .reduce((sum, { run, o }) => {
            const left = Length.max(o.fromLeft, run.fromLeft);
            const right = Length.min(o.fromLeft.plus(o.width), run.fromLeft.plus(run.width));
            const seen = right.minus(left);
            if (seen.isNegative()) return sum;
            const above = Length.max(height.minus(o.foot).minus(o.height), Length.zero);
            return sum + stripsSaved({ width: seen, above, below: o.foot }, rollWidth, how, trim);
          }, 0);
        return { runs: group, width, strips: whole - saved, saved };
      });
  }
}

/** The run's area less its openings, in square millimetres, for what is seen and for rates by area. */
function netArea(run: WallRun, height: Length): number {
  const gross = run.width.toMm() * height.toMm();
  const left = run.fromLeft.toMm();
  const right = left + run.width.toMm();
  return run.openings.reduce((area, o) => {
    const width = Math.max(
      0,
      Math.min(right, o.fromLeft.toMm() + o.width.toMm()) - Math.max(left, o.fromLeft.toMm()),
    );
    const tall = Math.max(
      0,
      Math.min(height.toMm(), o.foot.toMm() + o.height.toMm()) - o.foot.toMm(),
    );
    return area - width * tall;
  }, gross);
}

/** Two decimals, up: what a hanger is paid by area. */
function round2(value: number): Fraction {
  return new Fraction(Math.ceil(Math.round(value * 1e6) / 1e4), 100);
}

function wallsNamed(on: WallpaperFields["on"]): string {
  if (typeof on === "string") return on;
  return Array.isArray(on) ? on.join(", ") : (on as { wall: string }).wall;
}
