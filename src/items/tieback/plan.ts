import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { arcMeasures, arcRadius } from "../common/board/arcs.ts";
import { finestStep } from "../common/finestStep.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import type { Notes } from "../common/notes.ts";
import { type EdgeWelt, edgeWelt, weltWorking } from "../common/welt/edgeWelt.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { TiebackFields } from "./schema.ts";

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
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const shape = fields.shape ?? "shaped";
  const shaped = shape === "shaped";
  const length = fields.length ?? context.length("length");
  if (!fields.length)
    notes.questions.push(
      `How far is it round the curtain where it is held? ${p(length)} is assumed until it is measured with a tape.`,
    );
  if (context.window)
    notes.diagnostics.push(
      diagnostic(
        context.place(["at"]),
        "tieback-without-curtains",
        `It is said at which window this tie-back is, not which curtains it holds, so it is drawn by itself in the middle of ${context.window.name}.`,
        {
          severity: "warning",
          actual: context.window.name,
          expected: "the curtains that it holds",
          hint: "Write at: { on: … } with the curtains’ name, for example at: { on: curtains-garden-window }.",
        },
      ),
    );
  const depth = fields.depth ?? context.length("depth");
  const endDepth = shaped ? (fields["end-depth"] ?? context.length("end-depth")) : depth;
  const sag = shaped ? (fields.sag ?? context.length("sag")) : Length.zero;
  for (const key of ["end-depth", "sag"] as const) {
    if (fields[key] === undefined || shaped) continue;
    notes.diagnostics.push(
      diagnostic(
        context.place([key]),
        "tieback-is-straight",
        `${key} says nothing of a straight tie-back.`,
        {
          severity: "warning",
          hint: "Take the line out, or write shape: shaped.",
        },
      ),
    );
  }
  const lowerRise = sag.plus(depth).minus(endDepth);
  if (shaped && (lowerRise.isNegative() || lowerRise.times(2).isMoreThan(length))) {
    const deep = lowerRise.isNegative();
    notes.diagnostics.push(
      diagnostic(
        context.place(deep ? ["end-depth"] : fields.sag ? ["sag"] : []),
        "tieback-impossible",
        deep
          ? `At its ends the tie-back is ${p(endDepth)} deep, more than its sag and its depth in the middle together.`
          : `A tie-back ${p(length)} long cannot hang ${p(lowerRise)} in its middle.`,
        {
          actual: p(deep ? endDepth : lowerRise),
          expected: deep ? `${p(sag.plus(depth))} or less` : `${p(length.dividedBy(2))} or less`,
          hint: "Look at its length, depth, end-depth and sag.",
        },
      ),
    );
    return null;
  }
  const cloth = context.cloth(fields.cloth);
  if (!cloth) return null;
  const seam = context.length("seam");
  const height = sag.plus(depth);
  const cutWidth = length.plus(seam.times(2));
  const cutHeight = height.plus(seam.times(2));
  notes.working.push({
    what: "Front and back, cut",
    sum: `${p(length)} by ${shaped ? `${p(sag)} sag + ${p(depth)} depth` : p(depth)}, + 2 × ${p(seam)} seams each way`,
    result: printSize([cutWidth, cutHeight], units),
    rounded: null,
  });
  for (const [key, id] of [
    ["cloth", fields.cloth],
    ["back", fields.back ?? fields.cloth],
  ] as const) {
    const facts = context.cloth(id);
    if (facts?.usableWidth && cutWidth.isMoreThan(facts.usableWidth)) {
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
      return null;
    }
  }
  const wanted = fields.motif !== "as-it-falls" && hasMotif(cloth);
  const motifCentred = wanted && centredPlace(cloth, cutWidth, cutHeight).fits;
  if (wanted && !motifCentred && cloth.repeat?.across)
    notes.questions.push(
      `No motif of ${cloth.name} can stand in the middle of a piece ${p(cutWidth)} wide: where on the tie-back is the motif wanted?`,
    );
  if (fields.count === undefined)
    notes.questions.push("Is one tie-back enough? A pair of curtains takes two; write count: 2.");
  if (!fields["hook-height"])
    notes.questions.push(
      "How high above the floor is its hook? About a third of the drop from the foot is drawn.",
    );
  const mark = finestStep(units);
  const edge = (rise: Length) =>
    rise.isZero()
      ? { length: length.toMm(), area: 0, radius: null }
      : {
          ...arcMeasures(length.toMm(), rise.toMm()),
          radius: arcRadius(length.toMm(), rise.toMm()),
        };
  const [upper, lower] = [edge(sag), edge(lowerRise)];
  const round = upper.length + lower.length + 2 * endDepth.toMm();
  const perimeter = Length.mm((round - 1e-6).toFixed(6)).upTo(mark);
  const welt = edgeWelt(fields, context, seam, perimeter, 1);
  const mm = (length: number) => p(Length.mm(length.toFixed(6)).upTo(mark));
  if (welt)
    notes.working.push(
      ...weltWorking(
        welt,
        count,
        context,
        `${mm(upper.length)} upper edge + ${mm(lower.length)} lower edge + 2 × ${p(endDepth)} ends, along the curves, up to ${p(mark)}`,
      ),
    );
  return {
    shape,
    length,
    depth,
    endDepth,
    sag,
    height,
    upperRadiusMm: upper.radius,
    lowerRadiusMm: lower.radius,
    cloth,
    seam,
    cutWidth,
    cutHeight,
    motifCentred,
    perimeter,
    lowerRun: Length.mm((lower.length - 1e-6).toFixed(6)).upTo(mark),
    // Between the two arcs: the band of the ends, more what hangs below, less what is cut out above.
    faceAreaMm2: length.toMm() * endDepth.toMm() + lower.area - upper.area,
    welt,
    count,
  };
}
