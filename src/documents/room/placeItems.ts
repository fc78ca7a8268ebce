import { roundedRect } from "../../drawing/paths.ts";
import { renameSurfaces } from "../../drawing/renameSurfaces.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ItemData, RoomData } from "../projectData.ts";

/** An item where it stands before a wall, in millimetres from the wall's upper left corner as seen from inside. */
export interface StandingItem {
  readonly item: ItemData;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** How far its front stands from the wall: the nearer to the eye, the later it is drawn. */
  readonly front: number;
  readonly shapes: readonly Shape[];
}

function elevationOf(item: ItemData, context: DrawingContext): Drawing | null {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  return entry ? entry.elevation(item.record.fields as never, item.made as never, context) : null;
}

function named(item: ItemData, drawing: Drawing): Shape[] {
  return renameSurfaces(drawing.shapes, (surface) => `${item.record.id}/${surface}`);
}

/** Height of the seat of what cushions lie on, from the floor. */
function seatHeight(host: StandingItem): number {
  const own = (host.item.record.fields as { "seat-height"?: { toMm(): number } })["seat-height"];
  return own ? own.toMm() + 60 : Math.min(460, host.height * 0.5);
}

/** Cushions of a host, side by side on its seat; a long flat one lies as a pad on which the others stand. */
function cushionsOn(host: StandingItem, items: readonly ItemData[], context: DrawingContext, wallHeight: number): StandingItem[] {
  const pieces = items.flatMap((item) => {
    const drawing = elevationOf(item, context);
    const count = (item.record.fields as { count?: number }).count ?? 1;
    return drawing ? Array.from({ length: count }, (_, n) => ({ item, drawing, n })) : [];
  });
  const isPad = (d: Drawing): boolean => d.widthMm > host.width * 0.55 && d.widthMm > d.heightMm * 2;
  const pads = pieces.filter((p) => isPad(p.drawing));
  const standing = pieces.filter((p) => !isPad(p.drawing)).sort((a, b) => b.drawing.heightMm - a.drawing.heightMm || a.n - b.n);
  const seat = seatHeight(host);
  const out: StandingItem[] = pads.map(({ item, drawing }) => {
    const height = 90;
    const width = Math.min(drawing.widthMm, host.width - 60);
    const x = host.x + (host.width - width) / 2;
    const y = wallHeight - seat - height;
    const d = roundedRect(x, y, width, height, 22);
    const fill = { surface: `${item.record.id}/face`, x: x + width / 2, y: y + height / 2 };
    return { item, x, y, width, height, front: host.front + 1, shapes: [{ shape: "path", d, fill, pen: "outline" }, { shape: "shading", d, light: 0.16, dark: 0.22, direction: "down" }] satisfies Shape[] };
  });
  const base = seat + (pads.length > 0 ? 90 : 0);
  // Larger ones to the outsides, as they are set: left, right, then inwards.
  const order: typeof standing = [];
  for (const [at, piece] of standing.entries()) {
    if (at % 2 === 0) order.splice(Math.ceil(order.length / 2), 0, piece);
    else order.splice(Math.floor(order.length / 2), 0, piece);
  }
  const widths = order.map((p) => p.drawing.widthMm * 0.96);
  const room = host.width - 160;
  const sum = widths.reduce((a, b) => a + b, 0);
  const step = sum > room && order.length > 1 ? (room - (widths.at(-1) ?? 0)) / (sum - (widths.at(-1) ?? 0)) : 1;
  const spread = order.length > 1 && sum < room ? (room - sum) / (order.length - 1) : 0;
  let x = host.x + 80 + (order.length === 1 ? (room - sum) / 2 : 0);
  for (const [at, { item, drawing, n }] of order.entries()) {
    const tilt = order.length === 1 ? 0 : at === 0 ? -5 : at === order.length - 1 ? 5 : at % 2 === 0 ? -3 : 3;
    const y = wallHeight - base - drawing.heightMm;
    out.push({
      item,
      x,
      y,
      width: drawing.widthMm,
      height: drawing.heightMm,
      front: host.front + 2 + (n % 2) + (at % 2) * 0.5,
      // Tilted about the middle of its foot.
      shapes: [{ shape: "group", x: x + drawing.widthMm / 2, y: y + drawing.heightMm, turnDeg: tilt, children: [{ shape: "group", x: -drawing.widthMm / 2, y: -drawing.heightMm, children: named(item, drawing) }] }],
    });
    x += (widths[at] as number) * step + Math.min(spread, 260);
  }
  return out;
}

/** Everything that stands before or hangs on one wall, far ones first, cushions on their hosts. */
export function itemsAtWall(room: RoomData, wall: string, wallHeight: number, context: DrawingContext): StandingItem[] {
  const out: StandingItem[] = [];
  for (const item of room.items) {
    const box = room.plan.placements.get(item.record.id)?.wallBox;
    if (!box || box.wall !== wall) continue;
    const drawing = elevationOf(item, context);
    if (!drawing) continue;
    const width = box.width.toMm();
    // A drawing may be wider than its box (a pole's finials); its middle stands on the box's middle, its foot on the box's foot.
    const x = box.left.toMm() + width / 2 - drawing.widthMm / 2;
    const y = wallHeight - box.foot.toMm() - drawing.heightMm;
    out.push({ item, x, y, width: drawing.widthMm, height: drawing.heightMm, front: box.front.toMm(), shapes: [{ shape: "group", children: named(item, drawing), x, y }] });
  }
  const lying = out.flatMap((host) => {
    const on = room.items.filter((i) => room.plan.placements.get(i.record.id)?.on === host.item.record.id && i.kind.kind === "cushion");
    return on.length > 0 ? cushionsOn(host, on, context, wallHeight) : [];
  });
  return [...out, ...lying].sort((a, b) => a.front - b.front || a.x - b.x);
}
