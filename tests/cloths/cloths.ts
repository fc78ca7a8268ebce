import { bellwether } from "./designs/bellwether.ts";
import { caraway } from "./designs/caraway.ts";
import { chaff } from "./designs/chaff.ts";
import { deckhouse } from "./designs/deckhouse.ts";
import { fallow } from "./designs/fallow.ts";
import { hayrick } from "./designs/hayrick.ts";
import { lovage } from "./designs/lovage.ts";
import { mizzle } from "./designs/mizzle.ts";
import { harbour, stove } from "./designs/palettes.ts";
import { peppercorn } from "./designs/peppercorn.ts";
import { pomander } from "./designs/pomander.ts";
import { ripple } from "./designs/ripple.ts";
import { slipway } from "./designs/slipway.ts";
import { sorrel } from "./designs/sorrel.ts";
import { tallow } from "./designs/tallow.ts";
import { turnstile } from "./designs/turnstile.ts";
import { vestry } from "./designs/vestry.ts";
import { mixHex } from "./ground/light.ts";
import type { LightTile } from "./ground/tile.ts";
import type { ShotOptions } from "./photograph.ts";
import { bands, halfDrop, type PatternTruth, straight } from "./truth.ts";

const INCH = 25.4;

/** One cloth of the demo: how its repeat is made, what is true of it, and how it was photographed. */
export type DemoCloth = {
  make: (pxPerMm: number) => LightTile | Promise<LightTile>;
  /** Pixels a millimetre of the tile; a cloth woven yarn by yarn keeps its own. */
  pxPerMm: number;
  pattern: PatternTruth;
  /** The dyes that its pixels are counted under. */
  inks: readonly string[];
  photo: ShotOptions;
};

const shot = (
  acrossInches: number,
  downInches: number,
  pxPerMm: number,
  more: Partial<ShotOptions> = {},
): ShotOptions => ({
  acrossMm: acrossInches * INCH,
  downMm: downInches * INCH,
  pxPerMm,
  turnDeg: 0,
  fallOff: 0.05,
  format: "jpeg",
  profile: "srgb",
  metadata: "none",
  ...more,
});

const plain = (kind: "plain" | "textured-plain"): PatternTruth => ({
  kind,
  repeat: null,
  directionDeg: null,
});

