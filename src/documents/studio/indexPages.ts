import { pricesIn } from "../../money/pricesIn.ts";
import { capital } from "../../units/capital.ts";
import { printMoney } from "../../units/money.ts";
import type { Page } from "../page.ts";
import {
  boardPath,
  clientIndexPath,
  clientTree,
  mailPath,
  proposalPath,
  STUDIO_INDEX,
} from "../paths.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { coverOf } from "../proposal/cover.ts";
import { wayTo } from "../ways.ts";
import { searchEntries } from "./searchEntries.ts";
import { STUDIO_DOCUMENTS } from "./studioPage.ts";

/** What a project comes to, at client and trade prices. */
function moneyWords({ money: { lines, totals } }: ProjectData, language: string): string {
  const known = pricesIn(lines, [totals.trade, totals.client]);
  if (known === "none") return "No price is in yet.";
  const [client, trade] = [totals.total, totals.trade].map((m) => printMoney(m, language, true));
  return `${client} to the client, ${trade} trade${known === "some" ? " so far" : ""}.`;
}

/** The studio's index: every project with its documents in all three trees. Nothing is hidden here. */
export function studioIndex(
  all: readonly ProjectData[],
  sheets: readonly Page[],
  broken: readonly string[],
  studioName: string,
  language: string,
  paper: "letter" | "a4",
): Page {
  const model = {
    kind: "studio-index",
    studio: studioName,
    // Inside a script element only what could end it has to be written otherwise.
    search: { html: JSON.stringify(searchEntries(all)).replaceAll("<", "\\u003c") },
    broken,
    projects: all.map((data) => ({
      name: data.project.fields.project,
      client: data.project.fields.client.name,
      status: capital(data.project.fields.status),
      money: moneyWords(data, language),
      groups: [
        {
          name: "For the client",
          links: [
            {
              href: wayTo(STUDIO_INDEX, proposalPath(data.project.id)),
              text: "Proposal",
            },
            ...data.rooms.map((r) => ({
              href: wayTo(STUDIO_INDEX, boardPath(data.project.id, r.record.id)),
              text: `Board: ${r.record.fields.room}`,
            })),
          ],
        },
        {
          name: "For the makers",
          links: sheets
            .filter((p) => p.project === data.project.id)
            .map((p) => ({ href: wayTo(STUDIO_INDEX, p.path), text: p.title })),
        },
        {
          name: "For the studio",
          links: Object.values(STUDIO_DOCUMENTS).map(({ path, name }) => ({
            href: wayTo(STUDIO_INDEX, path(data.project.id)),
            text: name === "Findings" ? "Findings and working" : name,
          })),
        },
      ],
      open: data.rooms
        .flatMap((r) => r.scheme.findings)
        .filter((f) => f.level !== "works" && f.accepted === null).length,
    })),
  };
  return {
    reader: "studio",
    project: null,
    room: null,
    path: STUDIO_INDEX,
    title: `${studioName}: projects`,
    language,
    paper,
    pdf: false,
    model,
    pictures: [],
  };
}

/** What a client finds first in the folder that is handed over: the proposal's cover, with the way to each document. */
export function clientIndex(data: ProjectData): Page {
  const { project, studio } = data;
  const path = clientIndexPath(project.id);
  const book = pictureBook(clientTree(project.id), "");
  const model = {
    kind: "client-index",
    cover: coverOf(data, book),
    links: [
      { href: wayTo(path, proposalPath(project.id)), text: "The proposal" },
      {
        href: wayTo(path, mailPath(project.id)),
        text: "The proposal in one file, to send by mail",
      },
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
    title: project.fields.project,
    language: studio.fields.language,
    paper: studio.fields.paper,
    pdf: false,
    model,
    pictures: book.pictures,
  };
}
