import { stove } from "../designs/palettes.ts";
import type { Seeded } from "../ground/seeded.ts";
import { type Point, placed, smooth } from "../motifs/path.ts";
import { curve, grey, type Part, path, rect } from "./clay.ts";

/** The moulded tile: a frame in steps, and a flower of twelve petals in relief; its glaze is its slab's. */
export function reliefTile(x: number, y: number, cell: number): Part {
  const cx = x + cell / 2;
  const cy = y + cell / 2;
  const step = (inset: number, level: number, r: number) =>
    rect(x + inset, y + inset, cell - 2 * inset, cell - 2 * inset, grey(level), `rx="${r}"`);
  const petal = (turn: number, long: number, wide: number, level: number) => {
    const edge: Point[] = [
      [0, -8],
      [-wide, -long * 0.5],
      [-wide * 0.5, -long * 0.88],
      [0, -long],
      [wide * 0.5, -long * 0.88],
      [wide, -long * 0.5],
    ];
    const groove = path(`M0 ${-long * 0.2}L0 ${-long * 0.86}`, "none", grey(level - 0.3), 3);
    return placed(path(smooth(edge, true), grey(level)) + groove, cx, cy, turn);
  };
  let relief = step(8, 0.82, 6) + step(16, 0.47, 6) + step(21, 0.67, 5) + step(26, 0.34, 5);
  for (const turn of [45, 135, 225, 315]) relief += petal(turn, cell * 0.46, 21, 0.66);
  for (let i = 0; i < 8; i++) relief += petal(i * 45, cell * 0.28, 15, 0.8);
  relief += `<circle cx="${cx}" cy="${cy}" r="17" fill="${grey(0.6)}"/><circle cx="${cx}" cy="${cy}" r="12" fill="${grey(1)}"/>`;
  return { colour: "", relief };
}

const SPRIG = curve("0,-58 -10,-80 0,-108 10,-80", true);
const LEFT_LEAF = curve("0,-60 -24,-70 -36,-94 -10,-82", true);
const RIGHT_LEAF = curve("0,-60 24,-70 36,-94 10,-82", true);
const DROP = curve("0,-60 -8,-70 0,-84 8,-70", true);
const PETAL_EDGE = curve("0,-8 -17,-34 -11,-55 0,-50 11,-55 17,-34", true);
const PETAL = curve("0,-11 -14,-34 -9,-52 0,-47 9,-52 14,-34", true);
const VEIN = curve("0,0 -3.4,-18 0,-40 3.4,-18", true);

/** The painted tile: a russet flower on cream, each stroke laid by hand and so a little off. */
export function paintedTile(x: number, y: number, cell: number, random: Seeded): Part {
  const cx = x + cell / 2;
  const cy = y + cell / 2;
  let paint = "";
  let relief = "";
  const lay = (d: string, fill: string, turn: number, level: number) => {
    const wobble = turn + random.bell() * 1.6;
    paint += placed(path(d, fill), cx + random.bell() * 0.8, cy + random.bell() * 0.8, wobble);
    relief += placed(path(d, grey(level)), cx, cy, wobble);
  };
  for (const turn of [45, 135, 225, 315]) {
    lay(SPRIG, stove.bottle, turn, 0.62);
    lay(LEFT_LEAF, stove.fern, turn, 0.6);
    lay(RIGHT_LEAF, stove.fern, turn, 0.6);
  }
  for (const turn of [0, 90, 180, 270]) lay(DROP, stove.honey, turn, 0.62);
  for (let i = 0; i < 8; i++) {
    lay(PETAL_EDGE, stove.umber, i * 45, 0.6);
    lay(PETAL, i % 2 ? stove.brick : stove.russet, i * 45, 0.68);
    lay(VEIN, i % 2 ? stove.russet : stove.umber, i * 45, 0.58);
  }
  paint += `<circle cx="${cx}" cy="${cy}" r="14" fill="${stove.umber}"/><circle cx="${cx}" cy="${cy}" r="11.6" fill="${stove.honey}"/>`;
  relief += `<circle cx="${cx}" cy="${cy}" r="13" fill="${grey(0.8)}"/>`;
  const line = `rx="5" stroke="${stove.honey}" stroke-width="5"`;
  return {
    colour: rect(x + 9, y + 9, cell - 18, cell - 18, "none", line) + paint,
    relief: rect(x + 14, y + 14, cell - 28, cell - 28, grey(0.52), 'rx="8"') + relief,
  };
}
