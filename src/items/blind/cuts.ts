import { isPatterned } from "../common/join/centredMotif.ts";
import { acrossCuts } from "../common/join/joinedAcross.ts";
import type { AcrossMatch, AlongMatch, ItemCut } from "../itemKind.ts";
import { layerStrips } from "./layers.ts";
import type { BlindPlan } from "./plan.ts";

/** Every rectangle to be cut for the blinds: face, with its strips where it is joined, interlining, lining. */
export function cutsOf(plan: BlindPlan): ItemCut[] {
  const { cloth, cutWidth, plainCut, strips, top, bottom } = plan;
  const because = plan.hobble
    ? `drop × ${plan.hobble.fullness.toString()} for folds that stay, top and bottom turnings`
    : "drop, top and bottom turnings";
  const repeat = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  // Blinds of one drop show the same part of the pattern at the same height.
  const series = `${plan.hobble ? "hobbled blinds" : "blinds"} ${plan.size.drop.mm.add(top.mm).add(bottom.mm).toFraction()}`;
  const along = (fromMiddle: number): AlongMatch =>
    repeat
      ? { how: "level", series, joined: plan.shifts ? Math.abs(fromMiddle) % 2 : 0 }
      : { how: "free" };
  const across: AcrossMatch = plan.motifCentred
    ? { how: "motif-at", fromLeft: cutWidth.dividedBy(2) }
    : { how: "free" };
  const face = acrossCuts({
    piece: "blind",
    surface: "face",
    cloth: cloth.id,
    strips,
    cutWidth,
    usableWidth: plan.usableWidth,
    height: plainCut,
    count: plan.count,
    across,
    mayTurn: repeat === null && cloth.mayTurn,
    patterned: isPatterned(cloth),
    along,
    because,
  });
  const layers = plan.layers.flatMap((layer): ItemCut[] => {
    const joined = layerStrips(layer, plan.seam);
    const shared = {
      surface: layer.surface,
      cloth: layer.cloth.id,
      height: layer.height,
      count: plan.count,
      mayTurn: false,
      along: { how: "free" } as const,
      because: layer.because,
    };
    if (joined.strip === null)
      return [
        {
          ...shared,
          piece: layer.layer,
          width: layer.width,
          across: { how: "free" },
          mayTurn: layer.cloth.mayTurn,
        },
      ];
    return [
      {
        ...shared,
        piece: `${layer.layer}, left strip`,
        width: joined.strip,
        across: { how: "free" },
      },
      {
        ...shared,
        piece: `${layer.layer}, whole width`,
        width: layer.usableWidth,
        count: plan.count * joined.wholes,
        across: { how: "whole-width" },
      },
      {
        ...shared,
        piece: `${layer.layer}, right strip`,
        width: joined.strip,
        across: { how: "free" },
      },
    ];
  });
  return [...face, ...layers];
}
