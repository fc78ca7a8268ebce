import type { Trap } from "./trap.ts";

/** What spoils the whole of the front matter, and several traps together. */
export const WHOLE: readonly Trap[] = [
  {
    name: "a line of dots",
    yaml: "room: A\n...\nheight: 8'",
    says: [
      "3:1 document-twice: A line of ... ends the front matter before its end. -> Take the line out.",
    ],
  },
  {
    name: "a directive",
    yaml: "%YAML 1.2\nroom: A",
    says: ["2:1 sign-at-start: A line cannot begin with % here. -> Take the line out."],
  },
  {
    name: "a character that cannot be printed",
    yaml: "room: A\u0007B",
    says: [
      "2:8 control-character: A character on this line cannot be printed. -> Delete it. The line should read:\nroom: AB",
    ],
  },
  {
    name: "lists within lists without end",
    yaml: "a: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
    says: [
      "2:45 too-deep: Lists stand within lists here, deeper than any card or room needs. -> Take the brackets and hyphens away that are too many.",
    ],
  },
  {
    name: "hyphens without end",
    yaml: "- - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - - a",
    says: [
      "2:81 too-deep: Lists stand within lists here, deeper than any card or room needs. -> Take the brackets and hyphens away that are too many.",
    ],
  },
  {
    name: "two traps on one line",
    yaml: "accessories: [{ what: tin #3 }, { what: a: b }]",
    says: [
      '2:27 hash-in-words: “#3 }, { what: a: b }]” is not read: from # on, a line is a note to yourself. -> If it belongs to the words, put them in quotes; if it is a note, put a space after the #. The line should read:\naccessories: [{ what: "tin #3" }, { what: a: b }]',
      '2:41 colon-in-words: These words have a colon with a space behind it, so “a” is read as a key. -> Put the words in quotes. The line should read:\naccessories: [{ what: "tin #3" }, { what: "a: b" }]',
    ],
  },
  {
    name: "traps on several lines",
    yaml: "room: Dining: big\nmark-colour: #efe3c8\nheight:8'\ncloths: [fern",
    says: [
      '2:7 colon-in-words: These words have a colon with a space behind it, so “Dining” is read as a key. -> Put the words in quotes. The line should read:\nroom: "Dining: big"',
      '3:14 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\nmark-colour: "#efe3c8"',
      '4:7 colon-without-space: A space is missing after "height:". -> Put a space after the colon. The line should read:\nheight: 8\'',
      "5:9 bracket-unclosed: The [ that is opened here is not closed. -> Put ] at the end. The line should read:\ncloths: [fern]",
    ],
  },
];
