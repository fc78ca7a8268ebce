import { wrapped } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { type Point, penStroke, placed, shape, smooth } from "../motifs/path.ts";
import { blockPrint } from "../techniques/blockPrint.ts";
import { weaveOverPrint } from "../techniques/weaveOverPrint.ts";
import { stove } from "./palettes.ts";

const INCH = 25.4;
export const CARAWAY = { column: 1.125 * INCH, up: 2.625 * INCH, across: 2, down: 2 };

/** Caraway: a block-printed sprig, half-drop. Every impression sits a little differently, as a hand lays it. */
export async function caraway(pxPerMm: number): Promise<LightTile> {
  const random = seeded(8201);
  const widthMm = 2 * CARAWAY.column * CARAWAY.across;
  const heightMm = CARAWAY.up * CARAWAY.down;
  const blocks = { green: "", russet: "", honey: "" };
  const oval = (x: number, y: number, long: number, wide: number, turn: number) =>
    placed(
      shape(
        smooth(
          [
            [0, 0],
            [long * 0.5, -wide / 2],
            [long, 0],
            [long * 0.5, wide / 2],
          ],
          true,
        ),
        { fill: "#000" },
      ),
      x,
      y,
      turn,
    );
  const impression = (x: number, y: number) => {
    const lay = (content: string) =>
      placed(content, x + random.bell() * 0.28, y + random.bell() * 0.28, random.bell() * 1.1);
    const stem: Point[] = [
      [1.5, 13.5],
      [0.2, 7],
      [-0.8, 1],
      [0, -5],
    ];
    blocks.green += lay(
      penStroke(stem, 1.3, "#000") +
        penStroke([...stem].reverse(), 0.8, "#000") +
        oval(0.2, 7.5, 7.6, 3.5, -32) +
        oval(0, 9, 7.4, 3.5, 202) +
        oval(-0.5, 3, 6, 2.8, -38) +
        oval(-0.5, 4.4, 6, 2.8, 212) +
        penStroke(
          [
            [-0.6, 0.6],
            [3, -1.2],
            [4.6, -4.2],
          ],
          0.75,
          "#000",
        ) +
        penStroke(
          [
            [-0.6, 1.4],
            [-3.8, -0.2],
            [-5.4, -3],
          ],
          0.75,
          "#000",
        ),
    );
    const petals = [0, 72, 144, 216, 288].map((turn) =>
      placed(
        shape(
          smooth(
            [
              [0, -0.9],
              [-2.1, -3.4],
              [-1.1, -5.3],
              [0, -4.8],
              [1.1, -5.3],
              [2.1, -3.4],
            ],
            true,
          ),
          { fill: "#000" },
        ),
        0,
        -9,
        turn,
      ),
    );
    blocks.russet += lay(
      petals.join("") +
        `<circle cx="5" cy="-5.4" r="1.7" fill="#000"/><circle cx="-5.8" cy="-4.2" r="1.5" fill="#000"/>`,
    );
    blocks.honey += lay(`<circle cx="0" cy="-9" r="1.5" fill="#000"/>`);
  };
  for (let i = 0; i < CARAWAY.across; i++) {
    for (let j = 0; j < CARAWAY.down; j++) {
      impression((2 * i + 0.5) * CARAWAY.column, (j + 0.25) * CARAWAY.up);
      impression((2 * i + 1.5) * CARAWAY.column, (j + 0.75) * CARAWAY.up);
    }
  }
  const block = (content: string, ink: string, opacity: number) => ({
    layers: [wrapped(content, widthMm, heightMm, "b", false)],
    ink,
    slip: [0, 0] as const,
    opacity,
  });
  const print = await blockPrint(
    { widthMm, heightMm, ground: stove.cream, seed: 8210, patchiness: 0.34 },
    [
      block(blocks.green, stove.bottle, 0.94),
      block(blocks.russet, stove.russet, 0.94),
      block(blocks.honey, stove.honey, 1),
    ],
    pxPerMm,
  );
  return weaveOverPrint(print, {
    seed: 8202,
    ground: linear(stove.cream),
    yarnPx: 4,
    slub: 0.55,
    depth: 0.2,
    grain: 0.03,
    wander: 1.6,
    inkLoss: 0.3,
  });
}
