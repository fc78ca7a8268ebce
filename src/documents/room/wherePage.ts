import type { RoleOf } from "../../scheme/roles.ts";
import { shownMm } from "../../swatches/period.ts";
import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import { cuttingWords, listHead } from "../board/oneOrMore.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";
import { type SheetPart, sheetPart } from "../board/sheetPart.ts";
import { partAboutMotif } from "../pictures/aboutMotif.ts";
import { AWAITED, bandsOf, colourCard } from "../pictures/colourCard.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { type Language, roleWord } from "../words/phrases.ts";
import { wherePlanOf } from "./wherePlan.ts";
import { COLOUR_MM, SQUARE_GAP_MM, type WhereRow } from "./whereRows.ts";
import { whereTold } from "./whereTold.ts";
import { fitting, leastLines, type RoomWords, worksWords } from "./worksWords.ts";

export interface WherePage {
  readonly plan: Markup | null;
  /** The part of the sheet that the plan takes. */
  readonly pan: SheetPart | null;
  /** The plan's scale in words, which is true on paper alone. */
  readonly planScale: string;
  readonly planWords: string;
  /** How wide they run: clear of the lists. */
  readonly planWordsWidth: number;
  readonly clothHead: string;
  /** That the cuttings are not at one scale; empty of one cloth alone. */
  readonly cuttingWords: string;
  readonly cloths: readonly {
    readonly name: string;
    readonly role: string;
    readonly where: string;
    readonly square: Markup;
  }[];
  readonly colours: readonly {
    readonly name: string;
    readonly hex: string;
    readonly where: string;
    readonly square: Markup;
  }[];
  /** What works in the room, and what else the studio publishes of its findings; as much as the page holds. */
  readonly words: RoomWords;
  /** Where these words stand: below the plan where that has more room, else null, and they follow the lists. */
  readonly wordsAt: { readonly x: number; readonly y: number; readonly width: number } | null;
  /** Millimetres: the side of a cutting, of a colour, the column that both stand in, and the column of names. */
  readonly squareMm: number;
  readonly colourMm: number;
  readonly squareColumn: number;
  readonly nameWidth: number;
  readonly listX: number;
  readonly listWidth: number;
}

/** The plan begins so far below the upper margin, and the lists do. */
const PLAN_TOP_MM = 30;
const LIST_TOP_MM = 20;
/** The least width of the lists, what keeps them off the plan, and the most that they stand to the left of the sheet's middle. */
const LISTS_MM = 150;
const OFF_PLAN_MM = 11;
const LISTS_FROM = 0.4;
/** The two heads with the space about them, and the line about the cuttings. */
const HEADS_MM = 27;
/** With so much room under the plan the words stand there, where the page would else be empty. */
const UNDER_PLAN_MM = 38;
const LETTER_MM = 1.62;
/** Between the words over the plan and the lists. */
const PLAN_WORDS_GAP_MM = 8;
const LINE_MM = 5;
/** Between the plan and the words under it, and the widest that they run. */
const UNDER_PLAN_GAP_MM = 6;
const widthOf = (planWidth: number): number => Math.min(planWidth, 190);

/** A square of a cloth or of a colour. */
function square(inner: string, side: number, id: string): Markup {
  return {
    html: `<svg class="square" viewBox="0 0 ${side} ${side}" aria-hidden="true" xmlns="http://www.w3.org/2000/svg"><clipPath id="${id}"><rect width="${side}" height="${side}"/></clipPath><g clip-path="url(#${id})">${inner}</g></svg>`,
  };
}

const flatSquare = (hex: string, side: number): string =>
  `<rect width="${side}" height="${side}" fill="${hex}"/>`;

/** What a square of a cloth shows: a cutting, else its average, else the card of its colours. */
function clothInSquare(data: ProjectData, cloth: string, book: PictureBook, side: number): string {
  const swatch = data.swatches.get(cloth);
  const href = cut(data, cloth, book, side);
  if (href)
    return `<image href="${escapeHtml(href)}" width="${side}" height="${side}" preserveAspectRatio="xMidYMid slice"/>`;
  if (swatch?.photo && swatch.average) return flatSquare(swatch.average, side);
  const [at, edge] = [EDGE_MM, side - 2 * EDGE_MM];
  return colourCard(swatch ? bandsOf(swatch) : [], { x: at, y: at, width: edge, height: edge });
}

/** A dashed edge stands so far inside its square. */
const EDGE_MM = 0.2;

/** A cutting shows a motif with a little of its neighbours, a stripe or check one repeat; never less cloth than this many times its side. */
const ABOUT_MOTIF = 1.2;
const LEAST_TIMES = 3;

