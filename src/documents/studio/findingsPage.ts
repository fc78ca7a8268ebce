import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { pricesIn } from "../../money/pricesIn.ts";
import { allowanceOrigins, type Origin, WRITTEN } from "../../quantities/text/origins.ts";
import { savingWords } from "../../quantities/text/savingWords.ts";
import { capital, within } from "../../units/capital.ts";
import { type Money, money, printMoney, subtractMoney } from "../../units/money.ts";
import type { Page } from "../page.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";
import { countWords, openOf, row, works } from "./findingRows.ts";
import { originNotes } from "./originNotes.ts";
import { boltWords, comparedRows, seenTables } from "./seenTables.ts";
import { studioPage } from "./studioPage.ts";

/** What the project comes to and what is left of its limit, in a sentence. */
function moneyWords(data: ProjectData): string {
  const { money: m, studio } = data;
  const print = (sum: Money): string => printMoney(sum, studio.fields.language);
  const open = new Set(m.lines.filter((l) => l.open).map((l) => l.label)).size;
  const left = m.totals.remaining;
  const toCome = open > 0 ? `${open} ${open === 1 ? "price" : "prices"} still to come` : "";
  if (pricesIn(m.lines, [m.totals.client]) === "none") {
    const limit = m.totals.budget ? `the limit is ${print(m.totals.budget)}` : "";
    const words = ["No price is in yet", limit, toCome];
    return `${words.filter((p) => p !== "").join(", ")}.`;
  }
  const parts = [
    `It comes to ${print(m.totals.total)}${open > 0 ? " so far" : ""}`,
    left === null
      ? ""
      : left.minor < 0n
        ? `${print(subtractMoney(money(0, m.currency), left))} over the limit`
        : `${print(left)} under the limit`,
    toCome,
  ];
  return `${parts.filter((p) => p !== "").join(", ")}.`;
}

/** What the files leave open about an item, before it can be cut or made. */
function questionRows(data: ProjectData) {
  return data.rooms.flatMap((room) =>
    room.items
      .filter((item) => item.made.questions.length > 0)
      .map((item) => ({
        item: `${item.record.title}, ${within(room.record.fields.room)}`,
        questions: item.made.questions.map((q) =>
          marked(inVocabulary(q, data.studio.fields.language as Language)),
        ),
      })),
  );
}

/** What an item is called: a thing by the name on its card. */
function nameOf(data: ProjectData, { record }: ItemData): string {
  const { object } = record.fields as { readonly object?: string };
  return data.objects.get(object ?? "")?.name ?? record.title;
}

/** Where the allowances of an item's working come from. */
function originsOf(data: ProjectData, room: RoomData, item: ItemData): readonly Origin[] {
  const own = data.quantities.items.find(
    (i) => i.room === room.record.id && i.item === item.record.id,
  );
  return allowanceOrigins(own?.allowances ?? []);
}

/** What the tool would point out about a project, room by room, with the working of its quantities; for the studio alone. */
export function findingsPage(data: ProjectData, warnings: readonly Diagnostic[]): Page {
  const { studio } = data;
  const notes = originNotes([
    ...data.quantities.cloths.flatMap((c) => c.origins),
    ...data.rooms.flatMap((room) => room.items.flatMap((item) => originsOf(data, room, item))),
  ]);
  return studioPage(data, "findings", {
    to: ["orders", "account"],
    model: {
      money: moneyWords(data),
      open: (["problem", "worth-a-look"] as const)
        .map((level) => openOf(level, data))
        .filter((level) => level.rooms.length > 0),
      questions: questionRows(data),
      rooms: data.rooms.map((room) => ({
        name: capital(room.record.fields.room),
        count: countWords(room.scheme.findings),
        overruled: room.scheme.findings
          .filter((f) => f.level !== "works" && f.accepted !== null)
          .map((f) => row(f, data)),
        works: works(room.scheme.findings, studio.fields.language),
        seen: seenTables(room, studio.fields.language, studio.fields.units),
        items: room.items.map((item) => ({
          title: `${capital(item.kind.words[studio.fields.language as "en-US"].one)}: ${nameOf(data, item)}`,
          working: item.made.working.map((w) => ({
            what: w.what,
            sum: marked(w.sum),
            result: marked(w.result),
            rounded: marked(w.rounded ?? ""),
          })),
          origins: notes.numbersOf(originsOf(data, room, item)),
        })),
      })),
      compared: comparedRows(data),
      saving: marked(savingWords(data.quantities.cloths, studio.fields.units) ?? ""),
      bolts: boltWords(data),
      cloths: data.quantities.cloths.map((c) => ({
        name: c.facts.name,
        working: c.working.map((w) => ({
          what: w.what,
          sum: marked(w.sum),
          result: marked(w.result),
          rounded: marked(w.rounded ?? ""),
        })),
        handbook: marked(c.handbookWords ?? ""),
        origins: notes.numbersOf(c.origins),
      })),
      written: WRITTEN,
      origins: notes.heads,
      warnings: warnings.map((w) => ({
        where: `${w.file}${w.line === null ? "" : `, line ${w.line}`}`,
        message: w.message,
        hint: w.hint ?? "",
      })),
    },
  });
}
