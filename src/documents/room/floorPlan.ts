import { polyline, rect } from "../../drawing/paths.ts";
import type { Shape } from "../../drawing/shape.ts";
import type { CurtainsMade } from "../../items/curtains/pieces.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { DIRECTION, type Wall } from "../../room/walls.ts";
import type { RoomData } from "../projectData.ts";
import { roomOfCopy } from "./copyOf.ts";
import { filledParts } from "./filledParts.ts";
import { standingPlaces } from "./freePieces.ts";
import { hungInPlan } from "./hungInPlan.ts";
import { lyingInPlan, planOf, standingInPlan } from "./lyingInPlan.ts";
import type { Box, PlanPiece } from "./planNames.ts";

const THICK = 110;
const TURNS = { south: 0, west: 90, north: 180, east: 270 } as const;

/** A point on a wall, `along` it from its left end and `out` of the room, in millimetres from the room's north-west corner. */
function onWall(wall: Wall, along: number, out: number): readonly [number, number] {
  const d = DIRECTION[wall.side];
  return [
    wall.start.x.toMm() + d.x * along + d.y * out,
    wall.start.y.toMm() + d.y * along - d.x * out,
  ];
}

/** One wall in section with its openings left white. */
function wallSection(wall: Wall): Shape[] {
  const length = wall.length.toMm();
  const openings = [...wall.openings].sort((a, b) => a.fromLeft.compare(b.fromLeft));
  const solid: [number, number][] = [];
  let at = -THICK;
  for (const o of openings) {
    solid.push([at, o.fromLeft.toMm()]);
    at = o.fromLeft.toMm() + o.width.toMm();
  }
  solid.push([at, length + THICK]);
  const shapes: Shape[] = solid.map(([from, to]) => ({
    shape: "path",
    d: polyline(
      [
        onWall(wall, from, 0),
        onWall(wall, to, 0),
        onWall(wall, to, THICK),
        onWall(wall, from, THICK),
      ],
      true,
    ),
    fill: { hex: "#23282e" },
    pen: "fold",
  }));
  for (const o of openings) {
    const from = o.fromLeft.toMm();
    const to = from + o.width.toMm();
    if (o.what === "window") {
      for (const out of [THICK * 0.35, THICK * 0.65])
        shapes.push({
          shape: "path",
          d: polyline([onWall(wall, from, out), onWall(wall, to, out)]),
          fill: null,
          pen: "dimension",
        });
      shapes.push({
        shape: "path",
        d: polyline(
          [
            onWall(wall, from, 0),
            onWall(wall, to, 0),
            onWall(wall, to, THICK),
            onWall(wall, from, THICK),
          ],
          true,
        ),
        fill: null,
        pen: "dimension",
      });
    } else {
      const width = to - from;
      const swing = Array.from({ length: 13 }, (_, i) => {
        const a = (i / 12) * (Math.PI / 2);
        return onWall(wall, from + width * Math.cos(a), -width * Math.sin(a));
      });
      shapes.push(
        { shape: "path", d: polyline(swing), fill: null, pen: "dimension" },
        {
          shape: "path",
          d: polyline([onWall(wall, from, 0), onWall(wall, from, -width)]),
          fill: null,
          pen: "edge",
        },
      );
    }
  }
  const b = wall.breast;
  if (b) {
    const from = b.fromLeft.toMm();
    const to = from + b.width.toMm();
    shapes.push({
      shape: "path",
      d: polyline(
        [
          onWall(wall, from, 0),
          onWall(wall, from, -b.depth.toMm()),
          onWall(wall, to, -b.depth.toMm()),
          onWall(wall, to, 0),
        ],
        true,
      ),
      fill: { hex: "#23282e" },
      pen: "fold",
    });
  }
  return shapes;
}

/** Where curtains stack; a pair at both ends. */
function hangsOf(item: RoomData["items"][number]): "pair" | "left" | "right" {
  return (item.made as CurtainsMade).plan?.coverage.hangs ?? "pair";
}

/** Curtains seen from above: a small wave before the window. */
function curtainWave(
  wall: Wall,
  from: number,
  width: number,
  hangs: "pair" | "left" | "right",
): Shape[] {
  const part = width * 0.2;
  const starts = { left: [from], right: [from + width - part], pair: [from, from + width - part] };
  return starts[hangs].map((start): Shape => {
    const steps = 40;
    const points = Array.from({ length: steps + 1 }, (_, i) =>
      onWall(wall, start + (part * i) / steps, -70 + 32 * Math.sin((i / steps) * Math.PI * 10)),
    );
    return { shape: "path", d: polyline(points), fill: null, pen: "edge" };
  });
}

/** A board over a window: overhead, so that its outline is dashed. */
function boardAbove(wall: Wall, from: number, width: number, out: number): Shape {
  const corners = [
    [from, 0],
    [from, -out],
    [from + width, -out],
    [from + width, 0],
  ] as const;
  const d = polyline(corners.map(([along, off]) => onWall(wall, along, off)));
  return { shape: "path", d, fill: null, pen: "hidden" };
}

