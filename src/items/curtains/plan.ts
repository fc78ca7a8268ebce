import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { clothWidth } from "../common/join/clothWidth.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, HangsOn, ItemContext } from "../itemKind.ts";
import { type Coverage, coverageOf } from "./coverage.ts";
import { curtainWidths, type FaceCloth } from "./curtainWidths.ts";
import { type PlainCut, plainCut } from "./cutLength.ts";
import { faceHandbook } from "./faceHandbook.ts";
import { fullerQuestion } from "./fullerQuestion.ts";
import { type HeadingPlan, planHeading } from "./headingPlan.ts";
import { type LayerInput, type LayerPlan, planLayer } from "./liningPlan.ts";
import { type Hung, measureCurtains } from "./measure.ts";
import type { Panel } from "./panel.ts";
import { hemmed, panelOf } from "./panelOf.ts";
import type { CurtainsFields } from "./schema.ts";
import { areTabsAlike, tabRows } from "./tabs.ts";

/** Every size that the drawing and the sheet of curtains need. */
export interface CurtainsPlan {
  readonly hung: Hung;
  readonly hangsOn: HangsOn | null;
  readonly coverage: Coverage;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  /** Turning on each piece of a join of widths, and of any other seam. */
  readonly join: Length;
  readonly seam: Length;
  readonly widthsEach: Fraction;
  readonly widthsInAll: Fraction;
  readonly railroaded: boolean;
  readonly panel: Panel;
  readonly heading: HeadingPlan;
  /** Cut off at the return side of each curtain after joining: an s-fold is exactly as wide as its carriers ask. */
  readonly trimmed: Length;
  /** Tabs with the same part of the pattern in their middle. */
  readonly tabsAlike: boolean;
  readonly cut: PlainCut;
  readonly handbook: HandbookCut;
  /** True where neighbouring widths hang half a repeat lower. */
  readonly shifts: boolean;
  readonly lowestMotif: Length | null;
  readonly fullnessReached: Fraction;
  /** One curtain drawn back. */
  readonly stackEach: Length;
  readonly layers: readonly LayerPlan[];
  readonly count: number;
}

/** Plans curtains from their fields; null, with a diagnostic, where something essential is not known. */
export function planCurtains(
  fields: CurtainsFields,
  context: ItemContext,
  notes: Notes,
): CurtainsPlan | null {
  const count = fields.count ?? 1;
  const cloth = context.cloth(fields.cloth);
  const hung = measureCurtains(fields, context, notes);
  const unknown = "the widths of these curtains cannot be counted";
  const usableWidth = clothWidth(cloth, "cloth", unknown, context, notes);
  if (cloth === null || usableWidth === null || hung === null) return null;
  const coverage = coverageOf(fields, hung.pole, context, notes);
  const { curtains } = coverage;
  const cut = plainCut(fields, hung.drop, cloth, context, notes);
  const seam = context.length("join");
  const face: FaceCloth = {
    cloth,
    usableWidth,
    join: fields.railroad === true ? seam : matchedTurning(cloth, seam),
    railroaded: fields.railroad === true,
    halves: curtains === 2 && fields["half-widths"] !== false,
  };
  const widths = curtainWidths(face, coverage, cut.length, context, notes);
  if (widths === null) return null;
  const by = { length: cut.length, widthsEach: widths.each, count };
  const { handbook, shifts, repeatUp } = faceHandbook(face, coverage, by, context, notes);

  const panel = panelOf(coverage, widths.joinedEach, context, notes);
  const fullnessReached = panel.flat.over(panel.finished);
  const full = fullerQuestion(face, coverage, widths.each, fullnessReached, panel.finished);
  if (full) notes.questions.push(full);
  const heading = planHeading(fields, panel, coverage.sFold, context, notes);
  faultOfPleats(fields, context, notes);
  const tabsAlike = areTabsAlike(fields, heading, cloth, context, notes);
  const rows = tabRows(heading, curtains * count, tabsAlike, face, context, notes);

  const lowestMotif = fields["lowest-motif"] ?? null;
  askOfPattern(cloth, repeatUp, lowestMotif, context, notes);
  askOfSide(context, notes);
  if (fields.blackout && coverage.returnEach.isZero() && !context.hangsOn)
    notes.questions.push(
      "These curtains do not return to the wall: light passes at both sides of the blackout. Is that wanted?",
    );
  const stack = fields["stack-back"] ?? hung.pole.times(context.ratio("stack"));
  const layers = layersOf(
    fields,
    {
      panelFlat: panel.flat,
      drop: hung.drop,
      join: seam,
      halves: face.halves,
      curtains,
      count,
      face: { up: repeatUp, lowestMotif },
      atDoor: context.window?.isDoor === true,
    },
    context,
    notes,
  );
  return {
    hung,
    hangsOn: context.hangsOn,
    coverage,
    cloth,
    usableWidth,
    join: face.join,
    seam,
    widthsEach: widths.each,
    widthsInAll: widths.each.mul(curtains),
    railroaded: face.railroaded,
    panel,
    heading,
    tabsAlike,
    trimmed: hemmed(widths.joinedEach, coverage).minus(panel.flat),
    cut,
    handbook: { ...handbook, total: handbook.total.plus(rows) },
    shifts,
    lowestMotif,
    fullnessReached,
    stackEach: stack.dividedBy(curtains),
    layers,
    count,
  };
}

