import type { Trap } from "./trap.ts";

/** Brackets and commas too few or too many. */
export const BRACKETS: readonly Trap[] = [
  {
    name: "a bracket that is not closed",
    yaml: 'photo: { file: a.jpg, shows: 27"\nwidth: 54"',
    says: [
      '2:8 bracket-unclosed: The { that is opened here is not closed. -> Put } at the end. The line should read:\nphoto: { file: a.jpg, shows: 27" }',
    ],
  },
  {
    name: "a bracket that is not closed over lines",
    yaml: "cloths: [fern,\n  ikat\nroom: A",
    says: [
      "3:6 bracket-unclosed: The [ that is opened on line 2 is not closed. -> Put ] at the end. The line should read:\n  ikat]",
    ],
  },
  {
    name: "a bracket that is not closed before a note",
    yaml: "cloths: [fern, ikat  # the mix",
    says: [
      "2:9 bracket-unclosed: The [ that is opened here is not closed. -> Put ] at the end. The line should read:\ncloths: [fern, ikat] # the mix",
    ],
  },
  {
    name: "brackets within brackets that are not closed",
    yaml: "items: [{ cushion: Seat",
    says: [
      "2:8 bracket-unclosed: The [ that is opened here is not closed. -> Put } ] at the end. The line should read:\nitems: [{ cushion: Seat } ]",
    ],
  },
  {
    name: "the inner of two brackets not closed",
    yaml: "walls: [{ wall: north, windows: [{ window: bay } }]",
    says: [
      "2:50 bracket-unclosed: The [ before this } is not closed. -> Put ] before it. The line should read:\nwalls: [{ wall: north, windows: [{ window: bay }] }]",
    ],
  },
  {
    name: "a bracket too many",
    yaml: "photo: { file: a.jpg }}",
    says: [
      "2:23 bracket-extra: This } closes nothing. -> Take it away. The line should read:\nphoto: { file: a.jpg }",
    ],
  },
  {
    name: "the wrong bracket",
    yaml: "photo: { file: a.jpg ]",
    says: [
      "2:22 bracket-mixed: The { is closed by ]. -> Close it by }. The line should read:\nphoto: { file: a.jpg }",
    ],
  },
  {
    name: "a comma that is missing in { }",
    yaml: "walls: [{ wall: north length: 4 m }]",
    says: [
      '2:23 comma-missing: A comma is missing before "length:". -> Put a comma between the two. The line should read:\nwalls: [{ wall: north, length: 4 m }]',
    ],
  },
  {
    name: "a comma too many",
    yaml: 'photo: { file: a.jpg,, shows: 27" }',
    says: [
      '2:22 sign-unexpected: A sign or word stands here that does not fit what comes before it. -> Put the words in quotes, or take away what is too much. The line should read:\nphoto: { file: a.jpg, shows: 27" }',
    ],
  },
];
