import { readableInk } from "../../colour/contrast.ts";
import { greyOf, lightness } from "../../colour/luminance.ts";
import type { RoleOf } from "../../scheme/roles.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { type Language, listed, placesOf, roleWord } from "../words/phrases.ts";
import { placesInOneLine } from "./captionPlaces.ts";
import { type CloseUp, closeUpOf } from "./closeUp.ts";
import { fillOf, mostOnPaper } from "./cuttingFill.ts";
import { type Cutting, type CuttingFill, cuttingsSvg, pieceId } from "./cuttings.ts";
import { fixedPlaces } from "./fixedPlaces.ts";
import { hangFixed, type PlaceFault } from "./hangFixed.ts";
import { CAPTION_MM, type Field, type HangPiece, type HungPiece } from "./hangPiece.ts";
import type { BoardSheet } from "./sheetGeometry.ts";
import { type TitleBlock, titleBlock, titleOver } from "./titleBlock.ts";

export interface MixCaption {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly name: string;
  /** True where the name is so long for its width that it is set smaller. */
  readonly small: boolean;
  readonly role: string;
  readonly place: string;
  /** The piece itself, for a narrow screen on which the pieces follow each other, the widest first. */
  readonly piece: {
    readonly id: string;
    readonly width: number;
    readonly order: number;
    readonly view: string;
  };
  /** What opens on a screen where the piece is pressed; null without a photograph whose size is known. */
  readonly closeUp: CloseUp | null;
}

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

/** About how wide a letter of a cloth's name runs, millimetres. */
const NAME_LETTER_MM = 2.05;

/** How large the grey board stands beside the true one. */
export const GREY_PART = 0.6;

/** Inks of the house: on the wall field whichever reads better. */
export const INK = "#23282e";
export const PAPER = "#ffffff";

/** One scale for the whole board by the largest motif: 1:3, 1:2 under 60 mm, 1:4 over 250 mm. */
export function boardScale(largestMotifMm: number | null): number {
  if (largestMotifMm === null) return 3;
  return largestMotifMm < 60 ? 2 : largestMotifMm > 250 ? 4 : 3;
}

/** A main cloth whose photograph cannot cover this part of the field stands at a larger scale. */
const ENOUGH = 0.17;

/** The board's scale, larger by at most half where the main cloth's photograph shows too little to lead at the usual one. */
function scaleFor(
  roles: readonly RoleOf[],
  swatches: ReadonlyMap<string, Swatch>,
  field: Field,
): number {
  const motifs = roles.flatMap((r) => (r.motifMm ? [r.motifMm] : []));
  const usual = boardScale(motifs.length > 0 ? Math.max(...motifs) : null);
  const main = swatches.get(roles.find((r) => r.role === "main")?.cloth ?? "");
  if (!main) return usual;
  const leads = (scale: number): boolean => {
    const most = mostOnPaper(main, scale);
    return !most || most.width * most.height >= ENOUGH * field.width * field.height;
  };
  let scale = usual;
  while (!leads(scale) && scale - 1 >= usual / 2) scale--;
  return scale;
}

function lookOf(swatch: Swatch): HangPiece["look"] {
  if (isPlain(swatch)) return "plain";
  if (swatch.kind === "stripe") return "stripe";
  return swatch.kind === "check" || swatch.kind === "geometric" ? "geometric" : "print";
}

function pieceOf(role: RoleOf, swatch: Swatch, scale: number): HangPiece {
  return {
    id: role.cloth,
    role: role.role,
    share: role.shareOfCloth,
    ownAspect: null,
    look: lookOf(swatch),
    repeatOnPaperMm: swatch.repeat ? (swatch.repeat.acrossMm ?? swatch.repeat.upMm) / scale : null,
    most: mostOnPaper(swatch, scale),
    lightness: swatch.average ? lightness(swatch.average) : 70,
  };
}

/** The part of the wall field on which pieces hang: inside the margins, and clear of the share strip. */
export function mixField(sheet: BoardSheet): Field {
  return {
    width: sheet.fieldWidth - sheet.margin.left - 14,
    height: sheet.height - sheet.margin.top - sheet.margin.bottom,
  };
}

/** A caption of more lines than its channel holds would touch what hangs so close below it. */
const CLOSE_BELOW_MM = CAPTION_MM + 4;