/** Curtains round a bed hang at one of its sides, which decides how they are seen and where they stack. */
function askOfSide({ hangsOn }: ItemContext, notes: Notes): void {
  if (hangsOn && hangsOn.side === null)
    notes.questions.push(
      `At which side of ${hangsOn.title} do these curtains hang? Write side: head, foot, left or right beside on.`,
    );
}

/** Says that a number of pleats is written for a heading that has none to count. */
function faultOfPleats(fields: CurtainsFields, context: ItemContext, notes: Notes): void {
  if (!fields.pleats || fields.heading === "pinch-pleat" || fields.heading === "goblet") return;
  notes.diagnostics.push(
    diagnostic(
      context.place(["pleats"]),
      "pleats-of-no-pleat",
      "A number of pleats is written, but this heading has none that are counted.",
      {
        severity: "warning",
        actual: String(fields.pleats),
        hint: "Take the line out, or write heading: pinch-pleat or goblet.",
      },
    ),
  );
}

/** What is still to be asked of a cloth with a pattern or a pile, and a lowest motif that is not the lowest. */
function askOfPattern(
  cloth: ClothFacts,
  repeatUp: Length | null,
  lowestMotif: Length | null,
  context: ItemContext,
  notes: Notes,
): void {
  const p = (length: Length) => printLength(length, context.units);
  if (repeatUp && lowestMotif === null)
    notes.questions.push(
      "How high above the hem does the middle of the lowest whole motif stand? Level across all widths is all that is known.",
    );
  if (repeatUp && lowestMotif && !lowestMotif.isLessThan(repeatUp))
    notes.diagnostics.push(
      diagnostic(
        context.place(["lowest-motif"]),
        "lowest-motif-is-not",
        `At ${p(lowestMotif)} above the hem a whole repeat of ${p(repeatUp)} hangs below this motif, so another one is lower.`,
        {
          severity: "warning",
          actual: lowestMotif.typed,
          expected: `less than ${p(repeatUp)}`,
          hint: "Take a whole repeat off.",
        },
      ),
    );
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the curtain?`);
}

/** What lies behind the face, from it to the glass. */
function layersOf(
  fields: CurtainsFields,
  behind: Omit<LayerInput, "layer" | "cloth">,
  context: ItemContext,
  notes: Notes,
): LayerPlan[] {
  return (["interlining", "blackout", "lining"] as const).flatMap((layer): LayerPlan[] => {
    const id = fields[layer];
    const cloth = id ? context.cloth(id) : null;
    const plan = cloth && planLayer({ ...behind, layer, cloth }, context, notes);
    return plan ? [plan] : [];
  });
}
