import type { Trap } from "./trap.ts";

/** Signs in words that YAML takes for its own: colons, #, and what stands first. */
export const SIGNS: readonly Trap[] = [
  {
    name: "a colon in a title",
    yaml: "room: Dining: the big one",
    says: [
      '2:7 colon-in-words: These words have a colon with a space behind it, so “Dining” is read as a key. -> Put the words in quotes. The line should read:\nroom: "Dining: the big one"',
    ],
  },
  {
    name: "a colon in a title of a list's entry",
    yaml: "items:\n  - cushion: Seat: left",
    says: [
      '3:14 colon-in-words: These words have a colon with a space behind it, so “Seat” is read as a key. -> Put the words in quotes. The line should read:\n  - cushion: "Seat: left"',
    ],
  },
  {
    name: "a colon in words inside { }",
    yaml: "accept: [{ finding: x, because: So: no }]",
    says: [
      '2:33 colon-in-words: These words have a colon with a space behind it, so “So” is read as a key. -> Put the words in quotes. The line should read:\naccept: [{ finding: x, because: "So: no" }]',
    ],
  },
  {
    name: "a colon in words that go on over two lines",
    yaml: "private: some words\n  goes on: here",
    says: [
      "3:3 colon-in-words: These words go on from the line above and have a colon, so “goes on” is read as a key. -> Take the colon out, or write the words on one line in quotes.",
    ],
  },
  {
    name: "an asterisk first",
    yaml: "room: *Dining* room",
    says: [
      '2:7 sign-at-start: Words that begin with * must stand in quotes. -> Put quotes around them. The line should read:\nroom: "*Dining* room"',
    ],
  },
  {
    name: "an at sign first",
    yaml: "private: @home",
    says: [
      '2:10 sign-at-start: Words that begin with @ must stand in quotes. -> Put quotes around them. The line should read:\nprivate: "@home"',
    ],
  },
  {
    name: "a per cent sign first",
    yaml: "private: %off",
    says: [
      '2:10 sign-at-start: Words that begin with % must stand in quotes. -> Put quotes around them. The line should read:\nprivate: "%off"',
    ],
  },
  {
    name: "a backtick first",
    yaml: "private: `code`",
    says: [
      '2:10 sign-at-start: Words that begin with ` must stand in quotes. -> Put quotes around them. The line should read:\nprivate: "`code`"',
    ],
  },
  {
    name: "an ampersand first",
    yaml: "room: & sons",
    says: [
      '2:7 sign-at-start: Words that begin with & must stand in quotes. -> Put quotes around them. The line should read:\nroom: "& sons"',
    ],
  },
  {
    name: "an exclamation mark first",
    yaml: "approach: !free",
    says: [
      '2:11 sign-at-start: Words that begin with ! must stand in quotes. -> Put quotes around them. The line should read:\napproach: "!free"',
    ],
  },
  {
    name: "a bar first",
    yaml: "private: | words",
    says: [
      '2:10 sign-at-start: Words that begin with | must stand in quotes. -> Put quotes around them. The line should read:\nprivate: "| words"',
    ],
  },
  {
    name: "a greater-than sign first",
    yaml: "private: > words",
    says: [
      '2:10 sign-at-start: Words that begin with > must stand in quotes. -> Put quotes around them. The line should read:\nprivate: "> words"',
    ],
  },
  {
    name: "aliases of aliases",
    yaml: "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]",
    says: [
      '2:4 sign-at-start: Words that begin with & must stand in quotes. -> Put quotes around them. The line should read:\na: "&a [x, x]"',
      '3:4 sign-at-start: Words that begin with & must stand in quotes. -> Put quotes around them. The line should read:\nb: "&b [*a, *a]"',
      '4:5 sign-at-start: Words that begin with * must stand in quotes. -> Put quotes around them. The line should read:\nc: ["*b", "*b"]',
    ],
  },
  {
    name: "a merged shortcut",
    yaml: "<<: *base\nroom: A",
    says: [
      '2:5 sign-at-start: Words that begin with * must stand in quotes. -> Put quotes around them. The line should read:\n<<: "*base"',
    ],
  },
  {
    name: "a colour without quotes",
    yaml: "mark-colour: #efe3c8",
    says: [
      '2:14 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\nmark-colour: "#efe3c8"',
    ],
  },
  {
    name: "colours without quotes in [ ]",
    yaml: "colours: [#efe3c8, #336655]",
    says: [
      '2:11 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\ncolours: ["#efe3c8", "#336655"]',
    ],
  },
  {
    name: "one colour without quotes between others",
    yaml: "colours: [rust, #efe3c8]",
    says: [
      '2:17 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\ncolours: [rust, "#efe3c8"]',
    ],
  },
  {
    name: "a colour without quotes in { }",
    yaml: "colours: [{ colour: #efe3c8, name: parchment }]",
    says: [
      '2:21 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\ncolours: [{ colour: "#efe3c8", name: parchment }]',
    ],
  },
  {
    name: "a colour without quotes in a list of lines",
    yaml: "colours:\n  - #efe3c8",
    says: [
      '3:5 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\n  - "#efe3c8"',
    ],
  },
  {
    name: "a colour without quotes on a line of its own in [ ]",
    yaml: "colours: [\n    #efe3c8,\n  ]",
    says: [
      '3:5 colour-unquoted: The colour #efe3c8 is not read: from # on, a line is a note to yourself. -> Put the colour in quotes. The line should read:\n    "#efe3c8",',
    ],
  },
  {
    name: "a # inside words",
    yaml: "private: no #3 red",
    says: [
      '2:13 hash-in-words: “#3 red” is not read: from # on, a line is a note to yourself. -> If it belongs to the words, put them in quotes; if it is a note, put a space after the #. The line should read:\nprivate: "no #3 red"',
    ],
  },
  {
    name: "a # inside words in { }",
    yaml: "accessories: [{ what: tin #3, where: shelf }]",
    says: [
      '2:27 hash-in-words: “#3, where: shelf }]” is not read: from # on, a line is a note to yourself. -> If it belongs to the words, put them in quotes; if it is a note, put a space after the #. The line should read:\naccessories: [{ what: "tin #3", where: shelf }]',
    ],
  },
  {
    name: "a # first in words",
    yaml: "private: #3 red",
    says: [
      '2:10 hash-in-words: “#3 red” is not read: from # on, a line is a note to yourself. -> If it belongs to the words, put them in quotes; if it is a note, put a space after the #. The line should read:\nprivate: "#3 red"',
    ],
  },
];
