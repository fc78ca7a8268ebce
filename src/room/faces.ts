import type { WallRun } from "../items/itemKind.ts";
import { Length } from "../units/length.ts";
import type { Wall } from "./walls.ts";

/** The flat parts of a wall: the wall itself, and a breast's face and two sides. */
export type FacePart = "wall" | "breast" | "breast-left" | "breast-right";

/**
 * A rectangle on one face. On the wall and the breast's face `fromLeft` counts along the wall; on a breast's side it counts from the
 * side's own left edge.
 */
export interface FaceRect {
  readonly wall: string;
  readonly part: FacePart;
  readonly fromLeft: Length;
  readonly width: Length;
  readonly foot: Length;
  readonly height: Length;
}

/** All faces of a wall up to `height`, from left to right as a paperhanger meets them. */
export function facesOf(wall: Wall, height: Length): FaceRect[] {
  const face = (part: FacePart, fromLeft: Length, width: Length): FaceRect => ({
    wall: wall.name,
    part,
    fromLeft,
    width,
    foot: Length.zero,
    height,
  });
  const { breast } = wall;
  if (!breast) return [face("wall", Length.zero, wall.length)];
  const right = breast.fromLeft.plus(breast.width);
  return [
    face("wall", Length.zero, breast.fromLeft),
    face("breast-left", Length.zero, breast.depth),
    face("breast", breast.fromLeft, breast.width),
    face("breast-right", Length.zero, breast.depth),
    face("wall", right, wall.length.minus(right)),
  ].filter((each) => !each.width.isZero());
}

/** The part of a face between two points along the wall, or null. Breast sides have no such part. */
export function clipFace(face: FaceRect, from: Length, to: Length): FaceRect | null {
  if (face.part === "breast-left" || face.part === "breast-right") return null;
  const left = Length.max(face.fromLeft, from);
  const right = Length.min(face.fromLeft.plus(face.width), to);
  return right.isMoreThan(left) ? { ...face, fromLeft: left, width: right.minus(left) } : null;
}

/**
 * What is left of a face when covers are taken off it: columns between the covers' edges, above what covers them. Covers start at
 * the floor.
 */
export function lessCovers(face: FaceRect, covers: readonly FaceRect[]): FaceRect[] {
  const mine = covers.filter((cover) => cover.wall === face.wall && cover.part === face.part);
  const left = face.fromLeft;
  const right = face.fromLeft.plus(face.width);
  const edges = [left, right, ...mine.flatMap((c) => [c.fromLeft, c.fromLeft.plus(c.width)])]
    .filter((edge) => edge.compare(left) >= 0 && edge.compare(right) <= 0)
    .sort((a, b) => a.compare(b))
    .filter((edge, n, all) => n === 0 || !edge.equals(all[n - 1] as Length));
  const parts: FaceRect[] = [];
  edges.slice(1).forEach((to, n) => {
    const from = edges[n] as Length;
    const tops = mine
      .filter((c) => c.fromLeft.compare(from) <= 0 && c.fromLeft.plus(c.width).compare(to) >= 0)
      .map((c) => c.foot.plus(c.height));
    const top = Length.max(face.foot, ...tops);
    const height = face.foot.plus(face.height).minus(top);
    if (height.compare(Length.zero) <= 0) return;
    const before = parts.at(-1);
    if (before?.foot.equals(top) && before.fromLeft.plus(before.width).equals(from)) {
      parts[parts.length - 1] = { ...before, width: before.width.plus(to.minus(from)) };
    } else {
      parts.push({ ...face, fromLeft: from, width: to.minus(from), foot: top, height });
    }
  });
  return parts;
}

/** A face rectangle as a run of wall, its openings cut to it. Openings never lie on a breast's sides. */
export function runOf(face: FaceRect, wall: Wall): WallRun {
  const side = face.part === "breast-left" || face.part === "breast-right";
  const right = face.fromLeft.plus(face.width);
  const top = face.foot.plus(face.height);
  const openings = (side ? [] : wall.openings).flatMap((opening) => {
    const from = Length.max(opening.fromLeft, face.fromLeft);
    const to = Length.min(opening.fromLeft.plus(opening.width), right);
    const foot = Length.max(opening.foot, face.foot);
    const head = Length.min(opening.foot.plus(opening.height), top);
    if (!to.isMoreThan(from) || !head.isMoreThan(foot)) return [];
    return [
      {
        what: opening.what,
        fromLeft: from,
        width: to.minus(from),
        foot: foot.minus(face.foot),
        height: head.minus(foot),
      },
    ];
  });
  return {
    wall: face.wall,
    fromLeft: side && wall.breast ? sideAt(face, wall) : face.fromLeft,
    width: face.width,
    height: face.height,
    openings,
  };
}

/** Where along the wall a breast's side stands. */
function sideAt(face: FaceRect, wall: Wall): Length {
  const breast = wall.breast as NonNullable<Wall["breast"]>;
  return face.part === "breast-left" ? breast.fromLeft : breast.fromLeft.plus(breast.width);
}
