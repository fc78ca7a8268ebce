import { issueWords } from "../board/board.ts";
import type { Page, PagePicture } from "../page.ts";
import {
  accountPath,
  findingsPath,
  ordersPath,
  pocketPath,
  receivingPath,
  STUDIO_INDEX,
  samplesPath,
  schedulePath,
} from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { runningWords } from "../words/pageStyle.ts";

/** A project's documents for the studio, in the order in which its index names them. */
export const STUDIO_DOCUMENTS = {
  findings: { path: findingsPath, name: "Findings" },
  orders: { path: ordersPath, name: "Order list" },
  schedule: { path: schedulePath, name: "Schedule" },
  receiving: { path: receivingPath, name: "Receiving slip" },
  samples: { path: samplesPath, name: "Sample tray" },
  pocket: { path: pocketPath, name: "Pocket cards" },
  account: { path: accountPath, name: "Account" },
} as const;

export type StudioDocument = keyof typeof STUDIO_DOCUMENTS;

/** What is a document's own beside what all of them have. */
interface Own {
  /** What it shows. */
  readonly model: Readonly<Record<string, unknown>>;
  /** The documents that it names at its head, beside the index. */
  readonly to: readonly StudioDocument[];
  /** Its name, where it is not always the same. */
  readonly title?: string;
  /** What stands beside its name at the head of each sheet; revision and date where nothing is said. */
  readonly beside?: string;
  readonly pictures?: readonly PagePicture[];
}

/** A project's document for the studio alone: its model with what all of them have, on the studio's letter paper. */
export function studioPage(data: ProjectData, kind: StudioDocument, own: Own): Page {
  const { project, studio } = data;
  const path = STUDIO_DOCUMENTS[kind].path(project.id);
  const title = own.title ?? STUDIO_DOCUMENTS[kind].name;
  const isA4 = studio.fields.paper === "a3";
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: ${title.toLowerCase()}`,
    language: studio.fields.language,
    paper: isA4 ? "a4" : "letter",
    pdf: true,
    model: {
      kind,
      style: runningWords(
        project.fields.project,
        `${title}, ${own.beside ?? issueWords(data)}`,
        "For the studio alone",
      ),
      letter: isA4 ? "a4-page" : "letter-page",
      project: project.fields.project,
      issue: issueWords(data),
      ...own.model,
      ways: [
        { href: wayTo(path, STUDIO_INDEX), text: "All projects" },
        ...own.to.map((to) => ({
          href: wayTo(path, STUDIO_DOCUMENTS[to].path(project.id)),
          text: STUDIO_DOCUMENTS[to].name,
        })),
      ],
    },
    pictures: own.pictures ?? [],
  };
}
