import type { Trap } from "./trap.ts";

/** Tabs, hyphens, colons and spaces: how a key or a list begins. */
export const SPACING: readonly Trap[] = [
  {
    name: "a tab before a key",
    yaml: "measured:\n\tby: studio",
    says: [
      "3:1 tab-indent: This line is set in with a tab. -> Set it in with spaces, two for each step. The line should read:\n  by: studio",
    ],
  },
  {
    name: "one tab among keys that are set in with spaces",
    yaml: "items:\n  - cushion: Seat\n    count: 2\n\tcloth: x\n    size: 20",
    says: [
      "5:1 tab-indent: This line is set in with a tab. -> Set it in with spaces, two for each step. The line should read:\n    cloth: x",
    ],
  },
  {
    name: "one tab before a name beside others",
    yaml: "makers:\n  bench:\n    name: Bench\n\tloft:\n    name: Loft",
    says: [
      "5:1 tab-indent: This line is set in with a tab. -> Set it in with spaces, two for each step. The line should read:\n  loft:",
    ],
  },
  {
    name: "tabs before a list",
    yaml: "items:\n\t- cushion: Seat\n\t  cloth: x",
    says: [
      "3:1 tab-indent: This line is set in with a tab. -> Set it in with spaces, two for each step. The line should read:\n  - cushion: Seat",
      "4:1 tab-indent: This line is set in with a tab. -> Set it in with spaces, two for each step. The line should read:\n    cloth: x",
    ],
  },
  {
    name: "a hyphen without its space",
    yaml: "items:\n  -curtains: Bay\n    cloth: x",
    says: [
      "3:3 dash-without-space: A space is missing after the hyphen, so this is not seen as an entry of the list. -> Put a space after the hyphen. The line should read:\n  - curtains: Bay",
    ],
  },
  {
    name: "hyphens without their spaces in a list of names",
    yaml: "cloths:\n  -fern\n  -ikat",
    says: [
      "3:3 dash-without-space: A space is missing after the hyphen, so this is not seen as an entry of the list. -> Put a space after the hyphen. The line should read:\n  - fern",
      "4:3 dash-without-space: A space is missing after the hyphen, so this is not seen as an entry of the list. -> Put a space after the hyphen. The line should read:\n  - ikat",
    ],
  },
  {
    name: "a bullet for a hyphen",
    yaml: "cloths:\n  • fern\n  • ikat",
    says: [
      "3:3 dash-odd: A list's entries begin with a hyphen here, not with •. -> Type a hyphen and a space. The line should read:\n  - fern",
      "4:3 dash-odd: A list's entries begin with a hyphen here, not with •. -> Type a hyphen and a space. The line should read:\n  - ikat",
    ],
  },
  {
    name: "an asterisk for a hyphen",
    yaml: "items:\n  * cushion: Seat",
    says: [
      "3:3 dash-odd: A list's entries begin with a hyphen here, not with *. -> Type a hyphen and a space. The line should read:\n  - cushion: Seat",
    ],
  },
  {
    name: "a dash for a hyphen",
    yaml: "items:\n  – cushion: Seat",
    says: [
      "3:3 dash-odd: A list's entries begin with a hyphen here, not with –. -> Type a hyphen and a space. The line should read:\n  - cushion: Seat",
    ],
  },
  {
    name: "a colon without its space",
    yaml: "height:8' 9\"\nroom: A",
    says: [
      '2:7 colon-without-space: A space is missing after "height:". -> Put a space after the colon. The line should read:\nheight: 8\' 9"',
    ],
  },
  {
    name: "a colon without its space in { }",
    yaml: "walls: [{ wall:north, length: 4 m }]",
    says: [
      '2:15 colon-without-space: A space is missing after "wall:". -> Put a space after the colon. The line should read:\nwalls: [{ wall: north, length: 4 m }]',
    ],
  },
  {
    name: "a key without its colon",
    yaml: "height 8' 9\"\nroom: A",
    says: [
      '2:1 colon-missing: This line is no "key: value": the colon is missing. -> Put a colon and a space behind the key. The line should read:\nheight: 8\' 9"',
    ],
  },
  {
    name: "a key with an equals sign",
    yaml: "room: A\nheight = 8' 9\"",
    says: [
      '3:1 colon-missing: This line is no "key: value": the colon is missing. -> Put a colon and a space behind the key. The line should read:\nheight: 8\' 9"',
    ],
  },
  {
    name: "a key without its colon in { }",
    yaml: "walls: [{ wall: north, length 4 m }]",
    says: [
      '2:24 colon-missing: Between { } “length 4 m” is no "key: value": the colon is missing. -> Put a colon and a space behind the key. The line should read:\nwalls: [{ wall: north, length: 4 m }]',
    ],
  },
  {
    name: "a no-break space in a key",
    yaml: "room : A",
    says: [
      "2:5 no-break-space: A space on this line is not the space bar's but a no-break space, which joins the words around it. -> Delete it and type a plain space. The line should read:\nroom : A",
    ],
  },
  {
    name: "a no-break space after a colon",
    yaml: "room: A\nheight: 8'",
    says: [
      "2:6 no-break-space: A space on this line is not the space bar's but a no-break space, which joins the words around it. -> Delete it and type a plain space. The line should read:\nroom: A",
    ],
  },
  {
    name: "no-break spaces before a key",
    yaml: "measured:\n  by: studio",
    says: [
      "3:1 no-break-space: A space on this line is not the space bar's but a no-break space, which joins the words around it. -> Delete it and type a plain space. The line should read:\n  by: studio",
    ],
  },
  {
    name: "a space without width in a key",
    yaml: "ro​om: A",
    says: [
      "2:3 no-break-space: A space on this line is not the space bar's but a no-break space, which joins the words around it. -> Delete it and type a plain space. The line should read:\nroom: A",
    ],
  },
  {
    name: "a key that stands further in",
    yaml: "room: A\n  height: 8'",
    says: [
      '3:3 indent-uneven: "height:" stands further in than the line above it, as if it went on with its words. -> Begin it below the key above. The line should read:\nheight: 8\'',
    ],
  },
  {
    name: "a key that stands further out",
    yaml: "measured:\n    by: studio\n  on: 2026-03-04",
    says: [
      "4:1 indent-uneven: This line does not begin below the lines that it belongs to. -> Begin all keys that belong together in the same column. The line should read:\n    on: 2026-03-04",
    ],
  },
  {
    name: "a key of an item that stands further out",
    yaml: "items:\n  - cushion: Seat\n   cloth: x",
    says: [
      '4:1 indent-uneven: This line stands in a list, but neither as an entry nor below the keys of one. -> Begin it with "- ", or below the keys of the entry above. The line should read:\n    cloth: x',
    ],
  },
];
