import Fraction from "fraction.js";
import { diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext, ItemCut } from "../../itemKind.ts";
import { finestStep } from "../finestStep.ts";
import { handbookCut, selvedgeMatch } from "../join/selvedgeMatch.ts";
import type { Notes } from "../notes.ts";

export const SKIRT_STYLES = ["gathered", "box-pleat", "tailored"] as const;
export type SkirtStyle = (typeof SKIRT_STYLES)[number];

/** One length of skirt between two finished ends: `left side`, or the whole way round. */
export interface SkirtRun {
  readonly name: string;
  readonly length: Length;
  /** The sides that it goes along; empty where another line has told how its length came about. */
  readonly sides: readonly Length[];
  /** Corners within it, each with a pleat where it is tailored. */
  readonly corners: number;
}

export interface SkirtAsk {
  readonly cloth: string;
  readonly runs: readonly SkirtRun[];
  readonly style: SkirtStyle;
  readonly fullness: Fraction;
  readonly cornerPleat: Length;
  /** Side hems, or the lap, of one run together, and what they are called. */
  readonly ends: Length;
  readonly endsWord: string;
  readonly drop: Length;
  readonly hem: Length;
  readonly top: Length;
  /** What its pieces and allowances are called; a skirt with drop, hem and top where nothing is said. */
  readonly words?: {
    readonly piece: string;
    readonly drop: string;
    readonly hem: string;
    readonly top: string;
  };
  readonly join: Length;
  readonly count: number;
  readonly railroad: boolean | undefined;
  readonly keyPath: readonly string[];
}

/** One run as it is cut. */
export interface RunCut {
  readonly run: SkirtRun;
  /** Flat cloth that it needs, joins not counted. */
  readonly flat: Length;
  /** Widths of cloth, or strips where it is sideways. */
  readonly widths: number;
  readonly joined: Length;
}

export interface Skirt {
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly style: SkirtStyle;
  readonly fullness: Fraction;
  readonly drop: Length;
  readonly cut: Length;
  readonly hem: Length;
  readonly top: Length;
  readonly runs: readonly RunCut[];
  readonly sideways: boolean;
  readonly cuts: readonly ItemCut[];
  readonly widths: number;
  readonly finishedRun: Length;
  readonly flat: Length;
  readonly handbook: Length;
}

/**
 * A gathered, pleated or tailored skirt. Flat = run x fullness + corner pleats + ends; widths the least number whose joined width
 * (widths x usable width - 2 x turning for each join) reaches it; cut = drop + hem + top turning, level all round. Run sideways it
 * is cut in as many equal strips as lie side by side. Null, with a diagnostic, where it cannot be cut.
 */
