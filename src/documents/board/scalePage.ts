import type { RoleOf } from "../../scheme/roles.ts";
import { layingOf, shownMm } from "../../swatches/period.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { AWAITED, colourCard } from "../pictures/colourCard.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { escapeHtml, type Markup, marked } from "../words/marks.ts";
import { listed, scaleWords } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { DISTANCES_M, distance, PATCH, patchesSvg } from "./acrossTheRoom.ts";
import { fillOf, mostOnPaper } from "./cuttingFill.ts";
import { shadowOf, tileImages } from "./cuttings.ts";
import { type DistanceRow, distanceRows, pitchOf } from "./distanceRows.ts";
import { edgePath } from "./edges.ts";
import { scaleTitle } from "./oneOrMore.ts";
import { repeatWords } from "./repeatWords.ts";
import { rulerSvg } from "./ruler.ts";
import { type LadderNote, ladderNote, ladderSvg, spokenOf } from "./scaleLadder.ts";
import { shareOut } from "./shareOut.ts";
import type { BoardSheet } from "./sheetGeometry.ts";
import { type Glance, type SheetPart, sheetPart, viewOf } from "./sheetPart.ts";

export interface ScaleCaption {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly name: string;
  readonly words: Markup;
}

export interface ScalePage {
  readonly title: string;
  /** One pattern hangs here, beside no other. */
  readonly isAlone: boolean;
  /** The scale in words, which is true on paper alone. */
  readonly scaleWords: string;
  /** The lengths between their rulers, and the ladder of motifs below them. */
  readonly svg: Markup;
  /** The lengths alone, for a narrow screen that shows them whole before they are looked at closely. */
  readonly glance: Glance;
  readonly pan: SheetPart;
  readonly captions: readonly ScaleCaption[];
  /** What each cloth looks like across the room. */
  readonly acrossSvg: Markup;
  readonly acrossPan: SheetPart;
  readonly rows: readonly DistanceRow[];
  readonly distanceX: number;
  readonly note: LadderNote | null;
  readonly noteY: number;
}

const r = svgNumber;

/** The scale at which the largest motif and the widest repeat can both be shown whole, as far as they are photographed. */
function scaleFor(swatches: readonly Swatch[], lengthMm: number): number {
  const most = (of: (s: Swatch) => number): number => Math.max(0, ...swatches.map(of));
  const photographed = (s: Swatch, way: "across" | "up", size: number): number =>
    layingOf(s) === "whole" ? size : Math.min(size, shownMm(s.photo)?.[way] ?? size);
  const motif = most((s) => s.motifMm ?? 0);
  const up = most((s) =>
    s.repeat && s.kind !== "stripe" ? photographed(s, "up", s.repeat.upMm) : 0,
  );
  const across = most((s) => photographed(s, "across", s.repeat?.acrossMm ?? 0));
  return (
    [2, 3, 4, 5, 6, 8, 10].find(
      (s) => motif / s <= 46 && up / s <= lengthMm * 1.08 && across / s <= 120,
    ) ?? 12
  );
}

interface Strip {
  readonly swatch: Swatch;
  readonly x: number;
  readonly width: number;
  /** As long as is asked for, or as the photograph shows. */
  readonly height: number;
  /** True where the photograph shows less than the page has room for. */
  readonly isShort: boolean;
}

/** A length is no narrower than its caption, and no wider than this times its repeat. */
const NARROWEST = 20;
const STRIP_GAP = 3;

