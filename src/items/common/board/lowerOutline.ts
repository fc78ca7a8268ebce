import { type Point, polyline } from "../../../drawing/paths.ts";
import type { PathData } from "../../../drawing/shape.ts";
import { depthAt, type LowerEdge } from "./lowerEdge.ts";

/** Short straight pieces for each arc: at a tenth of full size none can be told from the arc. */
const PIECES = 32;

/** The lower edge from left to right, `up` millimetres above itself. */
function edgePoints(edge: LowerEdge, width: number, up: number): Point[] {
  const pieces = Math.max(1, edge.arcs * PIECES);
  return Array.from({ length: pieces + 1 }, (_, at): Point => {
    const x = (width * at) / pieces;
    return [x, depthAt(edge, x) - up];
  });
}

/** The front: its straight upper edge and its lower one. */
export function frontOutline(edge: LowerEdge, width: number): PathData {
  return polyline([[width, 0], [0, 0], ...edgePoints(edge, width, 0)], true);
}

/** A line along the lower edge, so far above it: welt, braid, stitching. */
export function alongLowerEdge(edge: LowerEdge, width: number, up: number): PathData {
  return polyline(edgePoints(edge, width, up));
}

/** A band along the lower edge, `wide` millimetres from it upwards. */
export function lowerBand(edge: LowerEdge, width: number, wide: number): PathData {
  return polyline(
    [...edgePoints(edge, width, 0), ...edgePoints(edge, width, wide).reverse()],
    true,
  );
}
