import { line, rect, roundedRect } from "../../drawing/paths.ts";
import type { Fill, Shape } from "../../drawing/shape.ts";
import type { Opening, Wall } from "../../room/walls.ts";
import type { RoomData } from "../projectData.ts";

const SKIRTING = 140;
const CORNICE = 90;
/** A sash's frame, and a glazing bar, as usual (common practice, no source). */
const STILE = 42;
const BAR = 22;

/** What woodwork is painted with, where the room's file says so; else white. */
function woodworkOf(room: RoomData): Fill {
  for (const item of room.items) {
    const fields = item.record.fields as { on?: unknown; colour?: string };
    if (item.record.kind === "paint" && fields.on === "woodwork" && fields.colour)
      return { hex: fields.colour };
  }
  return { tone: "white" };
}

/** How far the casing of an opening stands out beside it and above it, millimetres. */
export const CASING_MM: Readonly<Record<Opening["what"], number>> = { window: 60, door: 80 };

/** What is drawn about an opening that stands on its lower edge, its casing at the left, above and at the right. */
function casing(o: Opening, y: number, wood: Fill): Shape {
  const mm = CASING_MM[o.what];
  const [x, w, h] = [o.fromLeft.toMm(), o.width.toMm(), o.height.toMm()];
  return { shape: "path", d: rect(x - mm, y - mm, w + 2 * mm, h + mm), fill: wood, pen: "edge" };
}

/** A window as it is seen from inside: frame, two sashes with bars, pale glass, a stroke of light on two panes. */
function windowShapes(o: Opening, wallHeight: number, wood: Fill): Shape[] {
  const x = o.fromLeft.toMm();
  const w = o.width.toMm();
  const h = o.height.toMm();
  const y = wallHeight - o.foot.toMm() - h;
  const frame = 55;
  const gx = x + frame;
  const gy = y + frame;
  const gw = w - 2 * frame;
  const gh = h - 2 * frame;
  const columns = gw > 1500 ? 4 : gw > 800 ? 3 : 2;
  const rows = gh > 1300 ? 2 : 1;
  const bar = (x1: number, y1: number, wide: number, high: number): Shape => ({
    shape: "path",
    d: rect(x1, y1, wide, high),
    fill: wood,
    pen: "dimension",
  });
  const middle = gy + gh / 2;
  // Two sashes, each a frame of stiles and rails about its panes, the upper one behind.
  const sash = (top: number, high: number): Shape[] => {
    const [px, py, pw, ph] = [gx + STILE, top + STILE, gw - 2 * STILE, high - 2 * STILE];
    return [
      { shape: "path", d: rect(gx, top, gw, high), fill: wood, pen: "edge" },
      { shape: "path", d: rect(px, py, pw, ph), fill: { tone: "glass" }, pen: "dimension" },
      { shape: "path", d: rect(px, py, pw, 12), fill: { tone: "shadow" }, pen: null },
      { shape: "path", d: rect(px, py + 12, 9, ph - 12), fill: { tone: "shadow" }, pen: null },
      ...Array.from({ length: columns - 1 }, (_, i) =>
        bar(px + (pw * (i + 1)) / columns - BAR / 2, py, BAR, ph),
      ),
      ...Array.from({ length: rows - 1 }, (_, i) =>
        bar(px, py + (ph * (i + 1)) / rows - BAR / 2, pw, BAR),
      ),
    ];
  };
  const bars: Shape[] = [
    ...sash(gy, gh / 2 + STILE / 2),
    ...sash(middle - STILE / 2, gh / 2 + STILE / 2),
  ];
  const pane = gw / columns;
  const glint = (cx: number, cy: number): Shape => ({
    shape: "path",
    d: `${line(cx - 60, cy + 70, cx + 40, cy - 50)}${line(cx - 10, cy + 80, cx + 90, cy - 40)}`,
    fill: null,
    pen: "fold",
  });
  return [
    casing(o, y, wood),
    {
      shape: "path",
      d: rect(x, y, w, h),
      fill: wood,
      pen: "edge",
    },
    ...bars,
    glint(gx + pane * 0.5, gy + gh * (rows > 1 ? 0.14 : 0.25)),
    glint(gx + pane * (columns - 0.55), gy + gh * (rows > 1 ? 0.64 : 0.76)),
    {
      shape: "path",
      d: rect(x - 90, y + h, w + 180, 32),
      fill: wood,
      pen: "edge",
    },
    {
      shape: "path",
      d: rect(x - 78, y + h + 32, w + 156, 14),
      fill: { tone: "shadow" },
      pen: null,
    },
  ];
}

