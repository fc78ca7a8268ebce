import Fraction from "fraction.js";
import { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../../itemKind.ts";
import { areaCounts } from "../areaCounts.ts";
import { finestStep, upToFinestStep } from "../finestStep.ts";
import type { Notes } from "../notes.ts";
import { boughtTrim } from "../trim.ts";
import { type Edged, type EdgeWelt, edgeWelt, weltCut, weltWorking } from "../welt/edgeWelt.ts";
import { cordNeed } from "../welt/welt.ts";
import { type FlatAsk, type FlatPanel, flatPanel, handbookOf } from "./flatPanel.ts";

/** What a flat cover's own fields say (`flatFields`). */
export interface FlatCoverFields extends Edged {
  readonly cloth: string;
  readonly back?: string | undefined;
  readonly wadding?: string | undefined;
  readonly quilted?: boolean | undefined;
  readonly trim?: string | undefined;
  readonly motif?: "centred" | "as-it-falls" | undefined;
  readonly railroad?: boolean | undefined;
}

export interface FlatCoverAsk {
  readonly fields: FlatCoverFields;
  /** `cover`, `throw`, `cloth`: what its pieces are called. */
  readonly word: string;
  readonly finished: readonly [Length, Length];
  /** How the finished size comes about, width and length. */
  readonly sums: readonly [string, string];
  /** Middle of the bed or table above the finished foot. */
  readonly middle: Length;
  /** Finished length of the edge that is welted or trimmed, and how it was added up. */
  readonly edge: Length;
  readonly edgeSum: string;
  /** Its two ends are drawn to a fringe, and have no hem. */
  readonly rawEnds?: boolean;
  /** Nothing is sewn to its head: of one layer with a welt the head alone is hemmed. */
  readonly plainHead?: boolean;
  /** Cut as a circle or an oval from the joined rectangle; null where it keeps its corners. */
  readonly curve: "circle" | "oval" | null;
}

/** A flat cover as it is cut and finished. */
export interface FlatCover {
  readonly face: FlatPanel | null;
  readonly back: FlatPanel | null;
  readonly wadding: FlatPanel | null;
  readonly turning: Length;
  /** At the foot, and at the head where that is finished alike: none where the ends are fringed. */
  readonly endTurning: Length;
  readonly headTurning: Length;
  readonly lined: boolean;
  readonly cut: readonly [Length, Length];
  readonly welt: EdgeWelt | null;
  readonly edge: Length;
  readonly cuts: readonly ItemCut[];
  readonly materials: readonly MaterialNeed[];
  readonly handbook: Made["handbook"];
  readonly widths: number;
}

/**
 * A cover of one layer with a hem, or with a back and perhaps wadding between: finished size, times what quilting takes up, and a
 * turning on each edge. The kind declares the allowances join, quilting, seam, hem and those of welt.
 */
export function flatCover(ask: FlatCoverAsk, context: ItemContext, notes: Notes): FlatCover {
  const { fields } = ask;
  const count = fields.count ?? 1;
  const sizes = coverSizes(ask, context);
  notes.working.push(...sizesWorking(ask, sizes, context));
  const { face, back, wadding } = layersOf(ask, sizes, context, notes);
  askOfLayers(fields, context, notes);
  const panels = [face, back, wadding].flatMap((panel) => panel ?? []);
  const welt = edgeWelt(fields, context, sizes.turning, ask.edge, 1);
  const materials = edgeNeeds(ask, welt, count, context, notes);
  const handbook = handbookOf([
    ...panels.map((panel) => ({ cloth: panel.cloth.id, length: panel.handbook })),
    ...(welt ? [{ cloth: welt.cloth, length: welt.reserve.height }] : []),
  ]);
  notes.working.push(...handbookLines(handbook, context));
  return {
    face,
    back,
    wadding,
    turning: sizes.turning,
    endTurning: sizes.endTurning,
    headTurning: sizes.headTurning,
    lined: sizes.lined,
    cut: sizes.cut,
    welt,
    edge: ask.edge,
    cuts: [...panels.flatMap((panel) => panel.cuts), ...(welt ? [weltCut(welt, context)] : [])],
    materials,
    handbook,
    widths: (face?.widths ?? 0) * count,
  };
}

/** A cover as it is cut, and what makes its cut larger than it is finished. */
interface CoverSizes {
  readonly lined: boolean;
  readonly turning: Length;
  /** At the foot, and at the head where that is finished alike. */
  readonly endTurning: Length;
  readonly headTurning: Length;
  readonly join: Length;
  /** Cloth for each length of quilted cover; one where it is plain. */
  readonly take: Fraction;
  readonly cut: readonly [Length, Length];
  /** How the cut comes about. */
  readonly sum: string;
}

function coverSizes(ask: FlatCoverAsk, context: ItemContext): CoverSizes {
  const { fields, finished } = ask;
  const lined = fields.back !== undefined || (fields.edge !== undefined && fields.edge !== "plain");
  const turning = context.length(lined ? "seam" : "hem");
  const join = context.length("join");
  const take = fields.quilted ? context.ratio("quilting") : new Fraction(1);
  const endTurning = ask.rawEnds ? Length.zero : turning;
  // A seam holds a back or a welt; an edge of one layer with neither wants its whole hem.
  const hemmedHead = lined && fields.back === undefined && ask.plainHead === true;
  const headTurning = hemmedHead ? context.length("hem") : endTurning;
  const quilted = fields.quilted ? ` × ${take.toString()} quilting` : "";
  const p = (l: Length) => printLength(l, context.units);
  const turned = hemmedHead
    ? `2 × ${p(turning)} seams across, ${p(turning)} seam + ${p(headTurning)} hem at the head along`
    : `2 × ${p(turning)} ${lined ? "seams" : "hems"} ${ask.rawEnds ? "across" : "each way"}`;
  // Up to what can be marked, so that strips and whole width add up to the cut size as they are printed.
  const taken = (l: Length) => (fields.quilted ? l.times(take).upTo(finestStep(context.units)) : l);
  return {
    lined,
    turning,
    endTurning,
    headTurning,
    join,
    take,
    cut: [
      taken(finished[0]).plus(turning.times(2)),
      taken(finished[1]).plus(endTurning).plus(headTurning),
    ],
    sum: `${printSize(finished, context.units)}${quilted} + ${turned}`,
  };
}

function sizesWorking(ask: FlatCoverAsk, sizes: CoverSizes, context: ItemContext): WorkingLine[] {
  const p = (l: Length) => printLength(l, context.units);
  const [width, length] = ask.finished;
  return [
    { what: "Finished width", sum: ask.sums[0], result: p(width), rounded: null },
    ...(ask.curve === "circle"
      ? []
      : [{ what: "Finished length", sum: ask.sums[1], result: p(length), rounded: null }]),
    {
      what: "Cut size",
      sum: sizes.sum,
      result: printSize(sizes.cut, context.units),
      rounded: ask.fields.quilted ? upToFinestStep(context.units) : null,
    },
  ];
}

/** Why face and back are cut so large, with the curve that is cut from them. */
function becauseOf({ curve }: FlatCoverAsk, sizes: CoverSizes): string {
  const shape = curve === "oval" ? "an oval" : "a circle";
  return curve ? `${sizes.sum}; ${shape} is cut from it` : sizes.sum;
}

/** Face, back and wadding; none where it is not asked for or cannot be cut. */
function layersOf(
  ask: FlatCoverAsk,
  sizes: CoverSizes,
  context: ItemContext,
  notes: Notes,
): Pick<FlatCover, "face" | "back" | "wadding"> {
  const { fields, finished } = ask;
  const { cut, take } = sizes;
  const asFace = {
    width: cut[0],
    height: cut[1],
    count: fields.count ?? 1,
    join: sizes.join,
    motifAboveFoot: null,
    motifAsked: false,
    railroad: fields.railroad,
    because: becauseOf(ask, sizes),
  };
  const middle = ask.middle.times(take).plus(sizes.endTurning);
  const face: FlatAsk = {
    ...asFace,
    piece: ask.word,
    surface: "face",
    cloth: fields.cloth,
    motifAboveFoot: fields.motif === "as-it-falls" ? null : middle,
    motifAsked: fields.motif === "centred",
    keyPath: ["cloth"],
  };
  const layer = (surface: "back" | "wadding", cloth: string): FlatAsk => ({
    ...asFace,
    piece: surface,
    surface,
    cloth,
    keyPath: [surface],
  });
  // Wadding is as large as the cover finishes, with what quilting takes up; its joins butt, without a turning.
  const soft = {
    width: finished[0].times(take),
    height: finished[1].times(take),
    join: Length.zero,
    railroad: undefined,
    because: "finished size",
  };
  return {
    face: flatPanel(face, context, notes),
    back: fields.back ? flatPanel(layer("back", fields.back), context, notes) : null,
    wadding: fields.wadding
      ? flatPanel({ ...layer("wadding", fields.wadding), ...soft }, context, notes)
      : null,
  };
}

function askOfLayers(fields: FlatCoverFields, context: ItemContext, notes: Notes): void {
  if (fields.quilted && !fields.wadding)
    notes.questions.push("It is quilted: which wadding, and of what weight?");
  if (fields.wadding && !fields.back)
    notes.questions.push("Wadding needs a back over it: which cloth or lining?");
  if (context.cloth(fields.cloth)?.nap)
    notes.questions.push("Which way does the pile run: towards the foot or the head?");
}

/** Cord for the welt and the trim round the edge, with the lines of their working. */
function edgeNeeds(
  ask: FlatCoverAsk,
  welt: EdgeWelt | null,
  count: number,
  context: ItemContext,
  notes: Notes,
): MaterialNeed[] {
  const { units } = context;
  const { trim } = ask.fields;
  if (welt || trim)
    notes.working.push({
      what: "Round the edge",
      sum: ask.edgeSum,
      result: printLength(ask.edge, units),
      rounded: null,
    });
  if (welt) notes.working.push(...weltWorking(welt, count, context, null));
  const needs = welt ? [cordNeed(welt.total, units)] : [];
  if (!trim) return needs;
  const of = `${printLength(ask.edge, units)} of edge`;
  const along = { run: ask.edge, ends: context.length("welt-lap"), runs: count, of };
  return [...needs, boughtTrim(trim, along, context)];
}

function handbookLines(handbook: Made["handbook"], context: ItemContext): WorkingLine[] {
  return handbook.map(({ cloth, length }) => ({
    what: `By the handbook, ${context.cloth(cloth)?.name ?? cloth}`,
    sum: "whole widths, each up to whole repeats where it has one",
    result: printLength(length, context.units),
    rounded: null,
  }));
}

/** Figures and counts that every flat cover gives. */
export function flatFigures(
  cover: FlatCover,
  finished: readonly [Length, Length],
  count: number,
): { figures: Record<string, number>; makingCounts: Made["makingCounts"] } {
  const area = finished[0].mm.mul(finished[1].mm).mul(count);
  return {
    figures: {
      pieces: count,
      widthMm: finished[0].toMm(),
      lengthMm: finished[1].toMm(),
      cutWidthMm: cover.cut[0].toMm(),
      cutLengthMm: cover.cut[1].toMm(),
      widths: cover.face?.widths ?? 0,
      joins: Math.max(0, (cover.face?.parts?.length ?? 1) - 1),
      edgeMm: cover.edge.toMm(),
    },
    makingCounts: {
      item: new Fraction(count),
      width: new Fraction(cover.widths),
      ...areaCounts(area),
    },
  };
}

/** The cloths of a flat cover by surface. */
export function flatCloths(fields: FlatCoverFields) {
  const one = (surface: string, cloth: string | undefined, keyPath: string[]) =>
    cloth === undefined ? [] : [{ surface, cloth, keyPath }];
  const welt = typeof fields.edge === "object" ? fields.edge.welt : undefined;
  return [
    ...one("face", fields.cloth, ["cloth"]),
    ...one("back", fields.back, ["back"]),
    ...one("wadding", fields.wadding, ["wadding"]),
    ...one("welt", welt, ["edge", "welt"]),
    ...one("trim", fields.trim, ["trim"]),
  ];
}
