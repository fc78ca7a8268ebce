import { hexOfRgb } from "../../colour/hex.ts";
import { channelOfLinear } from "../../colour/linear.ts";
import { lightness, luminanceOfLightness } from "../../colour/luminance.ts";
import { spelled } from "../../units/spelling.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import type { Markup } from "../words/marks.ts";
import { capital, countWord, shortened } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { GREY_PART, type Mix } from "./mix.ts";
import type { BoardSheet } from "./sheetGeometry.ts";
import { spreadLabels } from "./spreadLabels.ts";

/** The mix in grey beside a scale of light and dark, with each cloth's place on it. */
export interface GreyPage {
  readonly standfirst: string;
  readonly picture: Markup;
  readonly pictureWidth: number;
  readonly pictureHeight: number;
  readonly y: number;
  /** Names below the pieces, in millimetres of the sheet. */
  readonly names: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly name: string;
  }[];
  readonly ink: string;
  readonly scale: Markup;
  readonly labelX: number;
  readonly labels: readonly { readonly y: number; readonly name: string; readonly value: number }[];
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
const LABEL_MM = 5.2;
/** So many pairs have room beside the scale. */
const MOST_PAIRS = 9;
const r = (n: number): string => svgNumber(n, 2);

function greyOfLightness(value: number): string {
  const channel = channelOfLinear(luminanceOfLightness(value));
  return hexOfRgb([channel, channel, channel]);
}

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
  mix: Mix,
): GreyPage | null {
  const values = valuesOf(data, room);
  if (values.filter((v) => v.isCloth).length < 2) return null;
  const { language } = data.studio.fields;
  const y = sheet.margin.top + 28;
  const width = sheet.fieldWidth * GREY_PART;
  const height = (sheet.height - mix.greyTop) * GREY_PART;
  const barX = sheet.margin.left + width + 17;
  const cloths = values.filter((v) => v.isCloth);
  const pairs = pairsOf(cloths);
  const bands = Array.from(
    { length: 10 },
    (_, at) =>
      `<rect x="${r(barX)}" y="${r(y + (height * at) / 10)}" width="10" height="${r(height / 10 + 0.02)}" fill="${greyOfLightness(95 - at * 10)}"/>`,
  ).join("");
  const atOf = (value: number): number => y + (height * (100 - value)) / 100;
  const tops = spreadLabels(
    values.map((v) => atOf(v.value) - 2.1),
    values.map(() => LABEL_MM),
    y - 2,
    y + height + 3,
  );
  const leads = values
    .map(
      (v, at) =>
        `M${r(barX - 1.5)} ${r(atOf(v.value))}H${r(barX + 11.5)}L${r(barX + 17)} ${r((tops[at] as number) + 2.1)}`,
    )
    .join("");
  const numbers = [0, 50, 100]
    .map(
      (n) =>
        `<text class="drawn" x="${r(barX - 2.6)}" y="${r(atOf(n) + (n === 100 ? 2.4 : n === 0 ? 0 : 1.2))}" font-size="3.5" text-anchor="end">${n}</text>`,
    )
    .join("");
  const scale = `<svg class="wall-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" aria-hidden="true" xmlns="http://www.w3.org/2000/svg">${bands}<rect x="${r(barX)}" y="${r(y)}" width="10" height="${r(height)}" fill="none" stroke="#23282e" stroke-width=".18"/><path d="${leads}" fill="none" stroke="#fff" stroke-opacity=".75" stroke-width=".6"/><path d="${leads}" fill="none" stroke="#23282e" stroke-width=".18"/>${numbers}</svg>`;
  return {
    standfirst: spelled(
      "The mix without its colour: each cloth as light or as dark as it is. A good mix still has its shape here.",
      language,
    ),
    picture: mix.greySvg,
    pictureWidth: width,
    pictureHeight: height,
    y,
    names: mix.captions.map((c) => ({
      x: sheet.margin.left + c.x * GREY_PART,
      y: y + (c.y - mix.greyTop) * GREY_PART + 0.4,
      width: c.width * GREY_PART,
      name: shortened(c.name, Math.max(12, Math.floor((c.width * GREY_PART) / 1.1))),
    })),
    ink: mix.ink,
    scale: { html: scale },
    labelX: barX + 18,
    labels: values.map((v, at) => ({
      y: tops[at] as number,
      name: shortened(v.name, 16),
      value: Math.round(v.value),
    })),
    note: spelled(noteOf(cloths, pairs.length), language),
    pairs: pairs.slice(0, MOST_PAIRS).map(({ lighter, darker }) => ({
      lighter: greyOfLightness(lighter.value),
      darker: greyOfLightness(darker.value),
      names: `${lighter.name} and ${darker.name}`,
    })),
  };
}
