import { rasterise, wrapped } from "../ground/drawn.ts";
import { linear, mixHex } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { type LeafInks, leaf } from "../motifs/leaf.ts";
import { cubic, type Point, placed, shape, smooth } from "../motifs/path.ts";
import type { PetalInks } from "../motifs/petal.ts";
import { type FruitInks, pomegranate } from "../motifs/pomegranate.ts";
import { rosette } from "../motifs/rosette.ts";
import { sideFlower } from "../motifs/sideFlower.ts";
import { spray } from "../motifs/spray.ts";
import { weaveOverPrint } from "../techniques/weaveOverPrint.ts";
import { stove } from "./palettes.ts";

const INCH = 25.4;
const COLUMN = 13.5 * INCH;
const UP = 25.25 * INCH;

const green: LeafInks = {
  pale: stove.fern,
  deep: stove.bottle,
  vein: stove.lichen,
  line: stove.ink,
};
const sage: LeafInks = { pale: stove.lichen, deep: stove.fern, vein: stove.straw, line: stove.ink };
const gold: LeafInks = {
  pale: stove.straw,
  deep: stove.honey,
  vein: stove.cream,
  line: stove.umber,
};
const russet: PetalInks = {
  tip: mixHex(stove.shell, stove.brick, 0.3),
  middle: mixHex(stove.shell, stove.brick, 0.78),
  base: mixHex(stove.brick, stove.russet, 0.35),
  heart: stove.russet,
  line: stove.umber,
};
const madder: PetalInks = {
  tip: stove.brick,
  middle: mixHex(stove.brick, stove.russet, 0.5),
  base: stove.russet,
  heart: stove.umber,
  line: stove.umber,
};
const honey: PetalInks = {
  tip: stove.straw,
  middle: mixHex(stove.straw, stove.honey, 0.6),
  base: stove.honey,
  heart: mixHex(stove.honey, stove.russet, 0.55),
  line: stove.umber,
};
const fruit: FruitInks = {
  skin: stove.brick,
  blush: stove.honey,
  shade: stove.russet,
  line: stove.umber,
  pith: stove.cream,
  seed: stove.russet,
  glint: stove.shell,
};
const calyx = { fill: stove.fern, shade: stove.bottle, line: stove.ink };

const stem = (y: number): Point => [COLUMN * 0.5 + 74 * Math.sin((2 * Math.PI * y) / UP + 0.5), y];

/** A branch that leaves the stem at a tangent, up or down, and ends at a point. */
function branch(from: number, to: Point, rise: number, thick = 3.4): string {
  const start = stem(from);
  const ahead = stem(from + Math.sign(rise) * 6);
  const lead = Math.abs(rise);
  const slope: Point = [(ahead[0] - start[0]) / 6, Math.sign(rise)];
  const line = cubic(
    start,
    [start[0] + slope[0] * lead, start[1] + slope[1] * lead],
    [to[0] - (to[0] - start[0]) * 0.35, to[1] + Math.sign(rise) * -lead * 0.1],
    to,
    18,
  );
  return (
    shape(smooth(line), { stroke: stove.ink, width: thick + 1 }) +
    shape(smooth(line), { stroke: stove.fern, width: thick - 0.2 })
  );
}

