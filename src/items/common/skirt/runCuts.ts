import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut } from "../../itemKind.ts";
import { finestStep, upToFinestStep } from "../finestStep.ts";
import { sidewaysAcross } from "../join/sideways.ts";
import type { Notes } from "../notes.ts";
import type { SkirtLay } from "./skirtLay.ts";
import type { RunCut, SkirtAsk, SkirtRun } from "./skirtRun.ts";

/** Flat cloth of one run: its length times the fullness, its corner pleats and its ends. */
function flatOf(
  ask: SkirtAsk,
  { fullness }: SkirtLay,
  run: SkirtRun,
  context: ItemContext,
  notes: Notes,
): Length {
  const p = (l: Length) => printLength(l, context.units);
  const pleats = ask.style === "tailored" ? ask.cornerPleat.times(run.corners) : Length.zero;
  const flat = run.length.times(fullness).plus(pleats).plus(ask.ends);
  if (run.sides.length > 1)
    notes.working.push({
      what: `Run, ${run.name}`,
      sum: run.sides.map(p).join(" + "),
      result: p(run.length),
      rounded: null,
    });
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
  return flat;
}

/** A run with its cuts. */
export interface RunMade {
  readonly run: RunCut;
  readonly cuts: ItemCut[];
}

function nameOf(ask: SkirtAsk, { words }: SkirtLay, run: SkirtRun): string {
  return ask.runs.length > 1 ? `${words.piece}, ${run.name}` : words.piece;
}

/** Cloth run sideways: equal strips, as many as lie side by side, joined to the flat length. */
export function inStrips(
  ask: SkirtAsk,
  lay: SkirtLay,
  run: SkirtRun,
  context: ItemContext,
  notes: Notes,
): RunMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const flat = flatOf(ask, lay, run, context, notes);
  const twice = ask.join.times(2);
  const n = Math.max(1, lay.across);
  const lost = twice.times(n - 1);
  // Up to the grain of a workroom's ruler, so that strips add up to no less than is needed.
  const each = flat.plus(lost).dividedBy(n).upTo(finestStep(units));
  notes.working.push({
    what: `Strips, ${run.name}`,
    sum: `(${p(flat)} + ${n - 1} × ${p(twice)} for joins) ÷ ${n}, cut along the cloth`,
    result: `${n} of ${printSize([lay.cut, each], units)}`,
    rounded: upToFinestStep(units),
  });
  const strips: ItemCut = {
    surface: "face",
    cloth: lay.cloth.id,
    because: `${lay.because}; cloth run sideways`,
    piece: `${nameOf(ask, lay, run)}, strip`,
    width: lay.cut,
    height: each,
    count: n * ask.count,
    mayTurn: false,
    across: sidewaysAcross(lay.cloth, lay.cut),
    along: { how: "free" },
  };
  return { run: { run, flat, widths: n, joined: each.times(n).minus(lost) }, cuts: [strips] };
}

/** Whole widths joined to at least the flat length, the pattern level all round; one width, where it is enough, is cut as wide as it is flat. */
export function inWidths(
  ask: SkirtAsk,
  lay: SkirtLay,
  run: SkirtRun,
  context: ItemContext,
  notes: Notes,
): RunMade {
  const p = (l: Length) => printLength(l, context.units);
  const { cloth, cut, usable, repeatUp } = lay;
  const flat = flatOf(ask, lay, run, context, notes);
  const twice = ask.join.times(2);
  const n = Math.max(1, Number(flat.minus(twice).over(usable.minus(twice)).ceil().valueOf()));
  const joined = usable.times(n).minus(twice.times(n - 1));
  notes.working.push({
    what: `Widths, ${run.name}`,
    sum: `(${p(flat)} − ${p(twice)}) ÷ (${p(usable)} − ${p(twice)}), each join taking ${p(twice)}`,
    result: `${n}, ${p(joined)} joined`,
    rounded: "up to whole widths",
  });
  const one = n === 1 && !flat.isMoreThan(usable);
  const even = lay.shifts ? Math.floor(n / 2) : 0;
  const name = nameOf(ask, lay, run);
  const widths = (count: number, places: "odd" | "even"): ItemCut => ({
    surface: "face",
    cloth: cloth.id,
    because: lay.because,
    piece: even > 0 ? `${name}, ${places} widths` : `${name}, width`,
    width: one ? flat : usable,
    height: cut,
    count: count * ask.count,
    mayTurn: one && cloth.mayTurn && !repeatUp,
    across: one ? { how: "free" } : { how: "whole-width" },
    along: repeatUp
      ? {
          how: "level",
          series: `${lay.words.piece} ${p(cut)}`,
          joined: places === "odd" ? 0 : 1,
        }
      : { how: "free" },
  });
  const cuts = [widths(n - even, "odd"), ...(even > 0 ? [widths(even, "even")] : [])];
  return { run: { run, flat, widths: n, joined }, cuts };
}
