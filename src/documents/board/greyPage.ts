import { lightness } from "../../colour/luminance.ts";
import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import type { Markup } from "../words/marks.ts";
import { countWord, shortened } from "../words/phrases.ts";
import { BETWEEN_WALLS_MM, greyRoomOf } from "./greyRoom.ts";
import { BAR_MM, greyOfLightness, greyScaleSvg, scaleLabels } from "./greyScale.ts";
import { GREY_PART, type Mix } from "./mix.ts";
import type { BoardSheet } from "./sheetGeometry.ts";

/** The mix and the room in grey above a scale of light and dark, with each cloth's place on it. */
export interface GreyPage {
  readonly standfirst: string;
  readonly picture: Markup;
  readonly pictureWidth: number;
  readonly y: number;
  /** Names below the pieces, in millimetres of the sheet. */
  readonly names: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly name: string;
  }[];
  readonly ink: string;
  /** Walls of the room, each at its place on the sheet. */
  readonly walls: readonly {
    readonly picture: Markup;
    readonly x: number;
    readonly width: number;
  }[];
  readonly wallWords: string;
  readonly wallWordsY: number;
  /** Left edge and width of what stands beside the mix. */
  readonly besideX: number;
  readonly besideWidth: number;
  readonly noteY: number;
  readonly scale: Markup;
  readonly labels: readonly {
    readonly x: number;
    readonly y: number;
    readonly name: string;
    readonly value: number;
  }[];
  readonly note: string;
  /** Neighbours on the scale that are about as light as each other, each as a flat of its own grey. */
  readonly pairs: readonly {
    readonly lighter: string;
    readonly darker: string;
    readonly names: string;
  }[];
}

/** Two flats less than this apart, in L*, are hard to tell apart at a glance across a room (common practice, no source). */
const NEAR = 5;
/** So many pairs have room below the walls, in rows of three. */
const MOST_PAIRS = 9;
const PAIRS_ACROSS = 3;
const PAIR_MM = 10.5;
/** Lines of names below the scale, and what stands between its bar and the first. */
const ROW_MM = 4.6;
const BELOW_BAR_MM = 4.4;
/** Beside the mix, and between what stands above each other. */
const BESIDE_MM = 8;
const APART_MM = 7;
/** The words under the walls, the words on light and dark with their head, and letters on a line of them. */
const WALL_WORDS_MM = 6;
const LINE_MM = 5;
const LETTER_MM = 1.66;
/** At the right of the scale the lightest names run on. */
const LAST_NAME_MM = 26;

interface Value {
  readonly name: string;
  readonly value: number;
  readonly isCloth: boolean;
}

/** What the scale shows: the wall and every cloth with a known colour, lightest first. L* of the average colour, CIE 15. */
function valuesOf(data: ProjectData, room: RoomData): Value[] {
  const cloths = room.scheme.roles.flatMap((role): Value[] => {
    const average = data.swatches.get(role.cloth)?.average;
    return average ? [{ name: role.name, value: lightness(average), isCloth: true }] : [];
  });
  const wall = room.wallColour
    ? [{ name: "The walls", value: lightness(room.wallColour), isCloth: false }]
    : [];
  return [...cloths, ...wall].sort((a, b) => b.value - a.value || (a.name < b.name ? -1 : 1));
}

/** Two cloths that are neighbours on the scale, and about as light as each other. */
interface Pair {
  readonly lighter: Value;
  readonly darker: Value;
}

function pairsOf(cloths: readonly Value[]): Pair[] {
  return cloths.flatMap((lighter, at) => {
    const darker = cloths[at + 1];
    return darker && lighter.value - darker.value < NEAR ? [{ lighter, darker }] : [];
  });
}

function noteOf(cloths: readonly Value[], pairs: number): string {
  const lightest = cloths[0];
  const darkest = cloths.at(-1);
  if (!lightest || !darkest || lightest === darkest) return "";
  const steps = Math.round(lightest.value) - Math.round(darkest.value);
  const alike =
    pairs === 0
      ? " Every cloth stands clear of the next."
      : ` ${pairs === 1 ? "Two neighbours" : `${capital(countWord(pairs))} pairs of neighbours`} on the scale are about as light as each other: colour and pattern must tell them apart.`;
  return `From ${darkest.name} up to ${lightest.name} are ${steps} steps of a hundred.${alike}`;
}

