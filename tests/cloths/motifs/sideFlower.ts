import type { Seeded } from "../ground/seeded.ts";
import { type Point, penStroke, placed, shape, smooth } from "./path.ts";
import { type PetalInks, petal } from "./petal.ts";

/** A flower seen from the side, opening upward from its calyx at the origin. */
export function sideFlower(
  height: number,
  inks: PetalInks,
  calyx: { fill: string; shade: string; line: string },
  random: Seeded,
): string {
  const back = [-34, 34, -17, 17].map((angle) =>
    placed(petal(height * random.between(0.94, 1.02), height * 0.46, inks, random), 0, 0, angle),
  );
  const front = [-46, 46, -20, 21, 0].map((angle, i) =>
    placed(
      petal(
        height * (i < 2 ? 0.78 : 0.7) * random.between(0.97, 1.03),
        height * 0.44,
        inks,
        random,
      ),
      0,
      0,
      angle,
    ),
  );
  const sepals = [-52, -22, 22, 52].map((angle) => {
    const h = height * 0.34;
    const edge: Point[] = [
      [0, h * 0.12],
      [-h * 0.24, -h * 0.4],
      [0, -h],
      [h * 0.24, -h * 0.4],
    ];
    return placed(
      shape(smooth(edge, true), {
        fill: calyx.fill,
        stroke: calyx.line,
        width: 0.5 + height * 0.005,
      }) +
        penStroke(
          [
            [0, 0],
            [h * 0.03, -h * 0.5],
            [0, -h * 0.9],
          ],
          h * 0.07,
          calyx.shade,
        ),
      0,
      0,
      angle,
    );
  });
  const cup = `<ellipse cy="${(height * 0.02).toFixed(2)}" rx="${(height * 0.13).toFixed(2)}" ry="${(height * 0.1).toFixed(2)}" fill="${calyx.fill}" stroke="${calyx.line}" stroke-width="0.7"/>`;
  return [...back, ...front, ...sepals, cup].join("");
}
