import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { AlongMatch, ClothFacts, ItemContext, ItemCut, Made } from "../itemKind.ts";
import { newNotes, type Notes } from "../notes.ts";
import { type HandbookCut, handbookCut, selvedgeMatch } from "../selvedgeMatch.ts";
import { type Coverage, coverageOf } from "./coverage.ts";
import { type PlainCut, plainCut } from "./cutLength.ts";
import { layerCuts } from "./faceCuts.ts";
import { type HeadingPlan, type Panel, planHeading } from "./headingPlan.ts";
import { type LayerPlan, planLayer } from "./liningPlan.ts";
import { curtainsMaterials } from "./materials.ts";
import { type Hung, measureCurtains } from "./measure.ts";
import type { CurtainsFields } from "./schema.ts";
import { joinedWidth, leastWidths, widthsText } from "./widths.ts";

/** Every size that the drawing and the sheet of curtains need. */
export interface CurtainsPlan {
  readonly hung: Hung;
  readonly coverage: Coverage;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly join: Length;
  readonly widthsEach: Fraction;
  readonly widthsInAll: Fraction;
  readonly railroaded: boolean;
  readonly panel: Panel;
  readonly heading: HeadingPlan;
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

/** Curtains as they are cut; the plan is null where something essential is not known, and a diagnostic says what. */
export interface CurtainsMade extends Made {
  readonly plan: CurtainsPlan | null;
}

/**
 * Curtains by the workroom's method: coverage, fullness, widths by their joined width, cut length with its repeat, heading, lining.
 * All lengths exact; widths and repeats go up, a track between walls down, each at its own named place.
 */
export function makeCurtains(fields: CurtainsFields, context: ItemContext): CurtainsMade {
  const notes = newNotes();
  const plan = planCurtains(fields, context, notes);
  if (plan === null) return nothing(notes);
  const cuts = cutsOf(fields, plan);
  const inAll = plan.widthsInAll.mul(plan.count);
  const cutsEach = plan.railroaded ? plan.coverage.curtains : plan.widthsInAll.ceil().valueOf();
  return {
    figures: figuresOf(plan),
    cuts,
    materials: curtainsMaterials(fields, plan, context.units),
    working: notes.working,
    handbook: handbookOf(plan),
    makingCounts: { item: new Fraction(plan.count), width: inAll, drop: new Fraction(cutsEach * plan.count) },
    questions: notes.questions,
    cautions: plan.layers.length > 0 ? ["fire", "small-parts", "heavy-hanging"] : ["fire", "small-parts"],
    estimate: null,
    diagnostics: notes.diagnostics,
    plan,
  };
}

function nothing(notes: Notes): CurtainsMade {
  return {
    figures: {},
    cuts: [],
    materials: [],
    working: notes.working,
    handbook: [],
    makingCounts: {},
    questions: notes.questions,
    cautions: ["fire", "small-parts"],
    estimate: null,
    diagnostics: notes.diagnostics,
    plan: null,
  };
}

function planCurtains(fields: CurtainsFields, context: ItemContext, notes: Notes): CurtainsPlan | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const cloth = context.cloth(fields.cloth);
  const hung = measureCurtains(fields, context, notes);
  if (cloth !== null && cloth.usableWidth === null) {
    notes.diagnostics.push(
      diagnostic(context.place(["cloth"]), "cloth-without-width", `${cloth.name} has no width, so the widths of these curtains cannot be counted.`, {
        actual: cloth.id,
        expected: "a usable width",
        hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
      }),
    );
  }
  if (cloth?.usableWidth == null || hung === null) return null;
  const usableWidth = cloth.usableWidth;
  const coverage = coverageOf(fields, hung.pole, context, notes);
  const cut = plainCut(fields, hung.drop, context, notes);
  const join = context.length("join");
  const railroaded = fields.railroad === true;
  const flatEach = coverage.flat.dividedBy(coverage.curtains);
  const halves = coverage.curtains === 2 && fields["half-widths"] !== false;

