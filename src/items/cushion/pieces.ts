import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace } from "../centredMotif.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { cordNeed } from "../welt.ts";
import { type CushionWelt, cushionWelt, weltCut, weltWorking } from "./cushionWelt.ts";
import { cushionHandbook } from "./handbook.ts";
import type { CushionFields } from "./schema.ts";
import { sideCentring } from "./sideCentring.ts";

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
  const side = { context, finishedWidth: width, cut, seam };
  const face = sideCentring({
    ...side,
    cloth: fields.cloth,
    asked: fields.motif,
    key: "motif",
    usually: true,
  });
  const back = sideCentring({
    ...side,
    cloth: backCloth,
    asked: fields["back-motif"],
    key: "back-motif",
    usually: false,
  });
  diagnostics.push(...face.diagnostics, ...back.diagnostics);
  const envelope = closure === "envelope";
  const overlap = envelope ? context.length("envelope-overlap") : Length.zero;
  const backCut = [cut[0], envelope ? cut[1].plus(overlap).dividedBy(2) : cut[1]] as const;
  if (envelope && back.centred) {
    diagnostics.push(
      diagnostic(
        context.place(["back-motif"]),
        "envelope-not-centred",
        "The back of an envelope is two pieces that overlap, so no motif stands in its middle.",
        {
          severity: "warning",
          actual: "centred",
          expected: "as-it-falls",
          hint: "Write closure: zip for a back with its motif centred, or take the back-motif line out.",
        },
      ),
    );
  }
  const backCentred = back.centred && !envelope;
  if (envelope) {
    working.push({
      what: "Each of two backs",
      sum: `(${p(cut[1])} face + ${p(overlap)} overlap and hems) ÷ 2`,
      result: printSize(backCut, units),
      rounded: null,
    });
  }

  const freely = { across: { how: "free" }, along: { how: "free" } } as const;
  const backLie = backCentred ? centredPlace(context.cloth(backCloth), ...backCut) : freely;
  const faceLie = face.centred ? centredPlace(context.cloth(fields.cloth), ...cut) : freely;
  const turns = (id: string, centred: boolean) => !centred && (context.cloth(id)?.mayTurn ?? false);
  const cuts: ItemCut[] = [
    {
      piece: "face",
      surface: "face",
      cloth: fields.cloth,
      width: cut[0],
      height: cut[1],
      count,
      mayTurn: turns(fields.cloth, face.centred),
      across: faceLie.across,
      along: faceLie.along,
      because: faceBecause,
    },
    {
      piece: "back",
      surface: "back",
      cloth: backCloth,
      width: backCut[0],
      height: backCut[1],
      count: envelope ? count * 2 : count,
      mayTurn: turns(backCloth, backCentred),
      across: backLie.across,
      along: backLie.along,
      because: envelope ? `(${p(cut[1])} face + ${p(overlap)} overlap and hems) ÷ 2` : faceBecause,
    },
  ];
  const materials: MaterialNeed[] = [];

  const welt = cushionWelt(fields, context, seam);
  if (welt) {
    cuts.push(weltCut(welt, context));
    working.push(...weltWorking(welt, count, context));
    materials.push(cordNeed(welt.total, units));
  }

  const filling = fields.filling ?? "feather";
  if (!fields.filling) questions.push("The filling is not named: a feather insert is taken.");
  const over = filling === "foam" ? Length.zero : context.length(`insert-over-${filling}`);
  const insert = [width.plus(over), height.plus(over)] as const;
  materials.push({
    what: `${filling} insert ${printSize(insert, units)}`,
    cloth: null,
    amount: new Fraction(count),
    unit: "piece",
    text: `${count} ${filling} ${count === 1 ? "insert" : "inserts"} ${printSize(insert, units)}`,
    by: "studio",
  });
  working.push({
    what: "Insert",
    sum: `${printSize([width, height], units)} cover + ${p(over)} each way, ${filling}`,
    result: printSize(insert, units),
    rounded: null,
  });

  let zip: Length | null = null;
  if (closure === "zip") {
    const shorter = context.length("zip-short");
    zip = width.isMoreThan(shorter.times(2)) ? width.minus(shorter) : width;
    materials.push({
      what: `zip ${p(zip)}`,
      cloth: null,
      amount: new Fraction(count),
      unit: "piece",
      text: `${count} ${count === 1 ? "zip" : "zips"} of ${p(zip)}`,
      by: "maker",
    });
    if (!fields.closure)
      working.push({
        what: "Closure",
        sum: "nothing was said",
        result: "zip in the lower seam",
        rounded: null,
      });
  }

  return {
    figures: {
      faces: count,
      facesMm: cut[0].toMm(),
      faceWidthMm: cut[0].toMm(),
      faceHeightMm: cut[1].toMm(),
      backs: envelope ? count * 2 : count,
      backWidthMm: backCut[0].toMm(),
      backHeightMm: backCut[1].toMm(),
      weltMm: welt?.total.toMm() ?? 0,
      weltReserveWidthMm: welt?.reserve.width.toMm() ?? 0,
      weltReserveHeightMm: welt?.reserve.height.toMm() ?? 0,
      insertWidthMm: insert[0].toMm(),
      insertHeightMm: insert[1].toMm(),
    },
    cuts,
    materials,
    working,
    handbook: cushionHandbook(cuts, (id) => context.cloth(id)),
    makingCounts: { item: new Fraction(count) },
    questions,
    cautions: ["fire"],
    estimate: null,
    diagnostics,
    count,
    finished: [width, height],
    cut,
    backs: envelope ? 2 : 1,
    backCut,
    seam,
    closure,
    zip,
    faceCentred: face.centred,
    backCentred,
    welt,
    insert,
    filling,
  };
}
