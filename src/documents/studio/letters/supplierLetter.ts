import type { Page } from "../../page.ts";
import { ordersPath, samplesPath } from "../../paths.ts";
import type { ProjectData } from "../../projectData.ts";
import { wayTo } from "../../ways.ts";
import { dateInWords, longDay } from "../../words/dates.ts";
import type { Markup } from "../../words/marks.ts";
import { runningWords } from "../../words/pageStyle.ts";

/** One line of a letter: a number, a name, how much, what one costs, and all of it. */
export interface LetterRow {
  readonly reference: string;
  readonly name: Markup;
  readonly isCloth: boolean;
  readonly amount: Markup;
  readonly price: string;
  readonly sum: string;
  /** What belongs below it; else empty. */
  readonly note: string;
}

/** What a letter to a supplier is, beside what all of them have. */
export interface LetterAsk {
  readonly path: string;
  /** `Order`, `Samples`: its title. */
  readonly title: string;
  readonly supplier: NonNullable<ProjectData["studio"]["fields"]["suppliers"]>[string];
  /** What the studio is told on the screen alone; else empty. */
  readonly early: string;
  readonly rows: readonly LetterRow[];
  /** Heads of the columns of price and sum. */
  readonly heads: readonly [price: string, sum: string];
  /** What all of it comes to; empty where that is not known. */
  readonly goods: string;
  readonly wishes: readonly string[];
  readonly deliver: string;
  /** True where it is signed with a date and a number of its own. */
  readonly isSigned: boolean;
}

/**
 * A letter to a supplier on the studio's paper, to be sent as it is. It names the project as its reference, and neither the client nor any
 * other supplier: what stands in it is all that its reader may see.
 */
export function supplierLetter({ project, studio, dated }: ProjectData, ask: LetterAsk): Page {
  const { language, paper, ...own } = studio.fields;
  const { path, supplier, title } = ask;
  const isA4 = paper === "a3";
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: ${title.toLowerCase()}, ${supplier.name}`,
    language,
    paper: isA4 ? "a4" : "letter",
    pdf: true,
    model: {
      kind: "supplier-letter",
      style: runningWords(
        own.studio,
        `${title}, ${dateInWords(dated, language)}`,
        `Our reference: ${project.fields.project}`,
      ),
      letter: isA4 ? "a4-page" : "letter-page",
      title,
      early: ask.early,
      studio: {
        name: own.studio,
        lines: [own.address, own.phone, own.email, own.web].filter((line) => line !== undefined),
      },
      supplier: {
        name: supplier.name,
        reach: [supplier.email, supplier.phone].filter((line) => line !== undefined),
        account: supplier.account ?? "",
      },
      reference: project.fields.project,
      date: longDay(dated, language),
      lines: ask.rows,
      heads: ask.heads,
      hasReferences: ask.rows.some((row) => row.reference !== ""),
      goods: ask.goods,
      wishes: ask.wishes,
      deliver: ask.deliver,
      isSigned: ask.isSigned,
      ways: [
        { href: wayTo(path, ordersPath(project.id)), text: "Order list" },
        { href: wayTo(path, samplesPath(project.id)), text: "Sample tray" },
      ],
    },
    pictures: [],
  };
}
