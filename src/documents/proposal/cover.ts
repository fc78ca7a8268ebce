import { readableInk } from "../../colour/contrast.ts";
import { layingOf, shownMm } from "../../swatches/period.ts";
import { isPlain } from "../../swatches/swatch.ts";
import { capital } from "../../units/capital.ts";
import { issueWords } from "../board/board.ts";
import { fillOf, mostOnPaper } from "../board/cuttingFill.ts";
import { type Cutting, cuttingsSvg } from "../board/cuttings.ts";
import { INK, PAPER } from "../board/mix.ts";
import { type BoardSheet, boardSheet } from "../board/sheetGeometry.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";

export interface Cover {
  readonly paper: "a3" | "tabloid";
  readonly width: number;
  readonly height: number;
  readonly ground: string;
  readonly ink: string;
  readonly svg: Markup;
  /** The cloth's place on the sheet, millimetres, which a telephone shows alone; null without one. */
  readonly cut: Pick<Cutting, "x" | "y" | "width" | "height"> | null;
  readonly x: number;
  readonly top: number;
  readonly foot: number;
  readonly project: string;
  readonly client: string;
  readonly rooms: readonly string[];
  readonly issue: string;
  readonly studio: string;
}

/** A cutting on the cover is at most this much enlarged against one third of its true size. */
const COVER_SCALES = [3, 2.5, 2, 1.5, 1];

/**
 * The main cloth of the first room as one length, full height, on its wall's colour. A cloth whose photograph shows less is shown as
 * far as it is photographed, where no other can be a length. Null where no photograph says how much it shows.
 */
function coverCutting(data: ProjectData, sheet: BoardSheet, book: PictureBook): Cutting | null {
  const roles = data.rooms.flatMap((r) => r.scheme.roles);
  const shown = roles.flatMap((r) => data.swatches.get(r.cloth) ?? []);
  const width = sheet.width * 0.4;
  const x = sheet.width * 0.12;
  // A plain that can be laid at will is no cover where a pattern is photographed.
  const laid = shown.find((s) => layingOf(s) === "whole" && !isPlain(s));
  if (laid) {
    const height = sheet.height + 4;
    const fill = fillOf(laid, width, height, 3, book);
    return { id: laid.id, x, y: -2, width, height, edge: "frayed", fill };
  }
  const part = shown.find((s) => shownMm(s.photo) !== null);
  if (!part) return null;
  const room = { width, height: sheet.height - 2 * sheet.margin.top };
  const fits = COVER_SCALES.map((scale) => ({ scale, most: mostOnPaper(part, scale) })).filter(
    ({ most }) => !most || (most.width <= room.width && most.height <= room.height),
  );
  const { scale, most } = fits.at(-1) ?? { scale: 3, most: mostOnPaper(part, 3) };
  const size = {
    width: Math.min(room.width, most?.width ?? room.width),
    height: Math.min(room.height, most?.height ?? room.height),
  };
  return {
    id: part.id,
    x,
    y: (sheet.height - size.height) / 2,
    ...size,
    edge: "pinked",
    fill: fillOf(part, size.width, size.height, most ? scale : 3, book),
  };
}

/** The cover: one cloth on the first room's wall colour; project, rooms, date, studio. */
export function coverOf(data: ProjectData, book: PictureBook): Cover {
  const sheet = boardSheet(data.studio.fields.paper);
  const ground = data.rooms[0]?.wallColour ?? PAPER;
  const cutting = coverCutting(data, sheet, book);
  const swatch = cutting ? data.swatches.get(cutting.id) : undefined;
  const cuttings = cutting ? [cutting] : [];
  return {
    paper: data.studio.fields.paper,
    width: sheet.width,
    height: sheet.height,
    ground,
    ink: readableInk(ground, INK, PAPER),
    svg: {
      html: `<svg class="cover-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" role="img" aria-label="${escapeHtml(swatch ? `A length of ${swatch.name}` : "No cloth yet")}" xmlns="http://www.w3.org/2000/svg"><rect width="${sheet.width}" height="${sheet.height}" fill="${ground}"/>${cuttingsSvg(cuttings, ground, "cover")}</svg>`,
    },
    cut: cutting,
    x: sheet.width * 0.58,
    top: sheet.height * 0.3,
    foot: sheet.height - sheet.margin.bottom - 14,
    project: data.project.fields.project,
    client: data.project.fields.client.name,
    rooms: data.rooms.map((r) => capital(r.record.fields.room)),
    issue: issueWords(data),
    studio: data.studio.fields.studio,
  };
}
