import { stove } from "../designs/palettes.ts";
import { mixHex } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { type Point, smooth } from "../motifs/path.ts";
import { grey, type Part, path, rect } from "./clay.ts";
import { glazed } from "./glazed.ts";
import { paintedTile, reliefTile } from "./stoveTiles.ts";

const INCH = 25.4;
/** The picture is the front of the stove, edge to edge. */
export const STOVE = { widthMm: 32 * INCH, heightMm: 74 * INCH };

/** Each tile bulges a little toward its middle. */
const DOME =
  '<defs><radialGradient id="dome"><stop offset="0" stop-color="#fff" stop-opacity=".2"/><stop offset="1" stop-color="#fff" stop-opacity="0"/></radialGradient></defs>';

/** A tiled stove, our own drawing: bottle-green relief tiles, cream ones painted with a russet flower, honey cornice and plinth. */
export async function tiledStove(pxPerMm: number): Promise<LightTile> {
  const random = seeded(1201);
  const parts: Part[] = [];
  const soot = "#15110e";
  const add = (colour: string, relief: string) => parts.push({ colour, relief });
  const wall = mixHex(stove.cream, stove.fawn, 0.16);
  const grout = mixHex(soot, stove.umber, 0.3);
  add(
    rect(0, 0, STOVE.widthMm, STOVE.heightMm, wall),
    rect(0, 0, STOVE.widthMm, STOVE.heightMm, grey(0.12)),
  );
  for (const [x, y, h] of [
    [0, 62, 56],
    [18, 116, 42],
    [26, 156, 1390],
    [14, 1536, 62],
    [0, 1594, 400],
  ] as const) {
    add(
      rect(x, y, STOVE.widthMm - 2 * x, h, grout),
      rect(x, y, STOVE.widthMm - 2 * x, h, grey(0.14)),
    );
  }
  // No two tiles of one glaze fire alike.
  const tone = (hex: string) =>
    random.next() < 0.6
      ? mixHex(hex, "#0b1410", random.between(0, 0.09))
      : mixHex(hex, stove.straw, random.between(0, 0.025));
  const slab = (x: number, y: number, w: number, h: number, hex: string, base = 0.45) => {
    add(
      rect(x + 1.6, y + 1.6, w - 3.2, h - 3.2, tone(hex), 'rx="3"'),
      rect(x + 1.6, y + 1.6, w - 3.2, h - 3.2, grey(base), 'rx="4"') +
        rect(x + 5, y + 5, w - 10, h - 10, "url(#dome)", 'rx="6"'),
    );
  };
  const moulding = (y: number, h: number, inset: number, hex: string, steps: readonly number[]) => {
    const count = 4;
    const w = (STOVE.widthMm - 2 * inset) / count;
    for (let i = 0; i < count; i++) slab(inset + i * w, y, w, h, hex, 0.4);
    for (const [k, level] of steps.entries()) {
      add(
        "",
        rect(
          inset,
          y + (h * k) / steps.length + 1.5,
          STOVE.widthMm - 2 * inset,
          h / steps.length - 3,
          grey(level),
        ),
      );
    }
  };
  const W = STOVE.widthMm;
  // Cornice: cresting, a rolled moulding, a row of hanging leaves.
  for (let i = 0; i < 8; i++) {
    const x = 22 + (i * (W - 44)) / 8;
    const w = (W - 44) / 8;
    const d = `${smooth([
      [x + 2, 66],
      [x + 4, 32],
      [x + w / 2, 6],
      [x + w - 4, 32],
      [x + w - 2, 66],
    ] as Point[])}Z`;
    add(
      path(d, tone(stove.honey)),
      path(d, grey(0.5)) +
        path(
          smooth([
            [x + w / 2, 60],
            [x + w / 2, 26],
          ]),
          "none",
          grey(0.85),
          8,
        ) +
        path(
          smooth([
            [x + 18, 60],
            [x + 20, 40],
          ]),
          "none",
          grey(0.75),
          6,
        ) +
        path(
          smooth([
            [x + w - 18, 60],
            [x + w - 20, 40],
          ]),
          "none",
          grey(0.75),
          6,
        ),
    );
  }
  moulding(64, 52, 0, stove.honey, [0.55, 0.85, 0.6]);
  moulding(116, 40, 18, stove.bottle, [0.7, 0.4]);
  for (let i = 0; i < 16; i++) {
    const x = 26 + ((i + 0.5) * (W - 52)) / 16;
    const d = `${smooth([
      [x - 18, 160],
      [x - 14, 186],
      [x, 204],
      [x + 14, 186],
      [x + 18, 160],
    ] as Point[])}Z`;
    add(
      path(d, tone(i % 2 === 0 ? stove.cream : stove.honey)),
      path(d, grey(0.66)) + path(`M${x} 164L${x} 196`, "none", grey(0.3), 3),
    );
  }
  const body = { x: 26, w: W - 52, y: 208 };
  const cols = 4;
  const cell = body.w / cols;
  const rows = 7;
  const doorRow = 5;
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < cols; c++) {
      const x = body.x + c * cell;
      const y = body.y + r * cell;
      if (r >= doorRow && (c === 1 || c === 2)) continue;
      const painted =
        r === 0 || r === 4 ? c === 0 || c === 3 : (r === 2 || r === 3) && (c === 1 || c === 2);
      slab(x, y, cell, cell, painted ? stove.cream : stove.bottle, 0.42);
      parts.push(painted ? paintedTile(x, y, cell, random) : reliefTile(x, y, cell));
    }
  }
  // The iron door, with its brass latch, and an arched frame of honey tiles over it.
  const dx = body.x + cell;
  const dy = body.y + doorRow * cell;
  slab(dx, dy, cell * 2, cell * 2, stove.honey, 0.5);
  add(
    rect(dx + 34, dy + 34, cell * 2 - 68, cell * 2 - 60, "#1d1b1a", 'rx="10"') +
      rect(dx + 46, dy + 46, cell * 2 - 92, cell * 2 - 84, "#2b2927", 'rx="6"'),
    rect(dx + 14, dy + 14, cell * 2 - 28, cell * 2 - 28, grey(0.85), 'rx="10"') +
      rect(dx + 26, dy + 26, cell * 2 - 52, cell * 2 - 46, grey(0.55), 'rx="10"') +
      rect(dx + 34, dy + 34, cell * 2 - 68, cell * 2 - 60, grey(0.2), 'rx="8"') +
      rect(dx + 46, dy + 46, cell * 2 - 92, cell * 2 - 84, grey(0.45), 'rx="6"') +
      rect(dx + 62, dy + 64, cell * 2 - 124, cell - 60, grey(0.6), 'rx="6"') +
      rect(dx + 72, dy + 74, cell * 2 - 144, cell - 80, grey(0.4), 'rx="6"'),
  );
  for (let i = 0; i < 7; i++) {
    const y = dy + cell + 40 + i * 15;
    add(
      rect(dx + 74, y, cell * 2 - 148, 6, "#0b0a09", 'rx="3"'),
      rect(dx + 74, y, cell * 2 - 148, 6, grey(0.05), 'rx="3"'),
    );
  }
  const kx = dx + cell * 2 - 62;
  add(
    `<circle cx="${kx}" cy="${dy + cell + 4}" r="11" fill="#b8862f"/>` +
      rect(kx - 46, dy + cell - 1, 46, 10, "#b8862f", 'rx="5"'),
    `<circle cx="${kx}" cy="${dy + cell + 4}" r="11" fill="${grey(0.95)}"/>` +
      rect(kx - 46, dy + cell - 1, 46, 10, grey(0.9), 'rx="5"'),
  );
  // Plinth.
  const py = body.y + rows * cell;
  moulding(py, 56, 14, stove.honey, [0.85, 0.6, 0.4]);
  const rest = STOVE.heightMm - py - 56;
  for (let i = 0; i < 4; i++) {
    const w = W / 4;
    slab(i * w, py + 56, w, rest, stove.russet, 0.45);
    add(
      "",
      rect(i * w + 14, py + 70, w - 28, rest - 32, grey(0.75), 'rx="6"') +
        rect(i * w + 22, py + 78, w - 44, rest - 48, grey(0.4), 'rx="5"'),
    );
  }
  return glazed(
    {
      widthMm: W,
      heightMm: STOVE.heightMm,
      colours: parts.map((p) => p.colour).join(""),
      relief: DOME + parts.map((p) => p.relief).join(""),
      softMm: 1.9,
      depthMm: 17,
    },
    pxPerMm,
    1202,
  );
}
