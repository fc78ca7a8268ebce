import { changed, ROOM } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** Lengths, sizes and repeats that cannot be used as they are written. */
export const MEASURES: readonly Fault[] = [
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
    name: "metres without their unit",
    files: changed(ROOM, `size: 20" x 20"`, `size: 3.6 x 3.2 m`),
    says: [
      'projects/quay/dining-room.md:24:11 error length-without-unit: “3.6” has no unit (measure 1 of “3.6 x 3.2 m”). -> Write 3.6 m for metres, or 3.6", 3.6 ft or 3.6 cm, as it was measured.',
    ],
  },
];