function strips(
  swatches: readonly Swatch[],
  from: number,
  to: number,
  lengthMm: number,
  scale: number,
): Strip[] {
  const most = swatches.map((s) => mostOnPaper(s, scale));
  const places = shareOut(
    swatches.map((s, at) => {
      const one =
        (s.repeat?.acrossMm ??
          (s.kind === "stripe" ? s.repeat?.upMm : null) ??
          (s.motifMm ?? 60) * 1.8) / scale;
      const wanted = Math.min(112, Math.max(26, one < 26 ? one * Math.ceil(26 / one) : one));
      const shown = Math.max(NARROWEST, most[at]?.width ?? Number.POSITIVE_INFINITY);
      return { wanted, least: NARROWEST, most: Math.min(wanted * 1.45, shown) };
    }),
    to - from - STRIP_GAP * (swatches.length - 1),
  );
  let x = from;
  return swatches.map((swatch, at) => {
    const place = places[at] as number;
    const shown = most[at];
    const strip = {
      swatch,
      x,
      width: Math.min(place, shown?.width ?? place),
      height: Math.min(lengthMm, shown?.height ?? lengthMm),
      isShort: shown != null && (shown.height < lengthMm - 0.05 || shown.width < place - 0.05),
    };
    x += place + STRIP_GAP;
    return strip;
  });
}

function lengthSvg(
  strip: Strip,
  top: number,
  scale: number,
  book: PictureBook,
  id: string,
): string {
  const { height } = strip;
  const d = edgePath("frayed", strip.x, top, strip.width, height);
  const fill = fillOf(strip.swatch, strip.width, height, scale, book);
  if ("awaited" in fill)
    return colourCard(fill.awaited, { x: strip.x, y: top, width: strip.width, height });
  const shadow = shadowOf("#ffffff");
  const inner =
    "picture" in fill
      ? `<image href="${escapeHtml(fill.picture)}" x="${r(strip.x)}" y="${r(top)}" width="${r(strip.width)}" height="${r(height)}" preserveAspectRatio="xMidYMid slice"/>`
      : "tile" in fill
        ? tileImages(
            fill.tile,
            scale,
            { x: strip.x, y: top, width: strip.width, height },
            strip.x + strip.width * 0.5,
            top + height * 0.3,
            fill.ground,
          )
        : "flat" in fill
          ? `<path d="${d}" fill="${fill.flat}"/>`
          : "";
  return `<path d="${d}" transform="translate(.5 .8)" fill="${shadow}" fill-opacity=".14"/><clipPath id="${id}"><path d="${d}"/></clipPath><g clip-path="url(#${id})">${inner}</g>`;
}

/** True of a cloth that a length can show: photographed with its size, or known by its declared colours. */
function isShown(swatch: Swatch): boolean {
  return swatch.photo === null ? swatch.colours.length > 0 : shownMm(swatch.photo) !== null;
}

/** Its repeat and how it is matched, and how far that is seen; of a cloth without a photograph what its card says of its pattern. */
function lengthWords({ swatch, isShort }: Strip, units: UnitSystem): string {
  if (swatch.photo !== null)
    return `${repeatWords(swatch, units)}${isShort ? "; as far as it is photographed" : ""}`;
  const { kind, repeat } = swatch;
  const said = [
    ...(kind ? [kind.replace("-", " ")] : []),
    ...(repeat ? [repeatWords(swatch, units)] : []),
  ];
  return [...(said.length > 0 ? [said.join(", ")] : []), AWAITED].join("; ");
}

/** The widest that a caption runs, and how far it keeps from the distances at the right. */
const WIDEST_CAPTION = 125;
const CLEAR_OF_DISTANCES = 12;

/** A caption is as wide as its length; the last one, at whose right the page is free, runs on there rather than down over the ladder. */
function captionWidth(strip: Strip, free: number | null): number {
  const own = Math.max(strip.width + 1, 24);
  return free === null ? own : Math.max(own, Math.min(WIDEST_CAPTION, free - strip.x));
}