/** A small square cut from a cloth so that its motif can be known again. */
function cut(data: ProjectData, cloth: string, book: PictureBook, side: number): string | null {
  const swatch = data.swatches.get(cloth);
  const photo = swatch?.photo;
  const shown = shownMm(photo ?? null);
  if (!swatch || !photo?.showsMm || !shown) return null;
  const banded = swatch.kind === "stripe" || swatch.kind === "check";
  const step = swatch.repeat
    ? Math.min(swatch.repeat.acrossMm ?? swatch.repeat.upMm, swatch.repeat.upMm)
    : 0;
  const wanted = Math.max(
    side * LEAST_TIMES,
    (swatch.motifMm ?? 0) * ABOUT_MOTIF,
    banded ? step : 0,
  );
  const size = Math.min(wanted, shown.across, shown.up);
  const part = partAboutMotif(photo, photo.showsMm, { width: size, height: size });
  return book.crop(swatch, part, side)?.href ?? null;
}

/** The column of names: wider where a name is long. */
const NAME_MM = 42;
const LONG_NAME = { from: 18, mm: 62 };

/** Where it goes: the room in plan, then each cloth by its places and each colour by the places that carry it. */
export function wherePageOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): WherePage {
  const language = data.studio.fields.language as Language;
  const { margin } = sheet;
  const foot = sheet.height - margin.bottom;
  const planY = margin.top + PLAN_TOP_MM;
  const said = worksWords(room, language);
  const plan = wherePlanOf(data, room, sheet, book, prefix, {
    y: planY,
    width: sheet.width - margin.left - margin.right - OFF_PLAN_MM - LISTS_MM,
    height: foot - planY,
    wordsMm: (width) => UNDER_PLAN_GAP_MM + leastLines(said, widthOf(width) / LETTER_MM) * LINE_MM,
  });
  const listX = plan ? Math.max(sheet.width * LISTS_FROM, plan.right + OFF_PLAN_MM) : margin.left;
  const listWidth = sheet.width - margin.right - listX;
  const { roles, carried } = room.scheme;
  const nameWidthOf = (rows: readonly WhereRow[]): number =>
    rows.some((row) => row.name.length > LONG_NAME.from) ? LONG_NAME.mm : NAME_MM;
  const free = foot - margin.top - LIST_TOP_MM - HEADS_MM;
  const roleWords = ({ cloth, role }: RoleOf): string => {
    const swatch = data.swatches.get(cloth);
    const paper = data.records.cloths.get(cloth)?.fields.roll !== undefined;
    const awaited = swatch?.photo == null ? `, ${AWAITED}` : "";
    return `${roleWord(role, swatch?.kind ?? null, paper)}${awaited}`;
  };
  const columns = (rows: readonly WhereRow[]) => ({ listWidth, nameWidth: nameWidthOf(rows) });
  const told = whereTold(room, language, roleWords, columns, free);
  const { rows, square: side, nameWidth, heightMm } = told;
  const below = free - heightMm;
  const underPlan = plan ? foot - plan.foot - UNDER_PLAN_GAP_MM : 0;
  const left = plan !== null && (underPlan > below || underPlan > UNDER_PLAN_MM);
  const lines = Math.floor(Math.max(below, underPlan) / LINE_MM);
  const wide = left ? widthOf(plan.right - margin.left) : listWidth;
  return {
    words: fitting(said, lines, wide / LETTER_MM),
    wordsAt: left ? { x: margin.left, y: plan.foot + UNDER_PLAN_GAP_MM, width: wide } : null,
    plan: plan?.markup ?? null,
    pan: plan && sheetPart(margin.left, planY, plan.right, plan.foot),
    planScale: plan ? `, one to ${plan.scale}` : "",
    planWords: plan
      ? spelled(
          `Each piece has its cloth’s colour as it reads from across the room.${plan.spread ? " Chairs stand around their table as is usual." : ""}`,
          language,
        )
      : "",
    planWordsWidth: listX - margin.left - PLAN_WORDS_GAP_MM,
    clothHead: listHead("cloth", roles.length),
    cuttingWords: cuttingWords(roles.length),
    cloths: roles.map((role, at) => ({
      name: rows[at]?.name ?? role.name,
      role: rows[at]?.role ?? "",
      where: rows[at]?.where ?? "",
      square: square(clothInSquare(data, role.cloth, book, side), side, `${prefix}-q${at}`),
    })),
    colours: carried.map((c, at) => ({
      name: capital(c.colour.name),
      hex: c.colour.hex,
      where: rows[roles.length + at]?.where ?? "",
      square: square(flatSquare(c.colour.hex, COLOUR_MM), COLOUR_MM, `${prefix}-k${at}`),
    })),
    squareMm: side,
    colourMm: COLOUR_MM,
    squareColumn: side + SQUARE_GAP_MM,
    nameWidth,
    listX,
    listWidth,
  };
}
