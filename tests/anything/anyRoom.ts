import { pick } from "./anyValue.ts";

/** What items may point at in the studio below. */
export const NAMES = {
  "a cloth": ["fern", "frond", "band", "slub"],
  "a lining": ["sateen"],
  "an interlining": ["domette"],
  "a trim": ["braid"],
  "a wallcovering": ["paper"],
  "an object": ["stove"],
  "an object or a cloth": ["stove"],
  "a window": ["bay", "small"],
  "a wall": ["north", "east", "south", "west"],
  "an owner": ["client"],
} as const;

export const OBJECTS = { stove: 'object: Stove\nshape: stove\nsize: 30" x 20" x 60"' };

export const ROOM = `room: A
height: 8' 10"
walls:
  - { wall: north, length: 14', windows: [{ window: bay, from-left: 3', size: '52" x 60"', sill: '24"', recess: '6"' }] }
  - { wall: east, length: 12', windows: [{ window: small, from-left: 2', size: '30" x 40"', sill: '36"', recess: '5"' }] }
  - { wall: south, length: 14', doors: [{ door: hall, from-left: 1', size: '32" x 80"' }] }
  - { wall: west, length: 12', breast: { from-left: 3', width: 5', depth: 1' } }
`;

/** Cards of cloths of all sorts, of any width and repeat; `more` is a line for each that is cut. */
export function anyCloths(random: () => number, more = ""): Readonly<Record<string, string>> {
  const width = () => `width: '${Math.round((45 + random() * 15) * 2) / 2}"'`;
  const repeat = (match: string) =>
    `repeat: { up: '${3 + Math.round(random() * 96) / 4}"', across: '${pick(random, [6, 9, 13.5, 20, 27])}"', match: ${match} }`;
  const line = more === "" ? "" : `\n${more}`;
  return {
    fern: `cloth: Fern\n${width()}\n${repeat("straight")}${line}`,
    frond: `cloth: Frond\n${width()}\n${repeat("half-drop")}${line}`,
    band: `cloth: Band\n${width()}\nrepeat: { across: '${pick(random, [3, 4.5, 9])}"' }${line}`,
    slub: `cloth: Slub\nkind: plain\n${width()}${line}`,
    sateen: `cloth: Sateen\ntype: lining\n${width()}${line}`,
    domette: `cloth: Domette\ntype: interlining\n${width()}`,
    braid: "cloth: Braid\ntype: trim\nwidth: '1\"'",
    paper: `cloth: Paper\ntype: wallcovering\nroll: { width: '20.5"', length: 11 yd }\nrepeat: { up: '21"', across: '20.5"', match: ${pick(random, ["straight", "half-drop", "free"])} }`,
  };
}
