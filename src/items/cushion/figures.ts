import type { EdgeWelt } from "../common/welt/edgeWelt.ts";
import type { CushionCover } from "./cover.ts";
import type { CushionInsert } from "./insert.ts";

/** The machine figures of cushions, lengths in millimetres. */
export function cushionFigures(
  { sizes, back, boxing }: CushionCover,
  welt: EdgeWelt | null,
  insert: CushionInsert,
): Record<string, number> {
  const { cut, count, bolster } = sizes;
  return {
    faces: count,
    facesMm: cut[0].toMm(),
    faceWidthMm: cut[0].toMm(),
    faceHeightMm: cut[1].toMm(),
    backs: bolster ? 0 : back.split ? count * 2 : count,
    ...(bolster
      ? { ends: count * 2, endMm: bolster.end.toMm(), wrapMm: bolster.wrapExact.toMm() }
      : {}),
    ...(boxing ? { boxingMm: boxing.total.toMm(), boxingWidthMm: boxing.width.toMm() } : {}),
    backWidthMm: back.cut[0].toMm(),
    backHeightMm: back.cut[1].toMm(),
    weltMm: welt?.total.toMm() ?? 0,
    weltReserveWidthMm: welt?.reserve.width.toMm() ?? 0,
    weltReserveHeightMm: welt?.reserve.height.toMm() ?? 0,
    insertWidthMm: insert.size[0].toMm(),
    insertHeightMm: insert.size[1].toMm(),
  };
}
