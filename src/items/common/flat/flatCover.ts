import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed } from "../../itemKind.ts";
import { boughtLength } from "../boughtLength.ts";
import type { Notes } from "../notes.ts";
import { type Edged, type EdgeWelt, edgeWelt, weltCut, weltWorking } from "../welt/edgeWelt.ts";
import { cordNeed } from "../welt/welt.ts";
import { type FlatPanel, flatPanel, handbookOf } from "./flatPanel.ts";

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
  /** Cut as a circle or an oval from the joined rectangle; null where it keeps its corners. */
  readonly curve: "circle" | "oval" | null;
}

/** A flat cover as it is cut and finished. */
export interface FlatCover {
  readonly face: FlatPanel | null;
  readonly back: FlatPanel | null;
  readonly wadding: FlatPanel | null;
  readonly turning: Length;
  /** At head and foot: none where the ends are fringed. */
  readonly endTurning: Length;
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
  const { fields, finished, word } = ask;
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const count = fields.count ?? 1;
  const lined = fields.back !== undefined || (fields.edge !== undefined && fields.edge !== "plain");
  const turning = context.length(lined ? "seam" : "hem");
  const join = context.length("join");
  const take = fields.quilted ? context.ratio("quilting") : new Fraction(1);
  const endTurning = ask.rawEnds ? turning.minus(turning) : turning;
  const cut = [
    finished[0].times(take).plus(turning.times(2)),
    finished[1].times(take).plus(endTurning.times(2)),
  ] as const;
  const quilted = fields.quilted ? ` × ${take.toString()} quilting` : "";
  const edgeWord = lined ? "seams" : "hems";
  const each = ask.rawEnds ? "across" : "each way";
  const [w, h] = finished;
  notes.working.push(
    { what: "Finished width", sum: ask.sums[0], result: p(w), rounded: null },
    ...(ask.curve === "circle"
      ? []
      : [{ what: "Finished length", sum: ask.sums[1], result: p(h), rounded: null }]),
    {
      what: "Cut size",
      sum: `${printSize(finished, units)}${quilted} + 2 × ${p(turning)} ${edgeWord} ${each}`,
      result: printSize(cut, units),
      rounded: null,
    },
  );
  const because = `${printSize(finished, units)}${quilted} + 2 × ${p(turning)} ${edgeWord} ${each}${ask.curve ? `; ${ask.curve === "oval" ? "an oval" : "a circle"} is cut from it` : ""}`;
  const shared = { count, join, railroad: fields.railroad, because } as const;
  const face = flatPanel(
    {
      ...shared,
      piece: word,
      surface: "face",
      cloth: fields.cloth,
      width: cut[0],
      height: cut[1],
      motifAboveFoot:
        fields.motif === "as-it-falls" ? null : ask.middle.times(take).plus(endTurning),
      motifAsked: fields.motif === "centred",
      keyPath: ["cloth"],
    },
    context,
    notes,
  );
  const layer = (surface: "back" | "wadding", cloth: string, of: readonly [Length, Length]) =>
    flatPanel(
      {
        ...shared,
        piece: surface,
        surface,
        cloth,
        width: of[0],
        height: of[1],
        join: surface === "wadding" ? join.minus(join) : join,
        motifAboveFoot: null,
        motifAsked: false,
        railroad: surface === "back" ? fields.railroad : undefined,
        because: surface === "wadding" ? "finished size" : because,
        keyPath: [surface],
      },
      context,
      notes,
    );
  const back = fields.back ? layer("back", fields.back, cut) : null;
  const soft = [w.times(take), h.times(take)] as const;
  const wadding = fields.wadding ? layer("wadding", fields.wadding, soft) : null;
  if (fields.quilted && !fields.wadding)
    notes.questions.push("It is quilted: which wadding, and of what weight?");
  if (fields.wadding && !fields.back)
    notes.questions.push("Wadding needs a back over it: which cloth or lining?");
  if (context.cloth(fields.cloth)?.nap)
    notes.questions.push("Which way does the pile run: towards the foot or the head?");
  const welt = edgeWelt(fields, context, turning, ask.edge, 1);
  const panels = [face, back, wadding].flatMap((panel) => panel ?? []);
  const cuts = [
    ...panels.flatMap((panel) => panel.cuts),
    ...(welt ? [weltCut(welt, context)] : []),
  ];
  const materials: MaterialNeed[] = [];
  if (welt || fields.trim)
    notes.working.push({
      what: "Round the edge",
      sum: ask.edgeSum,
      result: p(ask.edge),
      rounded: null,
    });
  if (welt) {
    notes.working.push(...weltWorking(welt, count, context, null));
    materials.push(cordNeed(welt.total, units));
  }
  if (fields.trim)
    materials.push(
      boughtLength("trim", ask.edge.plus(context.length("welt-lap")).times(count), units, {
        cloth: fields.trim,
        by: "studio",
      }),
    );
  const handbook = handbookOf([
    ...panels.map((panel) => ({ cloth: panel.cloth.id, length: panel.handbook })),
    ...(welt ? [{ cloth: welt.cloth, length: welt.reserve.height }] : []),
  ]);
  for (const each of handbook)
    notes.working.push({
      what: `By the handbook, ${context.cloth(each.cloth)?.name ?? each.cloth}`,
      sum: "whole widths, each up to whole repeats where it has one",
      result: p(each.length),
      rounded: null,
    });
  return {
    face,
    back,
    wadding,
    turning,
    endTurning,
    lined,
    cut,
    welt,
    edge: ask.edge,
    cuts,
    materials,
    handbook,
    widths: (face?.widths ?? 0) * count,
  };
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
      "square-metre": area.div(1_000_000),
      "square-foot": area.div(new Fraction("304.8").pow(2) as Fraction),
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
