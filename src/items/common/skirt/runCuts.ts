import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut } from "../../itemKind.ts";
import { finestStep, upToFinestStep } from "../finestStep.ts";
import { oneWidthLess } from "../join/oneWidthLess.ts";
import { sidewaysAcross } from "../join/sideways.ts";
import type { Notes } from "../notes.ts";
import type { SkirtLay } from "./skirtLay.ts";
import type { RunCut, SkirtAsk, SkirtRun } from "./skirtRun.ts";
import { flatLength, stripLengths } from "./stripLengths.ts";

/** Flat cloth of one run: its length times the fullness, its corner pleats and its ends. */
function flatOf(
  ask: SkirtAsk,
  { fullness }: SkirtLay,
  run: SkirtRun,
  context: ItemContext,
  notes: Notes,
): Length {
  const p = (l: Length) => printLength(l, context.units);
  const { flat, pleats } = flatLength(ask, fullness, run);
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

/** Cloth run sideways: strips joined to the flat length. */
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
  const strips = stripLengths(ask, lay.across, run, flat, finestStep(units));
  const n = strips.length;
  const first = strips[0] as Length;
  const alike = strips.every((each) => each.equals(first));
  notes.working.push({
    what: `Strips, ${run.name}`,
    sum: alike
      ? `(${p(flat)} + ${n - 1} × ${p(twice)} for joins) ÷ ${n}, cut along the cloth`
      : `one for each side, half a corner pleat and ${p(ask.join)} turning where two are joined, cut along the cloth`,
    result: alike
      ? `${n} of ${printSize([lay.cut, first], units)}`
      : strips.map((each) => printSize([lay.cut, each], units)).join(", "),
    rounded: upToFinestStep(units),
  });
  const piece = `${nameOf(ask, lay, run)}, strip`;
  const strip = (height: Length, more: string, count: number): ItemCut => ({
    surface: "face",
    cloth: lay.cloth.id,
    because: `${lay.because}; cloth run sideways`,
    piece: `${piece}${more}`,
    width: lay.cut,
    height,
    count: count * ask.count,
    mayTurn: false,
    across: sidewaysAcross(lay.cloth, lay.cut),
    along: { how: "free" },
  });
  const joined = Length.sum(strips).minus(twice.times(n - 1));
  return {
    run: { run, flat, widths: n, joined, strips },
    cuts: alike
      ? [strip(first, "", n)]
      : strips.map((each, at) => strip(each, ` ${at + 1} of ${n}`, 1)),
  };
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
  const one = n === 1 && !flat.isMoreThan(usable);
  const joined = one ? flat : usable.times(n).minus(twice.times(n - 1));
  notes.working.push({
    what: `Widths, ${run.name}`,
    sum: `(${p(flat)} − ${p(twice)}) ÷ (${p(usable)} − ${p(twice)}), each join taking ${p(twice)}`,
    result: one ? "1" : `${n}, ${p(joined)} joined`,
    rounded: "up to whole widths",
  });
  const less =
    ask.style === "tailored"
      ? null
      : oneWidthLess({
          piece: ask.runs.length > 1 ? `${lay.words.piece}, ${run.name},` : lay.words.piece,
          cloth: cloth.name,
          widths: n,
          joined: usable.times(n - 1).minus(twice.times(Math.max(0, n - 2))),
          flat,
          run: run.length,
          fullness: lay.fullness,
        });
  if (less) notes.questions.push(less);
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
  return { run: { run, flat, widths: n, joined, strips: null }, cuts };
}
