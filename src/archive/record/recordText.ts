import type { ProjectData } from "../../documents/projectData.ts";
import { dateInWords } from "../../documents/words/dates.ts";
import { accountText } from "../../money/account/accountText.ts";
import { money, printMoney } from "../../units/money.ts";
import { clothEntries, isUsed } from "./clothEntries.ts";
import { clothLines } from "./clothText.ts";
import { entryLines, heading, plainSpaces, wrapped } from "./plainText.ts";
import { roomLines } from "./roomLines.ts";

/** What a record is written from beside the project itself. */
export interface RecordInput {
  readonly data: ProjectData;
  /** The ISO date on which it is archived. */
  readonly on: string;
  /** Name and version of this program. */
  readonly program: string;
  /** The reports of the studio: what it costs, and what to buy with its working and cutting plans. */
  readonly moneyText: string;
  readonly quantitiesText: string;
}

const INSIDE: readonly (readonly [string, string])[] = [
  ["record.txt", "this page; record.json holds the same for another program"],
  [
    "files",
    "the studio’s own files that all was made from: the project and its rooms, what was sent, the cards of its cloths and objects with their photographs. They are plain text and pictures.",
  ],
  [
    "documents",
    "what was made of them on that day: boards and proposal in client, sheets and cutting plans in makers, order list and account in studio. Open documents/studio/index.html in a browser to find your way; every PDF opens by itself.",
  ],
];

/** The record of a finished project as a page of plain text: what a studio needs to know when it is asked in fifteen years. */
export function recordText(input: RecordInput): string {
  const { data } = input;
  const entries = clothEntries(data);
  const looked = entries.filter((entry) => !isUsed(entry));
  const lines = [
    ...headLines(input),
    ...heading("What is in this folder"),
    "",
    ...INSIDE.flatMap(([name, words]) => entryLines(name, words)),
    "",
    ...wrapped(
      "The lists one folder further up tell whether anything has been changed: roomcloth verify says so in words. Without this program go there in a terminal and type: sha512sum -c manifest-sha512.txt (on a Mac: shasum -a 512 -c manifest-sha512.txt). It is a bag as RFC 8493 describes it, “The BagIt File Packaging Format”.",
    ),
    ...heading("1. The cloths"),
    ...missingLines(data),
    ...entries.filter(isUsed).flatMap((entry) => clothLines(entry, data)),
    ...(looked.length > 0 ? ["", "", "Only looked at:"] : []),
    ...looked.flatMap((entry) => clothLines(entry, data)),
    ...heading("2. The rooms"),
    ...data.rooms.flatMap((room) => roomLines(room, data)),
    ...heading("3. What was sent, approved and paid"),
    ...agreedLines(data),
    ...heading("4. What it cost"),
    "",
    "Trade is what the studio pays, client what it charges; sums are before tax where tax has its own column.",
    "",
    plainSpaces(input.moneyText).trimEnd(),
    ...heading("5. How it was worked out and cut"),
    "",
    plainSpaces(input.quantitiesText).trimEnd(),
  ];
  return `${lines.join("\n")}\n`;
}

function headLines({ data, on, program }: RecordInput): string[] {
  const { project, studio } = data;
  const { client, status, revision, fitting } = project.fields;
  const { language } = studio.fields;
  const day = (iso: string) => dateInWords(iso, language);
  const name = plainSpaces(project.fields.project).toUpperCase();
  const documents = `dated ${day(data.dated)}`;
  return [
    name,
    "=".repeat([...name].length),
    "The record of a project, for the studio alone: trade prices, suppliers and the client’s address stand in it.",
    "",
    ...entryLines(
      "Client",
      [client.name, client.address].filter((w) => w !== undefined).join(", "),
    ),
    ...entryLines(
      "Studio",
      [studio.fields.studio, studio.fields.address].filter((w) => w !== undefined).join(", "),
    ),
    ...entryLines("Archived", `on ${day(on)} by ${program}`),
    ...entryLines("Documents", revision ? `revision ${revision}, ${documents}` : documents),
    ...entryLines("Status", status),
    ...entryLines("Fitting", fitting ? day(fitting) : "no day was written"),
    ...entryLines("Note", project.fields.private ?? ""),
  ];
}

/** What the project's file says nothing of, for no cloth. */
function missingLines({ project }: ProjectData): string[] {
  const { orders, receipts } = project.fields;
  const none = [
    ...(orders?.length ? [] : ["what was ordered"]),
    ...(receipts?.length ? [] : ["which lots came"]),
  ];
  if (none.length === 0) return [];
  return ["", `Not known: ${none.join(", and ")}. Nothing of it is written in the project’s file.`];
}

function agreedLines(data: ProjectData): string[] {
  const { project, studio, sent, account } = data;
  const { language } = studio.fields;
  const day = (iso: string) => dateInWords(iso, language);
  const print = (sum: Parameters<typeof printMoney>[0]) => printMoney(sum, language);
  return [
    "",
    ...sent.flatMap((each) =>
      entryLines(
        "Sent",
        `revision ${each.revision} on ${day(each.sent)}, ${print(money(each.totalMinor, each.currency))} (files/projects/${project.id}/sent/${each.revision}.json)`,
      ),
    ),
    ...(sent.length === 0 ? entryLines("Sent", "nothing was recorded as sent") : []),
    ...account.approvals.flatMap(({ revision, by, on, total }) =>
      entryLines(
        "Approved",
        `revision ${revision} by ${by} on ${day(on)}${total ? `, ${print(total)}` : ", its total is not written"}`,
      ),
    ),
    ...(account.approvals.length === 0 ? entryLines("Approved", "no approval was written") : []),
    ...account.payments.flatMap(({ amount, on, what }) =>
      entryLines("Paid", `${print(amount)} on ${day(on)}${what ? `, ${what}` : ""}`),
    ),
    ...(account.payments.length === 0 ? entryLines("Paid", "no payment was written") : []),
    ...accountText(account, language).flatMap((line) => (line === "" ? [""] : [plainSpaces(line)])),
  ];
}
