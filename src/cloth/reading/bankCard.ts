import { type Homography, homographyOf, mapPoint, type Point } from "./homography.ts";

/** A bank card, ISO/IEC 7810 ID-1. */
export const CARD_LONG_MM = 85.6;
export const CARD_SHORT_MM = 53.98;

/** Why four corners are no bank card that can be measured by. */
export type CardFault = "outside" | "crossed" | "small" | "steep";

/** The plane that a card lies on, seen through a camera. */
export interface CardPlane {
  /** From millimetres on the plane to pixels of the photograph and back; x runs as the photograph's own does at its middle. */
  readonly toPhoto: Homography;
  readonly toPlane: Homography;
  /** The four corners of the photograph on the plane, clockwise from the top left. */
  readonly corners: readonly [Point, Point, Point, Point];
  /** What the photograph shows along its middle, across and down, in millimetres. */
  readonly acrossMm: number;
  readonly downMm: number;
}

/** Shortest side of the card, in pixels, from which a scale can be taken. */
const LEAST_CARD_PX = 24;
/** A plane that is so many times as large at one side of the picture as at the other was photographed from too low. */
const MOST_SCALE_RATIO = 3;

/**
 * The plane on which a bank card lies, from the card's four corners in pixels, in any order. The longer pair of opposite sides is
 * taken for the long one, which holds for any camera that looks down rather than along the table.
 */
export function cardPlane(
  corners: readonly Point[],
  width: number,
  height: number,
): { readonly plane: CardPlane } | { readonly fault: CardFault } {
  if (corners.some(([x, y]) => x < 0 || y < 0 || x > width || y > height))
    return { fault: "outside" };
  const ring = clockwise(corners);
  if (!isConvex(ring)) return { fault: "crossed" };
  const sides = ring.map((p, i) => distance(p, ring[(i + 1) % 4] as Point));
  const [a, b, c, d] = sides as [number, number, number, number];
  if (Math.min(a, b, c, d) < LEAST_CARD_PX) return { fault: "small" };
  const [w, h] = a + c >= b + d ? [CARD_LONG_MM, CARD_SHORT_MM] : [CARD_SHORT_MM, CARD_LONG_MM];
  const card: Point[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const back = homographyOf(ring, card);
  const middle: Point = [width / 2, height / 2];
  if (!back) return { fault: "crossed" };
  const turn = directionAt(back, middle);
  if (turn === null) return { fault: "steep" };
  const turned = card.map((p) => rotate(p, -turn));
  const toPlane = homographyOf(ring, turned);
  const toPhoto = homographyOf(turned, ring);
  if (!toPlane || !toPhoto) return { fault: "crossed" };
  const of = (p: Point) => mapPoint(toPlane, p);
  const ends = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
    [0, height / 2],
    [width, height / 2],
    [width / 2, 0],
    [width / 2, height],
  ].map((p) => of(p as unknown as Point));
  if (ends.some((p) => p === null)) return { fault: "steep" };
  const [tl, tr, br, bl, left, right, top, foot] = ends as Point[] as [
    Point,
    Point,
    Point,
    Point,
    Point,
    Point,
    Point,
    Point,
  ];
  const lengths = [
    [distance(tl, tr), distance(bl, br)],
    [distance(tl, bl), distance(tr, br)],
  ] as const;
  for (const [one, other] of lengths) {
    if (Math.max(one / other, other / one) > MOST_SCALE_RATIO) return { fault: "steep" };
  }
  return {
    plane: {
      toPhoto,
      toPlane,
      corners: [tl, tr, br, bl],
      acrossMm: distance(left, right),
      downMm: distance(top, foot),
    },
  };
}

function distance([ax, ay]: Point, [bx, by]: Point): number {
  return Math.hypot(ax - bx, ay - by);
}

/** The corners in order around their middle, clockwise as one looks at them (y points down). */
function clockwise(corners: readonly Point[]): Point[] {
  const cx = corners.reduce((sum, [x]) => sum + x / 4, 0);
  const cy = corners.reduce((sum, [, y]) => sum + y / 4, 0);
  return [...corners].sort(
    ([ax, ay], [bx, by]) => Math.atan2(ay - cy, ax - cx) - Math.atan2(by - cy, bx - cx),
  );
}

function isConvex(ring: readonly Point[]): boolean {
  return ring.every((p, i) => {
    const [bx, by] = ring[(i + 1) % 4] as Point;
    const [cx, cy] = ring[(i + 2) % 4] as Point;
    // Three corners that nearly lie on one line are no corner of a card.
    const turn = (bx - p[0]) * (cy - by) - (by - p[1]) * (cx - bx);
    return turn > 0.05 * distance(p, [bx, by]) * distance([bx, by], [cx, cy]);
  });
}

/** Direction on the plane, in radians, of the photograph's own x at a place. */
function directionAt(h: Homography, [x, y]: Point): number | null {
  const one = mapPoint(h, [x - 0.5, y]);
  const other = mapPoint(h, [x + 0.5, y]);
  return one && other ? Math.atan2(other[1] - one[1], other[0] - one[0]) : null;
}

function rotate([x, y]: Point, turn: number): Point {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [x * c - y * s, x * s + y * c];
}
