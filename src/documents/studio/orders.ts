import { clothPrice, unitsBought } from "../../money/clothPrice.ts";
import { clothWaitsFor, isUnchosen } from "../../quantities/unchosen.ts";
import { printMoney, timesMoney } from "../../units/money.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { findingsPath, ordersPath, STUDIO_INDEX } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { dateInWords } from "../words/dates.ts";
import { marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";
import { listed } from "../words/phrases.ts";

/** How a cloth is ordered that is bought by the bolt. */
function boltCountWords(count: number, first: boolean): string {
  if (!first) return "from the same bolt:";
  return count === 1 ? "1 whole bolt;" : `${count} whole bolts;`;
}

/** Hardware and objects that are bought ready: one row for each, with its supplier and what the studio pays. */
function piecesOf(data: ProjectData) {
  const { language, suppliers } = data.studio.fields;
  const name = (key: string | undefined): string =>
    key ? (suppliers?.[key]?.name ?? key) : "no supplier named";
  const lines = data.money.lines.filter((l) => l.what === "hardware" || l.what === "object");
  return lines.flatMap((line) => {
    const item = data.rooms
      .find((r) => r.record.id === line.room)
      ?.items.find((i) => i.record.id === line.item);
    const fields = item?.record.fields as
      | {
          readonly object?: string;
          readonly count?: number;
          readonly hardware?: readonly { what: string; supplier?: string; count?: number }[];
        }
      | undefined;
    const card = fields?.object ? data.records.objects.get(fields.object) : undefined;
    const piece = fields?.hardware?.find((h) => h.what === line.label);
    return line.room && line.item
      ? [
          {
            room: line.room,
            item: line.item,
            what: marked(line.label),
            count: String((line.what === "object" ? fields?.count : piece?.count) ?? 1),
            supplier: name(line.what === "object" ? card?.fields.supplier : piece?.supplier),
            sum: line.open ? "price to come" : printMoney(line.trade, language),
          },
        ]
      : [];
  });
}

/** The order list of a project, by supplier: for the studio alone, with trade prices and the suppliers' own numbers. */
export function ordersPage(data: ProjectData): Page {
  const { project, studio, records } = data;
  const language = studio.fields.language;
  const currency = studio.fields.currency;
  const path = ordersPath(project.id);
  const waits = (titles: readonly string[]): string =>
    titles.length === 0
      ? ""
      : `Not to be ordered yet: the client has still to choose about ${listed([...new Set(titles)])}.`;
  const titleOf = (room: string, item: string): string =>
    data.rooms.find((r) => r.record.id === room)?.items.find((i) => i.record.id === item)?.record
      .title ?? item;
  const waitOf = (m: { readonly room: string; readonly item: string }): string[] =>
    isUnchosen(data.quantities, m.room, m.item) ? [titleOf(m.room, m.item)] : [];
  const rows = data.quantities.cloths.map((c, at) => {
    // Whole bolts serve all makers of a cloth together: they stand in its first row.
    const bolt = data.money.bolts.find((b) => b.taken && b.cloth === c.cloth);
    const first = data.quantities.cloths.findIndex((o) => o.cloth === c.cloth) === at;
    const card = records.cloths.get(c.cloth);
    const price = card ? clothPrice(card, studio, currency, []) : null;
    const units = price
      ? unitsBought({ length: c.buy.length }, price.per, card?.fields.roll?.length ?? null)
      : null;
    const sum = price && units ? timesMoney(price.trade, units) : null;
    const sample = card?.fields.sample;
    return {
      supplier: card?.fields.supplier ?? "",
      wait: [
        waits(clothWaitsFor(data.quantities, c.cloth).map((u) => u.title)),
        c.facts.repeatUnknown
          ? "Not to be ordered yet: nothing is known of its repeat, and this may be too little."
          : "",
      ]
        .filter((words) => words !== "")
        .join(" "),
      name: c.facts.name,
      reference: card?.fields.reference ?? "",
      buy: marked(
        bolt ? `${boltCountWords(bolt.boltCount, first)} ${c.buy.text} of it` : c.buy.text,
      ),
      maker: c.maker ? (studio.fields.makers?.[c.maker]?.name ?? c.maker) : "",
      price: price ? `${printMoney(price.trade, language)} a ${price.per}` : "price to come",
      sum: bolt
        ? first
          ? printMoney(bolt.bolts, language)
          : ""
        : sum
          ? printMoney(sum, language)
          : "",
      dated: card?.fields.price?.on ? dateInWords(card.fields.price.on, language) : "",
      sample: sample?.approved
        ? "approved"
        : sample?.arrived
          ? "arrived"
          : sample?.ordered
            ? "ordered"
            : "not ordered",
      lot: c.lot ?? "to be one lot",
      handbook: marked(c.handbookWords ?? ""),
    };
  });
  const rolls = data.quantities.materials
    .filter((m) => m.cloth !== null && (m.unit === "roll" || m.unit === "piece"))
    .map((m) => {
      const card = records.cloths.get(m.cloth as string);
      const price = card ? clothPrice(card, studio, currency, []) : null;
      const units = price
        ? unitsBought({ count: m.amount }, price.per, card?.fields.roll?.length ?? null)
        : null;
      return {
        supplier: card?.fields.supplier ?? "",
        wait: waits(waitOf(m)),
        name: card?.fields.cloth ?? (m.cloth as string),
        reference: card?.fields.reference ?? "",
        buy: marked(m.text),
        maker: "",
        price: price ? `${printMoney(price.trade, language)} a ${price.per}` : "price to come",
        sum: price && units ? printMoney(timesMoney(price.trade, units), language) : "",
        dated: card?.fields.price?.on ? dateInWords(card.fields.price.on, language) : "",
        sample: card?.fields.sample?.approved ? "approved" : "not approved",
        lot: "to be one batch",
        handbook: marked(""),
      };
    });
  const all = [...rows, ...rolls];
  const suppliers = [...new Set(all.map((r) => r.supplier))].sort();
  const others = data.quantities.materials.filter(
    (m) => m.by === "studio" && !(m.cloth !== null && (m.unit === "roll" || m.unit === "piece")),
  );
  const model = {
    kind: "orders",
    style: runningWords(
      project.fields.project,
      `Order list, ${issueWords(data)}`,
      "For the studio alone",
    ),
    letter: studio.fields.paper === "a3" ? "a4-page" : "letter-page",
    project: project.fields.project,
    issue: issueWords(data),
    groups: suppliers.map((key) => {
      const card = studio.fields.suppliers?.[key];
      return {
        name: card?.name ?? (key || "No supplier named"),
        account: card?.account ?? "",
        email: card?.email ?? "",
        phone: card?.phone ?? "",
        rows: all.filter((r) => r.supplier === key),
      };
    }),
    materials: others.map((m) => ({
      what: marked(m.what),
      // Of what is counted the number alone: its name stands beside it.
      text: marked(m.text.endsWith(` ${m.what}`) ? m.text.slice(0, -m.what.length - 1) : m.text),
      item: titleOf(m.room, m.item),
      wait: waits(waitOf(m)),
    })),
    pieces: piecesOf(data).map((p) => ({
      ...p,
      wait: waits(waitOf(p)),
      item: titleOf(p.room, p.item),
    })),
    deliver: project.fields.delivery ?? studio.fields.address ?? "",
    ways: [
      { href: wayTo(path, STUDIO_INDEX), text: "All projects" },
      { href: wayTo(path, findingsPath(project.id)), text: "Findings" },
    ],
  };
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: order list`,
    language,
    paper: studio.fields.paper === "a3" ? "a4" : "letter",
    pdf: true,
    model,
    pictures: [],
  };
}
