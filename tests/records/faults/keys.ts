import { changed, ROOM } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** Keys, words, lists and values that cannot stand where they stand. */
export const KEYS: readonly Fault[] = [
  {
    name: "a key twice",
    files: changed(ROOM, `anchor: tiled-stove`, "anchor: tiled-stove\nanchor: fern-trellis"),
    says: [
      "projects/quay/dining-room.md:11:1 error key-twice: “anchor” stands here already, on line 10. -> Keep one of the two.",
    ],
  },
  {
    name: "a key in both vocabularies",
    files: changed(
      "studio.md",
      `paper: tabloid`,
      `paper: tabloid\nmark-color: "#ffffff"\nmark-colour: "#eeeeee"`,
    ),
    says: [
      "studio.md:8:1 error key-twice: “mark-colour” means the same as “mark-color”, which stands here already, on line 7. -> Keep one of the two.",
    ],
  },
  {
    name: "a misspelt key",
    files: changed(ROOM, `heading: pinch-pleat`, `headnig: pinch-pleat`),
    says: [
      "projects/quay/dining-room.md:19:5 error key-unknown: “headnig” is not a key that can stand here. -> Did you mean heading?",
    ],
  },
  {
    name: "a key of the other vocabulary, misspelt",
    files: changed("studio.md", `paper: tabloid`, `paper: tabloid\nmark-colr: "#ffffff"`),
    says: [
      "studio.md:7:1 error key-unknown: “mark-colr” is not a key that can stand here. -> Did you mean mark-colour?",
    ],
  },
  {
    name: "one size for what has a width and a drop",
    files: changed(
      ROOM,
      `items:`,
      `items:\n  - blind: Lane window\n    cloth: fern-trellis\n    size: 40" x 50"`,
    ),
    says: [
      "projects/quay/dining-room.md:15:5 error key-unknown: “size” is not a key that can stand here. -> Did you mean width?",
    ],
  },
  {
    name: "a key that is not there",
    files: changed(ROOM, `, sill: 30"`, ``),
    says: [
      'projects/quay/dining-room.md:9:9 error key-missing: “sill” is missing here (from the floor to the sill). -> Add it, for example sill: 30"',
    ],
  },
  {
    name: "a key of JavaScript's",
    files: changed(ROOM, `anchor: tiled-stove`, `__proto__: { polluted: yes }`),
    says: [
      'projects/quay/dining-room.md:10:1 error key-unknown: "__proto__" is not a key that can stand here. -> Take the line out.',
    ],
  },
  {
    name: "a key with nothing behind it",
    files: changed(ROOM, `maker: workroom`, `maker:`),
    says: [
      'projects/quay/dining-room.md:20:5 error value-empty: Nothing is written after "maker:". -> Write it, or put # before the line until it is known.',
    ],
  },
  {
    name: "a hyphen with nothing behind it",
    files: changed(ROOM, `  - cushion: Window seat`, `  -\n  - cushion: Window seat`),
    says: [
      "projects/quay/dining-room.md:13:3 error value-empty: Nothing is written after this hyphen or comma. -> Write the entry, or take it out.",
    ],
  },
  {
    name: "an unknown word",
    files: changed(ROOM, `pinch-pleat`, `pinch-plaet`),
    says: [
      "projects/quay/dining-room.md:19:14 error word-unknown: “pinch-plaet” is not one of the words that can stand here. -> Did you mean pinch-pleat?",
    ],
  },
  {
    name: "an unknown kind of item",
    files: changed(ROOM, `cushion: Window seat`, `cusion: Window seat`),
    says: [
      "projects/quay/dining-room.md:21:5 error item-kind-unknown: “cusion” is not a kind of item. -> Did you mean cushion?",
    ],
  },
  {
    name: "a list without brackets",
    files: changed(ROOM, `[fern-trellis, { slub-linen: plain }]`, `fern-trellis, slub-linen`),
    says: [
      "projects/quay/dining-room.md:11:9 error list-wanted: “fern-trellis, slub-linen” is read as one entry: a list stands between [ and ]. -> Put it between [ and ]. The line should read:\ncloths: [fern-trellis, slub-linen]",
    ],
  },
  {
    name: "a list of one without brackets",
    files: changed(ROOM, `[fern-trellis, { slub-linen: plain }]`, `fern-trellis`),
    says: [
      "projects/quay/dining-room.md:11:9 error list-wanted: A list is wanted here, even for one entry. -> Put it between [ and ]. The line should read:\ncloths: [fern-trellis]",
    ],
  },
  {
    name: "a list of one as keys",
    files: {
      [ROOM]: '---\nroom: A\nitems:\n  cushion: B\n  cloth: slub-linen\n  size: 20" x 20"\n---\n',
    },
    says: [
      "projects/quay/dining-room.md:4:3 error list-wanted: A list is wanted here, even for one entry. -> Put a hyphen and a space before its first key, and set the keys below it in by two spaces more. The line should read:\n  - cushion: B",
    ],
  },
  {
    name: "a list of one between { }",
    files: changed(
      "projects/quay/project.md",
      `[{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]`,
      `{ deposit: 50%, due: approval }`,
    ),
    says: [
      "projects/quay/project.md:5:16 error list-wanted: A list is wanted here, even for one entry. -> Put it between [ and ]. The line should read:\ninstalments: [{ deposit: 50%, due: approval }]",
    ],
  },
  {
    name: "words where keys are wanted",
    files: changed(
      "cloths/fern-trellis.md",
      `{ up: 25 1/4", across: 13 1/2", match: half-drop }`,
      `25 1/4"`,
    ),
    says: [
      'cloths/fern-trellis.md:5:9 error keys-wanted: Keys are wanted here, not words alone. -> Write it as { up: 25 1/4", across: 13 1/2" }.',
    ],
  },
  {
    name: "keys where a rate in words is wanted: how one is written",
    files: changed("studio.md", "curtains: 48 per width", "curtains: { width: 48 }"),
    says: [
      "studio.md:11:78 error words-wanted: Words are wanted here, not keys. -> Write it for example as 48 per width. If the words have a colon, put them in quotes.",
    ],
  },
  {
    name: "keys where words are wanted",
    files: changed(
      "studio.md",
      `paper: tabloid`,
      `paper: tabloid\nterms:\n  - Payment: half on order`,
    ),
    says: [
      'studio.md:8:5 error words-wanted: Words are wanted here, not keys. -> If the words have a colon, put them in quotes. The line should read:\n  - "Payment: half on order"',
    ],
  },
  {
    name: "a list where one value is wanted",
    files: changed(ROOM, `maker: workroom`, `maker: [workroom]`),
    says: [
      "projects/quay/dining-room.md:20:12 error list-unwanted: One value is wanted here, not a list. -> Write one value without [ and ] and without hyphens.",
    ],
  },
  {
    name: "an item of words alone",
    files: changed(ROOM, `  - cushion: Window seat`, `  - two cushions\n  - cushion: Window seat`),
    says: [
      "projects/quay/dining-room.md:21:5 error keys-wanted: An item is written as keys, not as words alone. -> Write for example - cushion: Window seat, and its other keys below.",
    ],
  },
  {
    name: "a number of colours that is too high",
    files: changed(ROOM, `anchor: tiled-stove`, `colours: 7`),
    says: [
      "projects/quay/dining-room.md:10:10 error count-unreadable: “7” is not a whole number from 2 to 5. -> Write it in figures, without a unit.",
    ],
  },
  {
    name: "a colour that is none",
    files: changed(ROOM, `anchor: tiled-stove`, `colours: ["#efe3c"]`),
    says: [
      'projects/quay/dining-room.md:10:11 error colour-unreadable: “#efe3c” is not a colour. -> Write for example "#efe3c8", with the quotes.',
    ],
  },
];
