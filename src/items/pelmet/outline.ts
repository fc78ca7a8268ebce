import { figure } from "../../drawing/paths.ts";
import type { PathData } from "../../drawing/shape.ts";
import type { LowerEdge } from "./lowerEdge.ts";

/** The lower edge alone, from the right end to the left one, `up` millimetres above itself; as commands that go on from a point. */
function edgeCommands(edge: LowerEdge, width: number, up: number): string {
  const shortest = edge.shortest.toMm() - up;
  const deepest = edge.deepest.toMm() - up;
  const f = figure;
  if (edge.radiusMm === null) return `L${f(width)} ${f(shortest)}L0 ${f(shortest)}`;
  const r = f(edge.radiusMm);
  if (edge.line === "arched") {
    return `L${f(width)} ${f(deepest)}A${r} ${r} 0 0 0 0 ${f(deepest)}`;
  }
  const chord = width / edge.arcs;
  const arcs = Array.from(
    { length: edge.arcs },
    (_, at) => `A${r} ${r} 0 0 1 ${f(width - chord * (at + 1))} ${f(shortest)}`,
  );
  return `L${f(width)} ${f(shortest)}${arcs.join("")}`;
}

/** The front: its straight upper edge and its lower one. */
export function frontOutline(edge: LowerEdge, width: number): PathData {
  return `M0 0H${figure(width)}${edgeCommands(edge, width, 0)}Z`;
}

/** A line along the lower edge, so far above it: welt, braid, stitching. */
export function alongLowerEdge(edge: LowerEdge, width: number, up: number): PathData {
  return edgeCommands(edge, width, up).replace(/^L/, "M");
}

/** A band along the lower edge, `wide` millimetres from it upwards. */
export function lowerBand(edge: LowerEdge, width: number, wide: number): PathData {
  const back = mirrored(edge, width, wide);
  return `${edgeCommands(edge, width, 0).replace(/^L/, "M")}${back}Z`;
}

/** The same line from left to right. */
function mirrored(edge: LowerEdge, width: number, up: number): string {
  const shortest = edge.shortest.toMm() - up;
  const deepest = edge.deepest.toMm() - up;
  const f = figure;
  if (edge.radiusMm === null) return `L0 ${f(shortest)}L${f(width)} ${f(shortest)}`;
  const r = f(edge.radiusMm);
  if (edge.line === "arched") return `L0 ${f(deepest)}A${r} ${r} 0 0 1 ${f(width)} ${f(deepest)}`;
  const chord = width / edge.arcs;
  const arcs = Array.from(
    { length: edge.arcs },
    (_, at) => `A${r} ${r} 0 0 0 ${f(chord * (at + 1))} ${f(shortest)}`,
  );
  return `L0 ${f(shortest)}${arcs.join("")}`;
}
