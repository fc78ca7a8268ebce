import type { CurtainsPlan } from "./plan.ts";

/** The machine figures of curtains, lengths in millimetres; `cutLengthMm` is one cut with its repeat. */
export function figuresOf(plan: CurtainsPlan, isOnTrack = false): Record<string, number> {
  const { coverage, hung, heading, cut, handbook } = plan;
  const figures: Record<string, number> = {
    widths: plan.widthsInAll.valueOf(),
    widthsPerCurtain: plan.widthsEach.valueOf(),
    curtains: coverage.curtains * plan.count,
    poleMm: hung.pole.toMm(),
    coverageMm: coverage.coverage.toMm(),
    flatWidthMm: coverage.flat.toMm(),
    joinedWidthMm: plan.panel.flat
      .plus(plan.trimmed)
      .plus(coverage.sideHem.times(2))
      .times(coverage.curtains)
      .toMm(),
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
  // A track has no middle that anyone measures to: its own height is told as that.
  if (isOnTrack) figures.trackAboveFloorMm = figures.poleAboveFloorMm as number;
  if (handbook.repeats !== null) figures.repeats = handbook.repeats;
  if (heading.heading === "pinch-pleat") {
    Object.assign(figures, {
      pleats: heading.pleats,
      spaces: heading.spaces,
      spaceMm: heading.space.toMm(),
      takeUpMm: heading.takeUp.toMm(),
    });
  }
  if (heading.heading === "goblet") {
    Object.assign(figures, {
      pleats: heading.pleats,
      spaceMm: heading.space.toMm(),
      leftOverMm: heading.left.toMm(),
      takeUpMm: heading.takeUp.toMm(),
    });
  }
  if (heading.heading === "tab") {
    Object.assign(figures, {
      tabs: heading.tabs,
      tabSpacingMm: heading.spacing.toMm(),
      tabCutWidthMm: heading.stripWidth.toMm(),
      tabCutLengthMm: heading.stripLength.toMm(),
    });
  }
  if (heading.heading === "slot")
    Object.assign(figures, { slotMm: heading.pocket.toMm(), frillMm: heading.frill.toMm() });
  if (heading.heading === "s-fold")
    Object.assign(figures, { carriers: heading.carriers, tapeMm: heading.tape.toMm() });
  if (heading.heading === "eyelet")
    Object.assign(figures, { eyelets: heading.eyelets, eyeletSpacingMm: heading.spacing.toMm() });
  if (heading.heading === "pencil-pleat")
    Object.assign(figures, { tapeMm: heading.tape.toMm(), hooks: heading.hooks });
  for (const layer of plan.layers) {
    figures[`${layer.layer}Widths`] = layer.widthsEach.mul(coverage.curtains).valueOf();
    figures[`${layer.layer}CutLengthMm`] = layer.cutLength.toMm();
    figures[`${layer.layer}WidthMm`] = layer.finishedWidth.toMm();
    figures[`${layer.layer}LengthMm`] = layer.finishedLength.toMm();
  }
  return figures;
}
