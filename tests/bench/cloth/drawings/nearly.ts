import { oklabOf } from "../../../../src/colour/oklab.ts";
import { inksOf, oklch } from "../colourPairs.ts";
import { between, type Make, type Random, rect, turnedAcross, whole } from "./draw.ts";

/*
 * Stripes and checks whose half, or third, is nearly a repeat: bands that take turns in width, in colour or in what lies between
 * them, by a little. Their repeat is the whole tile. Each from a seed.
 */

interface Band {
  /** Left edge and width, as parts of the repeat. */
  readonly at: number;
  readonly wide: number;
  readonly ink: string;
}

/** A colour moved by some steps of lightness and hue in Oklch, as another dye lot's. */
function moved(random: Random, ink: string, by: number): string {
  const [l, a, b] = oklabOf(ink);
  const way = 2 * Math.PI * random();
  const lighter = l > 0.6 ? -1 : 1;
  const [da, db] = [0.7 * by * Math.cos(way), 0.7 * by * Math.sin(way)];
  const hue = (Math.atan2(b + db, a + da) * 180) / Math.PI;
  return oklch(l + lighter * 0.7 * by, Math.hypot(a + da, b + db), hue);
}

/** The same few bands twice or three times, and one thing about one of the turns that is otherwise. */
function turns(random: Random): { ground: string; bands: Band[] } {
  const { ground, inks } = inksOf(random, 3);
  const [one, two] = inks as [string, string];
  const times = random() < 0.75 ? 2 : 3;
  const lone = random() < 0.4;
  const wide = between(random, 0.2, 0.5) / times;
  const thin = between(random, 0.08, 0.14) / times;
  const other = moved(random, one, between(random, 0.05, 0.12));
  const wider = wide * between(random, 1.2, 1.5);
  const shifted = between(random, 0.12, 0.2) / times;
  const what = whole(random, 0, 3);
  const bands: Band[] = [];
  for (let turn = 0; turn < times; turn++) {
    const odd = turn === 1;
    const start = turn / times;
    const w = what === 0 && odd ? wider : wide;
    bands.push({
      at: start + 0.3 / times - w / 2 + (what === 2 && odd ? shifted : 0),
      wide: w,
      ink: what === 1 && odd ? other : one,
    });
    // A thin band between the wide ones, in every turn or, where it is the difference, in one.
    if (what === 3 ? odd : !lone) bands.push({ at: start + 0.78 / times, wide: thin, ink: two });
  }
  return { ground, bands };
}

export const nearlyStripe: Make = (random) => {
  const { ground, bands } = turns(random);
  const w = between(random, 24, 140);
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      bands.map(({ at, wide, ink }) => rect(at * w, 0, wide * w, w, ink)).join(""),
    kind: "stripe",
    directionDeg: 90,
    wholeTile: true,
  };
};

export const nearlyAcross: Make = turnedAcross(nearlyStripe);

/** Woven both ways alike, or with the difference in one way alone. */
export const nearlyCheck: Make = (random) => {
  const { ground, bands } = turns(random);
  const w = between(random, 30, 150);
  const band = ({ at, wide, ink }: Band, up: boolean) =>
    up
      ? rect(at * w, 0, wide * w, w, ink, 'fill-opacity="0.55"')
      : rect(0, at * w, w, wide * w, ink, 'fill-opacity="0.55"');
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      bands.map((one) => band(one, true)).join("") +
      bands.map((one) => band(one, false)).join(""),
    kind: "check",
    wholeTile: true,
  };
};

/** A sett between two pivots, all its bands alike to both sides of the middle but one line of another colour or width. */
export const nearlySett: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const n = whole(random, 2, 3);
  const w = between(random, 60, 160);
  const half: Band[] = Array.from({ length: n }, (_, i) => ({
    at: (i + between(random, 0.1, 0.3)) / (2 * n),
    wide: between(random, 0.25, 0.6) / (2 * n),
    ink: inks[i % 2] as string,
  }));
  const line = between(random, 0.03, 0.05);
  const pivot = random() < 0.5 ? moved(random, inks[2] as string, 0.12) : null;
  const bands = [
    ...half,
    ...half.map((band) => ({ ...band, at: band.at + 0.5 })),
    { at: 0.02, wide: line, ink: inks[2] as string },
    { at: 0.52, wide: pivot ? line : 1.8 * line, ink: pivot ?? (inks[2] as string) },
  ];
  // In one colour the weft has its half for a repeat, but for the wider line.
  const across =
    random() < 0.3 && pivot === null ? bands.map((b) => ({ ...b, ink: inks[0] as string })) : bands;
  const more = 'fill-opacity="0.6"';
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      bands.map(({ at, wide, ink }) => rect(at * w, 0, wide * w, w, ink, more)).join("") +
      across.map(({ at, wide, ink }) => rect(0, at * w, w, wide * w, ink, more)).join(""),
    kind: "check",
    wholeTile: true,
  };
};

export const NEARLY = { nearlyStripe, nearlyAcross, nearlyCheck, nearlySett };
