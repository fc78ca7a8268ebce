import { capital } from "../../units/capital.ts";
import { spelled } from "../../units/spelling.ts";
import { type Board, boardOf, issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { boardPath, clientIndexPath, clientTree, mailPath, proposalPath } from "../paths.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { accentStyle } from "../words/accent.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { joined, runningWords } from "../words/pageStyle.ts";
import { budgetOf } from "./budget.ts";
import { changesBlock } from "./changesBlock.ts";
import { coverOf } from "./cover.ts";
import { optionBlocks } from "./options.ts";
import { sourcesOf } from "./sources.ts";
import { stepRows } from "./steps.ts";

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

/** Of many cautions so many stand over the signature on its page; fewer would leave it nearly alone, more the page before it half empty. */
const WITH_SIGNATURE = 3;

/** Cautions that keep to the signature, and those before them, which may stand on an earlier page. */
export function beforeSigning<T>(all: readonly T[]): {
  readonly cautionsBefore: readonly T[];
  readonly cautions: readonly T[];
} {
  const at = all.length > WITH_SIGNATURE + 1 ? all.length - WITH_SIGNATURE : 0;
  return { cautionsBefore: all.slice(0, at), cautions: all.slice(at) };
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
    changes: changesBlock(data),
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
    ...beforeSigning(
      cautionsOf(
        data.rooms.flatMap((r) => r.items),
        fields.language,
        "client",
      ),
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
