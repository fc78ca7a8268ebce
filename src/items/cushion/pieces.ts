import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace } from "../common/join/centredMotif.ts";
import { gapQuestion, joinedCuts, joinPiece } from "../common/join/joinPiece.ts";
import { type EdgeWelt, edgeWelt, weltCut, weltWorking } from "../common/welt/edgeWelt.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { type Bolster, bolsterOf } from "./bolster.ts";
import {
  type Boxing,
  boxingCuts,
  boxingFaults,
  boxingOf,
  type PlateEdges,
  perimeterOf,
  rectangleEdges,
} from "./boxing.ts";
import { type CushionForm, formFaults, formOf } from "./forms.ts";
import { cushionHandbook } from "./handbook.ts";
import type { CushionFields } from "./schema.ts";
import { sideCentring } from "./sideCentring.ts";

/** A cushion as it is cut and finished. */
export interface CushionMade extends Made {
  readonly form: CushionForm;
  readonly boxing: Boxing | null;
  readonly bolster: Bolster | null;
  /** Width of the border beyond the stuffing; zero without one. */
  readonly flange: Length;
  readonly railroad: boolean;
  readonly count: number;
  /** Outside, flange included; of a bolster its length and diameter. */
  readonly finished: readonly [Length, Length];
  readonly cut: readonly [Length, Length];
  /** One piece, two that overlap (an envelope), or none (a bolster, which has ends). */
  readonly backs: 0 | 1 | 2;
  readonly backCut: readonly [Length, Length];
  readonly seam: Length;
  readonly closure: "zip" | "envelope" | "sewn";
  readonly zip: Length | null;
  readonly faceCentred: boolean;
  readonly backCentred: boolean;
  readonly welt: EdgeWelt | null;
  readonly insert: readonly [Length, Length, ...Length[]];
  readonly filling: "feather" | "fibre" | "foam";
}

/**
 * Pieces and bought things of `count` like cushions. Knife edge: face and back are the finished size and two seams; an envelope
 * has two backs of (cut height + overlap) / 2; welt is the perimeter and a lap, cut from a bias square (root of length times
 * strip, and a share more) or from straight strips. A flange adds itself twice each way; a box has two plates and its boxing; a
 * bolster a body and two ends. `shape` tells the edges of a plate that is no rectangle: it is cut from the rectangle that holds it.
 * Lengths exact; the welt's reserve and the cord are rounded up.
 */
