import { isSampled } from "../../sourcing/leadTimes.ts";
import { scheduleOf } from "../../sourcing/schedule.ts";
import { approvalOf } from "../../sourcing/whatIsDone.ts";
import { capital } from "../../units/capital.ts";
import { printMoney, sumMoney } from "../../units/money.ts";
import { spelled } from "../../units/spelling.ts";
import type { Page } from "../page.ts";
import { sampleLetterPath, samplesPath, studioTree } from "../paths.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { countsAlike, listed } from "../words/phrases.ts";
import { letterWays } from "./letters/bySupplier.ts";
import { samplesBySupplier } from "./letters/sampleLetter.ts";
import { feeOf, type SampleRow, sampleRow, trayCards } from "./sampleRows.ts";
import { studioPage } from "./studioPage.ts";

const GROUPS: readonly { readonly state: SampleRow["state"]; readonly name: string }[] = [
  { state: "to-ask-for", name: "To ask for" },
  { state: "ordered", name: "On the way" },
  { state: "here", name: "Here, to be approved" },
  { state: "returned", name: "Gone back unapproved" },
  { state: "approved", name: "Approved" },
  { state: "not-needed", name: "Not approved, and not needed any more" },
];

/** The sample tray of a project: every cloth with its sample's state, what is still needed before it is ordered, and what samples cost. */
export function samplesPage(data: ProjectData): Page {
  const { project, studio } = data;
  const book = pictureBook(studioTree(project.id), "");
  const schedule = scheduleOf(data);
  const all = trayCards(data);
  const rows = all
    .filter(isSampled)
    .map((card, at) => sampleRow(data, card, schedule, book, `sample-${at}`));
  const without = all.filter((card) => !isSampled(card)).map((card) => card.fields.cloth);
  return studioPage(data, "samples", {
    to: ["orders", "schedule", "receiving"],
    model: {
      letters: letterWays(samplesPath(project.id), samplesBySupplier(data), (key) =>
        sampleLetterPath(project.id, key),
      ),
      lead: leadWords(rows),
      approval: approvalWords(data),
      groups: GROUPS.map(({ state, name }) => ({
        name,
        rows: rows.filter((r) => r.state === state),
      })).filter((g) => g.rows.length > 0),
      without: without.length === 0 ? "" : `Linings without a sample: ${listed(without)}.`,
      fees: feesWords(data),
      caution: spelled(
        "The pictures are small, and their colours approximate: judge from the sample.",
        studio.fields.language,
      ),
    },
    pictures: book.pictures,
  });
}

/** `Eleven of twelve samples are`, `None of two samples is`, `11 of 16 samples are`. */
function ofAll(approved: number, all: number, verb: readonly [one: string, more: string]): string {
  const said = countsAlike([all]);
  const first = approved === 0 ? "none" : said(approved);
  return `${capital(first)} of ${said(all)} samples ${approved < 2 ? verb[0] : verb[1]}`;
}

/** `Eleven of twelve samples are approved.` and where the others are. */
function leadWords(rows: readonly SampleRow[]): string {
  if (rows.length === 0) return "No cloth is chosen yet.";
  const count = (state: SampleRow["state"]): number => rows.filter((r) => r.state === state).length;
  const approved = count("approved");
  if (count("not-needed") > 0)
    return `All is fitted: no sample is waited for. ${rows.length === 1 ? "The one sample was not" : ofAll(approved, rows.length, ["was", "were"])} approved.`;
  if (approved === rows.length)
    return approved === 1 ? "The one sample is approved." : "All samples are approved.";
  const others = [
    [count("to-ask-for"), "to be asked for"],
    [count("ordered"), "on the way"],
    [count("here"), "here to be approved"],
    [count("returned"), "gone back unapproved"],
  ] as const;
  const said = countsAlike([rows.length]);
  const parts = others
    .filter(([n]) => n > 0)
    .map(([n, words]) => `${said(n)} ${n === 1 ? "is" : "are"} ${words}`);
  if (rows.length === 1) return `The one sample is ${others.find(([n]) => n > 0)?.[1]}.`;
  return `${ofAll(approved, rows.length, ["is", "are"])} approved; ${listed(parts)}.`;
}

function approvalWords({ project }: ProjectData): string {
  const { revision } = project.fields;
  if (approvalOf(project)) return "";
  return `The client’s approval${revision ? ` of revision ${revision}` : ""} is still to come.`;
}

/** What samples cost together, and how much of it is credited once their cloths are ordered. */
function feesWords(data: ProjectData): string {
  const { currency, language } = data.studio.fields;
  const fees = trayCards(data).flatMap((card) => {
    const fee = feeOf(data, card);
    return fee ? [{ fee, isCredited: card.fields.sample?.credited === true }] : [];
  });
  if (fees.length === 0) return "";
  const sum = (some: typeof fees): string =>
    printMoney(
      sumMoney(
        some.map((f) => f.fee),
        currency,
      ),
      language,
    );
  const credited = fees.filter((f) => f.isCredited);
  const back =
    credited.length === 0
      ? "None of it is credited."
      : `${sum(credited)} of it is credited as the cloths are ordered.`;
  return `Fees for samples: ${sum(fees)}. ${back}`;
}
