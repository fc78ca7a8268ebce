import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import type { AlongMatch, ItemCut } from "../itemKind.ts";
import { layerCuts } from "./faceCuts.ts";
import type { LayerPlan } from "./liningPlan.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** Every rectangle to be cut for the curtains: face, interlining, lining. */
export function cutsOf(fields: CurtainsFields, plan: CurtainsPlan): ItemCut[] {
  const { cloth, coverage, cut } = plan;
  const sides: ("left" | "right")[] =
    coverage.hangs === "pair" ? ["left", "right"] : [coverage.hangs];
  const layers = plan.layers.flatMap((layer) =>
    layerCuts({
      ...layer,
      cloth: layer.cloth.id,
      sides,
      count: plan.count,
      along: layerAlong(fields, layer),
    }),
  );
  if (plan.railroaded) {
    const flatEach = coverage.flat.dividedBy(coverage.curtains);
    const face = sides.map(
      (side): ItemCut => ({
        piece: sides.length === 1 ? "curtain, run sideways" : `${side} curtain, run sideways`,
        surface: "face",
        cloth: cloth.id,
        // As it lies: the curtain's length across the cloth, its flat width along it.
        width: cut.length,
        height: flatEach,
        count: plan.count,
        mayTurn: false,
        // The selvedge is the top of every curtain, or two of a pair would not be level.
        across: hasMotif(cloth) ? { how: "selvedge", side: "left" } : { how: "free" },
        along: { how: "free" },
        because: `${cut.because}; cloth run sideways`,
      }),
    );
    return [...face, ...tabCuts(plan), ...layers];
  }
  const face = layerCuts({
    surface: "face",
    cloth: cloth.id,
    widthsEach: plan.widthsEach,
    usableWidth: plan.usableWidth,
    cutLength: cut.length,
    sides,
    count: plan.count,
    because: cut.because,
    along: alongOf(fields, plan),
  });
  return [...face, ...tabCuts(plan), ...layers];
}

/** The strips of a tab heading, cut along the warp; on plain cloth they may lie either way. */
function tabCuts(plan: CurtainsPlan): ItemCut[] {
  const { heading, cloth, coverage, count } = plan;
  if (heading.heading !== "tab") return [];
  return [
    {
      piece: "tab",
      surface: "face",
      cloth: cloth.id,
      width: heading.stripWidth,
      height: heading.stripLength,
      count: heading.tabs * coverage.curtains * count,
      mayTurn: cloth.mayTurn,
      ...tabPlace(plan),
      because: "over the pole and back, folded double along its length, with its turnings",
    },
  ];
}

/** Tabs that are all alike have the motif in the middle of what is seen: half-way across the strip, half-way up its front. */
function tabPlace(plan: CurtainsPlan): Pick<ItemCut, "across" | "along"> {
  const { heading, cloth } = plan;
  if (heading.heading !== "tab" || !plan.tabsAlike)
    return { across: { how: "free" }, along: { how: "free" } };
  const { across, along } = centredPlace(cloth, heading.stripWidth, heading.stripLength);
  if (along.how !== "motif-at") return { across, along };
  const aboveFoot = plan.seam.plus(plan.hung.headBelowPole.dividedBy(2));
  return { across, along: { ...along, aboveFoot } };
}

/** A patterned lining is level across the widths, and with the face where both repeat alike. */
function layerAlong(fields: CurtainsFields, layer: LayerPlan): (odd: 0 | 1) => AlongMatch {
  const { repeat } = layer.cloth;
  if (!repeat || repeat.match === "free") return () => ({ how: "free" });
  const joined = (odd: 0 | 1) => (layer.shifts ? odd : 0);
  const aboveFoot = layer.motifAboveFoot;
  if (aboveFoot) return (odd) => ({ how: "motif-at", aboveFoot, joined: joined(odd) });
  const series = `${layer.layer} of ${fields.curtains}`;
  return (odd) => ({ how: "level", series, joined: joined(odd) });
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
