import { readableInk } from "../../colour/contrast.ts";
import { greyOf } from "../../colour/luminance.ts";
import type { RoleOf } from "../../scheme/roles.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { capital } from "../../units/capital.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { type Language, placesOf } from "../words/phrases.ts";
import { closeUpOf } from "./closeUp.ts";
import { fillOf } from "./cuttingFill.ts";
import { type Cutting, type CuttingFill, cuttingsSvg, pieceId } from "./cuttings.ts";
import { fixedPlaces } from "./fixedPlaces.ts";
import { hangFixed, type PlaceFault } from "./hangFixed.ts";
import type { Field, HungPiece } from "./hangPiece.ts";
import { type MixCaption, mixCaption, spokenMix } from "./mixCaption.ts";
import { mixPieces, scaleFor } from "./mixPieces.ts";
import type { BoardSheet } from "./sheetGeometry.ts";
import { type TitleBlock, titleBlock, titleOver } from "./titleBlock.ts";

export interface Mix {
  readonly svg: Markup;
  /** The same cuttings in grey, each as light as it is, to be shown `GREY_PART` as large. */
  readonly greySvg: Markup;
  /** Where its picture begins, millimetres from the sheet's upper edge on the true board. */
  readonly greyTop: number;
  readonly captions: readonly MixCaption[];
  /** The width of the widest piece, millimetres. */
  readonly widest: number;
  /** The scale that all cloths share: one to this many. */
  readonly scale: number;
  readonly ground: string;
  readonly ink: string;
  /** Foot of the title's room, and the main cloth's top and the lower row's top, for what must align with them. */
  readonly mainTop: number;
  readonly lowerTop: number;
  /** Width that the title may take, over the left-hand piece. */
  readonly titleWidth: number;
  readonly titleFoot: number;
  readonly title: TitleBlock;
  /** What hangs on the board, by card. */
  readonly pieces: readonly string[];
  /** Places asked for in the room's file that could not be taken. */
  readonly placeFaults: readonly PlaceFault[];
}

/** How large the grey board stands beside the true one. */
export const GREY_PART = 0.6;

/** Inks of the house: on the wall field whichever reads better. */
export const INK = "#23282e";
export const PAPER = "#ffffff";

/** The part of the wall field on which pieces hang: inside the margins, and clear of the share strip. */
export function mixField(sheet: BoardSheet): Field {
  return {
    width: sheet.fieldWidth - sheet.margin.left - 14,
    height: sheet.height - sheet.margin.top - sheet.margin.bottom,
  };
}

/** What hangs on a board, at which scale. */
interface Hung {
  readonly hung: readonly HungPiece[];
  readonly anchor: Swatch | null;
  readonly scale: number;
}

/** The pieces of a board as cuttings, in colour and in grey, with their captions. */
function piecePictures(
  data: ProjectData,
  room: RoomData,
  { hung, anchor, scale }: Hung,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
) {
  const language = data.studio.fields.language as Language;
  const { margin, fieldWidth } = sheet;
  const cuttings: Cutting[] = [];
  const grey: Cutting[] = [];
  const greyBook = book.inGrey(GREY_PART);
  const captions: MixCaption[] = [];
  for (const h of hung) {
    const x = margin.left + h.x;
    const y = margin.top + h.y;
    const isAnchor = anchor !== null && h.id === anchor.id;
    const swatch = isAnchor ? anchor : (data.swatches.get(h.id) as Swatch);
    const role = room.scheme.roles.find((r) => r.cloth === h.id);
    const isPaper = !isAnchor && data.records.cloths.get(h.id)?.fields.roll !== undefined;
    const filledFrom = (shelf: Parameters<typeof fillOf>[4]): CuttingFill => {
      const whole = isAnchor ? shelf.whole(swatch, h.width) : null;
      return whole ? { picture: whole.href } : fillOf(swatch, h.width, h.height, scale, shelf);
    };
    const cutting: Cutting = {
      id: h.id,
      x,
      y,
      width: h.width,
      height: h.height,
      edge: isAnchor || isPaper ? "straight" : "pinked",
      fill: filledFrom(book),
    };
    cuttings.push(cutting);
    const inGrey = filledFrom(greyBook);
    grey.push({
      ...cutting,
      fill:
        "awaited" in inGrey
          ? { awaited: inGrey.awaited.map((b) => ({ ...b, hex: greyOf(b.hex) })) }
          : inGrey,
    });
    captions.push(
      mixCaption(h, hung, {
        x,
        y,
        swatch,
        role: isAnchor ? null : (role as RoleOf),
        isPaper,
        awaited: "awaited" in cutting.fill,
        places: isAnchor ? [] : placesOf(h.id, room, language),
        language,
        fieldWidth,
        pieceId: pieceId(prefix, captions.length),
        closeUp: closeUpOf(swatch, { ...h, x, y }, `${prefix}-look${captions.length}`, data, book),
      }),
    );
  }
  return { cuttings, grey, captions };
}

