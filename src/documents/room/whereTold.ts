import type { RoleOf } from "../../scheme/roles.ts";
import { capital, small, within } from "../../units/capital.ts";
import type { RoomData } from "../projectData.ts";
import { type Language, listed, placesOf, shortened } from "../words/phrases.ts";
import { rowsMm, squareFor, type WhereColumns, type WhereRow } from "./whereRows.ts";
import { clothPlaces } from "./whereWords.ts";

/**
 * Up to so many titles a cloth's places are told by them, beyond it they are counted by kind; and so many of a colour's are told. A
 * cloth's name is told up to so many letters, in a column so wide, millimetres, where that is not as wide as the names ask for.
 */
interface Fullness {
  readonly ofCloth: number;
  readonly ofColour: number;
  readonly nameLetters: number;
  readonly nameMm: number | null;
}

/** A longer name of a cloth is cut; the proposal has it in full. */
const NAME_LETTERS = 60;
const LONG = { nameLetters: NAME_LETTERS, nameMm: null };
/** Many cloths with long names: each name on one line, so that the page holds them all. */
const ONE_LINE = { nameLetters: 40, nameMm: 84 };
/** From as many titles as one reads down to the fewest that still say something. */
const FULLNESS: readonly Fullness[] = [
  { ofCloth: 8, ofColour: 12, ...LONG },
  { ofCloth: 4, ofColour: 8, ...LONG },
  { ofCloth: 2, ofColour: 5, ...LONG },
  { ofCloth: 0, ofColour: 3, ...LONG },
  { ofCloth: 0, ofColour: 3, ...ONE_LINE },
  { ofCloth: 0, ofColour: 1, ...ONE_LINE },
];

function clothWords(cloth: string, room: RoomData, language: Language, most: number): string {
  const places = clothPlaces(cloth, room, language);
  return places.length <= most
    ? places.join("; ")
    : capital(listed(placesOf(cloth, room, language)));
}

/** The places that carry a colour, in words, each title once; beyond `most` they are counted. */
export function colourWords(
  room: RoomData,
  items: readonly { readonly id: string; readonly title: string }[],
  most: number,
  touches: readonly string[] = [],
): string {
  const titles = items.map((i) => {
    const own = room.items.find((item) => item.record.id === i.id);
    return within(own && own.kind.kind !== "object" ? own.record.title : i.title);
  });
  const each = [...new Set(titles)];
  // It is there for the eye that looks for it, and not enough to be called a place.
  const touched = [...new Set(touches.map(small))].slice(0, Math.max(1, most));
  if (each.length === 0)
    return touched.length > 0 ? `Small touches: ${listed(touched)}` : "Nowhere yet";
  // One that is left out takes as much room as `1 more`.
  const told = each.length > most + 1 ? each.slice(0, most) : each;
  const more = each.length - told.length;
  return capital(listed(more > 0 ? [...told, `${more} more`] : told));
}

function rowsOf(
  room: RoomData,
  language: Language,
  roleWords: (role: RoleOf) => string,
  { ofCloth, ofColour, nameLetters }: Fullness,
): WhereRow[] {
  const { roles, carried } = room.scheme;
  return [
    ...roles.map((role) => ({
      name: shortened(role.name, nameLetters),
      where: clothWords(role.cloth, room, language, ofCloth),
      role: roleWords(role),
    })),
    ...carried.map((c) => ({
      name: capital(c.colour.name),
      where: colourWords(room, c.items, ofColour, c.touches),
      role: null,
    })),
  ];
}

/** The rows of the lists, each cloth's and then each colour's, with the side of a cloth's square and the height that they take. */
export interface WhereTold {
  readonly rows: readonly WhereRow[];
  readonly square: number;
  readonly nameWidth: number;
  readonly heightMm: number;
}

/** The rows as full as the height holds them, in millimetres of paper; the shortest where none fits. `roleWords` is what stands below a cloth's name. */
export function whereTold(
  room: RoomData,
  language: Language,
  roleWords: (role: RoleOf) => string,
  columns: (rows: readonly WhereRow[]) => Omit<WhereColumns, "square">,
  height: number,
): WhereTold {
  const tellings = FULLNESS.map((fullness): WhereTold => {
    const rows = rowsOf(room, language, roleWords, fullness);
    const asked = columns(rows);
    const widths = { ...asked, nameWidth: fullness.nameMm ?? asked.nameWidth };
    const square = squareFor(rows, widths, height);
    const heightMm = rowsMm(rows, { ...widths, square });
    return { rows, square, nameWidth: widths.nameWidth, heightMm };
  });
  return tellings.find(({ heightMm }) => heightMm <= height) ?? (tellings.at(-1) as WhereTold);
}
