import { clothFacts, length } from "./tradeContext.ts";

/** The cloths that the samples are made of. */
export const CLOTHS = [
  clothFacts({
    id: "fern",
    name: "Fern",
    usableWidth: length('54"'),
    repeat: {
      up: length('9"'),
      across: length('13 1/2"'),
      match: "half-drop",
      fromSelvedge: length('6 3/4"'),
    },
  }),
  clothFacts({ id: "slub", name: "Slub", usableWidth: length('54"'), mayTurn: true }),
  clothFacts({
    id: "rope",
    name: "Rope",
    type: "wallcovering",
    roll: { width: length('6"'), length: length("5 yd") },
  }),
  clothFacts({
    id: "leaf",
    name: "Leaf",
    type: "wallcovering",
    roll: { width: length('20 1/2"'), length: length("11 yd") },
  }),
];
const SEAT = [
  { piece: "inside-back", size: '34" x 24"', centred: "yes" },
  { piece: "outside-back", size: '60" x 26"', join: "both-sides" },
  { piece: "cushion-top", size: '22" x 24"', centred: "yes", count: "2" },
  { piece: "cushion-bottom", size: '22" x 24"', count: "2", cloth: "slub" },
  { piece: "boxing", size: '44" x 5"', count: "4" },
  { piece: "back-cushion-front", size: '22" x 20"', count: "2" },
  { piece: "front-border", size: '46" x 8"' },
  { piece: "inside-arm", size: '26" x 24"' },
  { piece: "outside-arm", size: '32" x 20"' },
  { piece: "arm-front", size: '6" x 20"' },
];
/** An item of every kind and form, as a room's file says it. */
export const SAMPLES: readonly { kind: string; raw: Record<string, unknown> }[] = [
  {
    kind: "sofa",
    raw: {
      sofa: "S",
      cloth: "fern",
      size: '62" x 34" x 32"',
      welt: "slub",
      "welt-length": "14 yd",
      pieces: SEAT,
    },
  },
  { kind: "sofa", raw: { sofa: "S", cloth: "fern", type: "sofa", size: '84" x 36" x 32"' } },
  {
    kind: "dining-chair",
    raw: {
      "dining-chair": "D",
      cloth: "fern",
      size: '19" x 21" x 38"',
      welt: "slub",
      "welt-length": "3 yd",
      pieces: [
        { piece: "seat", size: '20" x 19"', centred: "yes" },
        { piece: "inside-back", size: '16" x 16"', centred: "yes" },
        { piece: "outside-back", size: '16" x 17"' },
      ],
    },
  },
  {
    kind: "dining-chair",
    raw: { "dining-chair": "D", cloth: "fern", type: "seat", arms: "yes", size: '22" x 21" x 38"' },
  },
  {
    kind: "drop-in-seat",
    raw: {
      "drop-in-seat": "D",
      cloth: "fern",
      size: '18" x 16"',
      "back-width": '15"',
      thickness: '2"',
      count: "6",
    },
  },
  {
    kind: "ottoman",
    raw: {
      ottoman: "O",
      cloth: "fern",
      size: '36" x 24" x 17"',
      legs: '5"',
      welt: "slub",
      buttons: "6",
    },
  },
  {
    kind: "ottoman",
    raw: { ottoman: "O", cloth: "fern", size: '20" x 20" x 17"', shape: "round", legs: '0"' },
  },
  {
    kind: "headboard",
    raw: {
      headboard: "H",
      cloth: "fern",
      size: '60" x 3" x 40"',
      buttons: "14",
      buttoning: "deep",
      fixing: "wall",
      weight: "14 kg",
    },
  },
  {
    kind: "headboard",
    raw: {
      headboard: "H",
      cloth: "fern",
      size: '40" x 3" x 36"',
      border: '4"',
      "border-cloth": "slub",
      welt: "slub",
      shape: "arched",
      rise: '6"',
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "fern",
      size: '17" x 16"',
      "back-width": '14"',
      thickness: '2"',
      edge: { welt: "slub" },
      ties: "2",
      buttons: "4",
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "fern",
      back: "slub",
      size: '70" x 18"',
      thickness: '3"',
      boxing: "slub",
      join: "both-sides",
    },
  },
  {
    kind: "seat-pad",
    raw: {
      "seat-pad": "P",
      cloth: "slub",
      size: '13" x 13"',
      shape: "round",
      fastening: "non-slip",
    },
  },
  {
    kind: "panelled-wall",
    raw: {
      "panelled-wall": "W",
      at: { wall: "north", "from-left": '6"' },
      size: '120" x 88"',
      panels: "5",
      cloth: "fern",
      trim: "gimp",
    },
  },
  {
    kind: "panelled-wall",
    raw: {
      "panelled-wall": "W",
      at: { wall: "north" },
      size: '120" x 88"',
      panels: "3",
      lower: '24"',
    },
  },
  {
    kind: "wallpaper",
    raw: {
      wallpaper: "W",
      cloth: "leaf",
      on: "walls",
      borders: [
        { cloth: "rope", at: "ceiling" },
        { cloth: "rope", at: "rail", height: '36"' },
      ],
    },
  },
];
