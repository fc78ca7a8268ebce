import { expect, test } from "vitest";
import { opaqueName } from "../../src/documents/pictures/pictureBook.ts";
import { wayTo } from "../../src/documents/ways.ts";
import { marked } from "../../src/documents/words/marks.ts";
import { cssString } from "../../src/documents/words/pageStyle.ts";
import { boardWords } from "../../src/documents/words/prose.ts";
import { spelled } from "../../src/units/spelling.ts";

test("only a fraction is built, never the whole before it, a ratio or a year", () => {
  expect(marked("109\u202f1/4″").html).toBe('109\u202f<span class="frac">1/4</span>″');
  expect(marked("3/8 yd").html).toBe('<span class="frac">3/8</span> yd');
  expect(marked("2026/27 and 14/77").html).toBe("2026/27 and 14/77");
  expect(marked("<b>1/2</b>").html).not.toContain("<b>");
});

test("a short first paragraph is the standfirst; what the board cannot hold goes on, whole paragraphs at a time", () => {
  const short = boardWords("One *line*.\n\nTwo.", null);
  expect(short).toEqual({
    standfirst: "One line.",
    onBoard: "Two.",
    further: "",
  });
  const paragraph = Array.from({ length: 80 }, () => "word").join(" ");
  const long = boardWords(`First.\n\n${paragraph}\n\n${paragraph}\n\n${paragraph}`, null);
  expect(long.onBoard).toBe(`${paragraph}\n\n${paragraph}`);
  expect(long.further).toBe(paragraph);
  expect(boardWords("Quiet.", null)).toEqual({
    standfirst: "Quiet.",
    onBoard: "",
    further: "",
  });
  expect(boardWords("", "Own words.").standfirst).toBe("Own words.");
});

test("our own sentences follow the studio's language", () => {
  expect(spelled("The colour of the grey cushion", "en-US")).toBe("The color of the gray pillow");
  expect(spelled("centred in the centre, neighbouring", "en-US")).toBe(
    "centered in the center, neighboring",
  );
  expect(spelled("The colour of the grey cushion", "en-GB")).toBe("The colour of the grey cushion");
});

test("a name cannot leave the style text that it stands in", () => {
  expect(cssString('a"b\\c</style>')).toBe('"a\\22 b\\5c c\\3c /style>"');
});

test("ways between pages of one tree are relative", () => {
  expect(wayTo("client/quay/den/index.html", "client/quay/index.html")).toBe("../index.html");
  expect(wayTo("client/quay/index.html", "client/quay/den/index.html")).toBe("den/index.html");
  expect(wayTo("studio/index.html", "makers/w/quay/den.html")).toBe("../makers/w/quay/den.html");
});

test("a picture's name says nothing and is the same for the same picture", () => {
  expect(opaqueName("secret-supplier.jpg")).toMatch(/^[0-9a-f]{16}$/);
  expect(opaqueName("a")).toBe(opaqueName("a"));
  expect(opaqueName("a")).not.toBe(opaqueName("b"));
});
