import type { PathData } from "../../../drawing/shape.ts";
import type { ChairShape } from "./shapeOfChair.ts";

const f = (n: number) => n.toFixed(1);

/** Back seen from the front: shoulders rounded, top slightly bowed. */
export function backOutline(c: ChairShape): PathData {
  const [l, r, foot] = [c.backInset, c.width - c.backInset, c.legTop];
  const s = Math.min(80, (r - l) * 0.16);
  return `M${f(l)} ${f(foot)}V${f(s * 1.1)}C${f(l)} ${f(s * 0.35)} ${f(l + s * 0.35)} ${f(6)} ${f(l + s)} ${f(5)}C${f(l + (r - l) * 0.35)} ${f(-1)} ${f(l + (r - l) * 0.65)} ${f(-1)} ${f(r - s)} ${f(5)}C${f(r - s * 0.35)} ${f(6)} ${f(r)} ${f(s * 0.35)} ${f(r)} ${f(s * 1.1)}V${f(foot)}Z`;
}

/** The left wing from the front: from the shoulder down to the arm, its front edge swelling forward. */
export function wingOutline(c: ChairShape): PathData {
  const l = c.backInset * 0.55;
  const w = c.arm * 0.62;
  const foot = c.armTop + c.roll * 0.9;
  return `M${f(l)} ${f(foot)}C${f(l - w * 0.12)} ${f(foot * 0.7)} ${f(l)} ${f(foot * 0.3)} ${f(l + w * 0.1)} ${f(foot * 0.12)}C${f(l + w * 0.2)} ${f(8)} ${f(l + w * 0.55)} ${f(2)} ${f(l + w * 0.85)} ${f(12)}C${f(l + w * 1.25)} ${f(foot * 0.18)} ${f(l + w * 1.3)} ${f(foot * 0.5)} ${f(l + w * 1.1)} ${f(foot * 0.78)}C${f(l + w)} ${f(foot * 0.9)} ${f(l + w * 0.85)} ${f(foot)} ${f(l + w * 0.8)} ${f(foot)}Z`;
}

/** The left arm from the front: a scroll on a narrower body. */
export function armOutline(c: ChairShape): PathData {
  const R = c.roll;
  const cy = c.armTop + R;
  const [inner, outer] = [2 * R - R * 0.16, R * 0.2];
  return `M${f(outer)} ${f(c.legTop)}V${f(cy + R * 1.25)}C${f(outer)} ${f(cy + R * 0.85)} ${f(0)} ${f(cy + R * 0.6)} ${f(0)} ${f(cy)}A${f(R)} ${f(R)} 0 0 1 ${f(2 * R)} ${f(cy)}C${f(2 * R)} ${f(cy + R * 0.6)} ${f(inner)} ${f(cy + R * 0.85)} ${f(inner)} ${f(cy + R * 1.25)}V${f(c.legTop)}Z`;
}

/** Where the seat lies between the arms, from the front. */
export function seatSpan(c: ChairShape): readonly [left: number, right: number] {
  const l = 2 * c.roll - c.roll * 0.16 - 4;
  return [l, c.width - l];
}

/** The seat between the arms, parted into its cushions. */
export function seatParts(c: ChairShape): (readonly [left: number, right: number])[] {
  const [l, r] = seatSpan(c);
  const each = (r - l) / c.seats;
  return Array.from({ length: c.seats }, (_, at) => [l + at * each, l + (at + 1) * each] as const);
}

/** One cushion from the front: a full top edge, soft corners. */
export function cushionOutline(l: number, r: number, top: number, foot: number): PathData {
  const s = Math.min(45, (foot - top) * 0.36);
  return `M${f(l + s * 0.5)} ${f(foot)}C${f(l + 4)} ${f(foot)} ${f(l)} ${f(foot - s * 0.4)} ${f(l)} ${f(foot - s)}V${f(top + s)}C${f(l)} ${f(top + s * 0.35)} ${f(l + s * 0.35)} ${f(top + 5)} ${f(l + s)} ${f(top + 4)}C${f(l + (r - l) * 0.3)} ${f(top - 4)} ${f(l + (r - l) * 0.7)} ${f(top - 4)} ${f(r - s)} ${f(top + 4)}C${f(r - s * 0.35)} ${f(top + 5)} ${f(r)} ${f(top + s * 0.35)} ${f(r)} ${f(top + s)}V${f(foot - s)}C${f(r)} ${f(foot - s * 0.4)} ${f(r - 4)} ${f(foot)} ${f(r - s * 0.5)} ${f(foot)}Z`;
}

/** From its left side, back to the right: raked back, arm with a rolled front, seat. */
export function sideBack(c: ChairShape): PathData {
  const d = c.depth;
  const rake = Math.min(d * 0.12, 110);
  const thick = Math.min(d * 0.2, 170);
  const front = d - thick - rake * 0.1;
  return `M${f(d - rake * 0.55)} ${f(c.legTop)}C${f(d - rake * 0.5)} ${f(c.legTop * 0.7)} ${f(d)} ${f(c.height * 0.35)} ${f(d)} ${f(44)}C${f(d)} ${f(6)} ${f(d - thick * 0.4)} ${f(-3)} ${f(d - thick * 0.75)} ${f(12)}C${f(front - 8)} ${f(40)} ${f(front - 4)} ${f(c.armTop * 0.6)} ${f(front - thick * 0.25)} ${f(c.armTop + 10)}L${f(front - thick * 0.3)} ${f(c.legTop)}Z`;
}

export function sideArm(c: ChairShape): PathData {
  const d = c.depth;
  const top = c.armTop;
  const r = Math.min(c.roll, 60);
  const back = d - Math.min(d * 0.16, 130);
  return `M${f(22)} ${f(c.legTop)}V${f(top + r * 2.1)}C${f(22)} ${f(top + r * 1.7)} ${f(6)} ${f(top + r * 1.5)} ${f(6)} ${f(top + r)}C${f(6)} ${f(top + r * 0.3)} ${f(r * 0.5)} ${f(top)} ${f(r * 1.2)} ${f(top)}C${f(d * 0.4)} ${f(top + 6)} ${f(d * 0.6)} ${f(top + 2)} ${f(back)} ${f(top - 10)}L${f(back + 14)} ${f(c.legTop)}Z`;
}

export function sideWing(c: ChairShape): PathData {
  const d = c.depth;
  const x = d * 0.52;
  const back = d - Math.min(d * 0.1, 60);
  const foot = c.armTop + 2;
  return `M${f(x + 20)} ${f(foot)}C${f(x - 46)} ${f(foot * 0.72)} ${f(x - 10)} ${f(foot * 0.3)} ${f(x + 60)} ${f(foot * 0.14)}C${f(x + 100)} ${f(8)} ${f(back - 60)} ${f(10)} ${f(back)} ${f(30)}L${f(back - 34)} ${f(foot - 4)}Z`;
}