export function skirtOf(ask: SkirtAsk, context: ItemContext, notes: Notes): Skirt | null {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const cloth = context.cloth(ask.cloth);
  if (!cloth) return null;
  const usable = cloth.usableWidth;
  const fault = (code: string, message: string, hint: string) => {
    notes.diagnostics.push(
      diagnostic(context.place(ask.keyPath), code, message, { actual: cloth.id, hint }),
    );
    return null;
  };
  if (!usable)
    return fault(
      "cloth-without-width",
      `${cloth.name} has no width, so its widths cannot be counted.`,
      `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
    );
  const twice = ask.join.times(2);
  if (!usable.isMoreThan(twice))
    return fault(
      "cloth-narrower-than-joins",
      `${cloth.name} is ${p(usable)} wide, which two join turnings of ${p(ask.join)} use up.`,
      "Look at the width on the cloth's card and at the allowance join.",
    );
  const words = ask.words ?? { piece: "skirt", drop: "drop", hem: "hem", top: "top" };
  const cut = ask.drop.plus(ask.hem).plus(ask.top);
  const sideways = ask.railroad ?? (cloth.mayTurn && cloth.repeat === null);
  if (sideways && cut.isMoreThan(usable))
    return fault(
      "skirt-deeper-than-cloth",
      `Run sideways ${cloth.name} gives ${p(usable)} of depth; this ${words.piece} is cut ${p(cut)} deep.`,
      "Write railroad: no, or choose a wider cloth.",
    );
  const because = `${p(ask.drop)} ${words.drop} + ${p(ask.hem)} ${words.hem} + ${p(ask.top)} ${words.top}`;
  const fullness = ask.style === "tailored" ? new Fraction(1) : ask.fullness;
  const across = sideways ? Number(usable.over(cut).floor().valueOf()) : 0;
  const matched = cloth.repeat !== null && cloth.repeat.match !== "free";
  const match = selvedgeMatch(cloth);
  const runs: RunCut[] = [];
  const cuts: ItemCut[] = [];
  for (const run of ask.runs) {
    const pleats = ask.style === "tailored" ? ask.cornerPleat.times(run.corners) : Length.zero;
    const flat = run.length.times(fullness).plus(pleats).plus(ask.ends);
    if (run.sides.length > 1)
      notes.working.push({
        what: `Run, ${run.name}`,
        sum: run.sides.map(p).join(" + "),
        result: p(run.length),
        rounded: null,
      });
    const name = ask.runs.length > 1 ? `${words.piece}, ${run.name}` : words.piece;
    const sum = [
      fullness.equals(1) ? p(run.length) : `${p(run.length)} × ${fullness.toString()}`,
      pleats.isZero() ? null : `${run.corners} × ${p(ask.cornerPleat)} corner pleats`,
      `${p(ask.ends)} ${ask.endsWord}`,
    ].filter((s) => s !== null);
    notes.working.push({
      what: `Flat, ${run.name}`,
      sum: sum.join(" + "),
      result: p(flat),
      rounded: null,
    });
    const common = { surface: "face", cloth: cloth.id, because };
    if (sideways) {
      const n = Math.max(1, across);
      // Up to the grain of a workroom's ruler, so that strips add up to no less than is needed.
      const step = finestStep(units);
      const each = flat
        .plus(twice.times(n - 1))
        .dividedBy(n)
        .upTo(step);
      notes.working.push({
        what: `Strips, ${run.name}`,
        sum: `(${p(flat)} + ${n - 1} × ${p(twice)} for joins) ÷ ${n}, cut along the cloth`,
        result: `${n} of ${printSize([cut, each], units)}`,
        rounded: units === "inches" ? "up to 1/8 inch" : "up to the millimetre",
      });
      runs.push({ run, flat, widths: n, joined: each.times(n).minus(twice.times(n - 1)) });
      cuts.push({
        ...common,
        piece: `${name}, strip`,
        width: cut,
        height: each,
        count: n * ask.count,
        mayTurn: false,
        across: { how: "free" },
        along: { how: "free" },
        because: `${because}; cloth run sideways`,
      });
      continue;
    }
    const n = Math.max(1, Number(flat.minus(twice).over(usable.minus(twice)).ceil().valueOf()));
    const joined = usable.times(n).minus(twice.times(n - 1));
    notes.working.push({
      what: `Widths, ${run.name}`,
      sum: `(${p(flat)} − ${p(twice)}) ÷ (${p(usable)} − ${p(twice)}), each join taking ${p(twice)}`,
      result: `${n}, ${p(joined)} joined`,
      rounded: "up to whole widths",
    });
    runs.push({ run, flat, widths: n, joined });
    const one = n === 1 && !flat.isMoreThan(usable);
    const odd = match.shifts ? Math.floor(n / 2) : 0;
    const drops = (count: number, joinedAt: number): ItemCut[] =>
      count === 0
        ? []
        : [
            {
              ...common,
              piece:
                odd > 0 ? `${name}, ${joinedAt === 0 ? "odd" : "even"} widths` : `${name}, width`,
              width: one ? flat : usable,
              height: cut,
              count: count * ask.count,
              mayTurn: one && cloth.mayTurn && !matched,
              across: one ? { how: "free" } : { how: "whole-width" },
              along: matched
                ? { how: "level", series: `${words.piece} ${p(cut)}`, joined: joinedAt }
                : { how: "free" },
            },
          ];
    cuts.push(...drops(n - odd, 0), ...drops(odd, 1));
  }
  if (runs.some((r) => r.widths > 1) && match.question && !sideways)
    notes.questions.push(match.question);
  notes.working.push({ what: "Cut", sum: because, result: p(cut), rounded: null });
  const widths = runs.reduce((sum, r) => sum + r.widths, 0) * ask.count;
  const up = matched ? (cloth.repeat?.up ?? null) : null;
  const handbook = sideways
    ? Length.sum(cuts.map((c) => c.height.times(Math.ceil(c.count / Math.max(1, across)))))
    : handbookCut(cut, widths, up, match.shifts).total;
  notes.working.push({
    what: "By the handbook",
    sum: sideways
      ? `strips side by side, ${across} across the cloth`
      : `${widths} × ${p(up ? cut.upTo(up) : cut)}`,
    result: p(handbook),
    rounded: up && !sideways ? "each up to whole repeats" : null,
  });
  if (cloth.nap && !sideways)
    notes.questions.push(`Does the pile of ${cloth.name} run up or down the ${words.piece}?`);
  return {
    cloth,
    usableWidth: usable,
    style: ask.style,
    fullness,
    drop: ask.drop,
    cut,
    hem: ask.hem,
    top: ask.top,
    runs,
    sideways,
    cuts,
    widths,
    finishedRun: Length.sum(ask.runs.map((r) => r.length)),
    flat: Length.sum(runs.map((r) => r.flat)),
    handbook,
  };
}

/** Allowances that a kind with a skirt declares. */
export function skirtAllowances(
  hem: { inches: string; centimetres: string; source: string },
  top: { inches: string; centimetres: string; source: string },
) {
  const PRACTICE = "common practice, no source";
  return {
    fullness: {
      is: "ratio",
      description: "flat cloth for each length of run of a gathered skirt",
      usual: { inches: "2", centimetres: "2" },
      source:
        "2: How to Figure Yardage and Layout for Queen Bedskirt (how-to article); 3: Bed Skirts (mailing-list answer)",
    },
    "pleat-fullness": {
      is: "ratio",
      description: "flat cloth for each length of run of a box-pleated skirt",
      usual: { inches: "3", centimetres: "3" },
      source: PRACTICE,
    },
    "corner-pleat": {
      is: "length",
      description: "cloth in the pleat at each corner of a tailored skirt",
      usual: { inches: '18"', centimetres: "46 cm" },
      source: "How Much Fabric Do I Need for a Queen Tailored Bed Skirt? (how-to article): 18 in",
    },
    hem: {
      is: "length",
      description: "both turnings of its hem",
      usual: { inches: hem.inches, centimetres: hem.centimetres },
      source: hem.source,
    },
    top: {
      is: "length",
      description: "turning or seam at its top",
      usual: { inches: top.inches, centimetres: top.centimetres },
      source: top.source,
    },
    join: {
      is: "length",
      description: "seam turning on each piece of a join",
      usual: { inches: '1/2"', centimetres: "1.5 cm" },
      source: PRACTICE,
    },
    clearance: {
      is: "length",
      description: "left free above the floor",
      usual: { inches: '1/2"', centimetres: "1 cm" },
      source: PRACTICE,
    },
  } as const;
}