/** The room from above, in millimetres from its north-west corner. */
export interface FloorPlan {
  readonly shapes: Shape[];
  readonly width: number;
  readonly height: number;
  /** What stands on the floor, with the rectangle that it takes up. */
  readonly pieces: readonly PlanPiece[];
  /** Chimney breasts. */
  readonly solid: readonly Box[];
  /** True where chairs are drawn about their table though the place of only one is written. */
  readonly spread: boolean;
  /** True where nothing stands, hangs or lies in it: bare walls say nothing of where a cloth goes. */
  readonly isBare: boolean;
}

/** The rectangle about some points. */
function boxOf(points: readonly (readonly [number, number])[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    foot: Math.max(...ys),
  };
}

function breastsOf(walls: readonly Wall[]): Box[] {
  return walls.flatMap((wall) => {
    const b = wall.breast;
    if (!b) return [];
    const [from, to] = [b.fromLeft.toMm(), b.fromLeft.toMm() + b.width.toMm()];
    return [boxOf([onWall(wall, from, 0), onWall(wall, to, -b.depth.toMm())])];
  });
}

/**
 * The room from above: walls in section, openings, and every piece where it stands, filled with its cloth's average. Millimetres from
 * the room's north-west corner. Null without walls.
 */
export function floorPlanShapes(room: RoomData, context: DrawingContext): FloorPlan | null {
  const walls = room.plan.walls;
  if (!walls) return null;
  const xs = walls.flatMap((w) => [onWall(w, 0, 0)[0], onWall(w, w.length.toMm(), 0)[0]]);
  const ys = walls.flatMap((w) => [onWall(w, 0, 0)[1], onWall(w, w.length.toMm(), 0)[1]]);
  const width = Math.max(...xs);
  const height = Math.max(...ys);
  const shapes: Shape[] = [];
  // Lamps on tables have no names here, and nothing is written over them.
  const small: Box[] = [];
  const boxed = room.items.flatMap((item) => {
    const flat = room.plan.placements.get(item.record.id)?.floorBox?.flat ?? false;
    const { places, how } = standingPlaces(room, item);
    return places.map(({ rect: box, facing }, at) => {
      const own = roomOfCopy(room, item, at, places.length);
      return { item, box, facing, flat, at, how, own };
    });
  });
  boxed.sort((a, b) => Number(b.flat) - Number(a.flat));
  for (const { item, box, facing, own } of boxed) {
    const drawing = planOf(item, context);
    const [x, y, w, h] = [box.left, box.low, box.right - box.left, box.high - box.low];
    if (!drawing) {
      shapes.push({
        shape: "path",
        d: rect(x, y, w, h),
        fill: { tone: "white" },
        pen: "edge",
      });
      continue;
    }
    const turn = facing
      ? TURNS[facing]
      : drawing.widthMm > drawing.heightMm !== w > h && Math.abs(w - h) > 50
        ? 90
        : 0;
    const [width, depth] = [drawing.widthMm, drawing.heightMm];
    // What lies on it is turned with it.
    const size = { width, depth };
    const placed = (children: readonly Shape[]): Shape => ({
      shape: "group",
      x: x + w / 2,
      y: y + h / 2,
      turnDeg: turn,
      children: [{ shape: "group", x: -width / 2, y: -depth / 2, children }],
    });
    const lying = lyingInPlan(own, item, size, context);
    shapes.push(placed([...drawing.shapes, ...lying, ...hungInPlan(own, item, size, context)]));
    for (const each of standingInPlan(own, item, size, context)) {
      const stands = placed([each]);
      shapes.push(stands);
      small.push(...filledParts([stands]));
    }
  }
  for (const item of room.items) {
    const box =
      item.kind.kind === "curtains" ? room.plan.placements.get(item.record.id)?.wallBox : null;
    const wall = box ? walls.find((w) => w.name === box.wall) : undefined;
    if (box && wall)
      shapes.push(...curtainWave(wall, box.left.toMm(), box.width.toMm(), hangsOf(item)));
    const out = item.made.figures.projectionMm;
    const over = out ? room.plan.placements.get(item.record.id)?.wallBox : null;
    const behind = over ? walls.find((w) => w.name === over.wall) : undefined;
    if (out && over && behind)
      shapes.push(boardAbove(behind, over.left.toMm(), over.width.toMm(), out));
  }
  const isBare = shapes.length === 0;
  for (const wall of walls) shapes.push(...wallSection(wall));
  const pieces = boxed.map(({ item, box, flat, at }): PlanPiece => {
    const object = (item.record.fields as { object?: string }).object ?? null;
    const { left, right, low: top, high: foot } = box;
    return { title: item.record.title, object, flat, isCopy: at > 0, left, top, right, foot };
  });
  for (const { left, top, right, foot } of small)
    pieces.push({ title: "", object: null, flat: false, isCopy: true, left, top, right, foot });
  const spread = boxed.some(({ how }) => how === "round");
  return { shapes, width, height, pieces, solid: breastsOf(walls), spread, isBare };
}
