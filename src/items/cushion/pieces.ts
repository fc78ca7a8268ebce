import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../centredMotif.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { stripForCord, type WeltReserve, weltReserve } from "../welt.ts";
import { cushionHandbook } from "./handbook.ts";
import type { CushionFields } from "./schema.ts";

export interface CushionWelt {
  readonly cloth: string;
  readonly cut: "bias" | "straight";
  readonly strip: Length;
  /** Of one cushion: perimeter and lap. */
  readonly each: Length;
  readonly total: Length;
  readonly reserve: WeltReserve;
}

/** A cushion as it is cut and finished. */
export interface CushionMade extends Made {
  readonly count: number;
  readonly finished: readonly [Length, Length];
  readonly cut: readonly [Length, Length];
  /** One piece, or two that overlap (an envelope). */
  readonly backs: 1 | 2;
  readonly backCut: readonly [Length, Length];
  readonly seam: Length;
  readonly closure: "zip" | "envelope" | "sewn";
  readonly zip: Length | null;
  readonly faceCentred: boolean;
  readonly backCentred: boolean;
  readonly welt: CushionWelt | null;
  readonly insert: readonly [Length, Length];
  readonly filling: "feather" | "fibre" | "foam";
}

/**
 * Pieces and bought things of `count` like cushions. Knife edge: face and back are the finished size and two seams; an envelope
 * has two backs of (cut height + overlap) / 2; welt is the perimeter and a lap, cut from a bias square (root of length times
 * strip, and a share more) or from straight strips. Lengths exact; the welt's reserve and the cord are rounded up.
 */