/** True where another piece hangs close below a piece and its caption. */
function hangsBelow(other: HungPiece, piece: HungPiece): boolean {
  const foot = piece.y + piece.height;
  const under = other.x < piece.x + piece.width && other.x + other.width > piece.x;
  return under && other.y >= foot && other.y < foot + CLOSE_BELOW_MM;
}

/** True where a piece, or the caption below it, stands at the height of another's caption. */
function beside(other: HungPiece, piece: HungPiece): boolean {
  const from = piece.y + piece.height;
  return other.y < from + CAPTION_MM && other.y + other.height + CAPTION_MM > from;
}

/** The mix of a room as a composition on its wall's colour, with captions and the places that other parts of the page align with. */
export function mixOfRoom(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): Mix {
  const language = data.studio.fields.language as Language;
  const ground = room.record.fields["paper-ground"] ? PAPER : (room.wallColour ?? PAPER);
  const roles = room.scheme.roles.slice(0, 12);
  const { margin, fieldWidth, height } = sheet;
  const field = mixField(sheet);
  const scale = scaleFor(roles, data.swatches, field);
  const anchorId = room.record.fields.anchor;
  const anchor = anchorId ? (data.objects.get(anchorId) ?? null) : null;
  const pieces: HangPiece[] = roles.map((r) =>
    pieceOf(r, data.swatches.get(r.cloth) as Swatch, scale),
  );
  if (anchor?.photo) {
    pieces.unshift({
      id: anchor.id,
      role: "anchor",
      share: 0.19,
      ownAspect: anchor.photo.widthPx / anchor.photo.heightPx,
      look: "print",
      repeatOnPaperMm: null,
      most: null,
      lightness: anchor.average ? lightness(anchor.average) : 60,
    });
  }
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
  const cuttings: Cutting[] = [];
  const grey: Cutting[] = [];
  const greyBook = book.inGrey(GREY_PART);
  const captions: MixCaption[] = [];
  for (const h of hung) {
    const x = margin.left + h.x;
    const y = margin.top + h.y;
    const isAnchor = anchor !== null && h.id === anchor.id;
    const swatch = isAnchor ? anchor : (data.swatches.get(h.id) as Swatch);
    const role = roles.find((r) => r.cloth === h.id);
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
      fill: "awaited" in inGrey ? { awaited: inGrey.awaited.map(greyOf) } : inGrey,
    });
    const next = hung.filter((o) => o.x > h.x && beside(o, h)).sort((a, b) => a.x - b.x)[0];
    const width = Math.max(h.width + 4, next ? next.x - h.x - 2 : fieldWidth - x - 8);
    const lines = Math.ceil((swatch.name.length * NAME_LETTER_MM) / width);
    const places = isAnchor ? [] : placesOf(h.id, room, language);
    const isClose = hung.some((o) => hangsBelow(o, h));
    const place = isClose ? placesInOneLine(places, width) : listed(places);
    const kind = isAnchor
      ? spelled("where the colours come from", language)
      : roleWord((role as RoleOf).role, swatch.kind, isPaper);
    const unscaled = !isAnchor && swatch.photo !== null && swatch.photo.showsMm === null;
    const said =
      "awaited" in cutting.fill
        ? `${kind}, sample to come`
        : unscaled
          ? `${kind}, not to scale`
          : kind;
    captions.push({
      x,
      y: y + h.height + 2,
      width,
      name: swatch.name,
      // A name of two lines or more leaves one line for the rest, so that the caption keeps to its channel.
      small: lines > 2,
      role: lines > 1 && place !== "" ? `${said}; ${place}` : said,
      place: lines > 1 ? "" : place,
      piece: {
        id: pieceId(prefix, captions.length),
        width: Number(h.width.toFixed(2)),
        order: -Math.round(h.width),
        // The shadow reaches a little further than the piece.
        view: [x, y, h.width + 1.5, h.height + 2].map((n) => n.toFixed(2)).join(" "),
      },
      closeUp: closeUpOf(swatch, { ...h, x, y }, `${prefix}-look${captions.length}`, data, book),
    });
  }
  const upper = hung.filter((h) => h.row === "upper");
  const main = hung.find((h) => roles.find((r) => r.cloth === h.id)?.role === "main") ?? upper[0];
  const lower = hung.filter((h) => h.row === "lower");
  const first = upper[0];
  const second = upper[1];
  const description = `${captions.map((c) => [c.name, c.role, c.place].filter((w) => w !== "").join(", ")).join("; ")}.`;
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
