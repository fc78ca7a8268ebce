import { changed, ROOM, STUDIO } from "./studio.ts";

/** Faults in the small studio's files, and exactly what is said of each. */
export const FAULTS: readonly {
  readonly name: string;
  readonly files: Readonly<Record<string, string | null>>;
  readonly says: readonly string[];
}[] = [
  {
    name: "a length without its unit",
    files: changed(ROOM, `drop: 92"`, "drop: 92"),
    says: [
      'projects/quay/dining-room.md:18:11 error length-without-unit: “92” has no unit. -> Write 92" for inches or 92 cm for centimetres.',
    ],
  },
  {
    name: "a negative length",
    files: changed(ROOM, `drop: 92"`, `drop: -92"`),
    says: [
      'projects/quay/dining-room.md:18:11 error length-negative: “-92"” is less than nothing. -> Take the minus sign away.',
    ],
  },
  {
    name: "a length of nothing where cloth hangs",
    files: changed(ROOM, `drop: 92"`, `drop: 0"`),
    says: [
      "projects/quay/dining-room.md:18:11 error length-zero: This length is zero. -> Write the measure, or leave the line out until it is known.",
    ],
  },
  {
    name: "an unknown unit",
    files: changed(ROOM, `drop: 92"`, `drop: 92 ells`),
    says: [
      'projects/quay/dining-room.md:18:11 error length-unit-unknown: “ells” is not a unit of length. -> Write for example 84", 7\' 2", 2.14 m or 214 cm.',
    ],
  },
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
    name: "rolls where a length is wanted",
    files: changed(ROOM, `drop: 92"`, `drop: 5 rolls`),
    says: [
      "projects/quay/dining-room.md:18:11 error length-unit-unknown: “rolls” is not a unit of length. -> Write the length of all of them together: 5 rolls of 10.05 m are 50.25 m.",
    ],
  },
  {
    name: "a comma that can be read in two ways",
    files: changed(ROOM, `drop: 92"`, `drop: 2,140 mm`),
    says: [
      "projects/quay/dining-room.md:18:11 error length-comma: “2,140 mm” can be read in two ways: with a thousands comma or a decimal comma. -> Write 2140 mm or 2.140 mm.",
    ],
  },
  {
    name: "an inch mark that was taken for a quotation mark",
    files: changed(ROOM, `drop: 92"`, `drop: "92"`),
    says: [
      'projects/quay/dining-room.md:18:11 error quote-ate-mark: The marks around "92" are quotation marks, so the number has no unit. -> Take the first mark away; the second is then the inch mark. The line should read:\n    drop: 92"',
    ],
  },
  {
    name: "a foot mark that was taken for a quotation mark, in { }",
    files: changed(ROOM, `from-left: 4' 2"`, `from-left: '4'`),
    says: [
      "projects/quay/dining-room.md:9:35 error quote-ate-mark: The marks around '4' are quotation marks, so the number has no unit. -> Take the first mark away; the second is then the foot mark. The line should read:\n      - { window: bay, from-left: 4', size: 72\" x 60\", sill: 30\" }",
    ],
  },
  {
    name: "a size with one measure",
    files: changed(ROOM, `size: 20" x 20"`, `size: 20"`),
    says: [
      'projects/quay/dining-room.md:24:11 error size-parts: “20"” is not width x height. -> Write for example 20" x 20" or 50 cm x 50 cm.',
    ],
  },
  {
    name: "a size whose measures have no unit",
    files: changed(ROOM, `size: 20" x 20"`, `size: 20 x 20`),
    says: [
      'projects/quay/dining-room.md:24:11 error length-without-unit: “20” has no unit (measure 1 of “20 x 20”). -> Write 20" for inches or 20 cm for centimetres.',
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
    name: "a sample that arrives before it was ordered and is approved before it came",
    files: changed(
      "cloths/slub-linen.md",
      "kind: plain",
      "kind: plain\nsample: { ordered: 2026-03-04, arrived: 2025-03-09, approved: 2025-03-01 }",
    ),
    says: [
      "cloths/slub-linen.md:5:32 warning days-out-of-order: This sample arrived on 2025-03-09, before it was ordered, on 2026-03-04. -> Look which of the two days is wrong; often it is the year.",
      "cloths/slub-linen.md:5:53 warning days-out-of-order: This sample was approved on 2025-03-01, before it arrived, on 2025-03-09. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "measures that were checked before they were taken",
    files: changed(
      ROOM,
      "anchor: tiled-stove",
      "anchor: tiled-stove\nmeasured: { by: studio, on: 2026-10-02, checked: 2026-01-20 }",
    ),
    says: [
      "projects/quay/dining-room.md:11:41 warning days-out-of-order: These measures were checked on 2026-01-20, before the room was measured, on 2026-10-02. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a pole that came before it was ordered",
    files: changed(
      ROOM,
      'drop: 92"',
      'drop: 92"\n    hardware: [{ what: pole, ordered: 2026-12-01, arrived: 2026-01-20 }]',
    ),
    says: [
      "projects/quay/dining-room.md:19:51 warning days-out-of-order: This came on 2026-01-20, before it was ordered, on 2026-12-01. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a fitting, and an end of the prices, before the proposal is dated",
    files: changed(
      "projects/quay/project.md",
      "status: proposed",
      "status: proposed\ndated: 2026-11-20\nfitting: 2026-03-08\nprices-hold: 2026-01-15",
    ),
    says: [
      "projects/quay/project.md:6:1 warning days-out-of-order: The fitting is on 2026-03-08, before these documents are dated, on 2026-11-20. -> Look which of the two days is wrong; often it is the year.",
      "projects/quay/project.md:7:1 warning days-out-of-order: These prices end on 2026-01-15, before these documents are dated, on 2026-11-20. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a cloth and a repeat whose unit is wrong",
    files: changed(
      "cloths/slub-linen.md",
      "width: 137 cm",
      "width: 1370 cm\nrepeat: { up: 640 cm }",
    ),
    says: [
      "cloths/slub-linen.md:3:1 warning size-unlikely: This cloth is 1370 cm wide; cloth is 30 to 350 cm (12 to 138 in) wide, mostly about 140 cm (54 in). -> Look at its unit and its point.",
      "cloths/slub-linen.md:4:11 warning size-unlikely: This pattern is 640 cm high to where it repeats; few repeats are over 1 m (40 in). -> Look at its unit and its point.",
    ],
  },
  {
    name: "a first motif beyond the next one, and lengths in which no cloth is sold",
    files: {
      ...changed(
        "cloths/slub-linen.md",
        "kind: plain",
        "repeat: { up: 64 cm, across: 68.5 cm, from-selvedge: 343 cm }\nprice: { trade: 38.00, per: yard, minimum: 300 yd, bolt: { length: 3 m, trade: 29.00 } }",
      ),
      "cloths/fern-paper.md":
        "---\ncloth: Fern paper\nroll: { width: 53 cm, length: 100.5 m }\nmatched: no\n---\n",
    },
    says: [
      "cloths/fern-paper.md:3:23 warning size-unlikely: This roll is 100.5 m long; most rolls are about 10 m (11 yd) long, and few over 50 m. -> Look at its unit and its point.",
      "cloths/slub-linen.md:4:39 warning size-unlikely: The first motif stands 343 cm from the left selvedge, and the pattern comes again every 68.5 cm. -> Look at its unit and its point; it is measured to the middle of the motif nearest the left selvedge.",
      "cloths/slub-linen.md:5:35 warning size-unlikely: The shortest length that is sold is 300 yd long; few suppliers ask for more than some metres or yards, and none for more than a bolt. -> Look at its unit and its point.",
      "cloths/slub-linen.md:5:60 warning size-unlikely: This bolt is 3 m long; bolts are mostly 25 to 60 m long. -> Look at its unit and its point.",
    ],
  },
  {
    name: "cloth that came before it was ordered, and a fitting before both",
    files: changed(
      "projects/quay/project.md",
      "status: proposed",
      "status: ordered\nfitting: 2026-03-08\norders: [{ cloth: slub-linen, length: 3 yd, on: 2027-01-04 }, { cloth: slub-linen, length: 1 yd, on: 2027-01-11 }]\nreceipts: [{ cloth: slub-linen, lot: 1, length: 3 yd, on: 2026-01-20 }]",
    ),
    says: [
      "projects/quay/project.md:5:1 warning days-out-of-order: The fitting is on 2026-03-08, before slub-linen was ordered, on 2027-01-11. -> Look which of the two days is wrong; often it is the year.",
      "projects/quay/project.md:7:55 warning days-out-of-order: This came on 2026-01-20, before slub-linen was first ordered, on 2027-01-04. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a copy of a room that was left in its folder",
    files: { "projects/quay/dining-room copy.md": STUDIO[ROOM] as string },
    says: [
      "projects/quay/dining-room.md:2:1 warning room-called-twice: The room in dining-room copy.md is called Dining room too, and both are drawn, bought for and charged. -> Give one of them another name; or, if it is a copy, move it out of the project's folder.",
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
    name: "a photograph that is not there",
    files: changed("cloths/fern-trellis.md", `fern-trellis.jpg`, `Fern-Trellis.jpg`),
    says: [
      "cloths/fern-trellis.md:3:16 error picture-missing: There is no picture “Fern-Trellis.jpg” beside this file. -> Did you mean fern-trellis.jpg?",
    ],
  },
  {
    name: "a photograph elsewhere",
    files: changed("cloths/fern-trellis.md", `fern-trellis.jpg`, `../fern-trellis.jpg`),
    says: [
      "cloths/fern-trellis.md:3:16 error picture-name: “../fern-trellis.jpg” is not in the card's own folder. -> Put the picture beside the card, and write its name alone.",
    ],
  },
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
    name: "a repeat without a length",
    files: changed(
      "cloths/fern-trellis.md",
      `{ up: 25 1/4", across: 13 1/2", match: half-drop }`,
      `{ match: half-drop }`,
    ),
    says: [
      'cloths/fern-trellis.md:5:1 error repeat-without-length: This repeat has no length. -> Add up: and across:, as the supplier states them, for example up: 25 1/4", across: 13 1/2".',
    ],
  },
  {
    name: "parts that are due at no time",
    files: changed(
      "projects/quay/project.md",
      "instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]",
      "instalments:\n  - { deposit: 40%, due: aproval }\n  - { interim: 30%, due: 02/01/2027 }\n  - { interim: 10%, due: On delivery }\n  - { balance: rest, due: the fitting }",
    ),
    says: [
      "projects/quay/project.md:6:26 error due-unknown: “aproval” is not when a part can be due. -> Did you mean approval?",
      "projects/quay/project.md:7:26 error date-unreadable: “02/01/2027” can mean two different days. -> Write the year first: 2027-01-02, or 2027-02-01.",
      "projects/quay/project.md:8:26 error due-unknown: “On delivery” is not when a part can be due. -> Write one of these: approval, order, fitting; or a date, as 2027-01-15.",
    ],
  },
  {
    name: "a repeat of a free match, which has none",
    files: changed(
      "cloths/fern-trellis.md",
      `{ up: 25 1/4", across: 13 1/2", match: half-drop }`,
      `{ match: free }`,
    ),
    says: [
      "cloths/fern-trellis.md:5:1 error repeat-without-length: This repeat has no length. -> Where nothing has to meet at a join write matched: no in place of this line; else add up: for the repeat along the length.",
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
  {
    name: "a date that can mean two days",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 3/4/26`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “3/4/26” can mean two different days. -> Write the year first: 2026-04-03, or 2026-03-04.",
    ],
  },
  {
    name: "a date that can mean one day alone",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 30/04/2027`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “30/04/2027” is not a date as it is written here. -> Write the year first: 2027-04-30.",
    ],
  },
  {
    name: "a date in words",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 26th November 2026`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “26th November 2026” is not a date as it is written here. -> Write the year first: 2026-11-26.",
    ],
  },
  {
    name: "a fee that is a share, written as a sum",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfees: { design: 10 % }`,
    ),
    says: [
      "projects/quay/project.md:5:17 error amount-unreadable: “10 %” is a share, and a sum of money is wanted here. -> Write the sum. A fee may also be { share: 10 % }.",
    ],
  },
  {
    name: "metres without their unit",
    files: changed(ROOM, `size: 20" x 20"`, `size: 3.6 x 3.2 m`),
    says: [
      'projects/quay/dining-room.md:24:11 error length-without-unit: “3.6” has no unit (measure 1 of “3.6 x 3.2 m”). -> Write 3.6 m for metres, or 3.6", 3.6 ft or 3.6 cm, as it was measured.',
    ],
  },
  {
    name: "a day that is not in the calendar",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 2026-02-30`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “2026-02-30” is not a date: February 2026 has 28 days. -> Write the year, the month and the day: 2026-03-04 is the fourth of March 2026.",
    ],
  },
  {
    name: "a share above the whole",
    files: changed("projects/quay/project.md", `deposit: 50%`, `deposit: 150%`),
    says: [
      "projects/quay/project.md:5:26 error instalment-too-much: “150%” is more than the whole. -> Write for example 50 %, or rest for what is left.",
    ],
  },
  {
    name: "an instalment of nothing",
    files: changed("projects/quay/project.md", `deposit: 50%, `, ``),
    says: [
      "projects/quay/project.md:5:15 error instalment-unclear: This instalment does not say what is to be paid. -> Write one of deposit, interim and balance, for example { deposit: 50%, due: approval }.",
    ],
  },
  {
    name: "a sum of less than nothing",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: -38.00`),
    says: [
      "cloths/fern-trellis.md:8:17 error amount-negative: “-38.00” is less than nothing. -> Take the minus sign away.",
    ],
  },
  {
    name: "a sum in another currency",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: € 38.00`),
    says: [
      "cloths/fern-trellis.md:8:17 error currency-other: “€ 38.00” is marked €, but the studio reckons in USD. -> Write the sum in USD, without a mark, or change the currency in studio.md.",
    ],
  },
  {
    name: "a sum with a point before its thousands, as much of the world writes it",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: 1.200`),
    says: [
      "cloths/fern-trellis.md:8:17 error sum-thousands: “1.200” can be read in two ways: as 1200, or as 1.20. -> Write 1200 or 1.20.",
    ],
  },
  {
    name: "a sum finer than the smallest coin",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: 38.005`),
    says: [
      "cloths/fern-trellis.md:8:17 error sum-too-fine: “38.005” is finer than the smallest coin of USD. -> Write it with 2 figures after the point.",
    ],
  },
  {
    name: "a currency that is none",
    files: changed("studio.md", `currency: USD`, `currency: dollars`),
    says: [
      "studio.md:5:11 error currency-unknown: “dollars” is not a currency's code. -> Write for example USD, CAD, GBP or EUR.",
    ],
  },
  {
    name: "an allowance that its kind does not know",
    files: changed("studio.md", `hem: 10"`, `hme: 10"`),
    says: [
      "studio.md:9:27 error key-unknown: “hme” is not a key that can stand here. -> Did you mean hem?",
    ],
  },
  {
    name: "an allowance of another sort",
    files: changed("studio.md", `fullness: 2.5`, `fullness: 10"`),
    says: [
      'studio.md:9:47 error ratio-unreadable: “10"” is not a number of more than zero. -> Write it in figures, without a unit.',
    ],
  },
  {
    name: "a maker's work that is misspelt",
    files: changed("studio.md", `makes: [curtains, cushion]`, `makes: [curtians, cushion]`),
    says: [
      "studio.md:11:39 error work-unknown: “curtians” is no kind of item or work that is known here. -> Did you mean curtains?",
    ],
  },
  {
    name: "a rate that is misspelt",
    files: changed(
      "studio.md",
      `rates: { curtains: 48 per width }`,
      `rates: { curtians: 48 per width }`,
    ),
    says: [
      "studio.md:11:68 error work-unknown: “curtians” is no kind of item or work that is known here. -> Did you mean curtains?",
    ],
  },
  {
    name: "a rate for an unknown measure",
    files: changed("studio.md", `48 per width`, `48 per ell`),
    says: [
      'studio.md:11:78 error rate-unit-unknown: A rate cannot be "per ell". -> After "per" may stand: item, width, drop, yard, metre, roll, hour, day, square-metre, square-foot.',
    ],
  },
  {
    name: "a waiver of no finding",
    files: changed(
      ROOM,
      `anchor: tiled-stove`,
      `accept: [{ finding: rungs-closed, because: So. }]`,
    ),
    says: [
      "projects/quay/dining-room.md:10:21 error finding-unknown: There is no finding called “rungs-closed”. -> Did you mean rungs-close?",
    ],
  },
  {
    name: "a waiver of a cloth that is misspelt",
    files: changed(
      ROOM,
      `anchor: tiled-stove`,
      `accept: [{ finding: rungs-close, of: [fern-treliss], because: So. }]`,
    ),
    says: [
      "projects/quay/dining-room.md:10:39 error accepted-unknown: Nothing here is called “fern-treliss”. -> Did you mean fern-trellis?",
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
  {
    name: "a cloth of the mix that is used nowhere",
    files: changed(ROOM, `cloth: slub-linen`, `cloth: fern-trellis`),
    says: [
      "projects/quay/dining-room.md:11:26 warning cloth-unused: “slub-linen” is in the mix, but no item is made of it. -> Use it for an item, or take it out of the mix.",
    ],
  },
  {
    name: "a room without items",
    files: { [ROOM]: "---\nroom: A\n---\n" },
    says: [
      'projects/quay/dining-room.md:2:1 warning room-without-items: Nothing is listed in this room yet. -> Write what is to be made or placed below "items:".',
    ],
  },
  {
    name: "a project without rooms",
    files: { [ROOM]: null },
    says: [
      "projects/quay/project.md:null:null warning project-without-rooms: This project has no room yet. -> Write a file for each room beside project.md.",
    ],
  },
  {
    name: "a project without its card",
    files: { "projects/quay/project.md": null },
    says: [
      "projects/quay/project.md:null:null error project-card-missing: The project “quay” has no project.md. -> Write one, or let roomcloth begin it: roomcloth new project",
    ],
  },
  {
    name: "a studio without its card",
    files: { "studio.md": null },
    says: [
      "studio.md:null:null error studio-missing: There is no studio.md. -> Write one, or let roomcloth begin it: roomcloth new studio DIR",
    ],
  },
  {
    name: "a room that the project's list leaves out",
    files: {
      ...changed("projects/quay/project.md", `status: proposed`, `status: proposed\nrooms: [hall]`),
      "projects/quay/hall.md": "---\nroom: Hall\n---\n",
    },
    says: [
      'projects/quay/hall.md:2:1 warning room-without-items: Nothing is listed in this room yet. -> Write what is to be made or placed below "items:".',
      "projects/quay/project.md:5:1 warning room-not-listed: The room “dining-room” is not in this list; it comes after the others. -> Add it where it should come.",
    ],
  },
  {
    name: "a room in the project's list that is not there",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nrooms: [dining-rom]`,
    ),
    says: [
      "projects/quay/project.md:5:1 warning room-not-listed: The room “dining-room” is not in this list; it comes after the others. -> Add it where it should come.",
      "projects/quay/project.md:5:9 error room-unknown: There is no room called “dining-rom”. -> Did you mean dining-room?",
    ],
  },
  {
    name: "a file in another language",
    files: { "cloths/slub-linen.md": "---js\nmodule.exports = {}\n---\n" },
    says: [
      'cloths/slub-linen.md:1:1 error front-matter-language: Front matter in “js” is not read here. -> Write the front matter as plain "key: value" lines, and the first line as three hyphens alone:\n---',
    ],
  },
  {
    name: "a file without front matter",
    files: { "cloths/slub-linen.md": "# Slub linen\n" },
    says: [
      'cloths/slub-linen.md:1:1 error front-matter-missing: This file has no front matter. -> The file should begin with a line of three hyphens, then "key: value" lines, then three hyphens again.',
    ],
  },
  {
    name: "a file that is empty",
    files: { "cloths/slub-linen.md": "" },
    says: [
      'cloths/slub-linen.md:1:1 error file-empty: There is nothing in this file. -> The file should begin with a line of three hyphens, then "key: value" lines, then three hyphens again.',
    ],
  },
  {
    name: "front matter that is not closed",
    files: { "cloths/slub-linen.md": "---\ncloth: Slub linen\n" },
    says: [
      "cloths/slub-linen.md:1:1 error front-matter-unclosed: The front matter is opened here and never closed. -> Put a line of three hyphens below its last key:\n---",
    ],
  },
  {
    name: "a file in no place where it would be read",
    files: { "cloth/velvet.md": "x", "Studio.md": "x" },
    says: [
      "Studio.md:null:null warning file-out-of-place: This file is in no place where it would be read. -> Call it studio.md.",
      "cloth/velvet.md:null:null warning file-out-of-place: This file is in no place where it would be read. -> Call the folder cloths.",
    ],
  },
  {
    name: "two files whose names are too alike",
    files: { "cloths/Slub Linen.md": "---\ncloth: Slub linen\n---\n" },
    says: [
      "cloths/slub-linen.md:null:null error file-twice: This file's name is too like that of cloths/Slub Linen.md. -> Give one of them another name.",
    ],
  },
  {
    name: "faults in several files",
    files: {
      ...changed("studio.md", `currency: USD`, `currency: dollars`),
      ...changed("cloths/fern-trellis.md", `width: 54"`, `widht: 54"`),
      ...changed(ROOM, `drop: 92"`, `drop: 92`),
      "objects/tiled-stove.md": '---\nobject: Stove: tiled\nsize: 30" x 20"\nstays: perhaps\n---\n',
    },
    says: [
      "cloths/fern-trellis.md:4:1 error key-unknown: “widht” is not a key that can stand here. -> Did you mean width?",
      'objects/tiled-stove.md:2:9 error colon-in-words: These words have a colon with a space behind it, so “Stove” is read as a key. -> Put the words in quotes. The line should read:\nobject: "Stove: tiled"',
      "objects/tiled-stove.md:4:8 error yes-or-no: “perhaps” is neither yes nor no. -> Write yes or no.",
      'projects/quay/dining-room.md:18:11 error length-without-unit: “92” has no unit. -> Write 92" for inches or 92 cm for centimetres.',
      "studio.md:5:11 error currency-unknown: “dollars” is not a currency's code. -> Write for example USD, CAD, GBP or EUR.",
    ],
  },
];
