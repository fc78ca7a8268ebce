import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { motifWhereQuestion } from "../common/join/motifFaults.ts";
import type { Notes } from "../common/notes.ts";
import { type EdgeWelt, edgeWelt, weltWorking } from "../common/welt/edgeWelt.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { tiebackEdges } from "./edges.ts";
import type { TiebackFields } from "./schema.ts";
import { type TiebackSizes, tiebackSizes } from "./sizes.ts";

/** Every size that the drawing and the sheet of tie-backs need. */
export interface TiebackPlan {
  readonly shape: "straight" | "shaped";
  readonly length: Length;
  readonly depth: Length;
  readonly endDepth: Length;
  readonly sag: Length;
  /** Of the rectangle round it: sag and depth together. */
  readonly height: Length;
  /** Radii of its upper and lower edge, millimetres; null where the edge is straight. */
  readonly upperRadiusMm: number | null;
  readonly lowerRadiusMm: number | null;
  readonly cloth: ClothFacts;
  readonly seam: Length;
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  readonly motifCentred: boolean;
  /** From the foot of the cut rectangle up to the middle of the band, where a shaped one hangs lowest. */
  readonly motifAboveFoot: Length;
  /** All round, and along the lower edge alone; up to what can be marked. */
  readonly perimeter: Length;
  readonly lowerRun: Length;
  readonly faceAreaMm2: number;
  readonly welt: EdgeWelt | null;
  readonly count: number;
}

/** Plans tie-backs; null, with a diagnostic, where they cannot be cut. */
export function planTieback(
  fields: TiebackFields,
  context: ItemContext,
  notes: Notes,
): TiebackPlan | null {
  const count = fields.count ?? 1;
  const sizes = tiebackSizes(fields, context, notes);
  const cloth = context.cloth(fields.cloth);
  if (sizes === null || !cloth) return null;
  const seam = context.length("seam");
  const { shape, length, depth, endDepth, sag } = sizes;
  const height = sag.plus(depth);
  const cut = [length.plus(seam.times(2)), height.plus(seam.times(2))] as const;
  notes.working.push({
    what: "Front and back, cut",
    sum: cutSum(sizes, seam, context),
    result: printSize(cut, context.units),
    rounded: null,
  });
  if (widerThanCloth(fields, cut[0], context, notes)) return null;
  const motifCentred = isCentred(fields, cloth, cut, context, notes);
  askOfHanging(fields, notes);
  const edges = tiebackEdges(sizes, context);
  const welt = edgeWelt(fields, context, seam, edges.perimeter, 1);
  if (welt) notes.working.push(...weltWorking(welt, count, context, edges.sum));
  return {
    shape,
    length,
    depth,
    endDepth,
    sag,
    height,
    upperRadiusMm: edges.upperRadiusMm,
    lowerRadiusMm: edges.lowerRadiusMm,
    cloth,
    seam,
    cutWidth: cut[0],
    cutHeight: cut[1],
    motifCentred,
    motifAboveFoot: seam.plus(depth.dividedBy(2)),
    perimeter: edges.perimeter,
    lowerRun: edges.lowerRun,
    faceAreaMm2: edges.faceAreaMm2,
    welt,
    count,
  };
}

function cutSum(sizes: TiebackSizes, seam: Length, context: ItemContext): string {
  const p = (l: Length) => printLength(l, context.units);
  const deep =
    sizes.shape === "shaped" ? `${p(sizes.sag)} sag + ${p(sizes.depth)} depth` : p(sizes.depth);
  return `${p(sizes.length)} by ${deep}, + 2 × ${p(seam)} seams each way`;
}

/** True, with a diagnostic, where it is longer than one of its cloths is wide. */
function widerThanCloth(
  fields: TiebackFields,
  cutWidth: Length,
  context: ItemContext,
  notes: Notes,
): boolean {
  const p = (l: Length) => printLength(l, context.units);
  for (const [key, id] of [
    ["cloth", fields.cloth],
    ["back", fields.back ?? fields.cloth],
  ] as const) {
    const facts = context.cloth(id);
    if (!facts?.usableWidth || !cutWidth.isMoreThan(facts.usableWidth)) continue;
    notes.diagnostics.push(
      diagnostic(
        context.place([key]),
        "tieback-wider-than-cloth",
        `Cut ${p(cutWidth)} long, the tie-back does not fit across ${facts.name}, which is ${p(facts.usableWidth)} wide.`,
        {
          actual: p(cutWidth),
          expected: `${p(facts.usableWidth)} or less`,
          hint: "Choose a wider cloth, or a shorter tie-back: one longer than the cloth is wide would have a join in sight.",
        },
      ),
    );
    return true;
  }
  return false;
}

/** Whether a motif stands in its middle; asked where one is wished and none has room. */
function isCentred(
  fields: TiebackFields,
  cloth: ClothFacts,
  cut: readonly [Length, Length],
  context: ItemContext,
  notes: Notes,
): boolean {
  const wanted = fields.motif !== "as-it-falls" && hasMotif(cloth);
  const centred = wanted && centredPlace(cloth, ...cut).fits;
  if (wanted && !centred && cloth.repeat?.across)
    notes.questions.push(motifWhereQuestion(cloth, cut[0], "on the tie-back", context.units));
  return centred;
}

function askOfHanging(fields: TiebackFields, notes: Notes): void {
  if (fields.count === undefined)
    notes.questions.push("Is one tie-back enough? A pair of curtains takes two; write count: 2.");
  if (!fields["hook-height"])
    notes.questions.push(
      "How high above the floor is its hook? About a third of the drop from the foot is drawn.",
    );
}
