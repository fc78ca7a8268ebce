import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { finestStep } from "../../common/finestStep.ts";
import { hasMotif } from "../../common/join/centredMotif.ts";
import { girth } from "../../common/skirt/girth.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { PieceEntry } from "../job.ts";
import type { OttomanFields } from "./schema.ts";

/** Height of the sides: from the legs, or the floor, to the top. */
export function sideHeight(fields: OttomanFields): Length {
  const height = (fields.size as readonly Length[])[2] as Length;
  return fields.legs ? height.minus(fields.legs) : height;
}

/** Edge of the top, which the welt runs along. */
export function topEdge(fields: OttomanFields): Length {
  const [width, depth] = fields.size as [Length, Length];
  return fields.shape === "round" ? girth(width) : width.plus(depth).times(2);
}

/**
 * The pieces that follow from the size: a top and its sides, sewn together all round (a seam on each edge), the sides pulled under and
 * tacked at the foot (half the pull). A round one has one side as long as its girth.
 */
export function ottomanEntries(fields: OttomanFields, context: ItemContext): PieceEntry[] {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const [width, depth] = fields.size as [Length, Length];
  const seam = context.length("seam");
  const foot = context.length("pull").dividedBy(2);
  const high = sideHeight(fields);
  const two = seam.times(2);
  const all = { width: two, length: two, words: `2 × ${p(seam)} seams each way` };
  const side = {
    width: two,
    length: seam.plus(foot),
    ends: { foot, head: seam },
    words: `2 × ${p(seam)} seams across, ${p(seam)} seam + ${p(foot)} pull along`,
  };
  const centred = fields.centred ?? (hasMotif(context.cloth(fields.cloth)) && !fields.railroad);
  const at = { keyPath: [], sizeKey: "size" } as const;
  const step = finestStep(units);
  if (fields.shape === "round")
    return [
      { piece: "top", size: [width, width], centred, added: all, ...at },
      // Up, so that the side never falls short of the top.
      { piece: "side", size: [girth(width).upTo(step), high], count: 1, added: side, ...at },
    ];
  return [
    { piece: "top", size: [width, depth], centred, added: all, ...at },
    { piece: "front", size: [width, high], added: side, ...at },
    { piece: "side", size: [depth, high], added: side, ...at },
    { piece: "back", size: [width, high], added: side, ...at },
  ];
}