  let widthsEach: Fraction;
  let joinedEach: Length;
  if (railroaded) {
    if (cut.length.isMoreThan(usableWidth)) {
      notes.diagnostics.push(
        diagnostic(context.place(["railroad"]), "railroad-too-long", `Cut ${p(cut.length)} long, these curtains do not fit across ${cloth.name}, which is ${p(usableWidth)} wide.`, {
          actual: "yes",
          expected: `a cut of ${p(usableWidth)} or less`,
          hint: "Take the railroad line out, or choose a wider cloth.",
        }),
      );
      return null;
    }
    widthsEach = new Fraction(1);
    joinedEach = flatEach;
    notes.working.push({ what: "Length a curtain, cloth run sideways", sum: `${p(coverage.flat)} ÷ ${coverage.curtains}`, result: p(flatEach), rounded: null });
    if (cloth.repeat !== null || cloth.nap) notes.questions.push(`May ${cloth.name} be run sideways, with its pattern and pile turned a quarter?`);
  } else {
    const least = leastWidths(flatEach, usableWidth, join, halves);
    if (least === null) {
      notes.diagnostics.push(
        diagnostic(context.place(["cloth"]), "cloth-narrower-than-joins", `${cloth.name} is ${p(usableWidth)} wide, which two join turnings of ${p(join)} use up.`, {
          actual: p(usableWidth),
          hint: "Look at the width on its card, or at the allowance join.",
        }),
      );
      return null;
    }
    widthsEach = least;
    joinedEach = joinedWidth(least, usableWidth, join);
    const joins = least.ceil().sub(1);
    const joinsText = joins.compare(0) === 0 ? "" : ` − ${joins.toFraction()} ${joins.compare(1) === 0 ? "join" : "joins"} × 2 × ${p(join)}`;
    const inAll = least.mul(coverage.curtains);
    notes.working.push({
      what: "Widths",
      sum: `${p(flatEach)} a curtain; ${widthsText(least)} × ${p(usableWidth)}${joinsText} = ${p(joinedEach)}`,
      result: coverage.curtains === 2 ? `${widthsText(least)} a curtain, ${widthsText(inAll)} in all` : widthsText(least),
      rounded: halves ? "up to the half width" : "up to the whole width",
    });
  }
  const widthsInAll = widthsEach.mul(coverage.curtains);

  const match = railroaded ? { shifts: false, question: null } : selvedgeMatch(cloth);
  if (match.question !== null && widthsEach.compare(1) > 0) notes.questions.push(match.question);
  const repeatUp = cloth.repeat && cloth.repeat.match !== "free" && !railroaded ? cloth.repeat.up : null;
  const cutsEach = widthsInAll.ceil().valueOf();
  const handbook = railroaded
    ? { cutLength: cut.length, repeats: null, total: coverage.flat.times(count) }
    : handbookCut(cut.length, cutsEach * count, repeatUp, match.shifts);
  if (repeatUp && handbook.repeats !== null) {
    notes.working.push({
      what: "Cut length, with its repeat",
      sum: `${p(cut.length)} ÷ ${p(repeatUp)} repeat = ${cut.length.over(repeatUp).valueOf().toFixed(2)}; ${handbook.repeats} × ${p(repeatUp)}`,
      result: p(handbook.cutLength),
      rounded: "up to whole repeats",
    });
  }
  const drops = match.shifts && repeatUp ? Math.floor((cutsEach * count) / 2) : 0;
  notes.working.push({
    what: "By the handbook",
    sum: railroaded
      ? `${count} × ${p(coverage.flat)}`
      : `${cutsEach * count} × ${p(handbook.cutLength)}${drops > 0 && repeatUp ? ` + ${drops} × ${p(repeatUp.dividedBy(2))} for the half-drop` : ""}`,
    result: p(handbook.total),
    rounded: null,
  });

  const flat = joinedEach.minus(coverage.sideHem.times(2));
  const overlapEach = coverage.curtains === 2 ? coverage.overlap.dividedBy(2) : coverage.overlap;
  const finished = coverage.coverage.dividedBy(coverage.curtains);
  const returns = coverage.returnEach.times(coverage.curtains === 2 ? 1 : 2);
  const panel: Panel = { flat, finished, face: finished.minus(returns).minus(overlapEach) };
  const heading = planHeading(fields, panel, context, notes);
  const fullnessReached = flat.over(finished);

