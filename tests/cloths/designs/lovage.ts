import { wrapped } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { frond } from "../motifs/frond.ts";
import { cubic, type Point, penStroke, placed } from "../motifs/path.ts";
import { umbel } from "../motifs/umbel.ts";
import { blockPrint } from "../techniques/blockPrint.ts";
import { weaveOverPrint } from "../techniques/weaveOverPrint.ts";
import { harbour } from "./palettes.ts";

const INCH = 25.4;
const COLUMN = 18 * INCH;
const UP = 20.25 * INCH;

/** Lovage: tall umbels and divided leaves, printed from four blocks on cotton. */
export async function lovage(pxPerMm: number): Promise<LightTile> {
  const random = seeded(5201);
  let inkBlock = "";
  let tideBlock = "";
  let clayBlock = "";
  let strawBlock = "";
  const stalk = (points: Point[], thick: number) => {
    inkBlock +=
      penStroke([...points].reverse(), thick * 0.9, "#000") + penStroke(points, thick, "#000");
  };
  const head = (
    x: number,
    y: number,
    turn: number,
    radius: number,
    rays: number,
    dye: "clay" | "straw",
  ) => {
    const drawn = umbel(radius, rays, 172, radius > 80 ? 19 : 13, random);
    inkBlock += placed(drawn.rays, x, y, turn) + placed(drawn.hearts, x, y, turn);
    if (dye === "clay") clayBlock += placed(drawn.florets, x, y, turn);
    else strawBlock += placed(drawn.florets, x, y, turn);
  };
  const main = cubic([302, 612], [300, 470], [194, 350], [206, 226], 40);
  const on = (share: number): Point => main[Math.round(share * 40)] as Point;
  inkBlock +=
    penStroke([...main].reverse(), 8, "#000") +
    penStroke([...main.slice(4, 34)].reverse(), 9, "#000");
  const side = (share: number, to: Point, sag: number, thick: number) => {
    const from = on(share);
    const ahead = on(share + 0.08);
    const lead: Point = [
      from[0] + (ahead[0] - from[0]) * 1.6,
      from[1] + (ahead[1] - from[1]) * 1.6,
    ];
    stalk(cubic(from, lead, [to[0] - (to[0] - from[0]) * 0.08, to[1] + sag], to, 20), thick);
  };
  head(206, 226, -5, 138, 17, "clay");
  side(0.42, [350, 320], 70, 5);
  head(350, 320, 16, 84, 12, "straw");
  side(0.5, [86, 336], 66, 4.6);
  head(86, 336, -18, 72, 11, "clay");
  side(0.2, [404, 496], 54, 4.2);
  head(404, 496, 22, 62, 10, "straw");
  side(0.56, [428, 196], 120, 3.8);
  head(428, 196, 10, 58, 9, "clay");
  side(0.12, [96, 582], 30, 3.6);
  head(96, 582, -22, 46, 9, "straw");
  const leafOn = (share: number, length: number, bend: number, pairs: number, turn: number) =>
    placed(frond(length, bend, pairs, random), ...on(share), turn);
  inkBlock += leafOn(0.31, 205, -0.12, 7, 190);
  tideBlock += leafOn(0.36, 190, 0.2, 7, 2);
  tideBlock += leafOn(0.66, 176, -0.2, 6, 196);
  inkBlock += leafOn(0.26, 128, 0.22, 5, 40);
  inkBlock += leafOn(0.9, 116, -0.2, 5, 4);
  tideBlock += leafOn(0.1, 150, -0.2, 6, 20);
  const size = {
    widthMm: 2 * COLUMN,
    heightMm: UP,
    ground: harbour.chalk,
    seed: 5210,
    patchiness: 0.24,
  };
  const block = (
    content: string,
    ink: string,
    slip: readonly [number, number],
    opacity: number,
  ) => ({
    layers: [wrapped(content, 2 * COLUMN, UP, "b", true, [-90, 30, 570, 730])],
    ink,
    slip,
    opacity,
  });
  const print = await blockPrint(
    size,
    [
      block(strawBlock, harbour.straw, [0.5, -0.3], 0.96),
      block(clayBlock, harbour.clay, [-0.5, 0.6], 0.94),
      block(tideBlock, harbour.tide, [0.3, 0.4], 0.92),
      block(inkBlock, harbour.ink, [0, 0], 0.96),
    ],
    pxPerMm,
  );
  return weaveOverPrint(print, {
    seed: 5202,
    ground: linear(harbour.chalk),
    yarnPx: 2.4,
    slub: 0.6,
    depth: 0.07,
    grain: 0.01,
    wander: 1.2,
    inkLoss: 0.16,
  });
}
