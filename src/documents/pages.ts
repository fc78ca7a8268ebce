import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { boardPage } from "./board/boardPage.ts";
import { fittingPages } from "./fitting/fittingPage.ts";
import type { Page } from "./page.ts";
import type { ProjectData } from "./projectData.ts";
import { proposalPages } from "./proposal/proposal.ts";
import { sheetPages } from "./sheets/sheet.ts";
import { accountPage } from "./studio/account.ts";
import { findingsPage } from "./studio/findingsPage.ts";
import { clientIndex, studioIndex } from "./studio/indexPages.ts";
import { orderLetters } from "./studio/letters/orderLetter.ts";
import { sampleLetters } from "./studio/letters/sampleLetter.ts";
import { ordersPage } from "./studio/orders.ts";
import { pocketPage } from "./studio/pocket.ts";
import { receivingPage } from "./studio/receiving.ts";
import { samplesPage } from "./studio/samples.ts";
import { schedulePage } from "./studio/schedule.ts";

/** Every document of a project, in all three trees, but the studio's index. To add a document, add a line here. */
export function pagesOfProject(data: ProjectData, warnings: readonly Diagnostic[]): Page[] {
  return [
    clientIndex(data),
    ...proposalPages(data),
    ...data.rooms.map((room) => boardPage(data, room)),
    ...sheetPages(data),
    ...fittingPages(data),
    ordersPage(data),
    ...orderLetters(data),
    schedulePage(data),
    receivingPage(data),
    samplesPage(data),
    ...sampleLetters(data),
    pocketPage(data),
    accountPage(data),
    findingsPage(data, warnings),
  ];
}

/** All pages of the studio: each project's, and the index over them. */
export function allPages(
  all: readonly {
    readonly data: ProjectData;
    readonly warnings: readonly Diagnostic[];
  }[],
  broken: readonly string[],
  studio: { name: string; language: string; paper: "a3" | "tabloid" },
): Page[] {
  const pages = all.flatMap(({ data, warnings }) => pagesOfProject(data, warnings));
  const index = studioIndex(
    all.map((p) => p.data),
    pages.filter((p) => p.reader === "maker"),
    broken,
    studio.name,
    studio.language,
    studio.paper === "a3" ? "a4" : "letter",
  );
  return [...pages, index];
}
