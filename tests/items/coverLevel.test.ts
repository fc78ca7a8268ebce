import { expect, test } from "vitest";
import { letterAt } from "../../src/items/upholstery/coverPiece.ts";
import { make } from "./upholsteryMade.ts";

const SIZE = '20" x 8"';

/** The height series of each piece: pieces of one series are cut at one height of the pattern. */
const seriesOf = (made: ReturnType<typeof make>) =>
  made.cuts.map((c) => [c.piece, c.along.how === "level" ? c.along.series : c.along.how]);

test("skirt pieces of a patterned cloth meet at the corners and are cut at one height (common practice, no source)", () => {
  const pieces = [
    { piece: "skirt", size: '50" x 8"', count: "2" },
    { piece: "skirt", size: '30" x 8"', count: "2" },
  ];
  const made = make("sofa", { cloth: "fern", pieces });
  expect(seriesOf(made)).toEqual([
    ["skirt", "Long, skirt"],
    ["skirt", "Long, skirt"],
  ]);
  // On plain cloth nothing has to meet.
  expect(seriesOf(make("sofa", { pieces })).map(([, how]) => how)).toEqual(["free", "free"]);
});

test("several cushion tops side by side are cut at one height, centred or not", () => {
  const pieces = [{ piece: "cushion-top", size: SIZE, count: "3" }];
  expect(seriesOf(make("sofa", { cloth: "fern", pieces }))).toEqual([
    ["cushion top", "Long, cushion top"],
  ]);
  const one = [{ piece: "cushion-top", size: SIZE, count: "1" }];
  expect(seriesOf(make("sofa", { cloth: "fern", pieces: one }))).toEqual([["cushion top", "free"]]);
});

test("the four sides of an ottoman are cut at one height, since the pattern goes round its corners", () => {
  const made = make("ottoman", { cloth: "fern" });
  expect(seriesOf(made)).toEqual([
    ["top", "motif-at"],
    ["front", "Stool, sides"],
    ["side", "Stool, sides"],
    ["back", "Stool, sides"],
  ]);
});

test("beyond its 7 ft a sofa's range grows with its width: 14 ft takes twice the cloth", () => {
  const usual = make("sofa", { type: "sofa", size: '84" x 36" x 34"' });
  const twice = make("sofa", { type: "sofa", size: '168" x 36" x 34"' });
  const yards = (made: ReturnType<typeof make>) => (made.figures.estimateMm ?? 0) / 914.4;
  expect(yards(usual)).toBeCloseTo(18, 9);
  expect(yards(twice)).toBeCloseTo(36, 9);
});

test("pieces are lettered without I and O, which are read as a stroke and a nought", () => {
  const letters = Array.from({ length: 26 }, (_, at) => letterAt(at)).join(" ");
  expect(letters).toBe("A B C D E F G H J K L M N P Q R S T U V W X Y Z AA AB");
});