/** Every cloth of the demo by the name of its card. */
export const CLOTHS: Readonly<Record<string, DemoCloth>> = {
  pomander: {
    make: pomander,
    pxPerMm: 2.7,
    pattern: {
      kind: "large-print",
      repeat: halfDrop(13.5 * INCH, 25.25 * INCH),
      directionDeg: null,
    },
    inks: [
      stove.cream,
      stove.bottle,
      stove.fern,
      stove.lichen,
      stove.honey,
      stove.straw,
      stove.russet,
      stove.brick,
      mixHex(stove.shell, stove.brick, 0.3),
    ],
    photo: shot(30, 38, 2.7, { turnDeg: 0.2, fallOff: 0.05 }),
  },
  vestry: {
    make: vestry,
    pxPerMm: 3.4,
    pattern: { kind: "large-print", repeat: halfDrop(4.5 * INCH, 13.5 * INCH), directionDeg: null },
    inks: ["#b58a46", "#d3b272"],
    photo: shot(15, 20.5, 3.4, { turnDeg: -0.15, fallOff: 0.06, profile: "p3" }),
  },
  turnstile: {
    make: turnstile,
    pxPerMm: 6,
    pattern: { kind: "geometric", repeat: straight(1.5 * INCH, 2 * INCH), directionDeg: null },
    inks: [stove.cream, stove.bottle, stove.brick, stove.honey, stove.lichen],
    photo: shot(7, 7, 6, { turnDeg: 0.25 }),
  },
  hayrick: {
    make: hayrick,
    pxPerMm: 6.72,
    pattern: { kind: "check", repeat: straight(4.5 * INCH, 4.5 * INCH), directionDeg: null },
    inks: [stove.cream, stove.bottle, stove.russet, stove.honey],
    photo: shot(9, 9, 4.6, { turnDeg: -0.2, metadata: "turned" }),
  },
  caraway: {
    make: caraway,
    pxPerMm: 6,
    pattern: {
      kind: "small-print",
      repeat: halfDrop(1.125 * INCH, 2.625 * INCH),
      directionDeg: null,
    },
    inks: [stove.cream, stove.bottle, stove.russet, stove.honey],
    photo: shot(8, 8, 6, { turnDeg: 0.1 }),
  },
  fallow: {
    make: fallow,
    pxPerMm: 4.4,
    pattern: { kind: "irregular", repeat: straight(6.75 * INCH, 6.75 * INCH), directionDeg: null },
    inks: [
      mixHex(stove.fawn, stove.umber, 0.08),
      stove.cream,
      mixHex(stove.umber, stove.fawn, 0.5),
    ],
    photo: shot(11, 11, 5, { turnDeg: 0.3 }),
  },
  chaff: {
    make: chaff,
    pxPerMm: 6,
    pattern: plain("textured-plain"),
    inks: [stove.flax],
    photo: shot(7, 7, 6, { turnDeg: -0.3 }),
  },
  sorrel: {
    make: sorrel,
    pxPerMm: 6,
    pattern: plain("plain"),
    inks: [stove.russet],
    photo: shot(6, 6, 6),
  },
  tallow: {
    make: tallow,
    pxPerMm: 7.5,
    pattern: plain("plain"),
    inks: [stove.cream],
    photo: shot(5, 5, 6, { fallOff: 0.03 }),
  },
  bellwether: {
    make: bellwether,
    pxPerMm: 2.7,
    pattern: { kind: "large-print", repeat: straight(10.25 * INCH, 21 * INCH), directionDeg: null },
    inks: [
      mixHex(stove.cream, stove.straw, 0.34),
      stove.bottle,
      stove.fern,
      stove.lichen,
      mixHex(mixHex(stove.cream, stove.straw, 0.34), stove.lichen, 0.55),
      stove.brick,
    ],
    photo: shot(20.5, 32, 2.7, { turnDeg: -0.1, fallOff: 0.04 }),
  },
  lovage: {
    make: lovage,
    pxPerMm: 2.7,
    pattern: { kind: "large-print", repeat: halfDrop(18 * INCH, 20.25 * INCH), directionDeg: null },
    inks: [harbour.chalk, harbour.ink, harbour.tide, harbour.clay, harbour.straw],
    photo: shot(30, 31, 2.7, { turnDeg: 0.15, fallOff: 0.05 }),
  },
  deckhouse: {
    make: deckhouse,
    pxPerMm: 4,
    pattern: { kind: "stripe", repeat: bands(9 * INCH), directionDeg: 90 },
    inks: [harbour.chalk, harbour.clay, harbour.straw, harbour.ink, harbour.blush, harbour.tide],
    photo: shot(14, 10, 4, { turnDeg: 0.2 }),
  },
  slipway: {
    make: slipway,
    pxPerMm: 6.3,
    pattern: { kind: "stripe", repeat: bands(2.25 * INCH), directionDeg: 90 },
    inks: [harbour.chalk, harbour.ink],
    photo: shot(7, 6, 6, { turnDeg: -0.2, format: "webp" }),
  },
  peppercorn: {
    make: peppercorn,
    pxPerMm: 6.5,
    pattern: { kind: "small-print", repeat: halfDrop(0.75 * INCH, 1.5 * INCH), directionDeg: null },
    inks: [harbour.ink, harbour.chalk, harbour.blush, harbour.mist],
    photo: shot(6, 6, 6, { turnDeg: 0.2 }),
  },
  mizzle: {
    make: mizzle,
    pxPerMm: 7.2,
    pattern: plain("textured-plain"),
    inks: [mixHex(harbour.slate, harbour.mist, 0.24), mixHex(harbour.slate, harbour.ink, 0.17)],
    photo: shot(6, 6, 6, { turnDeg: -0.1 }),
  },
  ripple: {
    make: ripple,
    pxPerMm: 6,
    pattern: { kind: "geometric", repeat: straight(3.375 * INCH, 5.25 * INCH), directionDeg: null },
    inks: [harbour.chalk, harbour.ink, harbour.clay, harbour.straw, harbour.tide, harbour.blush],
    photo: shot(8, 9, 5, { turnDeg: 0.1 }),
  },
};
