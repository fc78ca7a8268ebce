import { harbour, stove } from "./designs/palettes.ts";
import type { LightTile } from "./ground/tile.ts";
import { harbourPicture, PICTURE } from "./objects/harbourPicture.ts";
import { ketchRug, RUG } from "./objects/ketchRug.ts";
import { STOVE, tiledStove } from "./objects/tiledStove.ts";
import type { ShotOptions } from "./photograph.ts";

/** One object of the demo: its picture, drawn whole, and how it was photographed. */
export type DemoObject = {
  make: (pxPerMm: number) => LightTile | Promise<LightTile>;
  pxPerMm: number;
  inks: readonly string[];
  photo: ShotOptions;
};

const whole = (
  size: { widthMm: number; heightMm: number },
  pxPerMm: number,
  metadata: ShotOptions["metadata"],
): ShotOptions => ({
  acrossMm: size.widthMm,
  downMm: size.heightMm,
  pxPerMm,
  turnDeg: 0,
  fallOff: 0.06,
  format: "jpeg",
  profile: "srgb",
  metadata,
});

/** Every object of the demo that has a photograph, by the name of its card. */
export const OBJECTS: Readonly<Record<string, DemoObject>> = {
  "tiled-stove": {
    make: tiledStove,
    pxPerMm: 1.2,
    inks: [stove.bottle, stove.honey, stove.russet, stove.cream, stove.fern, "#2b2927"],
    photo: whole(STOVE, 1.2, "place"),
  },
  "harbour-picture": {
    make: harbourPicture,
    pxPerMm: 2.4,
    inks: [
      harbour.tide,
      harbour.mist,
      harbour.ink,
      harbour.straw,
      harbour.blush,
      harbour.clay,
      harbour.chalk,
    ],
    photo: whole(PICTURE, 2.4, "none"),
  },
  "ketch-rug": {
    make: ketchRug,
    pxPerMm: 0.6,
    inks: [harbour.chalk, harbour.ink, harbour.clay, harbour.straw, harbour.tide, harbour.blush],
    photo: whole(RUG, 0.6, "none"),
  },
};
