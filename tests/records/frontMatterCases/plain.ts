/** Front matter that must be read without a word, and the texts that come of it. */
export const PLAIN: readonly {
  readonly name: string;
  readonly yaml: string;
  readonly value: unknown;
}[] = [
  {
    name: "a comma between quotation marks, inside { }",
    yaml: `items: [{ cushion: "Seat, long", note: 'two, or three', cloth: velvet }]`,
    value: { items: [{ cushion: "Seat, long", note: "two, or three", cloth: "velvet" }] },
  },
  {
    name: "notes behind values",
    yaml: "room: A  # a note\nheight: 8'   # floor to ceiling",
    value: {
      room: "A",
      height: "8'",
    },
  },
  {
    name: "notes on lines of their own",
    yaml: "# room: B\n#height: 9'\nroom: A",
    value: {
      room: "A",
    },
  },
  {
    name: "inch and foot marks",
    yaml: 'height: 8\' 9"\nfloor: 16\' 6" x 12\' 4"\nphoto: { shows: 27", file: a.jpg }',
    value: {
      height: "8' 9\"",
      floor: "16' 6\" x 12' 4\"",
      photo: {
        shows: '27"',
        file: "a.jpg",
      },
    },
  },
  {
    name: "times, fractions and noughts as typed",
    yaml: "a: 1:30\nb: 8 1/2\nc: no\nd: 0123\ne: 12e5\nf: 2026-03-04\ng: 0x1f\nh: ~\ni: null\nj: .5",
    value: {
      a: "1:30",
      b: "8 1/2",
      c: "no",
      d: "0123",
      e: "12e5",
      f: "2026-03-04",
      g: "0x1f",
      h: "~",
      i: "null",
      j: ".5",
    },
  },
  {
    name: "quotations",
    yaml: "a: \"x: y # z\"\nb: 'don''t'\nc: \"say \\\"so\\\"\"\nd: 'a\\b'",
    value: {
      a: "x: y # z",
      b: "don't",
      c: 'say "so"',
      d: "a\\b",
    },
  },
  {
    name: "words over lines",
    yaml: "private: one\n  two\n  three",
    value: {
      private: "one two three",
    },
  },
  {
    name: "blocks of words",
    yaml: "private: |\n  one: two\n  #3 'x\nstandfirst: >\n  a\n  b\nroom: A",
    value: {
      private: "one: two\n#3 'x\n",
      standfirst: "a b\n",
      room: "A",
    },
  },
  {
    name: "lists and maps over lines",
    yaml: 'cloths: [a,\n  b,\n  c]\nphoto: {\n  file: a.jpg,\n  shows: 27"\n  }',
    value: {
      cloths: ["a", "b", "c"],
      photo: {
        file: "a.jpg",
        shows: '27"',
      },
    },
  },
  {
    name: "addresses and times in words",
    yaml: "web: https://larkfield.example/x\nprivate: at 10:30 or a:b",
    value: {
      web: "https://larkfield.example/x",
      private: "at 10:30 or a:b",
    },
  },
  {
    name: "a web address in a list",
    yaml: "light:\n  - https://larkfield.example",
    value: {
      light: ["https://larkfield.example"],
    },
  },
  {
    name: "braces of a template",
    yaml: "room: Room {{ 1+1 }} {% x %}",
    value: {
      room: "Room {{ 1+1 }} {% x %}",
    },
  },
  {
    name: "keys of objects in JavaScript",
    yaml: "constructor: a\ntoString: b\nhasOwnProperty: c",
    value: {
      constructor: "a",
      toString: "b",
      hasOwnProperty: "c",
    },
  },
];