  const lowestMotif = fields["lowest-motif"] ?? null;
  if (repeatUp && lowestMotif === null) {
    notes.questions.push("How high above the hem does the middle of the lowest whole motif stand? Level across all widths is all that is known.");
  }
  if (repeatUp && lowestMotif && !lowestMotif.isLessThan(repeatUp)) {
    notes.diagnostics.push(
      diagnostic(context.place(["lowest-motif"]), "lowest-motif-is-not", `At ${p(lowestMotif)} above the hem a whole repeat of ${p(repeatUp)} hangs below this motif, so another one is lower.`, {
        severity: "warning",
        actual: lowestMotif.typed,
        expected: `less than ${p(repeatUp)}`,
        hint: "Take a whole repeat off.",
      }),
    );
  }
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the curtain?`);

  const stack = fields["stack-back"] ?? hung.pole.times(context.ratio("stack"));
  const layers: LayerPlan[] = [];
  for (const surface of ["interlining", "lining"] as const) {
    const id = fields[surface];
    const facts = id ? context.cloth(id) : null;
    if (!facts) continue;
    const layer = planLayer({ surface, cloth: facts, panelFlat: flat, drop: hung.drop, join, halves }, context, notes);
    if (layer) layers.push(layer);
  }
  return {
    hung, coverage, cloth, usableWidth, join, widthsEach, widthsInAll, railroaded, panel, heading, cut, handbook,
    shifts: match.shifts, lowestMotif, fullnessReached, stackEach: stack.dividedBy(coverage.curtains), layers, count,
  };
}

function cutsOf(fields: CurtainsFields, plan: CurtainsPlan): ItemCut[] {
  const { cloth, coverage, cut } = plan;
  const sides: ("left" | "right")[] = coverage.hangs === "pair" ? ["left", "right"] : [coverage.hangs];
  const layers = plan.layers.flatMap((layer) =>
    layerCuts({ ...layer, cloth: layer.cloth.id, sides, count: plan.count, along: () => ({ how: "free" }) }),
  );
  if (plan.railroaded) {
    const flatEach = coverage.flat.dividedBy(coverage.curtains);
    const face = sides.map((side): ItemCut => ({
      piece: sides.length === 1 ? "curtain, run sideways" : `${side} curtain, run sideways`,
      surface: "face",
      cloth: cloth.id,
      // As it lies: the curtain's length across the cloth, its flat width along it.
      width: cut.length,
      height: flatEach,
      count: plan.count,
      mayTurn: false,
      across: { how: "free" },
      along: { how: "free" },
      because: `${cut.because}; cloth run sideways`,
    }));
    return [...face, ...layers];
  }
  const face = layerCuts({
    surface: "face", cloth: cloth.id, widthsEach: plan.widthsEach, usableWidth: plan.usableWidth, cutLength: cut.length,
    sides, count: plan.count, because: cut.because, along: alongOf(fields, plan),
  });
  return [...face, ...layers];
}

/** A motif at its height above the cut's foot, which lies the whole hem allowance below the finished hem. */
function alongOf(fields: CurtainsFields, plan: CurtainsPlan): (odd: 0 | 1) => AlongMatch {
  const { repeat } = plan.cloth;
  if (!repeat || repeat.match === "free") return () => ({ how: "free" });
  const joined = (odd: 0 | 1) => (plan.shifts ? odd : 0);
  const { lowestMotif, cut } = plan;
  if (lowestMotif === null) {
    // Curtains to the floor are level across the room; others with themselves.
    const series = fields.to === "floor" ? "curtains to the floor" : `curtains ${fields.curtains}`;
    return (odd) => ({ how: "level", series, joined: joined(odd) });
  }
  const aboveFoot = lowestMotif.plus(cut.hem).times(cut.lengthening);
  return (odd) => ({ how: "motif-at", aboveFoot, joined: joined(odd) });
}

function handbookOf(plan: CurtainsPlan): { cloth: string; length: Length }[] {
  return [
    { cloth: plan.cloth.id, length: plan.handbook.total },
    ...plan.layers.map((layer) => ({
      cloth: layer.cloth.id,
      length: layer.cutLength.times(layer.widthsEach.mul(plan.coverage.curtains).ceil().mul(plan.count)),
    })),
  ];
}

function figuresOf(plan: CurtainsPlan): Record<string, number> {
  const { coverage, hung, heading, cut, handbook } = plan;
  const figures: Record<string, number> = {
    widths: plan.widthsInAll.valueOf(),
    widthsPerCurtain: plan.widthsEach.valueOf(),
    curtains: coverage.curtains * plan.count,
    poleMm: hung.pole.toMm(),
    coverageMm: coverage.coverage.toMm(),
    flatWidthMm: coverage.flat.toMm(),
    joinedWidthMm: plan.panel.flat.plus(coverage.sideHem.times(2)).times(coverage.curtains).toMm(),
    fullnessReached: plan.fullnessReached.valueOf(),
    finishedDropMm: hung.drop.toMm(),
    plainCutLengthMm: cut.length.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    wastePerCutMm: handbook.cutLength.minus(cut.length).toMm(),
    finishedPanelMm: plan.panel.finished.toMm(),
    flatPanelMm: plan.panel.flat.toMm(),
    facePanelMm: plan.panel.face.toMm(),
    stackMm: plan.stackEach.times(coverage.curtains).toMm(),
    hemAboveFloorMm: hung.hemHeight.toMm(),
    headAboveFloorMm: hung.hemHeight.plus(hung.drop).toMm(),
    poleAboveFloorMm: hung.hemHeight.plus(hung.drop).plus(hung.headBelowPole).toMm(),
  };
  if (handbook.repeats !== null) figures.repeats = handbook.repeats;
  if (heading.heading === "pinch-pleat") {
    Object.assign(figures, {
      pleats: heading.pleats, spaces: heading.spaces, spaceMm: heading.space.toMm(), takeUpMm: heading.takeUp.toMm(),
    });
  }
  if (heading.heading === "eyelet") Object.assign(figures, { eyelets: heading.eyelets, eyeletSpacingMm: heading.spacing.toMm() });
  if (heading.heading === "pencil-pleat") Object.assign(figures, { tapeMm: heading.tape.toMm(), hooks: heading.hooks });
  for (const layer of plan.layers) {
    figures[`${layer.surface}Widths`] = layer.widthsEach.mul(coverage.curtains).valueOf();
    figures[`${layer.surface}CutLengthMm`] = layer.cutLength.toMm();
    figures[`${layer.surface}WidthMm`] = layer.finishedWidth.toMm();
    figures[`${layer.surface}LengthMm`] = layer.finishedLength.toMm();
  }
  return figures;
}
