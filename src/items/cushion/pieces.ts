import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { sidewaysAsItFalls } from "../common/join/sideways.ts";
import { newNotes } from "../common/notes.ts";
import { type EdgeWelt, weltCut } from "../common/welt/edgeWelt.ts";
import type { ItemContext, Made, MaterialNeed } from "../itemKind.ts";
import { splitBackWorking } from "./back.ts";
import type { Bolster } from "./bolster.ts";
import { type Boxing, boxingCuts, boxingFaults, type PlateEdges } from "./boxing.ts";
import { type Closure, closureWorking, zipNeed, zipOf } from "./closure.ts";
import { coverOf } from "./cover.ts";
import { coverCuts } from "./coverCuts.ts";
import { cushionCord, cushionWelt, cushionWeltWorking } from "./cushionWelt.ts";
import { cushionFigures } from "./figures.ts";
import { type CushionForm, formFaults } from "./forms.ts";
import { cushionHandbook } from "./handbook.ts";
import { type CushionInsert, insertNeed, insertOf, insertWorking } from "./insert.ts";
import { motifsOf, sidesShow } from "./motifs.ts";
import type { CushionFields } from "./schema.ts";
import { faceWorking } from "./sizes.ts";

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
  readonly closure: Closure;
  readonly zip: Length | null;
  /** A motif stands in the middle of the face. */
  readonly faceCentred: boolean;
  /** What face and back show in their middle. */
  readonly shows: ReturnType<typeof sidesShow>;
  readonly welt: EdgeWelt | null;
  readonly insert: CushionInsert["size"];
  readonly filling: CushionInsert["filling"];
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
  const notes = newNotes();
  const materials: MaterialNeed[] = [];
  const cover = coverOf(fields, context, shape);
  const { sizes, back, boxing, closure } = cover;
  const { count, bolster } = sizes;

  notes.diagnostics.push(...formFaults(fields, context));
  if (boxing) notes.diagnostics.push(...boxingFaults(boxing, fields, context));
  const motifs = motifsOf(fields, cover, context, notes);

  const shows = sidesShow(fields, cover, motifs, context);
  notes.working.push(faceWorking(sizes, units));
  splitBackWorking(back, units, notes);
  const cuts = coverCuts(fields, cover, motifs, context, notes);
  if (boxing) {
    const strips = boxingCuts(boxing, fields, context, sizes.seam, count);
    cuts.push(...strips.cuts);
    notes.working.push(...strips.working);
  }

  const welt = cushionWelt(fields, cover, context);
  if (welt) {
    cuts.push(weltCut(welt, context));
    notes.working.push(...cushionWeltWorking(welt, cover, context));
    materials.push(cushionCord(welt, cover, context));
  }

  const sideways = sizes.railroad ? sidewaysAsItFalls(context.cloth(fields.cloth)) : null;
  if (sideways) notes.questions.push(sideways);

  const insert = insertOf(fields, cover, context);
  if (!fields.filling)
    notes.questions.push(`The filling is not named: a ${insert.filling} insert is taken.`);
  notes.working.push(insertWorking(insert, cover, context));
  materials.push(insertNeed(insert, count, context));

  const zip = zipOf(closure, sizes, boxing, context);
  if (zip) {
    materials.push(zipNeed(zip, count, context));
    if (!fields.closure) notes.working.push(closureWorking(sizes, back.split, boxing));
  }

  return {
    figures: cushionFigures(cover, welt, insert),
    cuts,
    materials,
    working: notes.working,
    handbook: cushionHandbook(cuts, (id) => context.cloth(id)),
    makingCounts: { item: new Fraction(count) },
    questions: notes.questions,
    cautions: ["fire"],
    estimate: null,
    diagnostics: notes.diagnostics,
    form: sizes.form,
    boxing,
    bolster,
    flange: sizes.flange,
    railroad: sizes.railroad,
    count,
    finished: sizes.outside,
    cut: sizes.cut,
    backs: bolster ? 0 : back.split ? 2 : 1,
    backCut: back.cut,
    seam: sizes.seam,
    closure,
    zip,
    faceCentred: shows.face === "motif",
    shows,
    welt,
    insert: insert.size,
    filling: insert.filling,
  };
}
