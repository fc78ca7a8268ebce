import { changed, ROOM, STUDIO } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** A name that nothing has, or that two things have. */
export const NAMES: readonly Fault[] = [
  {
    name: "what a cloth and a maker are called where their own names are wanted",
    files: {
      ...changed(ROOM, "    maker: workroom", "    maker: The Loft\n    lining: Linen in slubs"),
      "cloths/slub-linen.md": "---\ncloth: Linen, in slubs\nwidth: 137 cm\nkind: plain\n---\n",
    },
    says: [
      "projects/quay/dining-room.md:20:12 error maker-unknown: There is no maker called “The Loft”. -> Did you mean workroom?",
      "projects/quay/dining-room.md:21:13 error cloth-unknown: There is no cloth called “Linen in slubs”. -> Did you mean slub-linen?",
    ],
  },
  {
    name: "an unknown cloth that is nearly a known one",
    files: changed(ROOM, `cloth: fern-trellis`, `cloth: fern-treliss`),
    says: [
      "projects/quay/dining-room.md:17:12 error cloth-unknown: There is no cloth called “fern-treliss”. -> Did you mean fern-trellis?",
    ],
  },
  {
    name: "an unknown cloth",
    files: changed(ROOM, `cloth: fern-trellis`, `cloth: velvet`),
    says: [
      "projects/quay/dining-room.md:17:12 error cloth-unknown: There is no cloth called “velvet”. -> Write its card: cloths/velvet.md",
    ],
  },
  {
    name: "an unknown cloth in the mix",
    files: changed(ROOM, `slub-linen: plain`, `slub-linnen: plain`),
    says: [
      "projects/quay/dining-room.md:11:26 error cloth-unknown: There is no cloth called “slub-linnen”. -> Did you mean slub-linen?",
    ],
  },
  {
    name: "an unknown role in the mix",
    files: changed(ROOM, `slub-linen: plain`, `slub-linen: plian`),
    says: [
      "projects/quay/dining-room.md:11:38 error word-unknown: “plian” is not one of the words that can stand here. -> Did you mean plain?",
    ],
  },
  {
    name: "an unknown anchor",
    files: changed(ROOM, `anchor: tiled-stove`, `anchor: iron-stove`),
    says: [
      "projects/quay/dining-room.md:10:9 error anchor-unknown: There is no object or cloth called “iron-stove”. -> Write its card: objects/iron-stove.md or cloths/iron-stove.md",
    ],
  },
  {
    name: "an unknown object",
    files: changed(ROOM, `object: tiled-stove`, `object: tiled-stov`),
    says: [
      "projects/quay/dining-room.md:13:13 error object-unknown: There is no object called “tiled-stov”. -> Did you mean tiled-stove?",
    ],
  },
  {
    name: "an unknown window",
    files: changed(ROOM, `at: bay`, `at: bya`),
    says: [
      "projects/quay/dining-room.md:16:9 error window-unknown: There is no window called “bya”. -> Did you mean bay?",
    ],
  },
  {
    name: "a wall where a window is wanted",
    files: changed(ROOM, `at: bay`, `at: north`),
    says: [
      "projects/quay/dining-room.md:16:9 error window-unknown: There is no window called “north”. -> For a wall write { wall: north }.",
    ],
  },
  {
    name: "an object where a window is wanted",
    files: changed(ROOM, `at: bay`, `at: tiled-stove`),
    says: [
      "projects/quay/dining-room.md:16:9 error window-unknown: There is no window called “tiled-stove”. -> For another item or an object write { on: tiled-stove }.",
    ],
  },
  {
    name: "an unknown wall, named alone where a word for all of them may stand",
    files: changed(
      ROOM,
      "  - cushion: Window seat",
      `  - { paint: Trim, on: Nort, colour: "#efe3c8" }\n  - { paint: All, on: walls, colour: "#efe3c8" }\n  - cushion: Window seat`,
    ),
    says: [
      "projects/quay/dining-room.md:21:24 error wall-unknown: There is no wall called “Nort”. -> Did you mean north?",
    ],
  },
  {
    name: "a slip in a word for walls is told once",
    files: changed(
      ROOM,
      "  - cushion: Window seat",
      `  - { paint: All, on: wals, colour: "#efe3c8" }\n  - cushion: Window seat`,
    ),
    says: [
      "projects/quay/dining-room.md:21:23 error word-unknown: “wals” is not one of the words that can stand here. -> Did you mean walls?",
    ],
  },
  {
    name: "two cloths and three objects that are called alike",
    files: {
      "cloths/slub-2.md": "---\ncloth: slub  Linen\nwidth: 140 cm\nkind: plain\n---\n",
      "objects/stove-2.md": STUDIO["objects/tiled-stove.md"] as string,
      "objects/stove-3.md": STUDIO["objects/tiled-stove.md"] as string,
    },
    says: [
      "cloths/slub-2.md:2:1 warning card-called-twice: Another cloth is called slub  Linen too, in cloths/slub-linen.md: in the documents nobody can tell which is meant. -> Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the cloths folder.",
      "cloths/slub-linen.md:2:1 warning card-called-twice: Another cloth is called Slub linen too, in cloths/slub-2.md: in the documents nobody can tell which is meant. -> Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the cloths folder.",
      "objects/stove-2.md:2:1 warning card-called-twice: Other objects are called Tiled stove too, in objects/stove-3.md and objects/tiled-stove.md: in the documents nobody can tell which is meant. -> Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the objects folder.",
      "objects/stove-3.md:2:1 warning card-called-twice: Other objects are called Tiled stove too, in objects/stove-2.md and objects/tiled-stove.md: in the documents nobody can tell which is meant. -> Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the objects folder.",
      "objects/tiled-stove.md:2:1 warning card-called-twice: Other objects are called Tiled stove too, in objects/stove-2.md and objects/stove-3.md: in the documents nobody can tell which is meant. -> Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the objects folder.",
    ],
  },
  {
    name: "an unknown wall",
    files: changed(ROOM, `at: { wall: north`, `at: { wall: nort`),
    says: [
      "projects/quay/dining-room.md:14:17 error wall-unknown: There is no wall called “nort”. -> Did you mean north?",
    ],
  },
  {
    name: "an unknown item below another",
    files: changed(ROOM, `on: tiled-stove`, `on: sofa`),
    says: [
      "projects/quay/dining-room.md:22:15 error item-unknown: There is no item or object called “sofa”. -> Name an item by its kind and title. There are: object-tiled-stove, curtains-bay, cushion-window-seat.",
    ],
  },
  {
    name: "an unknown item that is touched",
    files: changed(ROOM, `maker: workroom`, `touches: [cushion-window-saet]`),
    says: [
      "projects/quay/dining-room.md:20:15 error item-unknown: There is no item or object called “cushion-window-saet”. -> Did you mean cushion-window-seat?",
    ],
  },
  {
    name: "an object that is not in the room",
    files: {
      ...changed(ROOM, `maker: workroom`, `touches: [rag-rug]`),
      "objects/rag-rug.md": "---\nobject: Rag rug\n---\n",
    },
    says: [
      "projects/quay/dining-room.md:20:15 warning object-not-placed: “rag-rug” is an object of the library, but does not stand in this room. -> Add it to the items: - object: rag-rug",
    ],
  },
  {
    name: "an item that lies on itself",
    files: changed(ROOM, `on: tiled-stove`, `on: cushion-window-seat`),
    says: [
      "projects/quay/dining-room.md:22:11 error standing-in-a-ring: The item cushion-window-seat stands, by way of others or directly, on itself. -> Let one of them stand on the floor or a wall.",
    ],
  },
  {
    name: "an unknown maker",
    files: changed(ROOM, `maker: workroom`, `maker: workrom`),
    says: [
      "projects/quay/dining-room.md:20:12 error maker-unknown: There is no maker called “workrom”. -> Did you mean workroom?",
    ],
  },
  {
    name: "an unknown supplier",
    files: changed("cloths/fern-trellis.md", `supplier: north-mill`, `supplier: east-wharf`),
    says: [
      "cloths/fern-trellis.md:7:11 error supplier-unknown: There is no supplier called “east-wharf”. -> Add it to the suppliers in studio.md. There are: north-mill.",
    ],
  },
  {
    name: "two items of one name",
    files: changed(
      ROOM,
      `  - cushion: Window seat`,
      `  - cushion: window seat!\n    cloth: slub-linen\n    size: 20" x 20"\n  - cushion: Window seat`,
    ),
    says: [
      "projects/quay/dining-room.md:24:5 error item-twice: Another item of this room is called cushion-window-seat already, on line 21. -> Give it another title.",
    ],
  },
  {
    name: "a title that two items have",
    files: {
      [ROOM]:
        "---\nroom: A\nwalls: [{ wall: north, length: 4 m, windows: [{ window: bay, from-left: 0, size: 1 m x 1 m, sill: 0 }] }]\nitems:\n  - { curtains: Bay, at: bay, cloth: slub-linen, heading: eyelet }\n  - { blind: Bay, at: bay, cloth: slub-linen }\n  - { cushion: Seat, cloth: slub-linen, size: 20 cm x 20 cm, touches: [bay] }\n---\n",
    },
    says: [
      "projects/quay/dining-room.md:7:72 error item-unclear: Several items are called “bay”. -> Name one by its kind and title: curtains-bay, blind-bay.",
    ],
  },
  {
    name: "two windows of one name",
    files: changed(
      ROOM,
      `sill: 30" }`,
      `sill: 30" }\n      - { window: bay, from-left: 1', size: 20" x 20", sill: 30" }`,
    ),
    says: [
      "projects/quay/dining-room.md:10:19 error window-twice: Another window is called “bay” already, on line 9. -> Give it another name.",
    ],
  },
];
