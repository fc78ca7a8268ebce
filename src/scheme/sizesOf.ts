import type { FurnishedRoom } from "../room/furnishRoom.ts";
import { floorRect } from "../room/rectangles.ts";
import type { SizeFacts } from "./schemeInput.ts";

function shapeOf(room: FurnishedRoom, at: number): string | null {
  const made = room.items[at]?.made as { facts?: { shape?: string } | null } | undefined;
  return made?.facts?.shape ?? null;
}

/** How far each rug reaches beyond the table that stands on it, and at what height the middle of each picture hangs. */
export function sizesOf(room: FurnishedRoom, titleOf: (item: string) => string): SizeFacts {
  const { placements } = room.plan;
  const boxes = room.items.map((item, at) => ({
    id: item.record.id,
    shape: shapeOf(room, at),
    placed: placements.get(item.record.id),
  }));
  const rugs = boxes.flatMap((rug) => {
    const under = rug.placed?.floorBox;
    if (rug.shape !== "rug" || !under) return [];
    const r = floorRect(under);
    return boxes.flatMap((table) => {
      const box = table.placed?.floorBox;
      if (table.shape !== "table" || !box) return [];
      const t = floorRect(box);
      const inside = t.left < r.right && t.right > r.left && t.low < r.high && t.high > r.low;
      // A table at a wall whose edge alone stands on a rug is not a table on a rug.
      const most = Math.min(t.right, r.right) - Math.max(t.left, r.left);
      const deep = Math.min(t.high, r.high) - Math.max(t.low, r.low);
      const share = (most * deep) / ((t.right - t.left) * (t.high - t.low) || 1);
      if (!inside || share < 0.5) return [];
      return [
        {
          rug: rug.id,
          rugTitle: titleOf(rug.id),
          table: table.id,
          tableTitle: titleOf(table.id),
          leastMarginMm: Math.min(
            t.left - r.left,
            r.right - t.right,
            t.low - r.low,
            r.high - t.high,
          ),
        },
      ];
    });
  });
  const pictures = boxes.flatMap((picture) => {
    const box = picture.placed?.wallBox;
    return picture.shape === "picture" && box
      ? [
          {
            item: picture.id,
            title: titleOf(picture.id),
            centreMm: box.foot.toMm() + box.height.toMm() / 2,
          },
        ]
      : [];
  });
  return { rugs, pictures };
}