/** The scale page of a room: every pattern as a length at one true scale, the ladder of motifs, and how each reads across the room. */
export function scalePageOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): ScalePage | null {
  const units = data.studio.fields.units;
  const byMotif = (a: RoleOf, b: RoleOf): number =>
    (b.motifMm ?? 0) - (a.motifMm ?? 0) || (a.cloth < b.cloth ? -1 : 1);
  const swatchOf = (role: RoleOf): Swatch => data.swatches.get(role.cloth) as Swatch;
  const patterned = room.scheme.roles
    .filter((role) => !isPlain(swatchOf(role)) && isShown(swatchOf(role)))
    .sort(byMotif)
    .slice(0, 8);
  const photographed = patterned.map(swatchOf).filter((s) => s.photo !== null);
  if (photographed.length === 0) return null;
  const plains = room.scheme.roles.filter(
    (role) => isPlain(swatchOf(role)) && swatchOf(role).photo !== null,
  );
  const top = sheet.margin.top + 35;
  const lengthMm = sheet.height > 285 ? 162 : 148;
  const swatches = patterned.map(swatchOf);
  const scale = scaleFor(photographed, lengthMm);
  const distanceX = sheet.width - sheet.margin.right - (PATCH * 4 + 1.4 * 3);
  const from = sheet.margin.left + 15;
  const lengths = strips(swatches, from, distanceX - 26, lengthMm, scale);
  const last = lengths.at(-1) as Strip;
  const end = last.x + Math.max(last.width, NARROWEST);
  const base = sheet.height - sheet.margin.bottom - 7;
  // How a cloth reads across the room is seen on its photograph alone.
  const shown = [...photographed, ...plains.map(swatchOf)].slice(0, 8);
  const pitch = pitchOf(shown.length);
  const rows = distanceRows(shown, top, units);
  const hung = `<g id="${prefix}-hung">${lengths.map((l, at) => lengthSvg(l, top, scale, book, `${prefix}-s${at}`)).join("")}</g>`;
  const across =
    shown
      .map((s, at) => patchesSvg(s, distanceX, top + at * pitch, book, `${prefix}-p${at}`, units))
      .join("") +
    DISTANCES_M[units]
      .map(
        (m, at) =>
          `<text class="drawn" x="${r(distanceX + at * (PATCH + 1.4))}" y="${r(top - 2)}" font-size="3.5">${distance(m, units)}</text>`,
      )
      .join("");
  const body =
    rulerSvg("cm", "left", from - 3, top, lengthMm, scale) +
    hung +
    rulerSvg("in", "right", end + 3, top, lengthMm, scale) +
    ladderSvg(
      room.scheme.ladder,
      data.swatches,
      base,
      from,
      distanceX - 12,
      scale,
      book,
      units,
      prefix,
      spokenOf(room),
    );
  const description = lengths.map((l) => `${l.swatch.name}, ${lengthWords(l, units)}`).join("; ");
  const picture = (id: string, title: string, said: string, inner: string): Markup => ({
    html: `<svg class="scale-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" role="img" aria-labelledby="${id}t ${id}d" xmlns="http://www.w3.org/2000/svg"><title id="${id}t">${title}</title><desc id="${id}d">${escapeHtml(said)}</desc>${inner}</svg>`,
  });
  const distances = listed(DISTANCES_M[units].map((m) => distance(m, units)));
  const svg = picture(
    `${prefix}-s`,
    `Every pattern at one scale, one to ${scale}`,
    description,
    body,
  );
  const acrossSvg = picture(
    `${prefix}-a`,
    `Each cloth as it looks from ${distances}`,
    rows.map((row) => `${row.name}, ${row.words}`).join("; "),
    across,
  );
  return {
    title: scaleTitle(swatches.length),
    isAlone: swatches.length === 1,
    scaleWords: scaleWords(scale, "its"),
    svg,
    glance: {
      id: `${prefix}-hung`,
      view: viewOf({ x: from - 1, y: top - 1, width: end - from + 2, height: lengthMm + 2 }),
    },
    pan: sheetPart(sheet.margin.left - 4, top - 6, distanceX - 8, base + 8),
    acrossSvg,
    acrossPan: sheetPart(distanceX, top - 7, distanceX + 66, (rows.at(-1)?.y ?? top) + 25),
    captions: lengths.map((l, at) => ({
      x: l.x,
      y: top + l.height + 2.4,
      width: captionWidth(l, at === lengths.length - 1 ? distanceX - CLEAR_OF_DISTANCES : null),
      name: l.swatch.name,
      words: marked(lengthWords(l, units)),
    })),
    rows,
    distanceX,
    note: ladderNote(room, units),
    noteY: Math.max(base - 24, (rows.at(-1)?.y ?? top) + 25),
  };
}
