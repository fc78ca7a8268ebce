import { rasterise, wrapped } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { placed, shape, smooth } from "../motifs/path.ts";
import { weaveOverPrint } from "../techniques/weaveOverPrint.ts";
import { harbour } from "./palettes.ts";

const W = 1.5 * 25.4;
const H = 1.5 * 25.4;

/** Peppercorn: chalk and blush seeds left white on an ink ground, half-drop, 1 1/2 inches up. */
export async function peppercorn(pxPerMm: number): Promise<LightTile> {
  const random = seeded(8301);
  const seed = (fill: string, size: number) =>
    shape(
      smooth(
        [
          [0, -size],
          [-size * 0.62, size * 0.1],
          [-size * 0.3, size * 0.75],
          [size * 0.3, size * 0.75],
          [size * 0.62, size * 0.1],
        ],
        true,
      ),
      { fill },
    );
  const parts = [
    placed(seed(harbour.chalk, 3.1), W * 0.25, H * 0.25, 18),
    placed(seed(harbour.blush, 2.3), W * 0.25 + 7.2, H * 0.25 + 3.6, 108),
    placed(seed(harbour.chalk, 1.7), W * 0.25 - 5.8, H * 0.25 + 5.4, -64),
    ...(
      [
        [9, -5.5],
        [-7, -4.5],
        [1, 8.5],
      ] as const
    ).map(([x, y]) =>
      placed(
        `<circle r="0.62" fill="${harbour.mist}"/>`,
        W * 0.25 + x,
        H * 0.25 + y + random.bell() * 0.1,
      ),
    ),
  ];
  const drawing = await rasterise(
    {
      widthMm: W,
      heightMm: H,
      ground: harbour.ink,
      layers: [wrapped(parts.join(""), W, H, "s", true)],
    },
    pxPerMm,
  );
  return weaveOverPrint(drawing, {
    seed: 8302,
    ground: linear(harbour.mist),
    yarnPx: 4.2,
    slub: 0.6,
    depth: 0.24,
    grain: 0.04,
    wander: 1,
    inkLoss: 0.09,
  });
}
