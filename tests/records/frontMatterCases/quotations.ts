import type { Trap } from "./trap.ts";

/** Quotation marks that are not closed, or close too early. */
export const QUOTATIONS: readonly Trap[] = [
  {
    name: "a quotation that is not closed",
    yaml: 'room: "Dining room\nheight: 8\' 9"',
    says: [
      '2:7 quote-unbalanced: The quotation that " opens here is not closed. -> Close the quotation at its end. The line should read:\nroom: "Dining room"',
    ],
  },
  {
    name: "a quotation that is closed by a later line's inch mark",
    yaml: 'items:\n  - curtains: "Bay\n    at: bay\n    pole: 96"',
    says: [
      '3:15 quote-unbalanced: The quotation that " opens here is not closed. -> Close the quotation at its end. The line should read:\n  - curtains: "Bay"',
    ],
  },
  {
    name: "a quotation inside { } that is not closed",
    yaml: 'items: [{ cushion: "Seat, size: 20" x 20" }]',
    says: [
      '2:20 quote-unbalanced: The quotation that " opens here is not closed. -> Close the quotation at its end. The line should read:\nitems: [{ cushion: "Seat", size: 20" x 20" }]',
    ],
  },
  {
    name: "a single quotation mark before a word",
    yaml: "room: 'Dining room",
    says: [
      "2:7 quote-unbalanced: The quotation that ' opens here is not closed. -> Close the quotation at its end. The line should read:\nroom: 'Dining room'",
    ],
  },
  {
    name: "an apostrophe at the beginning",
    yaml: "standfirst: 'tis a pity",
    says: [
      "2:13 quote-unbalanced: The quotation that ' opens here is not closed. -> Close the quotation at its end. The line should read:\nstandfirst: \"'tis a pity\"",
    ],
  },
  {
    name: "an inch mark before the number",
    yaml: 'height: "92',
    says: [
      '2:9 quote-unbalanced: The " before the number opens a quotation that is never closed. -> Write the inch or foot mark behind the number. The line should read:\nheight: 92"',
    ],
  },
  {
    name: "a quotation that ends too early",
    yaml: 'standfirst: "Old" and new',
    says: [
      '2:13 quote-then-text: The quotation "Old" ends, and more words follow it. -> Put quotes around the whole. The line should read:\nstandfirst: \'"Old" and new\'',
    ],
  },
  {
    name: "an apostrophe inside single quotation marks",
    yaml: "standfirst: 'it's late'",
    says: [
      "2:13 quote-then-text: The quotation 'it' ends, and more words follow it. -> Put quotes around the whole. The line should read:\nstandfirst: \"it's late\"",
    ],
  },
  {
    name: "a size that begins with a quotation mark",
    yaml: 'floor: "20" x 20"',
    says: [
      '2:8 quote-then-text: The quotation "20" ends, and more words follow it. -> Take the first quotation mark away. The line should read:\nfloor: 20" x 20"',
    ],
  },
  {
    name: "a backslash in double quotation marks",
    yaml: 'private: "C:\\new\\rooms"',
    says: [
      "2:10 backslash-in-quotes: A backslash between double quotation marks changes the letter behind it. -> Use single quotation marks. The line should read:\nprivate: 'C:\\new\\rooms'",
    ],
  },
];