/** The mix of a room as a composition on its wall's colour, with captions and the places that other parts of the page align with. */
export function mixOfRoom(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): Mix {
  const ground = room.record.fields["paper-ground"] ? PAPER : (room.wallColour ?? PAPER);
  const roles = room.scheme.roles.slice(0, 12);
  const { margin, fieldWidth, height } = sheet;
  const field = mixField(sheet);
  const scale = scaleFor(roles, data.swatches, field);
  const anchorId = room.record.fields.anchor;
  const anchor = anchorId ? (data.objects.get(anchorId) ?? null) : null;
  const pieces = mixPieces(roles, data.swatches, anchor, scale);
  const title = capital(room.record.fields.room);
  const isNarrow = pieces[0]?.role === "anchor";
  const titleSpace = isNarrow
    ? titleOver(title, field.width * 0.33, field.width * 0.62)
    : titleBlock(title, field.width);
  const { hung, faults } = hangFixed(
    pieces,
    field,
    { width: titleSpace.widthMm, height: titleSpace.heightMm + 5 },
    fixedPlaces(room.record.fields["hang-at"] ?? [], margin),
  );
  const { cuttings, grey, captions } = piecePictures(
    data,
    room,
    { hung, anchor, scale },
    sheet,
    book,
    prefix,
  );
  const upper = hung.filter((h) => h.row === "upper");
  const main = hung.find((h) => roles.find((r) => r.cloth === h.id)?.role === "main") ?? upper[0];
  const lower = hung.filter((h) => h.row === "lower");
  const first = upper[0];
  const second = upper[1];
  const description = spokenMix(captions);
  const svg = `<svg class="mix-picture" viewBox="0 0 ${fieldWidth} ${height}" role="img" aria-labelledby="${prefix}-t ${prefix}-d" xmlns="http://www.w3.org/2000/svg"><title id="${prefix}-t">The cloths of ${escapeHtml(title)}</title><desc id="${prefix}-d">${escapeHtml(description)}</desc>${cuttingsSvg(cuttings, ground, prefix)}</svg>`;
  const greyGround = greyOf(ground);
  // Without the room's name the field's head is empty in grey, and gives way.
  const greyTop = Math.max(0, Math.min(...grey.map((c) => c.y)) - margin.top);
  const greyHeight = height - greyTop;
  const greySvg = `<svg class="grey-picture" viewBox="0 ${greyTop.toFixed(2)} ${fieldWidth} ${greyHeight.toFixed(2)}" role="img" aria-labelledby="${prefix}-gt ${prefix}-gd" xmlns="http://www.w3.org/2000/svg"><title id="${prefix}-gt">The cloths of ${escapeHtml(title)} in grey</title><desc id="${prefix}-gd">${escapeHtml(description)}</desc><rect width="${fieldWidth}" height="${height}" fill="${greyGround}"/>${cuttingsSvg(grey, greyGround, `${prefix}-g`)}</svg>`;
  return {
    svg: { html: svg },
    greySvg: { html: greySvg },
    greyTop,
    captions,
    widest: Math.ceil(Math.max(60, ...hung.map((h) => h.width + 1.5))),
    scale,
    ground,
    ink: readableInk(ground, INK, PAPER),
    mainTop: margin.top + (main?.y ?? 0),
    lowerTop: margin.top + (lower[0]?.y ?? field.height * 0.7),
    titleWidth:
      isNarrow && second && titleSpace.widthMm <= field.width * 0.33
        ? Math.max(second.x - GAP_TO_MAIN, field.width * 0.33)
        : field.width,
    pieces: hung.map((h) => h.id),
    placeFaults: faults,
    title: titleSpace,
    titleFoot: margin.top + (first?.y ?? field.height),
  };
}

const GAP_TO_MAIN = 8;
