import { rasterise, wrapped } from "../ground/drawn.ts";
import type { LightTile } from "../ground/tile.ts";
import { placed, shape, smooth } from "../motifs/path.ts";
import { ikat } from "../techniques/ikat.ts";
import { harbour } from "./palettes.ts";

const W = 4.5 * 25.4;
const H = 7 * 25.4;
const SCALE = 3 / 4;

/** Ripple: a warp ikat of toothed lozenges, clay and ink on chalk, 5 1/4 inches up and 3 3/8 across (drawn a third larger). */
export async function ripple(pxPerMm: number): Promise<LightTile> {
  const lozenge = (w: number, h: number, teeth: number, fill: string) => {
    const points: [number, number][] = [];
    const corners: [number, number][] = [
      [0, -h],
      [w, 0],
      [0, h],
      [-w, 0],
    ];
    for (let c = 0; c < 4; c++) {
      const a = corners[c] as [number, number];
      const b = corners[(c + 1) % 4] as [number, number];
      for (let i = 0; i < teeth; i++) {
        const t = i / teeth;
        const bump = 1 + (i % 2 === 0 ? 0 : -0.1);
        points.push([(a[0] + (b[0] - a[0]) * t) * bump, (a[1] + (b[1] - a[1]) * t) * bump]);
      }
    }
    return shape(`M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join("L")}Z`, {
      fill,
    });
  };
  const hook = (turn: number, flip: number) =>
    placed(
      shape(
        smooth([
          [0, 0],
          [flip * 10, -6],
          [flip * 17, -18],
          [flip * 9, -25],
          [flip * 5, -17],
        ]),
        { stroke: harbour.ink, width: 4.4 },
      ),
      0,
      -56,
      turn,
    );
  const eye = [
    lozenge(50, 62, 8, harbour.ink),
    lozenge(42, 53, 8, harbour.chalk),
    lozenge(37, 47, 6, harbour.clay),
    lozenge(23, 30, 6, harbour.straw),
    lozenge(17, 22, 4, harbour.ink),
    lozenge(7, 10, 2, harbour.chalk),
    hook(0, 1),
    hook(0, -1),
    placed(hook(0, 1) + hook(0, -1), 0, 0, 180),
  ].join("");
  const between = [lozenge(15, 19, 4, harbour.tide), lozenge(8, 11, 2, harbour.blush)].join("");
  const drawing = await rasterise(
    {
      widthMm: W,
      heightMm: H,
      ground: harbour.chalk,
      layers: [
        wrapped(placed(eye, W / 2, H / 2), W, H, "i0", false),
        wrapped(placed(between, 0, 0), W, H, "i1", false),
      ],
    },
    pxPerMm * SCALE,
  );
  return ikat({ ...drawing, pxPerMm: drawing.pxPerMm / SCALE }, 1.7, 3, 8501);
}