export function makeCushion(
  fields: CushionFields,
  context: ItemContext,
  shape?: PlateEdges,
): CushionMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const count = fields.count ?? 1;
  const [width, height] = fields.size as [Length, Length];
  const seam = context.length("seam");
  const form = formOf(fields);
  diagnostics.push(...formFaults(fields, context));
  const flange = form === "flange" ? (fields.flange ?? Length.zero) : Length.zero;
  const outside = [width.plus(flange.times(2)), height.plus(flange.times(2))] as const;
  const bolster = form === "bolster" ? bolsterOf(fields, context, seam) : null;
  const railroad = fields.railroad === true;
  const cut: readonly [Length, Length] = bolster?.body ?? [
    outside[0].plus(seam.times(2)),
    outside[1].plus(seam.times(2)),
  ];
  const sideways = railroad ? "; cloth sideways" : "";
  const added = flange.isZero() ? "" : ` + 2 × ${p(flange)} flange`;
  const faceBecause =
    bolster?.because ??
    `${printSize([width, height], units)}${added} + 2 × ${p(seam)} seams each way`;
  const faceWord = bolster ? "body" : form === "box" ? "top" : "face";
  working.push({
    what: bolster ? "Body" : form === "box" ? "Top and bottom" : "Face",
    sum: faceBecause,
    result: printSize(cut, units),
    rounded:
      bolster?.section === "round"
        ? units === "inches"
          ? "up to 1/8 inch"
          : "up to the millimetre"
        : null,
  });

  const plate = shape ?? rectangleEdges(outside[0], outside[1]);
  const stuffed = form === "knife" || form === "flange";
  const asked = fields.closure ?? "zip";
  const closure = asked === "envelope" && !stuffed ? "zip" : asked;
  const boxing = form === "box" ? boxingOf(fields, context, seam, closure === "zip", plate) : null;
  if (boxing) diagnostics.push(...boxingFaults(boxing, fields, context));
  const backCloth = fields.back ?? fields.cloth;
  const turning = context.length("join-turning");
  const partsOn = (id: string, size: readonly [Length, Length], motif = false) => {
    const usable = context.cloth(id)?.usableWidth;
    return usable && fields.join && !railroad && !bolster && size[0].isMoreThan(usable)
      ? joinPiece(size[0], usable, turning, fields.join, motif ? context.cloth(id) : null)
      : null;
  };
  const side = {
    context,
    finishedWidth: width,
    cut,
    seam: seam.plus(flange),
    railroad,
    joined: fields.join !== undefined && !bolster && partsOn(fields.cloth, cut) !== null,
    joinable: fields.join === undefined && !bolster,
  };
  const face = sideCentring({
    ...side,
    cloth: fields.cloth,
    asked: fields.motif,
    key: "motif",
    usually: true,
  });
  const back = sideCentring({
    ...side,
    joined: partsOn(backCloth, cut) !== null,
    cloth: backCloth,
    asked: fields["back-motif"],
    key: "back-motif",
    usually: false,
  });
  diagnostics.push(...face.diagnostics, ...(bolster ? [] : back.diagnostics));
  const envelope = closure === "envelope";
  // A flange is stitched down all round, so its insert goes in through the back: two pieces that meet at a zip.
  const backZip = form === "flange" && closure === "zip";
  const split = envelope || backZip;
  const overlap = envelope
    ? context.length("envelope-overlap")
    : backZip
      ? seam.times(2)
      : Length.zero;
  const backCut = [cut[0], split ? cut[1].plus(overlap).dividedBy(2) : cut[1]] as const;
  if (split && back.centred) {
    diagnostics.push(
      diagnostic(
        context.place(["back-motif"]),
        "envelope-not-centred",
        "This back is two pieces that meet in its middle, so no motif stands there.",
        {
          severity: "warning",
          actual: "centred",
          expected: "as-it-falls",
          hint: `${form === "flange" ? "Write closure: sewn" : "Write closure: zip"} for a back with its motif centred, or take the back-motif line out.`,
        },
      ),
    );
  }
  const overlapWord = envelope ? "overlap and hems" : "seams at the zip";
  const backCentred = back.centred && !split;
  if (split) {
    working.push({
      what: "Each of two backs",
      sum: `(${p(cut[1])} face + ${p(overlap)} ${overlapWord}) ÷ 2`,
      result: printSize(backCut, units),
      rounded: null,
    });
  }

  const freely = { across: { how: "free" }, along: { how: "free" } } as const;
  const backLie = backCentred ? centredPlace(context.cloth(backCloth), ...backCut) : freely;
  const faceLie = face.centred ? centredPlace(context.cloth(fields.cloth), ...cut) : freely;
  const turns = (id: string, centred: boolean) =>
    !centred && !railroad && (context.cloth(id)?.mayTurn ?? false);
  // Railroaded pieces are laid as they must be cut, their width along the cloth.
  const laid = (size: readonly [Length, Length]) => ({
    width: railroad ? size[1] : size[0],
    height: railroad ? size[0] : size[1],
  });
  const plain: ItemCut[] = [
    {
      piece: faceWord,
      surface: "face",
      cloth: fields.cloth,
      ...laid(cut),
      count,
      mayTurn: turns(fields.cloth, face.centred),
      across: faceLie.across,
      along: faceLie.along,
      because: faceBecause + sideways,
    },
    {
      piece: bolster ? "end" : form === "box" ? "bottom" : "back",
      surface: "back",
      cloth: backCloth,
      ...(bolster ? { width: bolster.end, height: bolster.end } : laid(backCut)),
      count: split || bolster ? count * 2 : count,
      mayTurn: turns(backCloth, backCentred),
      ...(bolster ? freely : { across: backLie.across, along: backLie.along }),
      because: bolster
        ? `${p(height)} + 2 × ${p(seam)} seams, ${bolster.section === "round" ? "a circle" : "a square"}`
        : split
          ? `(${p(cut[1])} face + ${p(overlap)} ${overlapWord}) ÷ 2`
          : faceBecause + sideways,
    },
  ];
  const cuts = plain.flatMap((piece): ItemCut[] => {
    const centredHere = piece.surface === "face" ? face.centred : backCentred;
    const parts = partsOn(piece.cloth, [piece.width, piece.height], centredHere);
    if (!parts) return [piece];
    const gap = centredHere ? gapQuestion(context.cloth(piece.cloth), piece.piece, parts) : null;
    if (gap) questions.push(gap);
    const series = `${fields.cushion}, ${piece.piece}`;
    const whole = parts.find((x) => x.selvedge === null);
    const strips = parts.filter((x) => x.selvedge !== null);
    working.push({
      what: `${faceName(piece.piece)}, joined`,
      sum: `${p(piece.width)} on ${p(whole?.width ?? piece.width)} of cloth, ${parts.length - 1} ${parts.length === 2 ? "join" : "joins"} of 2 × ${p(turning)}`,
      result: `${strips.length} ${strips.length === 1 ? "strip" : "strips"} of ${p(strips[0]?.width ?? piece.width)}`,
      rounded: null,
    });
    return joinedCuts(parts, piece, context.cloth(piece.cloth), centredHere, series);
  });
  if (bolster) {
    working.push({
      what: "Each of two ends",
      sum: `${p(height)} + 2 × ${p(seam)} seams`,
      result: printSize([bolster.end, bolster.end], units),
      rounded: null,
    });
  }
  if (boxing) {
    const strips = boxingCuts(boxing, fields, context, seam, count);
    cuts.push(...strips.cuts);
    working.push(...strips.working);
  }
  const materials: MaterialNeed[] = [];

  const round = perimeterOf(plate);
  const edges = bolster?.edges ?? (form === "box" ? round.times(2) : round);
  const welt = edgeWelt(fields, context, seam, edges, form === "box" || bolster ? 2 : 1);
  if (welt) {
    cuts.push(weltCut(welt, context));
    const once = plate.round
      ? `${p(round)} round its edge`
      : plate.front.equals(plate.back)
        ? `2 × (${p(plate.front)} + ${p(plate.side)})`
        : `${p(plate.front)} front + ${p(plate.back)} back + 2 × ${p(plate.side)}`;
    const sum = bolster
      ? `2 × ${p(edges.dividedBy(2))} round each end`
      : form === "box"
        ? `2 × (${once}), round both faces`
        : once;
    working.push(...weltWorking(welt, count, context, sum));
    materials.push(
      cordNeed(welt.total.plus((bolster?.foldCord ?? Length.zero).times(count)), units),
    );
  }

  const filling = fields.filling ?? (form === "box" ? "foam" : "feather");
  if (!fields.filling) questions.push(`The filling is not named: a ${filling} insert is taken.`);
  const over = filling === "foam" ? Length.zero : context.length(`insert-over-${filling}`);
  const insert: CushionMade["insert"] = [
    width.plus(over),
    height.plus(over),
    ...(boxing ? [boxing.thickness] : []),
  ];
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
    zip = boxing?.zipRun ?? (width.isMoreThan(shorter.times(2)) ? width.minus(shorter) : width);
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
        result: boxing
          ? "zip in the back boxing"
          : bolster
            ? "zip along the body"
            : backZip
              ? "zip across the middle of the back"
              : "zip in the lower seam",
        rounded: null,
      });
  }

  return {
    figures: {
      faces: count,
      facesMm: cut[0].toMm(),
      faceWidthMm: cut[0].toMm(),
      faceHeightMm: cut[1].toMm(),
      backs: bolster ? 0 : split ? count * 2 : count,
      ...(bolster
        ? { ends: count * 2, endMm: bolster.end.toMm(), wrapMm: bolster.wrapExact.toMm() }
        : {}),
      ...(boxing ? { boxingMm: boxing.total.toMm(), boxingWidthMm: boxing.width.toMm() } : {}),
      backWidthMm: backCut[0].toMm(),
      backHeightMm: backCut[1].toMm(),
      weltMm: welt?.total.toMm() ?? 0,
      weltReserveWidthMm: welt?.reserve.width.toMm() ?? 0,
      weltReserveHeightMm: welt?.reserve.height.toMm() ?? 0,
      insertWidthMm: width.plus(over).toMm(),
      insertHeightMm: height.plus(over).toMm(),
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
    form,
    boxing,
    bolster,
    flange,
    railroad,
    count,
    finished: outside,
    cut,
    backs: bolster ? 0 : split ? 2 : 1,
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

const faceName = (piece: string): string => piece.charAt(0).toUpperCase() + piece.slice(1);
