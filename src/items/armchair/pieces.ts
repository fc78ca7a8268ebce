import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif, wholeRepeats } from "../centredMotif.ts";
import { handbookRows } from "../handbookRows.ts";
import type { AcrossMatch, AlongMatch, ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { type WeltReserve, weltReserve } from "../welt.ts";
import { type ChairPiece, isColumn, isPaired, isSewn, pieceWords } from "./columnOf.ts";
import { type ChairEstimate, estimateByType, WELT_CLOTH } from "./estimate.ts";
import type { ArmchairFields } from "./schema.ts";

/** One measured piece of one chair. */
export interface CoverPiece {
  /** A, B, C …: the same on the drawing, in the list and on the cloth. */
  readonly letter: string;
  readonly piece: ChairPiece;
  readonly cloth: string;
  readonly surface: string;
  readonly finished: readonly [Length, Length];
  readonly cut: readonly [Length, Length];
  readonly count: number;
  /** A motif stands in its middle, across and along. */
  readonly centred: boolean;
  /** A motif's column runs down its middle, so that back, seat and front line up. */
  readonly inColumn: boolean;
}

export interface ArmchairMade extends Made {
  readonly count: number;
  readonly size: readonly [Length, Length, Length];
  readonly seatHeight: Length;
  readonly pieces: readonly CoverPiece[];
  readonly welt: { readonly cloth: string; readonly length: Length; readonly strip: Length; readonly reserve: WeltReserve; readonly measured: boolean } | null;
  readonly byType: ChairEstimate | null;
}

/**
 * Cloth for `count` like armchairs. Measured pieces: width and length at the widest, each with the pull added (sewn pieces: two
 * seams), tops all one way, column pieces with the same motif column in their middle. Without pieces: a range by type, as an
 * estimate and without cuts. Exact lengths.
 */
export function makeArmchair(fields: ArmchairFields, context: ItemContext): ArmchairMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const chairs = fields.count ?? 1;
  const listed = fields.pieces ?? [];
  const estimated = listed.length === 0;
  if (estimated && !fields.type) {
    diagnostics.push(
      diagnostic(context.place([]), "chair-not-measured", `"${fields.armchair}" has neither measured pieces nor a type, so no cloth can be reckoned.`, {
        expected: "pieces, or type: occasional, club or wing", hint: `Write its pieces, for example pieces: [{ piece: seat, size: 24" x 26" }], or type: club for an estimate.`,
      }),
    );
  }

  const pieces = listed.map((entry, at) => coverPiece(entry, at));
  const cuts = pieces.map((piece, at) => cutOf(piece, listed[at]?.["may-turn"]));
  const byType = estimated && fields.type ? estimateByType(fields.type, context.cloth(fields.cloth), units) : null;
  const welt = weltOf();
  if (byType) {
    working.push({ what: "Cloth, an estimate", sum: `${fields.type} chair${chairs > 1 ? ` × ${chairs}` : ""}, from a range`, result: `${printCloth(byType.low.times(chairs), units)} to ${printCloth(byType.high.times(chairs), units)}`, rounded: null });
    questions.push("The chair's pieces are not measured: the cloth is only an estimate.");
  }
  if (fields["seat-height"] === undefined && !estimated) questions.push("The seat's height is not measured; it is drawn at the usual height.");

  return {
    figures: {
      chairs, pieces: pieces.reduce((n, x) => n + x.count, 0) * chairs,
      weltMm: welt?.length.toMm() ?? 0,
      ...(byType ? { estimateLowMm: byType.low.times(chairs).toMm(), estimateMm: byType.high.times(chairs).toMm() } : {}),
    },
    cuts, materials, working, handbook: handbook(),
    makingCounts: { item: new Fraction(chairs) },
    questions, cautions: ["fire"],
    estimate: byType?.text ?? (welt && !welt.measured ? "The welt's length is not measured: its cloth is an estimate." : null),
    diagnostics,
    count: chairs, size: fields.size as [Length, Length, Length], seatHeight: fields["seat-height"] ?? context.length("seat-height"),
    pieces, welt, byType,
  };

  function coverPiece(entry: (typeof listed)[number], at: number): CoverPiece {
    const [width, length] = entry.size as [Length, Length];
    const add = isSewn(entry.piece) ? context.length("seam").times(2) : context.length("pull");
    const count = entry.count ?? (isPaired(entry.piece) ? 2 : 1);
    const cloth = entry.cloth ?? fields.cloth;
    const cut = [width.plus(add), length.plus(add)] as const;
    const facts = context.cloth(cloth);
    const words = pieceWords(entry.piece);
    const motif = hasMotif(facts);
    const place = motif ? centredPlace(facts, ...cut) : null;
    const asked = entry.centred === true;
    // A turned piece lies with its length across, so its length is what must fit.
    const turned = entry["may-turn"] ?? facts?.mayTurn ?? false;
    if (asked && !motif && facts) {
      diagnostics.push(diagnostic(context.place(["pieces", at, "centred"]), "no-motif-to-centre", `${facts.name} has no repeat on its card, so nothing can be centred on the ${words}.`, { severity: "warning", actual: "yes", expected: "no", hint: "Write the repeat on the cloth's card, or take centred out." }));
    }
    if (asked && place && !place.fits && place.widest) {
      diagnostics.push(
        diagnostic(context.place(["pieces", at, "size"]), "motif-does-not-fit", `With its pull the ${words} is ${p(cut[0])} wide; on ${facts?.name} the widest piece with a motif in its middle is ${p(place.widest)}.`, {
          actual: p(width), expected: `${p(Length.max(place.widest.minus(add), Length.zero))} or less`, hint: "Write centred: no, join the piece at a planned place (two pieces with their own sizes), or choose a wider cloth.",
        }),
      );
    } else if (facts?.usableWidth && cut[0].isMoreThan(facts.usableWidth) && !(turned && !cut[1].isMoreThan(facts.usableWidth))) {
      const railroad = !cut[1].isMoreThan(facts.usableWidth);
      diagnostics.push(
        diagnostic(context.place(["pieces", at, "size"]), "piece-wider-than-cloth", `With its pull the ${words} is ${p(cut[0])} wide; ${facts.name} is ${p(facts.usableWidth)}.`, {
          actual: p(width), expected: `${p(Length.max(facts.usableWidth.minus(add), Length.zero))} or less`,
          hint: `Give it as two pieces with a join${railroad ? ", or write may-turn: yes to run the cloth sideways, if pattern and pile look right so" : ""}, or choose a wider cloth.`,
        }),
      );
    }
    working.push({ what: `${letterAt(at)} ${words}${count > 1 ? ` × ${count}` : ""}`, sum: `${printSize([width, length], units)} + ${isSewn(entry.piece) ? "2 seams" : `${p(add)} pull`} each way${entry.count === undefined && count === 2 ? "; one for each side" : ""}`, result: printSize(cut, units), rounded: null });
    const inColumn = motif && isColumn(entry.piece) && (place?.fits ?? false) && facts?.repeat?.across != null && entry["may-turn"] !== true;
    return { letter: letterAt(at), piece: entry.piece, cloth, surface: entry.cloth ? entry.piece : "cover", finished: [width, length], cut, count, centred: asked && motif, inColumn };
  }

  function cutOf(piece: CoverPiece, askedTurn: boolean | undefined): ItemCut {
    const facts = context.cloth(piece.cloth);
    const matched = facts?.repeat != null && facts.repeat.match !== "free";
    const centre = centredPlace(facts, ...piece.cut);
    const across: AcrossMatch = piece.centred || piece.inColumn ? centre.across : { how: "free" };
    const along: AlongMatch = piece.centred
      ? centre.along
      : matched && isPaired(piece.piece)
        ? { how: "level", series: `${fields.armchair}, ${pieceWords(piece.piece)}`, joined: 0 }
        : { how: "free" };
    const free = across.how === "free" && along.how === "free";
    const count = piece.count * chairs;
    return {
      piece: pieceWords(piece.piece), surface: piece.surface, cloth: piece.cloth, width: piece.cut[0], height: piece.cut[1], count,
      mayTurn: askedTurn ?? (free && (facts?.mayTurn ?? false)),
      across: askedTurn ? { how: "free" } : across, along: askedTurn ? { how: "free" } : along,
      because: working.find((w) => w.what.startsWith(`${piece.letter} `))?.sum ?? "",
    };
  }

  function weltOf(): ArmchairMade["welt"] {
    if (!fields.welt) return null;
    const measured = fields["welt-length"] !== undefined;
    const one = fields["welt-length"] ?? context.length("welt-length");
    const length = one.times(chairs);
    const strip = context.length("welt-strip");
    const facts = context.cloth(fields.welt);
    const reserve = weltReserve({ cloth: fields.welt, length, strip, cut: "bias", biasExtra: context.ratio("bias-extra"), joinTurning: context.length("join-turning"), usableWidth: facts?.usableWidth ?? null, mayTurn: true, units });
    if (!measured) questions.push(`The welt's length is not measured: ${printCloth(one, units)} is taken for a chair.`);
    if (!estimated) {
      cuts.push({ piece: "welt, on the bias", surface: "welt", cloth: fields.welt, width: reserve.width, height: reserve.height, count: 1, mayTurn: !(facts?.nap ?? false), across: { how: "free" }, along: { how: "free" }, instead: reserve.instead, because: `${printCloth(length, units)} of ${p(strip)} strip` });
      working.push({ what: "Welt", sum: `root of ${printCloth(length, units)} × ${p(strip)} strip, and a share more`, result: printSize([reserve.width, reserve.height], units), rounded: units === "inches" ? "up to the whole inch" : "up to the whole centimetre" });
    }
    const step = units === "inches" ? Length.yards(new Fraction(1, 4)) : Length.cm(10);
    const cord = length.upTo(step);
    materials.push({ what: "welt cord", cloth: null, amount: cord.over(units === "inches" ? Length.yards(1) : Length.mm(1000)), unit: units === "inches" ? "yard" : "metre", text: `${printCloth(cord, units)} of welt cord`, by: "maker" });
    return { cloth: fields.welt, length, strip, reserve, measured };
  }

  /** Rows of pieces, matched ones up to whole repeats; by type, the range's upper end; welt on top. */
  function handbook(): { cloth: string; length: Length }[] {
    const sums = new Map<string, Length>();
    const add = (id: string, length: Length) => sums.set(id, (sums.get(id) ?? Length.zero).plus(length));
    if (byType) {
      add(fields.cloth, byType.high.times(chairs));
      if (fields.welt) add(fields.welt, WELT_CLOTH.times(chairs));
    }
    for (const id of new Set(cuts.map((c) => c.cloth))) {
      const facts = context.cloth(id);
      if (!facts?.usableWidth) continue;
      const mine = cuts.filter((c) => c.cloth === id && c.surface !== "welt");
      const rows = handbookRows(
        mine.flatMap((c) => Array.from({ length: c.count }, () => ({ width: c.width, length: c.along.how === "free" ? c.height : wholeRepeats(c.height, facts.repeat?.up ?? null) }))),
        facts.usableWidth,
      );
      if (rows === null) continue;
      const strips = cuts.filter((c) => c.cloth === id && c.surface === "welt").map((c) => c.height);
      add(id, Length.sum([rows, ...strips]));
    }
    return [...sums].map(([cloth, length]) => ({ cloth, length }));
  }
}

/** A to Z, then AA, AB … */
function letterAt(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : `${letterAt(Math.floor(at / 26) - 1)}${last}`;
}
