import { figure } from "../../drawing/paths.ts";
import type { PathData } from "../../drawing/shape.ts";
import type { TiebackPlan } from "./plan.ts";

/** Its outline laid flat, from the upper left corner of the rectangle round it; `out` millimetres beyond its edge for the cut line. */
export function flatOutline(plan: TiebackPlan, out = 0): PathData {
  const f = figure;
  const wide = plan.length.toMm();
  const end = plan.endDepth.toMm();
  const [left, right, top] = [-out, wide + out, -out];
  const foot = end + out;
  // Parallel to its arcs: the upper edge is hollow, so going outwards makes its radius smaller; the lower one grows.
  const upper = plan.upperRadiusMm === null ? null : Math.max(plan.upperRadiusMm - out, wide / 2);
  const lower = plan.lowerRadiusMm === null ? null : plan.lowerRadiusMm + out;
  const over =
    upper === null ? `H${f(right)}` : `A${f(upper)} ${f(upper)} 0 0 0 ${f(right)} ${f(top)}`;
  const under =
    lower === null ? `H${f(left)}` : `A${f(lower)} ${f(lower)} 0 0 1 ${f(left)} ${f(foot)}`;
  return `M${f(left)} ${f(top)}${over}L${f(right)} ${f(foot)}${under}Z`;
}

/**
 * As it is seen round a curtain drawn in to `width`: a smile from its hook on one side to the other, its middle the lowest. Foot and
 * head are returned too, from the level of its ends.
 */
export function wornOutline(
  plan: TiebackPlan,
  width: number,
): { readonly d: PathData; readonly height: number; readonly hang: number } {
  const f = figure;
  const depth = Math.min(plan.depth.toMm(), width * 0.8);
  const end = Math.min(plan.endDepth.toMm(), depth);
  const hang = Math.max(width * 0.16, Math.min(plan.sag.toMm() * 0.6, width * 0.4));
  const mid = width / 2;
  const d = `M0 0Q${f(mid)} ${f(2 * hang)} ${f(width)} 0L${f(width)} ${f(end)}Q${f(mid)} ${f(2 * (hang + depth) - end)} 0 ${f(end)}Z`;
  return { d, height: hang + depth, hang };
}
