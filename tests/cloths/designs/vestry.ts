import { rasterise, wrapped } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import type { LightTile } from "../ground/tile.ts";
import { acanthus, scroll } from "../motifs/acanthus.ts";
import { type Point, placed, shape, smooth } from "../motifs/path.ts";
import { damask } from "../techniques/damask.ts";

const INCH = 25.4;
const COLUMN = 4.5 * INCH;
const UP = 13.5 * INCH;

/** Vestry: a honey damask, thistle heads in an ogee of leafy bands. */
export async function vestry(pxPerMm: number): Promise<LightTile> {
  const W = 2 * COLUMN;
  // The ogee: two bands swing between the columns' middles, meeting above and below each head.
  const band = (side: 1 | -1): Point[] =>
    Array.from({ length: 33 }, (_, i): Point => {
      const t = i / 32;
      return [W / 2 + side * (W / 4) * (0.5 - 0.5 * Math.cos(2 * Math.PI * t)), UP * t];
    });
  const bands = ([-1, 1] as const)
    .map((side) => {
      const line = smooth(band(side));
      return (
        shape(line, { stroke: "#000", width: 11 }) +
        shape(line, { stroke: "#fff", width: 6.4 }) +
        shape(line, { stroke: "#000", width: 2.4 })
      );
    })
    .join("");
  const beads: string[] = [];
  for (const side of [-1, 1] as const) {
    for (const i of [5, 9, 23, 27]) {
      const [x, y] = band(side)[i] as Point;
      const turn = (i < 16 ? -1 : 1) * side * -34;
      beads.push(
        placed(
          acanthus(34, 22, side * 0.16, 4),
          x + side * 3,
          y,
          i < 16 ? -turn * 1.9 : turn * 3.6,
        ),
      );
    }
  }
  // The thistle: a scaled cup under a crown of narrow leaves.
  const cup: string[] = [];
  for (let row = 0; row < 5; row++) {
    const wide = [13, 19, 21, 18, 11][row] as number;
    const count = [3, 4, 5, 4, 3][row] as number;
    for (let i = 0; i < count; i++) {
      const x = ((i + 0.5) / count - 0.5) * 2 * wide;
      const y = 28 - row * 9.4;
      cup.push(
        shape(
          smooth(
            [
              [x, y + 7],
              [x - 5.4, y - 1],
              [x, y - 8],
              [x + 5.4, y - 1],
            ],
            true,
          ),
          { fill: "#000", stroke: "#fff", width: 1.5 },
        ),
      );
    }
  }
  const crown = [-62, -44, -28, -13, 0, 13, 28, 44, 62].map((turn) =>
    placed(acanthus(62 - Math.abs(turn) * 0.26, 13, 0, 5), 0, -10, turn),
  );
  const skirt = [-128, -100, 100, 128].map((turn) =>
    placed(acanthus(54, 24, turn < 0 ? -0.3 : 0.3, 5), 0, 30, turn),
  );
  const foot =
    shape("M0 34C-3 52 3 70 0 92", { stroke: "#000", width: 5 }) +
    placed(scroll(13, 1.15, 1), 14, 46) +
    placed(scroll(13, 1.15, -1), -14, 46);
  const thistle = placed([...skirt, foot, ...crown, ...cup].join(""), W / 2, UP / 2 + 4, 0, 0.98);
  const knot = placed(
    shape(
      smooth(
        [
          [0, -15],
          [-12, 0],
          [0, 15],
          [12, 0],
        ],
        true,
      ),
      { fill: "#000", stroke: "#fff", width: 3 },
    ) +
      shape(
        smooth(
          [
            [0, -7],
            [-5, 0],
            [0, 7],
            [5, 0],
          ],
          true,
        ),
        { fill: "#fff" },
      ),
    W / 2,
    0,
  );
  const mask = await rasterise(
    {
      widthMm: W,
      heightMm: UP,
      ground: "#ffffff",
      layers: [bands + beads.join(""), thistle, knot].map((layer, i) =>
        wrapped(layer, W, UP, `v${i}`, true),
      ),
    },
    pxPerMm,
  );
  return damask(mask, linear("#b58a46"), linear("#d3b272"), 7102);
}
