import type { MadeCloth, MadeRoom } from "./roomOf.ts";

/** A made-up room that holds together, from which each test departs. */
export const GREEN = "#2f5446";
export const CREAM = "#efe4cb";
export const RUST = "#9b4529";
export const GOLD = "#d19c45";

export const print = (motifMm: number, more: Partial<MadeCloth> = {}): MadeCloth => ({
  kind: "large-print",
  motifMm,
  colours: { [CREAM]: 0.6, [GREEN]: 0.25, [RUST]: 0.1, [GOLD]: 0.05 },
  ...more,
});
export const small: MadeCloth = {
  kind: "small-print",
  motifMm: 20,
  colours: { [CREAM]: 0.9, [RUST]: 0.1 },
  card: "fire: test certificate on file",
};
export const stripe: MadeCloth = {
  kind: "stripe",
  motifMm: 60,
  colours: { [CREAM]: 0.6, [GREEN]: 0.4 },
  card: "fire: test certificate on file",
};
export const plain: MadeCloth = {
  kind: "plain",
  colours: { [RUST]: 1 },
  card: "fire: test certificate on file",
};
export const walls = {
  kind: "paint",
  item: "paint-walls",
  title: "Walls",
  surface: "paint",
  colour: GREEN,
  zone: "wall" as const,
  areaMm2: 30e6,
};

export const ROOM: MadeRoom = {
  cloths: { fern: print(180), ticking: stripe, sprig: small, velvet: plain },
  seen: [
    walls,
    { cloth: "fern", kind: "curtains", title: "Bay", zone: "window", areaMm2: 6e6 },
    { cloth: "ticking", kind: "armchair", title: "Chair", zone: "seat", areaMm2: 2e6 },
    { cloth: "sprig", title: "Sprig pair", areaMm2: 0.4e6 },
    { cloth: "velvet", title: "Velvet", areaMm2: 0.6e6 },
  ],
};
export const with_ = (cloths: MadeRoom["cloths"], more: Partial<MadeRoom> = {}): MadeRoom => ({
  ...ROOM,
  ...more,
  cloths: { ...ROOM.cloths, ...cloths },
});
