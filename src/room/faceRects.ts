import type { FaceRect } from "./faces.ts";
import { type Rect, rectOf } from "./rectangles.ts";

/** Faces that lie in one plane have one key: the wall and its breast's face are looked at together, each side by itself. */
export function faceKey(face: FaceRect): string {
  return `${face.wall}/${face.part}`;
}

export function faceRect(face: FaceRect): Rect {
  return rectOf(face.fromLeft, face.foot, face.width, face.height);
}
