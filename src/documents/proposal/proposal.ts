import { readableInk } from "../../colour/contrast.ts";
import { layingOf, shownMm } from "../../swatches/period.ts";
import { isPlain } from "../../swatches/swatch.ts";
import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import { type Board, boardOf, issueWords } from "../board/board.ts";
import { fillOf, mostOnPaper } from "../board/cuttingFill.ts";
import { type Cutting, cuttingsSvg } from "../board/cuttings.ts";
import { INK, PAPER } from "../board/mix.ts";
import { type BoardSheet, boardSheet } from "../board/sheetGeometry.ts";
import type { Page } from "../page.ts";
import { boardPath, clientIndexPath, clientTree, mailPath, proposalPath } from "../paths.ts";
import { type PictureBook, pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { accentStyle } from "../words/accent.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { joined, runningWords } from "../words/pageStyle.ts";
import { budgetOf } from "./budget.ts";
import { optionBlocks } from "./options.ts";
import { sourcesOf } from "./sources.ts";
import { stepRows } from "./steps.ts";

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
function coverOf(data: ProjectData, book: PictureBook): Cover {
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

/** The studio's mark is at most so wide. */
const MARK_MM = 40;

/** What the client is asked to decide: the project's questions, then each room's. */
function decisionsOf(data: ProjectData): { room: string | null; question: string }[] {
  const own = (data.project.fields.decisions ?? []).map((question) => ({
    room: null,
    question,
  }));
  return [
    ...own,
    ...data.rooms.flatMap((r) =>
      (r.record.fields.decisions ?? []).map((question) => ({
        room: data.rooms.length > 1 ? capital(r.record.fields.room) : null,
        question,
      })),
    ),
  ];
}

/** What a signature says: which proposal, and what it comes to, with the choices that were ticked. */
function agreementWords(data: ProjectData, sum: string): string {
  const choices = data.choices.some((c) => c.open && c.options.length > 0);
  const open = data.money.lines.some((l) => l.open);
  const comesTo = open
    ? "the prices in it, and those still to come once I have agreed to them"
    : `the total of ${sum}`;
  return `I have read this proposal, ${issueWords(data)}, and agree to it and to ${comesTo}${choices ? ", changed by the choices that are ticked in it" : ""}. Please go ahead.`;
}

/** The proposal of a project: cover, boards, the budget, what to decide, terms, cautions, signature. Client prices only. */
export function proposalPage(data: ProjectData): Page {
  const { project, studio } = data;
  const path = proposalPath(project.id);
  const book = pictureBook(clientTree(project.id), "");
  const boards: Board[] = data.rooms.map((room, at) => boardOf(data, room, book, `b${at}`));
  const cover = coverOf(data, book);
  const budget = budgetOf(data, book, "money");
  const fields = studio.fields;
  const hold = project.fields["prices-hold"] ?? fields["prices-hold"];
  const model = {
    kind: "proposal",
    style: joined(
      accentStyle(studio),
      runningWords(
        project.fields.project,
        `Proposal, ${issueWords(data)}`,
        hold ? `Prices hold until ${dateInWords(hold, fields.language)}.` : "",
      ),
    ),
    letter: fields.paper === "a3" ? "a4-page" : "letter-page",
    cover,
    boards,
    budget,
    steps: stepRows(data, budget, book, "step"),
    options: optionBlocks(data, book, "option"),
    mark: fields.mark ? book.plain(fields.mark, MARK_MM).href : "",
    studio: {
      name: fields.studio,
      address: fields.address ?? "",
      phone: fields.phone ?? "",
      email: fields.email ?? "",
    },
    client: {
      name: project.fields.client.name,
      address: project.fields.client.address ?? "",
    },
    project: project.fields.project,
    issue: issueWords(data),
    decisions: decisionsOf(data),
    colours: spelled(
      "Colours on screens and paper are approximations. Please judge every cloth from its sample, in the room, by day and by lamp, before you sign.",
      fields.language,
    ),
    sources: sourcesOf(data),
    terms: fields.terms ?? [],
    agreement: agreementWords(data, budget.sum),
    hold: hold ? `These prices hold until ${dateInWords(hold, fields.language)}.` : "",
    fitting: project.fields.fitting
      ? `Fitting is planned for ${dateInWords(project.fields.fitting, fields.language)}, if this is signed in time.`
      : "",
    cautions: cautionsOf(
      data.rooms.flatMap((r) => r.items),
      fields.language,
    ),
    ways: [
      { href: wayTo(path, clientIndexPath(project.id)), text: "All documents" },
      ...data.rooms.map((r) => ({
        href: wayTo(path, boardPath(project.id, r.record.id)),
        text: capital(r.record.fields.room),
      })),
    ],
  };
  return {
    reader: "client",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: proposal`,
    language: fields.language,
    paper: fields.paper,
    pdf: true,
    model,
    pictures: book.pictures,
  };
}

/** The proposal in the client's tree, and the same in one file that opens from a letter's attachment. */
export function proposalPages(data: ProjectData): Page[] {
  const page = proposalPage(data);
  return [
    page,
    {
      ...page,
      path: mailPath(data.project.id),
      pdf: false,
      inOneFile: true,
      // The other documents are not sent with it.
      model: { ...page.model, ways: [] },
    },
  ];
}