/** The page in grey: values only. Null where fewer than two cloths have a known colour. */
export function greyPageOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  mix: Mix,
  prefix: string,
): GreyPage | null {
  const full = valuesOf(data, room);
  const values = full.map((v) => ({ ...v, name: shortened(v.name, 22) }));
  const cloths = values.filter((v) => v.isCloth);
  if (cloths.length < 2) return null;
  const { language } = data.studio.fields;
  const { margin } = sheet;
  const y = margin.top + 28;
  const pictureWidth = sheet.fieldWidth * GREY_PART;
  const besideX = margin.left + pictureWidth + BESIDE_MM;
  const besideWidth = sheet.width - margin.right - besideX;
  const pairs = pairsOf(cloths).slice(0, MOST_PAIRS);
  const note = noteOf(
    full.filter((v) => v.isCloth),
    pairsOf(cloths).length,
  );

  const scaleWidth = sheet.width - margin.left - margin.right - LAST_NAME_MM;
  const placed = scaleLabels(values, (value) => margin.left + (scaleWidth * value) / 100);
  const rows = 1 + Math.max(...placed.map((l) => l.row));
  const barY = sheet.height - margin.bottom - rows * ROW_MM - BELOW_BAR_MM - BAR_MM;
  const namesY = barY + BAR_MM + BELOW_BAR_MM;
  const scale = greyScaleSvg(placed, {
    x: margin.left,
    y: barY,
    width: scaleWidth,
    namesY,
    step: ROW_MM,
  });

  const noteLines = 2 + Math.ceil(note.length / (besideWidth / LETTER_MM));
  const noteHeight =
    noteLines * LINE_MM + Math.ceil(pairs.length / PAIRS_ACROSS) * PAIR_MM + (pairs.length ? 4 : 0);
  const shown = greyRoomOf(data, room, book, prefix, {
    width: besideWidth,
    height: barY - 2 * APART_MM - noteHeight - WALL_WORDS_MM - y,
  });
  const below = shown ? shown.height + WALL_WORDS_MM + APART_MM : 0;
  let x = besideX;
  return {
    standfirst: spelled(
      `The mix${shown ? " and the room" : ""} without colour, smaller than on ${shown ? "their" : "its"} own page${shown ? "s" : ""}: each cloth as light or as dark as it is. A good mix still has its shape here.`,
      language,
    ),
    picture: mix.greySvg,
    pictureWidth,
    y,
    names: mix.captions.map((c) => ({
      x: margin.left + c.x * GREY_PART,
      y: y + (c.y - mix.greyTop) * GREY_PART + 0.2,
      width: c.width * GREY_PART,
      name: shortened(c.name, Math.max(9, Math.floor((c.width * GREY_PART) / 1.55))),
    })),
    ink: mix.ink,
    walls: (shown?.walls ?? []).map((wall) => {
      const from = x;
      x += wall.width + BETWEEN_WALLS_MM;
      return { picture: wall.markup, x: from, width: wall.width };
    }),
    wallWords: shown?.words ?? "",
    wallWordsY: y + (shown?.height ?? 0) + 1.4,
    besideX,
    besideWidth,
    noteY: y + below,
    scale: {
      html: `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" aria-hidden="true" xmlns="http://www.w3.org/2000/svg">${scale}</svg>`,
    },
    labels: placed.map((l) => ({
      x: l.x + 1,
      y: namesY + l.row * ROW_MM,
      name: l.name,
      value: Math.round(l.value),
    })),
    note: spelled(note, language),
    pairs: pairs.map(({ lighter, darker }) => ({
      lighter: greyOfLightness(lighter.value),
      darker: greyOfLightness(darker.value),
      names: `${lighter.name} and ${darker.name}`,
    })),
  };
}