/** Pomander: split pomegranates and double flowers on a climbing stem, printed on linen. */
export async function pomander(pxPerMm: number): Promise<LightTile> {
  const random = seeded(4101);
  const at = (y: number, dx = 0): Point => [stem(y)[0] + dx, y];
  const trunk = Array.from({ length: 41 }, (_, i) => stem((UP * i) / 40));
  const stems = [
    branch(150, [62, 168], -60),
    branch(110, [285, 128], 46),
    branch(330, [296, 392], 60, 3),
    branch(430, [292, 524], 70, 3.2),
    branch(560, [58, 520], -70, 3),
    branch(300, [50, 388], 50, 2.8),
    branch(205, [276, 268], 44, 2.8),
    branch(30, [118, 30], 24, 2.4),
    branch(505, [196, 560], 40, 2.2),
    branch(262, [40, 262], 18, 2.2),
    branch(175, [336, 196], 10, 2),
    branch(350, [222, 444], 46, 2),
    shape(smooth(trunk), { stroke: stove.ink, width: 6.6 }),
    shape(smooth(trunk), { stroke: stove.fern, width: 5 }),
    shape(smooth(trunk.map(([x, y]): Point => [x - 1.1, y])), { stroke: stove.lichen, width: 1.1 }),
  ].join("");
  type Put = readonly [number, number, number, number, number, number, LeafInks];
  const leaves: Put[] = [
    [...at(40), -38, 104, 46, 0.16, green],
    [...at(62), 160, 92, 42, -0.18, sage],
    [...at(222), 178, 86, 40, -0.16, gold],
    [...at(395), 196, 84, 38, 0.18, sage],
    [...at(440), 165, 104, 46, -0.14, green],
    [...at(470), 20, 82, 38, -0.2, green],
    [...at(622), -14, 96, 44, 0.18, green],
    [...at(560), 150, 84, 40, -0.2, gold],
    [...at(330), -150, 124, 56, 0.1, green],
    [...at(330), -62, 128, 56, 0.12, green],
    [...at(330), 36, 126, 54, -0.12, green],
    [...at(330), 128, 120, 54, 0.12, sage],
    [62, 168, 112, 74, 36, 0.2, sage],
    [62, 168, 196, 86, 38, -0.2, green],
    [62, 168, 52, 78, 34, -0.1, green],
    [285, 128, -70, 88, 40, 0.2, green],
    [285, 128, 40, 82, 38, -0.2, sage],
    [285, 128, 140, 74, 34, 0.2, green],
    [292, 524, 52, 84, 38, 0.14, green],
    [292, 524, 150, 76, 34, 0.2, sage],
    [276, 268, 70, 70, 32, 0.2, green],
    [276, 268, -20, 66, 30, -0.2, sage],
    [276, 268, -110, 60, 28, -0.2, green],
    [50, 388, 130, 58, 27, 0.2, green],
    [296, 392, 16, 66, 30, -0.2, sage],
    [296, 392, 110, 62, 28, 0.2, green],
    [58, 520, 92, 76, 34, -0.2, green],
    [58, 520, 175, 66, 32, 0.2, sage],
  ];
  const foliage = leaves
    .map(([x, y, turn, length, width, bend, inks]) =>
      placed(
        leaf({ length, width, bend, teeth: Math.round(length / 8) }, inks, random),
        x,
        y,
        turn,
      ),
    )
    .join("");
  const berries = { stalk: stove.fern, berry: stove.honey, line: stove.umber, glint: stove.cream };
  const reds = { stalk: stove.fern, berry: stove.brick, line: stove.umber, glint: stove.shell };
  const sprays = [
    placed(spray(48, 7, berries, random), 336, 196, 62),
    placed(spray(44, 6, reds, random), 40, 262, -84),
    placed(spray(46, 7, berries, random), 196, 560, 96),
    placed(spray(46, 7, reds, random), 118, 30, -78),
    placed(spray(42, 6, berries, random), 222, 444, 160),
  ].join("");
  const eye = { fill: stove.honey, dot: stove.russet, line: stove.umber };
  const darkEye = { fill: stove.russet, dot: stove.straw, line: stove.umber };
  const flowers = [
    placed(pomegranate(58, true, fruit, random), 62, 168, -24),
    placed(rosette({ diameter: 168, rings: [10, 9, 7, 5] }, russet, eye, random), ...at(330)),
    placed(rosette({ diameter: 104, rings: [8, 7, 5] }, honey, darkEye, random), 285, 128),
    placed(pomegranate(40, false, fruit, random), 292, 520, 160),
    placed(sideFlower(84, russet, calyx, random), 58, 520, -30),
    placed(rosette({ diameter: 80, rings: [7, 6, 4] }, madder, eye, random), 276, 268),
    placed(sideFlower(64, honey, calyx, random), 296, 392, 100),
    placed(sideFlower(52, madder, calyx, random), 50, 388, -110),
  ].join("");
  const drawing = await rasterise(
    {
      widthMm: 2 * COLUMN,
      heightMm: UP,
      ground: stove.cream,
      layers: [stems, sprays, foliage, flowers].map((layer, i) =>
        wrapped(layer, 2 * COLUMN, UP, `p${i}`, true, [-90, -90, 480, 760]),
      ),
    },
    pxPerMm,
  );
  return weaveOverPrint(drawing, {
    seed: 4102,
    ground: linear(stove.cream),
    yarnPx: 2.6,
    slub: 0.9,
    depth: 0.08,
    grain: 0.012,
    wander: 1.1,
    inkLoss: 0.22,
  });
}
