import { createHash } from "node:crypto";
import { writeFile } from "node:fs/promises";
import sharp from "sharp";

/** A cloth that is drawn for a test: its photograph in millimetres, and its card's further lines. */
interface Drawn {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly svg: string;
  readonly card: string;
}

const PX_PER_MM = 2.5;
const FIT = `light: 6
care: S
rubs: 40000 martindale
fire: match tested, certificate on file
suits: [curtains, cushions, upholstery]
price: { trade: 30, per: metre, on: 2026-10-01 }`;

/** A cell repeated over the picture, every second column half a cell down where it drops. */
function repeated(cell: string, w: number, h: number, width: number, height: number, drop = false) {
  let out = "";
  for (let i = -1; i * w < width + w; i++)
    for (let j = -1; j * h < height + h; j++)
      out += `<g transform="translate(${i * w} ${j * h + (drop && i % 2 !== 0 ? h / 2 : 0)})">${cell}</g>`;
  return out;
}
const ground = (colour: string) => `<rect width="100%" height="100%" fill="${colour}"/>`;

type Band = readonly [from: number, width: number, colour: string];
function tartan(colour: string, bands: readonly Band[], size: number, card: string): Drawn {
  const cell = bands
    .map(
      ([from, width, c]) =>
        `<rect x="${from}" width="${width}" height="${size}" fill="${c}" opacity=".55"/><rect y="${from}" height="${width}" width="${size}" fill="${c}" opacity=".55"/>`,
    )
    .join("");
  const [widthMm, heightMm] = [size * 4, size * 3];
  const whole = `<rect width="${size}" height="${size}" fill="${colour}"/>${cell}`;
  return {
    widthMm,
    heightMm,
    svg: repeated(whole, size, size, widthMm, heightMm),
    card: `kind: check\nrepeat: { up: ${size} mm, across: ${size} mm }\nmotif: ${size} mm\n${card}`,
  };
}

const leaf = (a: string, b: string, c: string) =>
  `<path d="M40 190q-30 -90 60 -160q60 80 -10 160z" fill="${a}"/><path d="M130 120q60 -60 90 -10q-20 70 -90 10z" fill="${b}"/><circle cx="60" cy="40" r="26" fill="${c}"/><path d="M150 40q30 -30 60 0q-30 30 -60 0z" fill="${a}"/>`;
function botanical(
  colour: string,
  inks: readonly [string, string, string],
  scale: number,
  card: string,
): Drawn {
  const [w, h] = [250 * scale, 220 * scale];
  return {
    widthMm: w * 2,
    heightMm: h * 2,
    svg:
      ground(colour) +
      repeated(`<g transform="scale(${scale})">${leaf(...inks)}</g>`, w, h, w * 2, h * 2, true),
    card: `kind: large-print\nrepeat: { up: ${h} mm, across: ${w} mm, match: half-drop }\nmotif: ${170 * scale} mm\n${card}`,
  };
}
function plain(colour: string, kind: "plain" | "textured-plain", card = FIT): Drawn {
  const weave =
    kind === "plain"
      ? ""
      : repeated(`<rect width="2" height="2" fill="#000" opacity=".12"/>`, 4, 4, 200, 160);
  return {
    widthMm: 200,
    heightMm: 160,
    svg: ground(colour) + weave,
    card: `kind: ${kind}\n${card}`,
  };
}
function stripe(colour: string, ink: string, every: number): Drawn {
  const bar = `<rect x="${every * 0.2}" width="${every * 0.3}" height="160" fill="${ink}"/>`;
  return {
    widthMm: 200,
    heightMm: 160,
    svg: ground(colour) + repeated(bar, every, 160, 200, 160),
    card: `kind: stripe\nmotif: ${every} mm\n${FIT}`,
  };
}

const INK = "#a33b3f";
const CREAM = "#f1e8d6";
const SCENE = `<g fill="none" stroke="${INK}" stroke-width="3"><path d="M20 180q60 -120 120 -20t90 10"/><circle cx="120" cy="90" r="46"/><circle cx="120" cy="90" r="34"/><path d="M90 150l30 -80l30 80zM60 200h180M40 60q40 -50 80 -10"/></g><circle cx="210" cy="140" r="30" fill="${INK}"/><path d="M190 140h40v70h-40z" fill="${INK}"/>`;
const GREENS = ["#3f6b45", "#6f9460", "#c46a5a"] as const;