export function makeCushion(fields: CushionFields, context: ItemContext): CushionMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const count = fields.count ?? 1;
  const [width, height] = fields.size as [Length, Length];
  const seam = context.length("seam");
  const cut = [width.plus(seam.times(2)), height.plus(seam.times(2))] as const;
  const faceBecause = `${printSize([width, height], units)} + 2 × ${p(seam)} seams each way`;
  working.push({ what: "Face", sum: faceBecause, result: printSize(cut, units), rounded: null });

  const closure = fields.closure ?? "zip";
  const backCloth = fields.back ?? fields.cloth;
  const face = centring(fields.cloth, fields.motif, "motif", true);
  const back = centring(backCloth, fields["back-motif"], "back-motif", false);
  const envelope = closure === "envelope";
  const overlap = envelope ? context.length("envelope-overlap") : Length.zero;
  const backCut = [cut[0], envelope ? cut[1].plus(overlap).dividedBy(2) : cut[1]] as const;
  if (envelope && back.centred) {
    diagnostics.push(
      diagnostic(context.place(["back-motif"]), "envelope-not-centred", "The back of an envelope is two pieces that overlap, so no motif stands in its middle.", {
        severity: "warning", actual: "centred", expected: "as-it-falls", hint: "Write closure: zip for a back with its motif centred, or take the back-motif line out.",
      }),
    );
  }
  const backCentred = back.centred && !envelope;
  if (envelope) {
    working.push({ what: "Each of two backs", sum: `(${p(cut[1])} face + ${p(overlap)} overlap and hems) ÷ 2`, result: printSize(backCut, units), rounded: null });
  }

  const freely = { across: { how: "free" }, along: { how: "free" } } as const;
  const backLie = backCentred ? centredPlace(context.cloth(backCloth), ...backCut) : freely;
  const faceLie = face.centred ? centredPlace(context.cloth(fields.cloth), ...cut) : freely;
  const turns = (id: string, centred: boolean) => !centred && (context.cloth(id)?.mayTurn ?? false);
  const cuts: ItemCut[] = [
    { piece: "face", surface: "face", cloth: fields.cloth, width: cut[0], height: cut[1], count, mayTurn: turns(fields.cloth, face.centred), across: faceLie.across, along: faceLie.along, because: faceBecause },
    {
      piece: "back", surface: "back", cloth: backCloth, width: backCut[0], height: backCut[1], count: envelope ? count * 2 : count,
      mayTurn: turns(backCloth, backCentred), across: backLie.across, along: backLie.along,
      because: envelope ? `(${p(cut[1])} face + ${p(overlap)} overlap and hems) ÷ 2` : faceBecause,
    },
  ];
  const materials: MaterialNeed[] = [];

  const welt = weltOf();
  if (welt) {
    cuts.push({
      piece: welt.cut === "bias" ? "welt, on the bias" : `welt, ${welt.reserve.strips} straight strips`, surface: "welt", cloth: welt.cloth,
      width: welt.reserve.width, height: welt.reserve.height, count: 1,
      mayTurn: !(context.cloth(welt.cloth)?.nap ?? false), ...freely, instead: welt.reserve.instead,
      because: `${p(welt.total)} of ${p(welt.strip)} strip`,
    });
    const step = units === "inches" ? Length.yards(new Fraction(1, 4)) : Length.cm(10);
    const cord = welt.total.upTo(step);
    materials.push({ what: "welt cord", cloth: null, amount: cord.over(units === "inches" ? Length.yards(1) : Length.mm(1000)), unit: units === "inches" ? "yard" : "metre", text: `${printCloth(cord, units)} of welt cord`, by: "maker" });
  }

  const filling = fields.filling ?? "feather";
  if (!fields.filling) questions.push("The filling is not named: a feather insert is taken.");
  const over = filling === "foam" ? Length.zero : context.length(`insert-over-${filling}`);
  const insert = [width.plus(over), height.plus(over)] as const;
  materials.push({ what: `${filling} insert ${printSize(insert, units)}`, cloth: null, amount: new Fraction(count), unit: "piece", text: `${count} ${filling} ${count === 1 ? "insert" : "inserts"} ${printSize(insert, units)}`, by: "studio" });
  working.push({ what: "Insert", sum: `${printSize([width, height], units)} cover + ${p(over)} each way, ${filling}`, result: printSize(insert, units), rounded: null });

  let zip: Length | null = null;
  if (closure === "zip") {
    const shorter = context.length("zip-short");
    zip = width.isMoreThan(shorter.times(2)) ? width.minus(shorter) : width;
    materials.push({ what: `zip ${p(zip)}`, cloth: null, amount: new Fraction(count), unit: "piece", text: `${count} ${count === 1 ? "zip" : "zips"} of ${p(zip)}`, by: "maker" });
    if (!fields.closure) working.push({ what: "Closure", sum: "nothing was said", result: "zip in the lower seam", rounded: null });
  }

  return {
    figures: {
      faces: count, facesMm: cut[0].toMm(), faceWidthMm: cut[0].toMm(), faceHeightMm: cut[1].toMm(),
      backs: envelope ? count * 2 : count, backWidthMm: backCut[0].toMm(), backHeightMm: backCut[1].toMm(),
      weltMm: welt?.total.toMm() ?? 0, weltReserveWidthMm: welt?.reserve.width.toMm() ?? 0, weltReserveHeightMm: welt?.reserve.height.toMm() ?? 0,
      insertWidthMm: insert[0].toMm(), insertHeightMm: insert[1].toMm(),
    },
    cuts, materials, working,
    handbook: cushionHandbook(cuts, (id) => context.cloth(id)),
    makingCounts: { item: new Fraction(count) },
    questions, cautions: ["fire"], estimate: null, diagnostics,
    count, finished: [width, height], cut, backs: envelope ? 2 : 1, backCut, seam, closure, zip,
    faceCentred: face.centred, backCentred, welt, insert, filling,
  };

  /** Whether a side is centred; reports a cloth on which it cannot be, naming what would work. */
  function centring(id: string, asked: "centred" | "as-it-falls" | undefined, key: "motif" | "back-motif", usually: boolean): { centred: boolean } {
    const cloth = context.cloth(id);
    const centred = asked === "centred" || (asked === undefined && usually && hasMotif(cloth));
    if (cloth === null) return { centred };
    if (asked === "centred" && !hasMotif(cloth)) {
      diagnostics.push(diagnostic(context.place([key]), "no-motif-to-centre", `${cloth.name} has no repeat on its card, so nothing can be centred.`, { severity: "warning", actual: "centred", expected: "as-it-falls", hint: "Write the repeat on the cloth's card, or motif: as-it-falls." }));
      return { centred: false };
    }
    if (!cloth.usableWidth) return { centred };
    const turned = !centred && cloth.mayTurn && !cut[1].isMoreThan(cloth.usableWidth);
    const place = centred ? centredPlace(cloth, cut[0], cut[1]) : { widest: cloth.usableWidth, fits: turned || !cut[0].isMoreThan(cloth.usableWidth) };
    if (!place.fits && place.widest) {
      const most = place.widest.minus(seam.times(2));
      const largest = most.isNegative() || most.isZero() ? null : p(most.downTo(units === "inches" ? Length.inches(new Fraction(1, 8)) : Length.mm(1)));
      const uncentred = centred && !cut[0].isMoreThan(cloth.usableWidth);
      diagnostics.push(
        diagnostic(
          context.place(["size"]),
          centred ? "motif-does-not-fit" : "piece-wider-than-cloth",
          centred
            ? `With its seams this cushion is ${p(cut[0])} wide; on ${cloth.name} the widest piece with a motif in its middle is ${p(place.widest)}.`
            : `With its seams this cushion is ${p(cut[0])} wide; ${cloth.name} is ${p(cloth.usableWidth)}.`,
          {
            actual: p(width), expected: largest ? `${largest} or less` : null,
            hint: [largest ? `Make it ${largest} wide or less` : null, uncentred ? `write ${key}: as-it-falls` : null, "choose a wider cloth"].filter(Boolean).join(", or ").replace(/^./, (c) => c.toUpperCase()).concat("."),
          },
        ),
      );
    }
    return { centred };
  }

  function weltOf(): CushionWelt | null {
    const edge = fields.edge;
    if (edge === undefined || typeof edge === "string") return null;
    const cord = edge.cord && !edge.cord.isZero() ? edge.cord : null;
    const strip = cord ? stripForCord(cord, seam, units) : context.length("welt-strip");
    const lap = context.length("welt-lap");
    const perimeter = width.plus(height).times(2);
    const each = perimeter.plus(lap);
    const total = each.times(count);
    const weltCut = edge.cut ?? "bias";
    const cloth = context.cloth(edge.welt);
    const reserve = weltReserve({
      cloth: edge.welt, length: total, strip, cut: weltCut, biasExtra: context.ratio("bias-extra"), joinTurning: context.length("join-turning"),
      usableWidth: cloth?.usableWidth ?? null, mayTurn: cloth?.mayTurn ?? false, units,
    });
    working.push({ what: "Welt", sum: `${count} × (${p(perimeter)} perimeter + ${p(lap)} lap)`, result: p(total), rounded: null });
    working.push({
      what: weltCut === "bias" ? "Cloth for the bias" : "Cloth for the strips",
      sum: weltCut === "bias" ? `root of ${p(total)} × ${p(strip)} strip, and ${context.ratio("bias-extra").sub(1).mul(100).toString()} % more area` : `${reserve.strips} strips of ${p(strip)}`,
      result: printSize([reserve.width, reserve.height], units), rounded: units === "inches" ? "up to the whole inch" : "up to the whole centimetre",
    });
    return { cloth: edge.welt, cut: weltCut, strip, each, total, reserve };
  }
}
