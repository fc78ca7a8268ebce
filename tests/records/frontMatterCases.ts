/** Front matter that YAML would misread, and exactly what is said of it: place, code, message, and how to mend it. */
export const TRAPS: readonly {
  readonly name: string;
  readonly yaml: string;
  readonly says: readonly string[];
}[] = [
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
  {
    name: "a thousands comma in { }",
    yaml: "price: { trade: 1,200.50, per: yard }",
    says: [
      '2:18 comma-in-number: Between { } a comma parts two entries, so “1,200.50” is cut in two. -> Put the number in quotes. The line should read:\nprice: { trade: "1,200.50", per: yard }',
    ],
  },
  {
    name: "a sum with points between its thousands",
    yaml: "fees: { design: 1.200,50 }",
    says: [
      "2:22 comma-in-number: Between { } a comma parts two entries, so “1.200,50” is cut in two. -> Write a point before the cents and nothing between the thousands. The line should read:\nfees: { design: 1200.50 }",
    ],
  },
  {
    name: "a decimal comma in { }",
    yaml: "price: { minimum: 2,14 m, per: metre }",
    says: [
      '2:20 comma-in-number: Between { } a comma parts two entries, so “2,14 m” is cut in two. -> Put the number in quotes. The line should read:\nprice: { minimum: "2,14 m", per: metre }',
    ],
  },
  {
    name: "two commas in a number",
    yaml: "fees: { design: 1,234,567 }",
    says: [
      '2:18 comma-in-number: Between { } a comma parts two entries, so “1,234,567” is cut in two. -> Put the number in quotes. The line should read:\nfees: { design: "1,234,567" }',
    ],
  },
  {
    name: "a comma in a number in [ ]",
    yaml: "tins: [2,5 l, 5 l]",
    says: [
      '2:9 comma-in-number: Between [ ] a comma parts two entries, so “2,5 l” is cut in two. -> Put the number in quotes. The line should read:\ntins: ["2,5 l", 5 l]',
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