function spots(): string {
  let out = ground("#d2aa74");
  // A fixed scatter: every spot's place is a digest of its number.
  for (let i = 0; i < 70; i++) {
    const bytes = createHash("sha256").update(String(i)).digest();
    const [x, y] = [((bytes[0] ?? 0) / 255) * 300, ((bytes[1] ?? 0) / 255) * 240];
    out += `<ellipse cx="${x}" cy="${y}" rx="12" ry="9" fill="#3a2a1e"/><ellipse cx="${x}" cy="${y}" rx="5" ry="4" fill="#b98a55"/>`;
  }
  return out;
}

/** The cloths, by name; each of a tradition or approach of its own. All are invented. */
const CLOTHS: Readonly<Record<string, Drawn>> = {
  glen: tartan(
    "#1f4d3a",
    [
      [0, 30, "#16243f"],
      [60, 6, "#b3322b"],
      [90, 4, "#e6c15a"],
    ],
    120,
    FIT,
  ),
  moor: tartan(
    "#8f2a27",
    [
      [0, 26, "#1f4d3a"],
      [50, 6, "#16243f"],
      [80, 3, "#e6c15a"],
    ],
    100,
    FIT,
  ),
  pastoral: {
    widthMm: 540,
    heightMm: 500,
    svg: ground(CREAM) + repeated(SCENE, 270, 250, 540, 500, true),
    card: `kind: large-print\nrepeat: { up: 250 mm, across: 270 mm, match: half-drop }\nmotif: 200 mm\n${FIT}`,
  },
  ticking: stripe(CREAM, INK, 30),
  bower: botanical("#e9e3cf", GREENS, 1, FIT),
  arbour: botanical("#e9e3cf", ["#6f9460", "#3f6b45", "#c46a5a"], 0.82, FIT),
  "bower-paper": botanical(
    "#e9e3cf",
    GREENS,
    1,
    "type: wallcovering\nroll: { width: 52 cm, length: 10 m }\nlight: 5\nprice: { trade: 60, per: roll, on: 2026-10-01 }",
  ),
  dapple: {
    widthMm: 300,
    heightMm: 240,
    svg: spots(),
    card: `kind: irregular\nanimal: yes\nmotif: 28 mm\n${FIT}`,
  },
  leafgreen: plain("#3f6b45", "plain"),
  coral: plain("#c46a5a", "plain"),
  drift: plain("#d9cfba", "plain"),
  oatmeal: plain("#cfc2a8", "textured-plain"),
  nubble: plain("#a89878", "textured-plain"),
  tide: botanical("#e6ebef", ["#2d4f7c", "#6d8fb5", "#2d4f7c"], 1, FIT),
  pinstripe: stripe("#e6ebef", "#2d4f7c", 20),
  slate: plain("#6d8fb5", "plain"),
  "range-rose": botanical(CREAM, ["#b4535f", "#6f9460", "#3d5f80"], 1, `collection: Wold\n${FIT}`),
  "range-check": tartan(CREAM, [[0, 20, "#b4535f"]], 40, `collection: Wold\n${FIT}`),
};

/** Draws the named cloths into a folder of cloths: a photograph each, with the grain of one, and its card. */
export async function drawCloths(dir: string, names: Iterable<string>): Promise<void> {
  for (const name of names) {
    const cloth = CLOTHS[name];
    if (!cloth) throw new Error(`no cloth ${name}`);
    const [width, height] = [cloth.widthMm * PX_PER_MM, cloth.heightMm * PX_PER_MM].map(Math.round);
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${cloth.widthMm} ${cloth.heightMm}">${cloth.svg}</svg>`;
    const { data, info } = await sharp(Buffer.from(svg))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    let seed = 7;
    for (let i = 0; i < data.length; i++) {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      data[i] = Math.max(0, Math.min(255, (data[i] as number) + (seed % 9) - 4));
    }
    await sharp(data, { raw: info }).jpeg({ quality: 90 }).toFile(`${dir}/${name}.jpg`);
    await writeFile(
      `${dir}/${name}.md`,
      `---\ncloth: ${name}\nphoto: { file: ${name}.jpg, shows: ${cloth.widthMm} mm }\n${cloth.card.includes("roll:") ? "" : "width: 137 cm\n"}${cloth.card}\n---\n`,
    );
  }
}
