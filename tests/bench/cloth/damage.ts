export const LEVELS = ["clean", "photo", "hard"] as const;
export type Level = (typeof LEVELS)[number];

/** What the way from cloth to file does to a picture of 640 pixels. */
export interface Damage {
  /** Camera turned by up to so many degrees. */
  readonly turnDeg: number;
  /** Each corner moved by up to this part of the picture, both ways. */
  readonly corners: number;
  /** Part by which the light falls across the picture. */
  readonly fall: number;
  /** Contrast that is left: 1 all, 1/3 a third. */
  readonly contrast: number;
  /** Darkest of some soft shadows of folds, 1 for none. */
  readonly folds: number;
  /** Places moved by up to this part of the width in slow waves, as cloth that is not pulled flat. */
  readonly warp: number;
  /** Standard deviation of a Gaussian blur, in pixels. */
  readonly blurPx: number;
  /** Depth of a plain weave of some 3 pixels, as a part of the light. */
  readonly weave: number;
  /** Standard deviation of the camera's noise, in codes of 255. */
  readonly noise: number;
  /** JPEG quality; null for none. */
  readonly jpeg: number | null;
}

export const DAMAGE: Readonly<Record<Level, Damage>> = {
  clean: {
    turnDeg: 0,
    corners: 0,
    fall: 0,
    contrast: 1,
    folds: 1,
    warp: 0,
    blurPx: 0,
    weave: 0,
    noise: 0,
    jpeg: null,
  },
  photo: {
    turnDeg: 3,
    corners: 0.02,
    fall: 0.3,
    contrast: 1,
    folds: 1,
    warp: 0,
    blurPx: 0.7,
    weave: 0.04,
    noise: 3,
    jpeg: 70,
  },
  hard: {
    turnDeg: 3,
    corners: 0.04,
    fall: 0.3,
    contrast: 1 / 3,
    folds: 0.75,
    warp: 0.0015,
    blurPx: 1,
    weave: 0.06,
    noise: 5,
    jpeg: 60,
  },
};
