import { type Point, penStroke, polyline, shape, smooth } from "./path.ts";

/** A lobed leaf for a damask's mask, black with white veins, from the origin along -y; `curl` swings its tip to the right. */
export function acanthus(length: number, width: number, curl: number, lobes: number): string {
  const spine = (t: number): Point => [curl * length * t * t, -length * t];
  const edge = (side: 1 | -1) =>
    Array.from({ length: lobes * 8 + 1 }, (_, i): Point => {
      const t = i / (lobes * 8);
      const phase = (t * lobes) % 1;
      const lobe = 0.62 + 0.42 * Math.sin(Math.PI * phase) ** 0.7;
      const w = (width / 2) * Math.sin(Math.PI * t ** 0.75) ** 0.8 * lobe * side;
      const [x, y] = spine(t);
      return [x + w, y - Math.abs(w) * 0.45];
    });
  const veins: string[] = [
    penStroke(
      Array.from({ length: 12 }, (_, i) => spine(0.04 + i / 13.5)),
      width * 0.07 + 0.5,
      "#fff",
    ),
  ];
  for (let i = 1; i < lobes; i++) {
    for (const side of [-1, 1]) {
      const t = (i - 0.4) / lobes;
      const [x, y] = spine(t);
      const w = (width / 2) * Math.sin(Math.PI * t ** 0.75) * 0.7 * side;
      veins.push(
        penStroke(
          [
            [x, y],
            [x + w * 0.5, y - length * 0.03],
            [x + w, y - length * 0.09],
          ],
          width * 0.045 + 0.4,
          "#fff",
        ),
      );
    }
  }
  return (
    shape(polyline([...edge(1), ...edge(-1).reverse()], true), { fill: "#000" }) + veins.join("")
  );
}

/** A scroll: a spiral of `turns` that thickens to a ball at its heart, from the origin; `hand` 1 winds clockwise. */
export function scroll(size: number, turns: number, hand: 1 | -1): string {
  const points = Array.from({ length: 40 }, (_, i): Point => {
    const t = i / 39;
    const r = size * (1 - 0.82 * t);
    const a = -Math.PI / 2 + hand * t * turns * 2 * Math.PI;
    return [hand * size * 0 + r * Math.cos(a), size + r * Math.sin(a)];
  });
  const [x, y] = points[39] as Point;
  return (
    shape(smooth(points), { stroke: "#000", width: size * 0.17 }) +
    `<circle cx="${x.toFixed(2)}" cy="${y.toFixed(2)}" r="${(size * 0.2).toFixed(2)}" fill="#000"/>`
  );
}
