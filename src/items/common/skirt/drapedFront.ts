import { line } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { face, stroke } from "../clothFace.ts";

/** How far a cloth stands off at a corner, of its drop, and at most. */
const FLARE = { ofDrop: 0.16, mostMm: 70 };

export interface DrapedFront {
  /** Of what it hangs over: width seen from the front. */
  readonly span: number;
  readonly drop: number;
  readonly surface: string;
  /** The cloth's middle above the edge over which it falls, in millimetres of cloth: where its main motif stands. */
  readonly middleAbove: number;
  /** Round from above: the hem waves, and folds stand all along it. */
  readonly round: boolean;
  /** How thick it lies on its top. */
  readonly crown: number;
  /** Joins, from the middle. */
  readonly joins: readonly number[];
  readonly title: string;
  readonly description: string;
}

/**
 * A cloth over a bed or table from the front: the thickness of its top, the drop, and at each corner the soft cone of folds in which
 * the two drops meet; a round one hangs in folds all along its hem. Its pattern falls on from the top.
 */
export function drapedFront(ask: DrapedFront): Drawing {
  const { span, drop, crown } = ask;
  const flare = Math.min(FLARE.mostMm, drop * FLARE.ofDrop);
  const width = span + 2 * flare;
  const height = crown + drop;
  const f = (n: number) => n.toFixed(1);
  const [left, right] = [flare, flare + span];
  const r = Math.min(40, crown + drop * 0.1);
  const waves = ask.round ? Math.max(4, Math.round(span / 170)) : 0;
  let hem = `L${f(width)} ${f(height)}`;
  if (waves > 0) {
    const step = width / waves;
    const dip = Math.min(16, drop * 0.06);
    for (let at = waves; at > 0; at -= 1) {
      const x = at * step;
      hem += `Q${f(x - step * 0.5)} ${f(height - dip * (at % 2 === 0 ? 2 : 1.2))} ${f(x - step)} ${f(height)}`;
    }
  } else hem += `Q${f(width / 2)} ${f(height - Math.min(6, drop * 0.02))} 0 ${f(height)}`;
  const d = `M${f(left + r)} 0H${f(right - r)}Q${f(right)} 0 ${f(right)} ${f(r)}C${f(right + 2)} ${f(crown + drop * 0.4)} ${f(width)} ${f(height * 0.7)} ${f(width)} ${f(height)}${hem}C0 ${f(height * 0.7)} ${f(left - 2)} ${f(crown + drop * 0.4)} ${f(left)} ${f(r)}Q${f(left)} 0 ${f(left + r)} 0Z`;
  const shapes: Shape[] = [
    ...face(
      d,
      { surface: ask.surface, x: width / 2, y: crown - ask.middleAbove },
      { light: 0.14, dark: 0.2, across: { light: 0.04, dark: 0.1 } },
    ),
    stroke(
      `M${f(left + 8)} ${f(crown)}Q${f(width / 2)} ${f(crown + 5)} ${f(right - 8)} ${f(crown)}`,
      "fold",
    ),
  ];
  for (const [x, way] of [
    [left, -1],
    [right, 1],
  ] as const) {
    for (const [share, deep] of [
      [0.35, 0.95],
      [-0.25, 0.8],
      [-0.9, 0.55],
    ] as const)
      shapes.push(
        stroke(
          `M${f(x - way * 4)} ${f(crown + drop * 0.06)}Q${f(x + way * flare * share * 0.4)} ${f(crown + drop * 0.4)} ${f(x + way * flare * share)} ${f(crown + drop * deep)}`,
          "fold",
        ),
      );
  }
  for (let at = 1; at < waves; at += 1) {
    const x = (at * width) / waves;
    shapes.push(
      stroke(
        `M${f(width / 2 + (x - width / 2) * 0.92)} ${f(crown + drop * 0.12)}L${f(x)} ${f(height - 4)}`,
        "fold",
      ),
    );
  }
  for (const join of ask.joins)
    if (Math.abs(join) < span / 2 - 10)
      shapes.push(
        stroke(line(width / 2 + join, crown * 0.5, width / 2 + join, height - 3), "fold"),
      );
  if (drop > 90 && !ask.round)
    shapes.push(
      stroke(
        `M${f(8)} ${f(height - 24)}Q${f(width / 2)} ${f(height - 30)} ${f(width - 8)} ${f(height - 24)}`,
        "fold",
      ),
    );
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions: [],
    title: ask.title,
    description: ask.description,
  };
}
