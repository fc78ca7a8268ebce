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
  // Folds of a round one turn away at its sides, and look narrower there.
  const edgeAt = (at: number): number => (width * (1 - Math.cos((Math.PI * at) / waves))) / 2;
  let hem = `L${f(width)} ${f(height)}`;
  if (waves > 0) {
    const dip = Math.min(26, drop * 0.07);
    for (let at = waves; at > 0; at -= 1) {
      const [x, before] = [edgeAt(at), edgeAt(at - 1)];
      hem += `Q${f((x + before) / 2)} ${f(height - dip * (at % 2 === 0 ? 2 : 1.2))} ${f(before)} ${f(height)}`;
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
  for (let at = 0; at < waves; at += 1) {
    const [x1, x2] = [edgeAt(at), edgeAt(at + 1)];
    // A fold is a cone: narrow at the table's edge, wide at the hem, light at its left and dark at its right.
    const inward = (x: number): number => width / 2 + (x - width / 2) * 0.9;
    const [a, b, y] = [inward(x1), inward(x2), crown + drop * 0.1];
    const cone = `M${f((a + b) / 2)} ${f(y)}L${f(x1)} ${f(height)}H${f(x2)}Z`;
    shapes.push({ shape: "shading", d: cone, light: 0.1, dark: 0.2, direction: "across" });
    if (at > 0)
      shapes.push(
        stroke(
          `M${f(a)} ${f(crown + drop * (at % 2 === 0 ? 0.3 : 0.16))}L${f(x1)} ${f(height - 3)}`,
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