/** A panelled door with its casing. */
function doorShapes(o: Opening, wallHeight: number, wood: Fill): Shape[] {
  const x = o.fromLeft.toMm();
  const w = o.width.toMm();
  const h = o.height.toMm();
  const y = wallHeight - h;
  const panels: Shape[] = [];
  const pw = (w - 300) / 2;
  for (const [top, high] of [
    [120, h * 0.2],
    [h * 0.2 + 220, h * 0.32],
    [h * 0.52 + 330, h * 0.48 - 480],
  ] as const) {
    for (const px of [x + 110, x + 190 + pw])
      if (high > 60 && pw > 60)
        panels.push(
          {
            shape: "shading",
            d: rect(px, y + top, pw, high),
            light: 0.05,
            dark: 0.07,
            direction: "down",
          },
          { shape: "path", d: rect(px, y + top, pw, high), fill: null, pen: "dimension" },
          {
            shape: "path",
            d: rect(px + 18, y + top + 18, pw - 36, high - 36),
            fill: null,
            pen: "fold",
          },
        );
  }
  return [
    casing(o, y, wood),
    {
      shape: "path",
      d: rect(x, y, w, h),
      fill: wood,
      pen: "edge",
    },
    ...panels,
    {
      shape: "path",
      d: roundedRect(x + w - 92, y + h * 0.5, 44, 44, 22),
      fill: { tone: "metal" },
      pen: "dimension",
    },
  ];
}

/** A paper's borders along one face, drawn on the paper. */
function borderShapes(
  item: string,
  room: RoomData,
  x: number,
  width: number,
  height: number,
): Shape[] {
  const made = room.items.find((i) => i.record.id === item)?.made as {
    readonly borders?: readonly {
      readonly surface: string;
      readonly foot: { toMm(): number };
      readonly width: { toMm(): number };
    }[];
  };
  return (made?.borders ?? []).map((border) => {
    const high = border.width.toMm();
    const y = height - border.foot.toMm() - high;
    return {
      shape: "path",
      d: rect(x, y, width, high),
      fill: { surface: `${item}/${border.surface}`, x, y: y + high / 2 },
      pen: "dimension",
    };
  });
}

/** The wall itself: its colour, the paper on it, cornice, skirting, chimney breast, windows and doors. */
export function wallShapes(wall: Wall, room: RoomData, height: number): Shape[] {
  const length = wall.length.toMm();
  const wood = woodworkOf(room);
  const shapes: Shape[] = [
    {
      shape: "path",
      d: rect(0, 0, length, height),
      fill: { surface: "wall", x: 0, y: 0 },
      pen: null,
    },
  ];
  const breast = wall.breast;
  for (const cover of room.plan.covers) {
    if (cover.what !== "paper") continue;
    for (const face of cover.faces) {
      if (face.wall !== wall.name || face.part === "breast-left" || face.part === "breast-right")
        continue;
      const x = face.fromLeft.toMm();
      shapes.push({
        shape: "path",
        d: rect(
          x,
          height - face.foot.toMm() - face.height.toMm(),
          face.width.toMm(),
          face.height.toMm(),
        ),
        fill: {
          surface: `${cover.item}/paper`,
          x: x + face.width.toMm() / 2,
          y: height / 2,
        },
        pen: null,
      });
      shapes.push(...borderShapes(cover.item, room, x, face.width.toMm(), height));
    }
  }
  if (breast) {
    const x = breast.fromLeft.toMm();
    const w = breast.width.toMm();
    shapes.push({
      shape: "path",
      d: `${line(x, 0, x, height)}${line(x + w, 0, x + w, height)}`,
      fill: null,
      pen: "outline",
    });
    shapes.push({
      shape: "shading",
      d: rect(x + w, 0, 60, height),
      light: 0,
      dark: 0.14,
      direction: "across",
    });
  }
  shapes.push(
    {
      shape: "path",
      d: rect(0, 0, length, CORNICE),
      fill: { tone: "white" },
      pen: "dimension",
    },
    {
      shape: "path",
      d: line(0, CORNICE * 0.6, length, CORNICE * 0.6),
      fill: null,
      pen: "dimension",
    },
  );
  shapes.push(
    {
      shape: "path",
      d: rect(0, height - SKIRTING, length, SKIRTING),
      fill: wood,
      pen: "dimension",
    },
    {
      shape: "path",
      d: line(0, height - SKIRTING + 28, length, height - SKIRTING + 28),
      fill: null,
      pen: "fold",
    },
  );
  for (const o of wall.openings)
    shapes.push(
      ...(o.what === "window" ? windowShapes(o, height, wood) : doorShapes(o, height, wood)),
    );
  return shapes;
}

/** The cut line of floor, walls and ceiling, drawn last. */
export function wallFrame(length: number, height: number): Shape {
  return {
    shape: "path",
    d: `M0 0H${length}V${height}H0Z${line(-150, height, length + 150, height)}`,
    fill: null,
    pen: "cut",
  };
}
