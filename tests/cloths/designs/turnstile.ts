import { rasterise, wrapped } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { leaf } from "../motifs/leaf.ts";
import { type Point, penStroke, placed, shape, smooth } from "../motifs/path.ts";
import { weaveOverPrint } from "../techniques/weaveOverPrint.ts";
import { stove } from "./palettes.ts";

const W = 2.25 * 25.4;
const H = 3 * 25.4;
const SCALE = 2 / 3;

/** Turnstile: a green trellis of twisted rods, a honey bud in one row of lozenges and a russet cross in the next. */
export async function turnstile(pxPerMm: number): Promise<LightTile> {
  const random = seeded(8101);
  // Each rod runs corner to corner; it swells and thins like a turned lath.
  const rod = (from: Point, to: Point) => {
    const parts: string[] = [];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const n: Point = [-(to[1] - from[1]) / long, (to[0] - from[0]) / long];
    const edge = (side: number, swell: number) =>
      Array.from({ length: 25 }, (_, i): Point => {
        const t = i / 24;
        const w = side * (1.15 + swell * Math.sin(Math.PI * t) ** 2);
        return [
          from[0] + (to[0] - from[0]) * t + n[0] * w,
          from[1] + (to[1] - from[1]) * t + n[1] * w,
        ];
      });
    parts.push(
      shape(smooth([...edge(1, 0.7), ...edge(-1, 0.7).reverse()], true), { fill: stove.bottle }),
    );
    for (const t of [0.3, 0.4, 0.5, 0.6, 0.7]) {
      const x = from[0] + (to[0] - from[0]) * t;
      const y = from[1] + (to[1] - from[1]) * t;
      parts.push(
        shape(`M${x - 1.3} ${y - 0.5}L${x + 1.3} ${y + 0.5}`, { stroke: stove.lichen, width: 0.6 }),
      );
    }
    return parts.join("");
  };
  const rods = [
    rod([W / 2, 0], [W, H / 2]),
    rod([W, H / 2], [W / 2, H]),
    rod([W / 2, H], [0, H / 2]),
    rod([0, H / 2], [W / 2, 0]),
  ].join("");
  const knot = (x: number, y: number) =>
    placed(
      shape("M-3.4 0L0 -4.4L3.4 0L0 4.4Z", { fill: stove.honey, stroke: stove.umber, width: 0.5 }) +
        `<circle r="1" fill="${stove.russet}"/>`,
      x,
      y,
    );
  const small = { pale: stove.lichen, deep: stove.fern, vein: stove.cream, line: stove.ink };
  const bud = (x: number, y: number) => {
    const leaves = [-148, -32, 148, 32].map((turn) =>
      placed(
        leaf({ length: 11.5, width: 5.2, bend: 0.1 * Math.sign(turn), teeth: 0 }, small, random),
        0,
        2,
        turn,
      ),
    );
    const petals = [0, 60, 120, 180, 240, 300].map((turn) =>
      placed(
        shape(
          smooth(
            [
              [0, -1],
              [-2.7, -4.8],
              [-1.2, -7.4],
              [0, -6.9],
              [1.2, -7.4],
              [2.7, -4.8],
            ],
            true,
          ),
          {
            fill: stove.brick,
            stroke: stove.umber,
            width: 0.45,
          },
        ) +
          penStroke(
            [
              [0, -1.4],
              [0.1, -3.4],
              [0, -5],
            ],
            0.7,
            stove.russet,
          ),
        0,
        0,
        turn,
      ),
    );
    return placed(
      `${leaves.join("")}${petals.join("")}<circle r="1.9" fill="${stove.honey}" stroke="${stove.umber}" stroke-width="0.4"/>`,
      x,
      y,
    );
  };
  const cross = (x: number, y: number) =>
    placed(
      `${[0, 90, 180, 270]
        .map((turn) =>
          placed(
            shape(
              smooth(
                [
                  [0, 0],
                  [-2, -3.8],
                  [0, -7.6],
                  [2, -3.8],
                ],
                true,
              ),
              { fill: stove.honey, stroke: stove.umber, width: 0.4 },
            ),
            0,
            0,
            turn,
            turn % 180 === 0 ? 1.15 : 0.9,
          ),
        )
        .join("")}<circle r="1.3" fill="${stove.bottle}"/>`,
      x,
      y,
    );
  const layers = [
    wrapped(rods, W, H, "t0", false),
    wrapped(knot(W / 2, 0) + knot(0, H / 2), W, H, "t1", false),
    wrapped(bud(W / 2, H / 2) + cross(0, 0), W, H, "t2", false),
  ];
  // Drawn for a repeat of 2 1/4 by 3 inches, printed at two thirds.
  const drawing = await rasterise(
    { widthMm: W, heightMm: H, ground: stove.cream, layers },
    pxPerMm * SCALE,
  );
  return weaveOverPrint(
    { ...drawing, pxPerMm: drawing.pxPerMm / SCALE },
    {
      seed: 8102,
      ground: linear(stove.cream),
      yarnPx: 4,
      slub: 0.5,
      depth: 0.16,
      grain: 0.03,
      wander: 0.9,
      inkLoss: 0.24,
    },
  );
}
