import type { Seeded } from "../ground/seeded.ts";
import { type Point, penStroke, polyline, shape } from "./path.ts";

/**
 * A divided leaf carved for a block, from its stalk at the origin along +x: pairs of toothed leaflets, each with a white vein.
 * `bend` is how far the tip swings aside, as a share of the length.
 */
export function frond(length: number, bend: number, pairs: number, random: Seeded): string {
  const spine = (t: number): Point => [length * t, bend * length * t * t];
  const parts: string[] = [];
  const leaflet = (from: Point, angle: number, long: number, wide: number) => {
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    const put = (x: number, y: number): Point => [
      from[0] + x * cos - y * sin,
      from[1] + x * sin + y * cos,
    ];
    const lobes = 4;
    const edge = (side: 1 | -1) =>
      Array.from({ length: lobes * 5 + 1 }, (_, i): Point => {
        const t = i / (lobes * 5);
        const lobe = 0.74 + 0.32 * Math.abs(Math.sin(Math.PI * t * lobes));
        return put(long * t, side * (wide / 2) * Math.sin(Math.PI * t ** 0.7) ** 0.8 * lobe);
      });
    parts.push(shape(polyline([...edge(1), ...edge(-1).reverse()], true), { fill: "#000" }));
    parts.push(
      penStroke(
        [put(long * 0.05, 0), put(long * 0.5, wide * 0.02), put(long * 0.9, 0)],
        wide * 0.09 + 0.4,
        "#fff",
      ),
    );
    for (let k = 1; k <= 3; k++) {
      for (const side of [-1, 1]) {
        const x = long * (0.1 + 0.2 * k);
        parts.push(
          penStroke(
            [
              put(x, 0),
              put(x + long * 0.06, side * wide * 0.14),
              put(x + long * 0.11, side * wide * 0.24),
            ],
            wide * 0.055 + 0.3,
            "#fff",
          ),
        );
      }
    }
  };
  for (let i = 0; i < pairs; i++) {
    const t = 0.2 + (0.74 * i) / pairs;
    const size =
      length *
      0.36 *
      Math.sin(Math.PI * (0.22 + 0.66 * (1 - i / pairs)) ** 1) *
      (1 - 0.35 * (i / pairs));
    const from = spine(t);
    const lean = Math.atan2(2 * bend * t, 1);
    for (const side of [-1, 1]) {
      leaflet(
        from,
        lean + side * (0.95 - 0.35 * (i / pairs)) + random.bell() * 0.05,
        size,
        size * 0.44,
      );
    }
  }
  leaflet(spine(0.92), Math.atan2(2 * bend, 1), length * 0.26, length * 0.12);
  const middle = Array.from({ length: 15 }, (_, i) => spine(i / 15));
  parts.push(penStroke(middle, length * 0.026 + 0.8, "#000"));
  return parts.join("");
}
