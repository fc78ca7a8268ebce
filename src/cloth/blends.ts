import { linearOfChannel } from "../colour/linear.ts";
import { type Oklab, rgbOfOklab } from "../colour/oklab.ts";
import { oklabOfLinear } from "../colour/oklabOfPixels.ts";
import type { Labels } from "./labels.ts";
import { linearAt, type Pixels } from "./pixels.ts";

/** Distance in Oklab within which a pixel is a mixture of two colours, grain and all. */
const ON_THE_LINE = 0.035;
/** Chroma in Oklab by which a pixel is plainly livelier than its neighbours' colours. */
const LIVELIER = 0.015;
/** Most pixels of a colour that are looked at. */
const SAMPLES = 4000;

type Light = readonly [r: number, g: number, b: number];

/**
 * The colours that are only the blurred rims between others: nearly all their pixels are, each for itself, a mixture in linear
 * light of two other colours that lie at hand, in lines no wider than the picture's own edges (`edgePx`). Such a colour is in
 * no yarn and in no ink. Gives their numbers.
 */
export function blends(
  pixels: Pixels,
  oklab: Float32Array,
  centres: readonly Oklab[],
  labels: Labels,
  edgePx: number,
): number[] {
  const reach = Math.min(6, Math.max(2, Math.ceil(edgePx / 2 + 0.5)));
  const lights = centres.map((lab): Light => {
    const [r, g, b] = rgbOfOklab(lab);
    return [lightOf(r), lightOf(g), lightOf(b)];
  });
  const all = [...centres.keys()];
  return all.filter((colour) => {
    const own = labels.counts[colour] as number;
    // A rim is less than what it parts.
    const parted = all.filter((g) => g !== colour && (labels.counts[g] as number) >= own / 2);
    return parted.length > 1 && onlyRims(pixels, oklab, labels, colour, { parted, lights, reach });
  });
}

interface Around {
  readonly parted: readonly number[];
  readonly lights: readonly Light[];
  readonly reach: number;
}

function onlyRims(
  { width, height, data }: Pixels,
  oklab: Float32Array,
  { label, counts }: Labels,
  colour: number,
  { parted, lights, reach }: Around,
): boolean {
  const every = Math.max(1, Math.floor((counts[colour] as number) / SAMPLES));
  const chromas = lights.map((light) => chromaOf(oklabOfLinear(...light)));
  let [met, seen, midst, between, livelier] = [0, 0, 0, 0, 0];
  for (let y = reach; y < height - reach; y++) {
    for (let x = reach; x < width - reach; x++) {
      const p = y * width + x;
      if (label[p] !== colour || met++ % every !== 0) continue;
      seen++;
      const { near, alone } = look(label, width, p, reach, colour);
      if (alone) {
        midst++;
        continue;
      }
      const light: Light = [
        linearAt(data, p * 3),
        linearAt(data, p * 3 + 1),
        linearAt(data, p * 3 + 2),
      ];
      const here = parted.filter((g) => (near & (1 << g)) !== 0);
      const lab = oklab.subarray(p * 3, p * 3 + 3);
      // A mixture is never livelier than what it is mixed of.
      if (chromaOf(lab) > Math.max(...here.map((g) => chromas[g] as number)) + LIVELIER) livelier++;
      if (isMixture(light, lab, here, lights)) between++;
    }
  }
  return seen > 0 && midst < 0.03 * seen && between > 0.8 * seen && livelier < 0.08 * seen;
}

/** Which colours lie within reach of a pixel, and whether all but the rim of its surroundings is its own colour. */
function look(label: Uint8Array, width: number, p: number, reach: number, colour: number) {
  let near = 0;
  let alone = true;
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      const l = label[p + dy * width + dx] as number;
      near |= 1 << l;
      if (l !== colour && Math.max(Math.abs(dx), Math.abs(dy)) < reach) alone = false;
    }
  }
  return { near, alone };
}

function isMixture(
  light: Light,
  lab: ArrayLike<number>,
  colours: readonly number[],
  lights: readonly Light[],
): boolean {
  for (let i = 0; i < colours.length; i++) {
    for (let j = i + 1; j < colours.length; j++) {
      const a = lights[colours[i] as number] as Light;
      const b = lights[colours[j] as number] as Light;
      const t = place(a, b, light);
      if (t < 0.05 || t > 0.95) continue;
      const mixed = oklabOfLinear(lerp(a[0], b[0], t), lerp(a[1], b[1], t), lerp(a[2], b[2], t));
      const off = Math.hypot(
        mixed[0] - (lab[0] as number),
        mixed[1] - (lab[1] as number),
        mixed[2] - (lab[2] as number),
      );
      if (off < ON_THE_LINE) return true;
    }
  }
  return false;
}

function chromaOf(lab: ArrayLike<number>): number {
  return Math.hypot(lab[1] as number, lab[2] as number);
}

/** Where a colour lies between two others in linear light, 0 at the first, 1 at the second. */
function place(a: Light, b: Light, c: Light): number {
  let dot = 0;
  let length2 = 0;
  for (let k = 0; k < 3; k++) {
    const axis = (b[k] as number) - (a[k] as number);
    dot += ((c[k] as number) - (a[k] as number)) * axis;
    length2 += axis * axis;
  }
  return length2 > 0 ? dot / length2 : -1;
}

function lerp(a: number, b: number, t: number): number {
  return a + (b - a) * t;
}

function lightOf(channel: number): number {
  return linearOfChannel(Math.min(255, Math.max(0, channel)));
}
